import type { ReturnSpring } from '../../brake/types.ts';
import type { Arrow } from '../instant.ts';
import { place } from '../place.ts';
import type { Fitted, Force, Rig, Spot, Work } from '../types.ts';
import { addLink, book, indexOf, makeLink, measure } from './sums.ts';

/**
 * A return spring, from shoe to shoe or to the plate. It pulls and never pushes: an extension spring pulls
 * with its initial tension + rate × stretch (Shigley, Mechanical Engineering Design, extension springs).
 */
export class Spring implements Force {
  readonly name: string;
  readonly remembers = 0;
  slot = 0;
  /** N */
  tension = 0;
  readonly link: ReturnType<typeof makeLink>;
  readonly #rig: Rig;
  readonly #spring: ReturnSpring;
  readonly #ends: readonly [Spot, Spot];
  readonly #index: number;
  #factor = 1;

  /** @param index its place in the brake's list */
  constructor(rig: Rig, spring: ReturnSpring, index: number, a: Spot, b: Spot) {
    this.name = spring.name;
    this.#rig = rig;
    this.#spring = spring;
    this.#index = index;
    this.#ends = [a, b];
    this.link = makeLink(rig.n);
  }

  prepare({ condition }: Fitted): void {
    this.#factor = condition.unhooked?.includes(this.#index) ? 0 : condition.springFactor;
  }

  add(w: Work, y: Float64Array): void {
    const { link } = this;
    place(this.#rig, y, w.turns, this.#ends[0], link.a);
    place(this.#rig, y, w.turns, this.#ends[1], link.b);
    measure(link);
    const { rate } = this.#spring;
    const pull = this.#pull();
    const tension = Math.max(0, pull);
    this.tension = tension;
    addLink(this.#rig, w, link, tension, pull > 0 ? this.#factor * rate : 0);
    this.#on(w, link.a, tension);
    this.#on(w, link.b, -tension);
  }

  #pull(): number {
    const { fitted, rate, fittedLength } = this.#spring;
    return this.#factor * (fitted + rate * (this.link.length - fittedLength));
  }

  /** Books its pull on a shoe: force, and moment about the anchor. */
  #on(w: Work, p: typeof this.link.a, tension: number): void {
    if (!p.shoe) return;
    const fx = tension * this.link.ex;
    const fy = tension * this.link.ey;
    const index = indexOf(p.shoe);
    book(w, index, fx, fy);
    w.springMoment[index] = (w.springMoment[index] as number) + p.rx * fy - p.ry * fx;
  }

  arrows(): readonly Arrow[] {
    const { a, b, ex, ey } = this.link;
    const { name, tension } = this;
    const on = (p: typeof a, pull: number): Arrow[] =>
      p.shoe ? [{ name, on: p.shoe.side, at: [p.x, p.y], force: [pull * ex, pull * ey] }] : [];
    return [...on(a, tension), ...on(b, -tension)];
  }

  /** T²/2k; a spring without a rate has none that could be told so. */
  energy(): number | null {
    const rate = this.#factor * this.#spring.rate;
    return rate > 0 ? (this.tension * this.tension) / (2 * rate) : null;
  }
}
