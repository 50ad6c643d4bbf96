import type { Arrow } from '../instant.ts';
import { makePlaced, place } from '../place.ts';
import type { Acting, Fitted, Force, Placed, Rig, ShoeRig, Work } from '../types.ts';
import { OnShoe } from './on-shoe.ts';
import { addForce, addSlope, book, indexOf } from './sums.ts';

/** Formal pull back to the built rest place of a shoe shaken free of friction, N/mm: decides the sideways float alone (below 0.05 N at any reading). */
const CENTRING = 0.05;
/** A bristle whose end went farther than this has slid, mm. */
const SLID = 1e-6;

/** What a shoe without its hold-down still rubs on its pads and in the piston's fork, N: from memory. */
const BARE = 0.5;

const X = 0;
const Y = 1;
const BROKE = 2;

/**
 * Hold-down and plate pads on a shoe: a bristle in the plane, clamped radially at its friction. A groove
 * in the pads holds besides, until the shoe's edge breaks out of it.
 */
export class HoldDown extends OnShoe implements Force {
  /** Where the bristle holds, x and y, mm; whether the edge has broken out of its groove. */
  readonly remembers = 3;
  readonly at: Placed;
  /** On the shoe, in the brake's plane, N. */
  fx = 0;
  fy = 0;
  #groove = 0;
  #off = false;
  #stored = 0;
  #slides = false;

  constructor(rig: Rig, shoe: ShoeRig) {
    super(rig, shoe, 'hold-down');
    this.at = makePlaced(rig.n);
  }

  prepare({ condition }: Fitted): void {
    this.#groove = condition.groove;
    this.#off = condition.unheld?.includes(this.shoe.side) === true;
  }

  rest(w: Work, y: Float64Array, memory: Float64Array): void {
    const p = place(this.rig, y, w.turns, this.shoe.hold, this.at);
    memory[this.slot + X] = p.x;
    memory[this.slot + Y] = p.y;
    memory[this.slot + BROKE] = 0;
  }

  add(w: Work, yy: Float64Array, act: Acting): void {
    const { shoe, at: p, slot } = this;
    const { memory, home } = act;
    const { n } = this.rig;
    place(this.rig, yy, w.turns, shoe.hold, p);
    const from = shoe.at;
    const to = shoe.at + shoe.n;
    const { shakenOff, stiffness } = shoe.shoe.holdDown;
    const friction = this.#off
      ? Math.min(BARE, shoe.shoe.holdDown.friction)
      : shoe.shoe.holdDown.friction;
    const share = 1 - act.shaken * shakenOff;
    const broke = memory[slot + BROKE] as number;
    const limit = friction * share + (broke === 0 ? this.#groove : 0);
    const ax = memory[slot + X] as number;
    const ay = memory[slot + Y] as number;
    const x = p.x - ax;
    const y = p.y - ay;
    const d = Math.sqrt(x * x + y * y);
    let fx = -stiffness * x;
    let fy = -stiffness * y;
    let slope = -stiffness;
    w.after[slot + X] = ax;
    w.after[slot + Y] = ay;
    w.after[slot + BROKE] = broke;
    this.#stored = (stiffness * d * d) / 2;
    this.#slides = false;
    if (stiffness * d > limit) {
      const c = limit / (stiffness * d);
      w.after[slot + X] = p.x - c * x;
      w.after[slot + Y] = p.y - c * y;
      fx = -c * stiffness * x;
      fy = -c * stiffness * y;
      slope = 0;
      this.#stored = 0;
      this.#slides = limit > 0;
      const lost = d > 0 ? (friction * shakenOff) / d : 0;
      for (let j = from; j < to; j++) {
        w.byShaken[j] =
          (w.byShaken[j] as number) + lost * (x * (p.dx[j] as number) + y * (p.dy[j] as number));
      }
      // Sliding: constant size, direction turns across the motion only.
      const round = d > 0 ? limit / d : 0;
      for (let j = from; j < to; j++) {
        const cj = d > 0 ? (-y * (p.dx[j] as number) + x * (p.dy[j] as number)) / d : 0;
        if (cj === 0) continue;
        for (let l = from; l < to; l++) {
          const cl = (-y * (p.dx[l] as number) + x * (p.dy[l] as number)) / d;
          w.k[j * n + l] = (w.k[j * n + l] as number) - round * cj * cl;
        }
      }
    }
    if (share < 1) {
      const hx = p.x - (home[slot + X] as number);
      const hy = p.y - (home[slot + Y] as number);
      fx -= CENTRING * hx;
      fy -= CENTRING * hy;
      slope -= CENTRING;
      this.#stored += (CENTRING * (hx * hx + hy * hy)) / 2;
    }
    addForce(this.rig, w, p, fx, fy);
    this.fx = fx;
    this.fy = fy;
    book(w, indexOf(shoe), fx, fy);
    addSlope(this.rig, w, p, shoe, slope);
  }

  /** An edge that broke out of its groove slides freely from then on. */
  gaveWay(w: Work, { memory }: Acting): boolean {
    const { slot } = this;
    if (!(this.#groove > 0) || memory[slot + BROKE] !== 0) return false;
    const went = (i: number): number =>
      Math.abs((w.after[slot + i] as number) - (memory[slot + i] as number));
    if (!(went(X) > SLID || went(Y) > SLID)) return false;
    memory[slot + BROKE] = 1;
    w.after[slot + BROKE] = 1;
    return true;
  }

  /** A tooth that drops in under the pressed pedal changes nothing of this: the shoe is still out on the drum. */
  takeHold(memory: Float64Array): void {
    memory[this.slot + BROKE] = 0;
  }

  arrows(): readonly Arrow[] {
    const { at, shoe, name } = this;
    return [{ name, on: shoe.side, at: [at.x, at.y], force: [this.fx, this.fy] }];
  }

  energy(): number | null {
    return this.#slides ? null : this.#stored;
  }
}
