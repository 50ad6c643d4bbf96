import type { Arrow } from '../instant.ts';
import { climbedBy } from '../ratchet.ts';
import type { Acting, Fitted, Force, Link, Rig, Work } from '../types.ts';
import { addLink, book, makeLink } from './sums.ts';

/** Climb force of the lever's spring comes up over this part of a tooth, mm. */
const CLIMB_RISE = 0.02;

/** The lever that climbs its tooth draws the strut's seats together, beyond strut and lost motion. */
export class Climb implements Force {
  readonly name = 'climbing lever';
  readonly remembers = 0;
  slot = 0;
  readonly #rig: Rig;
  #link: Link;
  #pull = 0;
  #climbed = 0;
  #nextTooth = 0;

  constructor(rig: Rig) {
    this.#rig = rig;
    this.#link = makeLink(rig.n);
  }

  prepare({ nextTooth }: Fitted): void {
    this.#nextTooth = nextTooth;
  }

  add(w: Work, _: Float64Array, act: Acting): void {
    const { adjuster } = this.#rig.brake;
    this.#link = w.strut;
    const climbed = climbedBy(this.#rig.brake, act.strutLength, w.strut.length);
    this.#pull = 0;
    this.#climbed = climbed;
    if (!(adjuster.climbForce > 0 && climbed > 0 && this.#nextTooth > 0)) return;
    const rising = climbed < CLIMB_RISE;
    const pull = adjuster.climbForce * (rising ? climbed / CLIMB_RISE : 1);
    this.#pull = pull;
    addLink(this.#rig, w, w.strut, pull, rising ? adjuster.climbForce / CLIMB_RISE : 0);
    const { ex, ey } = w.strut;
    book(w, 0, pull * ex, pull * ey);
    book(w, 1, -pull * ex, -pull * ey);
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

  energy(): number {
    const most = this.#rig.brake.adjuster.climbForce;
    if (this.#pull === 0) return 0;
    return this.#climbed < CLIMB_RISE
      ? (this.#pull * this.#climbed) / 2
      : most * (this.#climbed - CLIMB_RISE / 2);
  }
}
