import type { Brake } from '../../brake/types.ts';
import type { Setting, Vary } from './vary.ts';

/** A design question turned round: which sizes give what is wished. How far a brake misses it is told here; who looks for one asks again and again. */

/** What is wished of a reading: within these, NaN-free; null: no such end. */
export interface Wish {
  readonly key: string;
  readonly least: number | null;
  readonly most: number | null;
  /** Of a drum as hot as that, °C; null: as it is. */
  readonly hot: number | null;
}

/** A size that may be chosen, and between what. */
export interface Free {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly whole: boolean;
}

/** How far a brake misses each wish: 0 where it is met; a share of what is wished where it is not. */
export interface Miss {
  /** Root of the sum of their squares. */
  readonly all: number;
  readonly each: readonly number[];
  /** By the order of the wishes; NaN where nothing is told. */
  readonly values: readonly number[];
}

/** A brake that locks, gives way or cannot be misses a wish by so much: more than any other could. */
const UNTOLD = 10;
/** An end nearer to nought than that counts as one: a share of nought would say nothing. */
const END = 1e-6;

/** What a miss is a share of: the wished end, or one where it is nought. */
function missed({ least, most }: Wish, value: number): number {
  if (!Number.isFinite(value)) return UNTOLD;
  const by = (end: number, over: number): number =>
    over > 0 ? Math.min(over / (Math.abs(end) < END ? 1 : Math.abs(end)), UNTOLD) : 0;
  return Math.max(
    least === null ? 0 : by(least, least - value),
    most === null ? 0 : by(most, value - most),
  );
}

/**
 * How much room a brake leaves to the nearest end of what is wished, as a share of that end: nought on the edge of
 * the region, negative outside of it, NaN where a reading is not told. Its line of nought is the region's edge.
 *
 * @param values by the order of the wishes
 */
export function roomOf(wishes: readonly Wish[], values: readonly number[]): number {
  const share = (end: number, room: number): number =>
    room / (Math.abs(end) < END ? 1 : Math.abs(end));
  return wishes.reduce((least, { least: low, most: high }, k) => {
    const value = values[k] as number;
    const [over, under] = [
      low === null ? Number.POSITIVE_INFINITY : share(low, value - low),
      high === null ? Number.POSITIVE_INFINITY : share(high, high - value),
    ];
    return Math.min(least, over, under);
  }, Number.POSITIVE_INFINITY);
}

/** @param at value of each free size */
export function missOf(
  vary: Vary,
  free: readonly Free[],
  wishes: readonly Wish[],
  at: readonly number[],
): Miss {
  const set = free.map(({ id, whole }, k): Setting => {
    const x = at[k] as number;
    return [id, whole ? Math.round(x) : x];
  });
  const heats = [...new Set(wishes.map((w) => w.hot))];
  const values = new Map<Wish, number>();
  for (const hot of heats) {
    const mine = wishes.filter((w) => w.hot === hot);
    const keys = mine.map((w) => w.key);
    const point = vary.point(hot === null ? set : [...set, ['temperature', hot]], keys);
    for (const [k, w] of mine.entries()) values.set(w, point.values[k] as number);
  }
  const told = wishes.map((w) => values.get(w) ?? Number.NaN);
  const each = wishes.map((w, k) => missed(w, told[k] as number));
  return { all: Math.sqrt(each.reduce((sum, m) => sum + m * m, 0)), each, values: told };
}

/**
 * Torque of one brake for its axle's share of a stop, N·m: m·a·s at the road, through the tyre's radius, on so
 * many brakes (Newton; the axle's share s as the vehicle's maker splits it). Mass in tonne, radius in mm.
 *
 * @param share 0 to 1
 * @param deceleration m/s²
 */
export const shareTorque = ({ vehicle }: Brake, share: number, deceleration: number): number =>
  (share * vehicle.mass * 1000 * deceleration * (vehicle.tyreRadius / 1000)) / vehicle.brakes;
