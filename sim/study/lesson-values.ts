import { balance, rest } from '../balance/balance.ts';
import type { Instant } from '../balance/instant.ts';
import { readings } from '../readings/readings.ts';
import type { LessonValue, Stand, ValueRows } from './lesson-stand.ts';
import { drumValues } from './lesson-values-drum.ts';
import { lifeValues } from './lesson-values-life.ts';
import { pressValues } from './lesson-values-press.ts';
import { parkedReadings } from './parked-readings.ts';

/**
 * What a lesson's text may name: the readings of the brake as it stands, and values that take more than
 * one instant, such as the pressure at which both linings touch, or what a life came to. Each has a key;
 * a text has no figure of its own.
 */

const more: ValueRows = { ...pressValues, ...drumValues, ...lifeValues };

/** The moment of a stand. A cable that pulls is judged as when the brake is about to slip. */
export const instantAt = ({ rig, state, pressure, turning, cable }: Stand): Instant =>
  balance(rig, state, { pressure, turning, cable });

/** Values of one stand, each reckoned when it is first asked for. */
export class LessonValues {
  readonly stand: Stand;
  readonly #known = new Map<string, LessonValue>();
  #instant: Instant | null = null;
  #rest: Instant | null = null;
  #parked = false;

  constructor(stand: Stand) {
    this.stand = stand;
  }

  get instant(): Instant {
    this.#instant ??= instantAt(this.stand);
    return this.#instant;
  }

  /** The released brake in the same state. */
  get rest(): Instant {
    this.#rest ??= rest(this.stand.rig, this.stand.state);
    return this.#rest;
  }

  /** The value of a key; null where there is no such key. */
  of(key: string): LessonValue | null {
    const row = Object.hasOwn(more, key) ? more[key] : undefined;
    if (row && !this.#known.has(key)) {
      const [name, unit, digits, of] = row;
      this.#known.set(key, { key, name, unit, digits, value: of(this.stand, this.instant) });
    }
    if (!this.#known.has(key)) this.#read();
    if (!this.#known.has(key)) this.#park();
    return this.#known.get(key) ?? null;
  }

  #read(): void {
    if (this.#known.has('torque')) return;
    const { rig, state } = this.stand;
    for (const r of readings(rig.brake, state, this.instant, this.rest)) this.#put(r);
  }

  /** Parked readings come last: what a pull does is asked for by few. */
  #park(): void {
    if (this.#parked) return;
    this.#parked = true;
    const { rig, state, cable } = this.stand;
    for (const r of parkedReadings(rig, state, cable)) this.#put(r);
  }

  #put({ key, name, value, unit, digits }: LessonValue): void {
    if (!this.#known.has(key)) this.#known.set(key, { key, name, value, unit, digits });
  }

  /** Every key there is for this brake. */
  get keys(): readonly string[] {
    this.#read();
    this.#park();
    return [...new Set([...this.#known.keys(), ...Object.keys(more)])];
  }

  /** What there is to be told of this brake, by name and unit; none of it is reckoned for that. */
  get named(): readonly Pick<LessonValue, 'key' | 'name' | 'unit'>[] {
    return this.keys.map((key) => {
      const row = Object.hasOwn(more, key) ? more[key] : undefined;
      const { name, unit } = this.#known.get(key) ?? {
        name: row?.[0] ?? key,
        unit: row?.[1] ?? '',
      };
      return { key, name, unit };
    });
  }
}
