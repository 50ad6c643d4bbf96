import {
  type BedRow,
  type BrakeState,
  bedIn,
  KMH,
  type Rig,
  type SlowDowns,
  slowDownEnergy,
  slowDownsWarm,
  worthKm,
} from '../../../sim/index.ts';
import { orderBedding as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import { Kept } from '../../record/kept.ts';

/** The usual advice: moderate slow-downs with a minute and a half of driving between. */
export const MODERATE: SlowDowns = { from: 50 * KMH, to: 10 * KMH, between: 90, at: 50 * KMH };
export const TEN = 10;
/** Hard stops by which a type test beds a brake in, from 80 km/h (from memory). */
const HARD: SlowDowns = { from: 80 * KMH, to: 0, between: 60, at: 80 * KMH };
const MANY = 200;
/** Distances looked at, km. */
const AT = [0, 50, 100, 200, 400, 1500] as const;

/** How new shoes bed in, by stops and by distance on one axis. */
export class Bedding {
  readonly rig: Rig;
  readonly #state: BrakeState;
  readonly #rows = new Kept<readonly BedRow[]>();
  /** Distance of the duty that ten slow-downs are worth, and two hundred hard stops, km. */
  readonly tenKm: number;
  readonly hardKm: number;

  constructor(rig: Rig, state: BrakeState) {
    this.rig = rig;
    this.#state = state;
    this.tenKm = worthKm(rig.brake, MODERATE, TEN);
    this.hardKm = worthKm(rig.brake, HARD, MANY);
  }

  /** °C before and after each of the ten. */
  get warm() {
    return slowDownsWarm(this.rig.brake, MODERATE, TEN);
  }
  /** Of one slow-down, K. */
  get rise(): number {
    return slowDownEnergy(this.rig.brake, MODERATE) / this.rig.brake.drum.heatCapacity;
  }
  get warmest(): number {
    return this.warm.at(-1)?.after ?? Number.NaN;
  }

  get rows(): readonly BedRow[] {
    return this.#rows.of([], () => {
      const at = [...new Set([...AT, this.tenKm, this.hardKm])].sort((a, b) => a - b);
      return bedIn(this.rig, this.#state, at);
    });
  }
  row(km: number): BedRow | undefined {
    return this.rows.find((r) => r.km === km);
  }
  /** Share of the leading lining's arc that bears at a distance looked at, %. */
  share(km: number): string {
    return number(100 * (this.row(km)?.contactFront ?? Number.NaN), 0);
  }
  get farText(): string {
    const { hardKm } = this;
    return words.someKmBringSoDo(number(Math.round(hardKm / 10) * 10, 0), this.share(hardKm), MANY);
  }
}
