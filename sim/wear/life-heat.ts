import type { Brake } from '../brake/types.ts';
import { tableAt } from '../math/table.ts';
import { DragShoes } from './drag-shoes.ts';
import { cooled, coolingAt, warmed } from './heat.ts';
import type { Kind } from './schedule.ts';
import type { Wearing } from './wearing.ts';

/**
 * Follows the drum's heat from press to press; or finds it always as it stands. Shoes that warm take heat while
 * linings are held on the drum down a hill; a stop is over before they do (a tenth of a kelvin).
 */
export class PressHeat {
  readonly #brake: Brake;
  readonly followed: boolean;
  readonly air: number;
  readonly shoes: DragShoes;
  /** Where the last press or parking was, mm. */
  lastAt: number;
  /** Of the press at hand: middle and end, °C, and the wear table's factor over it. */
  middle = 0;
  after = 0;
  factor = 1;
  /** How far warm shoes have swollen in its middle and at its end, mm; 0 for cold ones. */
  swell = 0;
  swellAfter = 0;
  /** Highest since it was last set back, °C. */
  hottest = Number.NEGATIVE_INFINITY;

  constructor(brake: Brake, followed: boolean, air: number, from: number) {
    this.#brake = brake;
    this.followed = followed;
    this.air = air;
    this.shoes = new DragShoes(brake, air);
    this.lastAt = from;
  }

  /** Temperature at which clearances at rest are told: cooled down, where heat is followed. */
  rest(w: Wearing): number {
    return this.followed ? this.air : w.temperature;
  }

  /** Heat of a press that comes at a distance; changes the drum's temperature. */
  warm(w: Wearing, kind: Kind, at: number): void {
    const brake = this.#brake;
    if (!this.followed) {
      this.middle = w.temperature;
      this.after = w.temperature;
      this.factor = tableAt(brake.wearTable, w.temperature);
      return;
    }
    const { speed } = kind;
    const free = Math.max(0, at - this.lastAt - kind.length);
    const before = kind.foot
      ? w.temperature
      : cooled(brake, w.temperature, speed, free / speed, this.air);
    const { air, shoes } = this;
    if (!kind.foot) shoes.after(free / speed, null, air);
    let [half, end] = [shoes.temperature, shoes.temperature];
    if (kind.length > 0) {
      const time = kind.length / speed;
      const power = kind.energy / time;
      const both = (t: number) =>
        shoes.together(before, power, coolingAt(brake, speed), t, air) ?? {
          drum: warmed(brake, before, power, speed, t, air),
          shoes: shoes.temperature,
        };
      ({ drum: this.middle, shoes: half } = both(time / 2));
      ({ drum: this.after, shoes: end } = both(time));
      // Simpson's rule over the descent.
      const of = (t: number): number => tableAt(brake.wearTable, t);
      this.factor = (of(before) + 4 * of(this.middle) + of(this.after)) / 6;
    } else {
      const rise = kind.energy / brake.drum.heatCapacity;
      this.middle = before + rise / 2;
      this.after = before + rise;
      this.factor = tableAt(brake.wearTable, this.middle);
    }
    shoes.temperature = end;
    this.swell = shoes.growth(this.middle, half);
    this.swellAfter = shoes.growth(this.after);
    w.temperature = this.after;
    this.hottest = Math.max(this.hottest, this.after);
    this.lastAt = at;
  }

  /** Parked until it is as cool as the air. */
  park(w: Wearing, at: number): void {
    this.shoes.temperature = this.air;
    if (this.followed) w.temperature = this.air;
    this.lastAt = at;
  }
}
