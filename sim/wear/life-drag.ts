import type { Rig } from '../balance/rig.ts';
import { slidesAt } from '../brake/stopping.ts';
import { firstToYield } from '../brake/strut-path.ts';
import { Drag } from './drag.ts';
import type { PressHeat } from './life-heat.ts';
import type { LifeRow } from './life-types.ts';
import type { Wearing } from './wearing.ts';

/** A lining this far inside the cold drum at rest drags, mm. */
const DRAGS = 0.005;
const NO_DRAG = { torque: 0, power: 0 } as const;

/** Why a brake cannot be driven on: its drum cannot be turned, N·mm, or a part gives way under its clamp, N. */
export interface Stuck {
  readonly kind: 'seized' | 'gave way';
  readonly value: number;
}

/** A lining begins to touch the cold drum at rest, or ceases to: its clearance, mm, and what turns the drum, N·mm. */
export interface Touch {
  readonly kind: 'drag at rest' | 'drag ends';
  readonly gap: number;
  readonly torque: number;
}

/** What a life does between its presses while the linings rub; and whether they do. */
export class LifeDrag {
  readonly #rig: Rig;
  readonly #w: Wearing;
  readonly #heat: PressHeat;
  readonly #drag: Drag;
  readonly #pins: boolean;
  /** A lining stands inside the cold drum. */
  #inside = false;
  #on = false;
  /** Of the last way between two presses, N·mm/s; and how hot it left the drum, °C. */
  #power = 0;
  #warmth = Number.NEGATIVE_INFINITY;

  constructor(rig: Rig, w: Wearing, heat: PressHeat) {
    this.#rig = rig;
    this.#w = w;
    this.#heat = heat;
    this.#drag = new Drag(w, heat.air, heat.shoes);
    this.#pins = [rig.front, rig.rear].every(({ shoe }) => shoe.anchor.kind === 'pin');
  }

  /** A lining stands inside the drum, or a force is left on it: it is driven on press by press, and rubs between them. */
  get on(): boolean {
    return this.#on;
  }

  /** As a row tells it, the drum at a temperature, °C. */
  told(temperature: number): LifeRow['drag'] {
    return this.#on ? { torque: this.#drag.torqueAt(temperature), power: this.#power } : NO_DRAG;
  }

  /**
   * Drives on with linings that rub, to where the next press begins. Where heat is not followed from press to
   * press, that of the drag is all the same: without it no drum would ever let go.
   *
   * @param to mm driven; @param speed mm/s
   * @returns why it cannot be driven on; null: it was
   */
  roll(to: number, speed: number): Stuck | null {
    const w = this.#w;
    const heat = this.#heat;
    const way = to - w.distance;
    if (!(way > 0)) return null;
    const base = w.temperature;
    if (!heat.followed) w.temperature = Math.max(base, this.#warmth);
    const stuck = this.#stuck();
    if (!stuck) {
      const { power, hottest } = this.#drag.drive(way, speed, heat.air);
      this.#power = power;
      heat.hottest = Math.max(heat.hottest, hottest);
      heat.lastAt = to;
      w.distance = to;
    }
    this.#warmth = w.temperature;
    if (!heat.followed) w.temperature = base;
    return stuck;
  }

  #stuck(): Stuck | null {
    const w = this.#w;
    const { brake } = this.#rig;
    const torque = this.#drag.torqueAt(w.temperature);
    const weakest = firstToYield(brake);
    if (weakest && w.strutForce > weakest.force) return { kind: 'gave way', value: weakest.force };
    if (torque > slidesAt(brake.vehicle)) return { kind: 'seized', value: torque };
    return null;
  }

  /** Looks anew whether it drags; tells when a lining begins or ceases to touch the cold drum at rest. */
  look(): Touch | null {
    const w = this.#w;
    const cold = this.#heat.rest(w);
    const middle = w.restGap(cold);
    const gap = w.leastGap(cold);
    const { keptPressure, keptCable, lean } = w.condition;
    const forced = keptPressure > 0 || keptCable > 0 || lean.front > 0 || lean.rear > 0;
    const inside = this.#inside ? gap < 0 : gap < -DRAGS;
    const kind = inside ? 'drag at rest' : 'drag ends';
    const touch =
      inside === this.#inside ? null : ({ kind, gap, torque: this.#drag.torqueAt(cold) } as const);
    this.#inside = inside;
    // An end of a sliding shoe that brushes is pushed clear along its flat, which is not modelled: there the
    // middle has to stand inside.
    const pressed = this.#pins ? inside : middle < -DRAGS;
    this.#on = pressed || (forced && this.#drag.rubs(cold));
    return touch;
  }
}
