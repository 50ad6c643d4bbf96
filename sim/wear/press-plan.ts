import type { Rig } from '../balance/rig.ts';
import { BARE, type FilmShares } from '../brake/film.ts';
import type { Surface } from '../brake/surface.ts';
import { Seeker, type Seeking } from '../math/root.ts';
import { type Kind, waySpeed } from './schedule.ts';
import type { Warm, Wearing } from './wearing.ts';

/** How warm a press is: middle and end, °C, and how far warm shoes have swollen by then, mm. */
export interface PressWarmth {
  readonly middle: number;
  readonly after: number;
  readonly swell: number;
  readonly swellAfter: number;
}

/** Seats apart with a cool drum, mm, where that was, mm driven, and its growth between two such, mm/mm. */
export interface Seen {
  readonly apart: number;
  readonly at: number;
  readonly rate: number;
}

/**
 * Presses of one kind, direction and surface: they start from the same warm pose, and in a lump they
 * are worn together.
 */
export class Plan {
  readonly kind: Kind;
  readonly turning: 1 | -1;
  readonly surface: Surface | null;
  readonly warm: Warm;
  readonly soft: Warm;
  readonly #sought: Seeker;
  /** Drag of the last press, N. */
  drag = 0;
  /** Bore lost by the last lump for each unit of energy, mm/(N·mm). */
  drumRate = 0;
  /** What a lump has gathered: presses, energy, energy times the wear table's factor, heat. */
  count = 0;
  energy = 0;
  worn = 0;
  middle = 0;
  hottest = Number.NEGATIVE_INFINITY;
  /** How far warm shoes had swollen, mm: sum over its presses, and at the end of the hottest. */
  #swell = 0;
  swellHottest = 0;
  /** Energy of those hot enough to glaze a lining. */
  hot = 0;
  /** Sums of what counts of films; undefined where there are none. */
  #films: FilmShares | undefined = undefined;
  /** Seats apart in the last soft press, mm: nearly that of a press at the lump's end. */
  softApart = 0;
  /** What was sensed at the end of the last lump that it was in; null: none yet. */
  seen: Seen | null = null;
  /** What the heat of its hottest press parted them beyond that, mm. */
  heated = 0;

  constructor(kind: Kind, turning: 1 | -1, surface: Surface | null, warm: Warm, soft: Warm) {
    this.kind = kind;
    this.turning = turning;
    this.surface = surface;
    this.warm = warm;
    this.soft = soft;
    const { asked } = kind;
    this.#sought = new Seeker(asked.by === 'pressure' ? asked.pressure : FIRST, SEEKING);
  }

  clear(): void {
    this.count = 0;
    this.energy = 0;
    this.worn = 0;
    this.middle = 0;
    this.hottest = Number.NEGATIVE_INFINITY;
    this.#swell = 0;
    this.swellHottest = 0;
    this.hot = 0;
    this.#films = undefined;
  }

  /** Adds one press: its heat, whether it glazes, and where its films count, what of them does. */
  add(worn: number, heat: PressWarmth, hot: boolean, films?: FilmShares): void {
    const { after, middle, swell, swellAfter } = heat;
    const { energy } = this.kind;
    this.count++;
    this.energy += energy;
    this.worn += worn;
    this.middle += middle;
    if (after > this.hottest) this.swellHottest = swellAfter;
    this.hottest = Math.max(this.hottest, after);
    this.#swell += swell;
    if (hot) this.hot += energy;
    if (!films) return;
    const { water, rust, glaze } = this.#films ?? BARE;
    this.#films = {
      water: water + films.water,
      rust: rust + films.rust,
      glaze: { front: glaze.front + films.glaze.front, rear: glaze.rear + films.glaze.rear },
    };
  }

  /** Mean of what counts of films over the presses added up; undefined: nothing does. */
  get films(): FilmShares | undefined {
    const sum = this.#films;
    if (!sum) return undefined;
    const by = 1 / this.count;
    const { front, rear } = sum.glaze;
    return {
      water: sum.water * by,
      rust: sum.rust * by,
      glaze: { front: front * by, rear: rear * by },
    };
  }

  /** How far warm shoes have swollen in the middle of its presses, mm, on the mean. */
  get swell(): number {
    return this.count > 0 ? this.#swell / this.count : 0;
  }

  /** MPa, as needed for the torque asked for. */
  get pressure(): number {
    return this.#sought.at;
  }

  /** Presses, with the pressure that makes the torque asked for. */
  press(w: Wearing, temperature: number): void {
    const { turning, surface } = this;
    const { asked } = this.kind;
    w.speed = waySpeed(this.kind);
    w.shares = this.films;
    const torqueAt = (pressure: number): number => {
      w.press(this.warm, pressure, turning, surface, temperature, 0, -this.swell);
      return w.torque;
    };
    const torque = torqueAt(this.pressure);
    if (asked.by === 'torque' && asked.torque > 0)
      this.#sought.seek(asked.torque, torque, torqueAt);
    this.drag = w.torque / w.radiusAt(temperature);
  }

  /**
   * Presses on linings that soften by what they lose meanwhile.
   *
   * @param sliding expected, mm, times the wear table's factor
   */
  pressSoft(w: Wearing, temperature: number, sliding: number, energy: number): void {
    const ahead = this.drumRate * energy - this.swell;
    w.speed = waySpeed(this.kind);
    w.shares = this.films;
    w.press(this.soft, this.pressure, this.turning, this.surface, temperature, sliding, ahead);
    this.softApart = w.separation;
    this.drag = w.torque / w.radiusAt(temperature);
  }
}

/** First guess of a pressure, MPa. */
const FIRST = 2;
const SEEKING: Seeking = { least: 0.05, most: 20, step: FIRST / 4, close: 0.005, trials: 12 };

/** Softness of a lining by wear within one press, over its own: beyond this the wear is taken implicitly. */
export const STIFF = 0.5;

/** Greatest (E/t)·k for a unit of sliding, 1/mm: explicit wear is unstable when times sliding it passes 2. */
export function wearStiffness(rig: Rig): number {
  const of = (l: { modulus: number; thicknessMin: number; wearRate: number }): number =>
    (l.modulus / Math.max(0.5, l.thicknessMin)) * l.wearRate;
  return Math.max(of(rig.brake.shoes.front.lining), of(rig.brake.shoes.rear.lining));
}
