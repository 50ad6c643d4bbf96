import type { Arrow } from '../instant.ts';
import { place } from '../place.ts';
import type { Acting, Force, Rig, Work } from '../types.ts';
import { addLink, book, makeLink, measure } from './sums.ts';

/** The parking cable: it draws the hook straight towards its guide, with the force it is given. */
export class Cable implements Force {
  readonly name = 'parking cable';
  readonly remembers = 0;
  slot = 0;
  readonly #rig: Rig;
  readonly #link: ReturnType<typeof makeLink>;
  #pull = 0;

  constructor(rig: Rig) {
    this.#rig = rig;
    this.#link = makeLink(rig.n);
  }

  prepare(): void {}

  add(w: Work, y: Float64Array, { cable }: Acting): void {
    this.#pull = cable;
    if (!(cable > 0)) return;
    const link = this.#link;
    const hook = place(this.#rig, y, w.turns, this.#rig.hook, link.a);
    const guide = place(this.#rig, y, w.turns, this.#rig.guide, link.b);
    measure(link);
    addLink(this.#rig, w, link, cable, 0);
    const { length } = link;
    book(w, 1, (cable * (guide.x - hook.x)) / length, (cable * (guide.y - hook.y)) / length);
  }

  arrows(): readonly Arrow[] {
    const { a, ex, ey } = this.#link;
    const pull = this.#pull;
    if (pull === 0) return [];
    return [{ name: this.name, on: 'rear', at: [a.x, a.y], force: [pull * ex, pull * ey] }];
  }

  /** A constant pull's potential: pull × what is left of the way to the guide. */
  energy(): number {
    return this.#pull * this.#link.length;
  }
}
