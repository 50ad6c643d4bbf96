import type { Arrow } from '../instant.ts';
import { place } from '../place.ts';
import type { Acting, Force, Rig, Work } from '../types.ts';
import { addLink, book, makeLink, measure } from './sums.ts';

/**
 * How near the hook may come to its guide, mm: there the cable's nipple meets the end of its sheath, and nothing is
 * pulled any more. From memory; a rule of the scene has a hook stand far off, so only one that flies comes so near.
 */
const NIPPLE = 5;

/**
 * The parking cable: it draws the hook straight towards its guide, with the force it is given. Within the nipple's
 * reach of it the pull falls with the way that is left, F·s/NIPPLE: at the guide itself it has no direction.
 */
export class Cable implements Force {
  readonly name = 'parking cable';
  readonly remembers = 0;
  slot = 0;
  readonly #rig: Rig;
  readonly #link: ReturnType<typeof makeLink>;
  #cable = 0;
  #pull = 0;

  constructor(rig: Rig) {
    this.#rig = rig;
    this.#link = makeLink(rig.n);
  }

  prepare(): void {}

  add(w: Work, y: Float64Array, { cable }: Acting): void {
    this.#cable = cable;
    this.#pull = 0;
    if (!(cable > 0)) return;
    const link = this.#link;
    const hook = place(this.#rig, y, w.turns, this.#rig.hook, link.a);
    const guide = place(this.#rig, y, w.turns, this.#rig.guide, link.b);
    measure(link);
    const { length } = link;
    const near = length < NIPPLE;
    const pull = near ? (cable * length) / NIPPLE : cable;
    this.#pull = pull;
    addLink(this.#rig, w, link, pull, near ? cable / NIPPLE : 0);
    book(w, 1, (pull * (guide.x - hook.x)) / length, (pull * (guide.y - hook.y)) / length);
  }

  arrows(): readonly Arrow[] {
    const { a, ex, ey } = this.#link;
    const pull = this.#pull;
    if (pull === 0) return [];
    return [{ name: this.name, on: 'rear', at: [a.x, a.y], force: [pull * ex, pull * ey] }];
  }

  /** A constant pull's potential: pull × what is left of the way to the guide; near it that of a spring, without a jump. */
  energy(): number {
    const { length } = this.#link;
    if (length < NIPPLE) return (this.#pull * length + this.#cable * NIPPLE) / 2;
    return this.#pull * length;
  }
}
