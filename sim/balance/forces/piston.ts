import { type StickForce, stickForce } from '../../contact/stick.ts';
import type { Arrow } from '../instant.ts';
import { makePlaced, place } from '../place.ts';
import type { Acting, Fitted, Force, Placed, Rig, ShoeRig, Work } from '../types.ts';
import { OnShoe } from './on-shoe.ts';
import { addForce, book, indexOf } from './sums.ts';

/** A piston rusted into its bore as a stop for its toe, N/mm: as stiff as a heel on its flat. */
const STUCK_STOP = 1e5;

const CUP = 0;
const TOE = 1;

/**
 * The piston on its toe. Fluid only pushes: p·A and the spring between the cups, less the cup's dry
 * friction. A piston that is stuck bears the fluid itself and is a stop for its toe.
 */
export class Piston extends OnShoe implements Force {
  /** Travel at which the cup's bristle holds; x of the toe at rest, from which travel counts, mm. */
  readonly remembers = 2;
  readonly toe: Placed;
  /** N; mm. */
  push = 0;
  travel = 0;
  readonly #stick: StickForce = { force: 0, slope: 0, anchor: 0 };
  #friction = 0;
  #stuck = false;
  #lean = 0;
  #fluid = 0;

  constructor(rig: Rig, shoe: ShoeRig) {
    super(rig, shoe, 'piston');
    this.toe = makePlaced(rig.n);
  }

  prepare({ condition }: Fitted): void {
    const { side } = this.shoe;
    this.#friction = this.rig.brake.cylinder.cupFriction + condition.cupExtra;
    this.#stuck = condition.pistonStuck[side];
    this.#lean = condition.lean[side];
  }

  rest(w: Work, y: Float64Array, memory: Float64Array): void {
    memory[this.slot + TOE] = place(this.rig, y, w.turns, this.shoe.toe, this.toe).x;
  }

  add(w: Work, y: Float64Array, act: Acting): void {
    const { shoe, toe, slot } = this;
    const stick = this.#stick;
    const { cylinder } = this.rig.brake;
    place(this.rig, y, w.turns, shoe.toe, toe);
    const travel = shoe.outward * (toe.x - (act.home[slot + TOE] as number));
    stickForce(
      travel,
      act.memory[slot + CUP] as number,
      cylinder.cupStiffness,
      this.#friction,
      stick,
    );
    const fluid = act.pressure * cylinder.area + cylinder.centreSpring;
    let push = Math.max(0, fluid + stick.force);
    if (push === 0) stick.slope = 0;
    if (this.#stuck) {
      push = STUCK_STOP * Math.max(0, -travel);
      stick.slope = travel < 0 ? -STUCK_STOP : 0;
    }
    push += this.#lean;
    w.after[slot + CUP] = stick.anchor;
    w.after[slot + TOE] = act.home[slot + TOE] as number;
    this.push = push;
    this.travel = travel;
    addForce(this.rig, w, toe, shoe.outward * push, 0);
    book(w, indexOf(shoe), shoe.outward * push, 0);
    this.#fluid = fluid;
    if (stick.slope === 0) return;
    const { n } = this.rig;
    for (let j = shoe.at; j < shoe.at + shoe.n; j++) {
      const dj = toe.dx[j] as number;
      if (dj === 0) continue;
      for (let l = shoe.at; l < shoe.at + shoe.n; l++) {
        w.k[j * n + l] = (w.k[j * n + l] as number) + stick.slope * dj * (toe.dx[l] as number);
      }
    }
  }

  energy(): number | null {
    const { travel, push } = this;
    const fluid = this.#fluid;
    const { slope, force } = this.#stick;
    const leant = -this.#lean * travel;
    const within = Math.min(0, travel);
    if (this.#stuck) return (STUCK_STOP * within * within) / 2 + leant;
    if (push === this.#lean) return leant;
    if (this.#friction > 0 && slope === 0) return null;
    const bristle = slope === 0 ? 0 : (force * force) / (2 * this.rig.brake.cylinder.cupStiffness);
    return bristle - fluid * travel + leant;
  }

  /** Travel counts from the new rest pose; the cup's bristle stays where it is. */
  moved(memory: Float64Array, from: Float64Array, to: Float64Array): void {
    const { slot } = this;
    const shift = (from[slot + TOE] as number) - (to[slot + TOE] as number);
    memory[slot + CUP] = (memory[slot + CUP] as number) + this.shoe.outward * shift;
    memory[slot + TOE] = to[slot + TOE] as number;
  }

  arrows(): readonly Arrow[] {
    const { toe, shoe, name } = this;
    return [{ name, on: shoe.side, at: [toe.x, toe.y], force: [shoe.outward * this.push, 0] }];
  }
}
