import { type StickForce, stickForce } from '../../contact/stick.ts';
import type { Arrow } from '../instant.ts';
import { makePlaced, place } from '../place.ts';
import type { Acting, Fitted, Force, Hand, Placed, Rig, ShoeRig, Work } from '../types.ts';
import { OnShoe } from './on-shoe.ts';
import { makePistonByHand, type PistonByHand, pistonByHand } from './piston-by-hand.ts';
import { addForce, book, indexOf } from './sums.ts';

/**
 * A piston rusted into its bore as a stop for its toe, N/mm: the web's edge on its face by line contact, with what bears
 * it, as a heel on its flat (K. L. Johnson, Contact Mechanics; the scene's default there).
 */
const STUCK_STOP = 1e5;

const CUP = 0;
const TOE = 1;
const LOOSE = 2;
const PLACE = 3;

/** Length of a piston with its cup, inward from the toe, over its bore: usual proportions, as it is drawn. */
const LENGTH = 19.5 / 19.05;

/**
 * The piston on its toe. Fluid only pushes: p·A and the spring between the cups, less the cup's dry
 * friction. A piston that is stuck bears the fluid itself and is a stop for its toe.
 *
 * It has a place of its own when a hand pushes it off its toe: without regard to its 30 g it stands where
 * fluid, cup and hand balance (see piston-by-hand.ts), and stays there until fluid or toe moves it.
 */
export class Piston extends OnShoe implements Force {
  /**
   * Travel at which the cup's bristle holds; x of the toe at rest, from which travel counts, mm; whether the piston
   * stands off its toe (1), and then its own travel.
   */
  readonly remembers = 4;
  readonly toe: Placed;
  /** N; mm. */
  push = 0;
  travel = 0;
  /** How far the piston stands behind its toe, mm. */
  behind = 0;
  /** Of a hand on it, outward, N. */
  hand = 0;
  readonly #off: PistonByHand;
  readonly #stick: StickForce = { force: 0, slope: 0, anchor: 0 };
  #friction = 0;
  #stuck = false;
  #lean = 0;
  #fluid = 0;

  constructor(rig: Rig, shoe: ShoeRig) {
    super(rig, shoe, 'piston');
    this.toe = makePlaced(rig.n);
    const { cylinder } = rig.brake;
    const out = Math.abs(shoe.shoe.toe[0] - cylinder.at[0]);
    this.#off = makePistonByHand(Math.min(0, LENGTH * cylinder.bore - out));
  }

  prepare({ condition }: Fitted): void {
    const { side } = this.shoe;
    this.#friction = this.rig.brake.cylinder.cupFriction + condition.cupExtra;
    this.#stuck = condition.pistonStuck[side];
    this.#lean = condition.lean[side];
  }

  /** Does it stand elsewhere than at its toe: pushed off by a hand, or rusted into its bore? */
  standsOff(memory: Float64Array): boolean {
    return this.#stuck || memory[this.slot + LOOSE] === 1;
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
    const hand = act.hands?.find((h) => h.on === this.name) ?? null;
    const loose = act.memory[slot + LOOSE] as number;
    w.after[slot + LOOSE] = 0;
    w.after[slot + PLACE] = 0;
    this.behind = 0;
    this.hand = 0;
    if ((hand || loose === 1) && !this.#stuck) {
      this.#byHand(w, act, travel, fluid, hand);
      return;
    }
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
    if (stick.slope !== 0) addAlong(this.rig, w, toe, shoe, stick.slope);
  }

  /** With a hand on it, or left off its toe: where it stands, and what it pushes there. */
  #byHand(w: Work, act: Acting, travel: number, fluid: number, hand: Hand | null): void {
    const { shoe, toe, slot } = this;
    const { cylinder } = this.rig.brake;
    const off = this.#off;
    const home = act.home[slot + TOE] as number;
    pistonByHand(
      {
        toe: travel,
        place: act.memory[slot + LOOSE] === 1 ? (act.memory[slot + PLACE] as number) : travel,
        anchor: act.memory[slot + CUP] as number,
        fluid,
        grip: cylinder.cupStiffness,
        friction: this.#friction,
        hand: hand && {
          at: shoe.outward * (hand.to[0] - home - (hand.at[0] - shoe.shoe.toe[0])),
          rate: hand.rate,
          limit: hand.limit,
        },
      },
      off,
    );
    this.behind = Math.max(0, travel - off.place);
    this.hand = off.hand;
    w.after[slot + CUP] = off.anchor;
    w.after[slot + TOE] = home;
    w.after[slot + LOOSE] = this.behind > 0 ? 1 : 0;
    w.after[slot + PLACE] = this.behind > 0 ? off.place : 0;
    const push = off.push + this.#lean;
    this.push = push;
    this.travel = travel;
    this.#fluid = fluid;
    this.#stick.slope = 0;
    this.#stick.force = 0;
    addForce(this.rig, w, toe, shoe.outward * push, 0);
    book(w, indexOf(shoe), shoe.outward * push, 0);
    if (off.slope !== 0) addAlong(this.rig, w, toe, shoe, off.slope);
  }

  energy(): number | null {
    const { travel, push } = this;
    // Held by a hand, or off its toe, it has no energy that hangs on the toe alone.
    if (this.hand !== 0 || this.behind > 0) return null;
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
    if (memory[slot + LOOSE] === 1) {
      memory[slot + PLACE] = (memory[slot + PLACE] as number) + this.shoe.outward * shift;
    }
  }

  arrows(): readonly Arrow[] {
    const { toe, shoe, name } = this;
    return [{ name, on: shoe.side, at: [toe.x, toe.y], force: [shoe.outward * this.push, 0] }];
  }
}

/** Adds a spring along x at a place of a shoe. */
function addAlong(rig: Rig, w: Work, p: Placed, shoe: ShoeRig, slope: number): void {
  const { n } = rig;
  for (let j = shoe.at; j < shoe.at + shoe.n; j++) {
    const dj = p.dx[j] as number;
    if (dj === 0) continue;
    for (let l = shoe.at; l < shoe.at + shoe.n; l++) {
      w.k[j * n + l] = (w.k[j * n + l] as number) + slope * dj * (p.dx[l] as number);
    }
  }
}
