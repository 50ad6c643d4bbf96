import type { Arrow } from '../instant.ts';
import { place } from '../place.ts';
import { climbedBy, type StrutHeld } from '../ratchet.ts';
import type { Acting, Fitted, Force, Link, Placed, Rig, Work } from '../types.ts';
import { addLink, book, makeLink, measure, motions } from './sums.ts';

/**
 * Climb force of the lever's spring comes up over this part of a tooth, mm: so little that its work over a
 * tooth is what the drop gives out, within a hundredth.
 */
const CLIMB_RISE = 0.005;

/**
 * The lever that climbs its tooth draws the strut's seats together, beyond strut and lost motion. How far it
 * has climbed is told by the strut, which stands on the parking lever; but a strut can only push on that: what
 * pulls it is held by its spring, on the rear web. Where that is off, nothing climbs.
 */
export class Climb implements Force {
  readonly name = 'climbing lever';
  readonly remembers = 0;
  slot = 0;
  readonly #rig: Rig;
  readonly #link: Link;
  #pull = 0;
  #nextTooth = 0;
  #most = 0;
  #held: StrutHeld = {};

  constructor(rig: Rig) {
    this.#rig = rig;
    this.#link = makeLink(rig.n);
  }

  prepare({ climbForce, condition, nextTooth }: Fitted): void {
    this.#held = condition;
    this.#nextTooth = nextTooth;
    this.#most = climbForce;
  }

  add(w: Work, y: Float64Array, act: Acting): void {
    const link = this.#link;
    const rig = this.#rig;
    place(rig, y, w.turns, rig.front.webSeat, link.a);
    place(rig, y, w.turns, rig.rear.webSeat, link.b);
    measure(link);
    const climbed = climbedBy(rig.brake, this.#held, act.strutLength, w.strut.length);
    this.#pull = 0;
    if (!(this.#most > 0 && climbed > 0 && this.#nextTooth > 0)) return;
    const rising = climbed < CLIMB_RISE;
    const pull = this.#most * (rising ? climbed / CLIMB_RISE : 1);
    this.#pull = pull;
    addLink(rig, w, link, pull, 0);
    if (rising && w.slopes) this.#rise(w, this.#most / CLIMB_RISE);
    this.#on(w, link.a, 0, pull);
    this.#on(w, link.b, 1, -pull);
  }

  /** It grows with the way of the strut's seats, and pulls along the webs' own. */
  #rise(w: Work, slope: number): void {
    const { n } = this.#rig;
    const { a, b, ex, ey } = this.#link;
    motions(n, w, a, b, ex, ey);
    for (let j = 0; j < n; j++) {
      const pulled = slope * (w.along[j] as number);
      if (pulled === 0) continue;
      for (let l = 0; l < n; l++) {
        w.k[j * n + l] = (w.k[j * n + l] as number) - pulled * (w.seatGradient[l] as number);
      }
    }
  }

  /** Books its pull on a shoe: force, and moment about the anchor, as of a spring, which it is. */
  #on(w: Work, p: Placed, index: 0 | 1, pull: number): void {
    const fx = pull * this.#link.ex;
    const fy = pull * this.#link.ey;
    book(w, index, fx, fy);
    w.springMoment[index] = (w.springMoment[index] as number) + p.rx * fy - p.ry * fx;
  }

  arrows(): readonly Arrow[] {
    const { name } = this;
    const pull = this.#pull;
    const { a, b, ex, ey } = this.#link;
    return [
      { name, on: 'front', at: [a.x, a.y], force: [pull * ex, pull * ey] },
      { name, on: 'rear', at: [b.x, b.y], force: [-pull * ex, -pull * ey] },
    ];
  }

  /** It has none that is a function of the pose alone: with the parking lever off its stop it pulls elsewhere than it is measured. */
  energy(): null {
    return null;
  }
}
