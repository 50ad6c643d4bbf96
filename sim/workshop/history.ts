import type { Wheel } from '../index.ts';
import { type AxleFound, wheels } from './axle.ts';
import { largestBore, thinnestOf } from './inspection.ts';
import type { Limits } from './limits.ts';

/**
 * Two sheets of one vehicle: how fast it wears, what is left, and when to look again. A straight line
 * through both readings and on to the limit. Each reading may be off by what its gauge leaves open, so the
 * shortest way has the earlier one read too thin and the later one too thick, the longest the other way round:
 *
 *   rate = (before − after) / way;  left = (after − limit) / rate
 *   least: after − e, rate (before − after + 2 e) / way;  most: after + e, rate (before − after − 2 e) / way
 *
 * where the last has no wear left to tell it is open. Roads, loads and drivers may change besides.
 */
export interface PastSheet {
  /** Days from any fixed one, and the odometer, km. */
  readonly day: number;
  readonly km: number;
  readonly found: AxleFound;
}

/** A steel rule on a lining, and an inside gauge on a bore's diameter, read within this, mm (common practice). */
export const READS = { lining: 0.1, drum: 0.05 } as const;

export type TrendLine = 'leading' | 'trailing' | 'drum';

export interface Trend {
  readonly wheel: Wheel;
  readonly line: TrendLine;
  /** Earlier and later reading, and what either may be off by, mm. */
  readonly before: number;
  readonly after: number;
  readonly error: number;
  /** Lost on the way: mm a km; negative where it has grown. */
  readonly rate: number;
  /** What stands between both: new parts, or nothing that can be told. */
  readonly state: 'worn' | 'too little to tell' | 'renewed between';
  /** mm; null where nobody has set one. */
  readonly limit: number | null;
  /** km left from the later sheet, with its band; null without a limit, or where no rate is told. */
  readonly left: { readonly least: number; readonly as: number; readonly most: number } | null;
}

export interface History {
  /** Driven between both sheets, km, and days. */
  readonly way: number;
  readonly days: number;
  readonly trends: readonly Trend[];
  /** The line that may end first. */
  readonly first: Trend | null;
  /** Half of its shortest way: when to look again, in km of the odometer and as a day. */
  readonly next: { readonly km: number; readonly day: number | null } | null;
  /** Days on which the limit may be reached at the pace so far; null where no days lie between. */
  readonly reached: { readonly least: number; readonly most: number } | null;
}

const readingOf: Readonly<Record<TrendLine, (s: PastSheet, wheel: Wheel) => number>> = {
  leading: (s, wheel) => thinnestOf(s.found[wheel], 'lead'),
  trailing: (s, wheel) => thinnestOf(s.found[wheel], 'trail'),
  drum: (s, wheel) => largestBore(s.found[wheel]),
};

function trend(
  line: TrendLine,
  wheel: Wheel,
  [before, after]: readonly [number, number],
  way: number,
  limit: number | null,
): Trend {
  // A drum grows as it wears, a lining goes.
  const sign = line === 'drum' ? -1 : 1;
  const error = line === 'drum' ? READS.drum : READS.lining;
  const lost = sign * (before - after);
  const rate = lost / way;
  const base = { wheel, line, before, after, error, rate, limit };
  if (lost < -2 * error) return { ...base, state: 'renewed between', left: null };
  if (lost <= 0) return { ...base, state: 'too little to tell', left: null };
  if (limit === null) {
    return { ...base, state: lost > 2 * error ? 'worn' : 'too little to tell', left: null };
  }
  const margin = sign * (after - limit);
  const to = (room: number, gone: number): number =>
    room <= 0 ? 0 : gone > 0 ? (room * way) / gone : Number.POSITIVE_INFINITY;
  const left = {
    least: to(margin - error, lost + 2 * error),
    as: to(margin, lost),
    most: to(margin + error, lost - 2 * error),
  };
  return { ...base, state: lost > 2 * error ? 'worn' : 'too little to tell', left };
}

/**
 * What two sheets say, the earlier first; null where no way lies between them.
 *
 * @param limits by which the later one is judged
 */
export function historyOf(before: PastSheet, after: PastSheet, limits: Limits): History | null {
  const way = after.km - before.km;
  const days = after.day - before.day;
  if (!(way > 0)) return null;
  const trends: Trend[] = [];
  for (const wheel of wheels) {
    for (const line of ['leading', 'trailing', 'drum'] as const) {
      const pair = [readingOf[line](before, wheel), readingOf[line](after, wheel)] as const;
      if (pair.some((v) => Number.isNaN(v))) continue;
      const limit = line === 'drum' ? limits.drumMax : limits.liningMin;
      trends.push(trend(line, wheel, pair, way, limit));
    }
  }
  let first: Trend | null = null;
  for (const t of trends) {
    if (t.left && (!first?.left || t.left.least < first.left.least)) first = t;
  }
  if (!first?.left) return { way, days, trends, first: null, next: null, reached: null };
  const { least, most } = first.left;
  const dayAt = (km: number): number => after.day + (km * days) / way;
  return {
    way,
    days,
    trends,
    first,
    next: { km: after.km + least / 2, day: days > 0 ? Math.floor(dayAt(least / 2)) : null },
    reached: days > 0 ? { least: Math.floor(dayAt(least)), most: Math.ceil(dayAt(most)) } : null,
  };
}
