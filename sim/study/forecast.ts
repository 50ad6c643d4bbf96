import { kindLaws } from '../brake/kinds.ts';
import type { Brake, Side } from '../brake/types.ts';

/**
 * From what was measured to the distance left. A plain rule of three: what was lost over the distance
 * goes on being lost alike. The rate is known within a factor of two, so every forecast carries a band
 * from half to twice, and what it rests on.
 */
export interface Measured {
  /** Driven with these linings and since the drum had its first diameter, mm. */
  readonly distance: number;
  /** Thinnest lining now, mm; what was not measured is left out. */
  readonly lining?: Partial<Readonly<Record<Side, number>>>;
  /** Thickness they had when fitted, mm; new when left out. */
  readonly liningFitted?: number;
  /** Largest inner diameter of the drum now, mm, and when the linings were fitted. */
  readonly drum?: number;
  readonly drumFitted?: number;
  /** Teeth the adjuster has taken since the linings were fitted. */
  readonly teeth?: number;
}

/** The rate may be half or twice what was seen (common practice; wear rates spread that much). */
export const BAND = 2;

/** How far one thing still lasts by the rate seen, with its band. */
export interface ForecastLine {
  readonly what: 'front lining' | 'rear lining' | 'drum' | 'teeth';
  /** Distance left by the rate seen, and the ends of its band, mm; 0 at or past the limit. */
  readonly left: number;
  readonly low: number;
  readonly high: number;
  /** Left to the limit, in `unit`. */
  readonly margin: number;
  /** Lost in each mm driven, in `unit`/mm. */
  readonly rate: number;
  /** Those of a stepless adjuster are no teeth. */
  readonly unit: 'mm' | 'teeth' | 'steps';
  /** What it rests on: lost so far, in `unit`, over a distance, mm, and the limit it goes to, in `unit`. */
  readonly lost: number;
  readonly distance: number;
  readonly limit: number;
}

/** How far the brake still goes, by everything that was measured. */
export interface Forecast {
  readonly lines: readonly ForecastLine[];
  /** The line that ends first; null when nothing measured has been lost yet. */
  readonly first: ForecastLine | null;
}

/**
 * Less than this was lost, in the unit: no rate is told. A gauge does not see a smaller wear; n teeth
 * stand for n to n + 1 of them, and only from the second on is that within the band.
 */
const SEEN = { mm: 0.02, teeth: 2, steps: 2 } as const;

function line(
  what: ForecastLine['what'],
  lost: number,
  margin: number,
  unit: ForecastLine['unit'],
  distance: number,
  limit: number,
): ForecastLine | null {
  if (!(distance > 0) || !(lost >= SEEN[unit])) return null;
  const rate = lost / distance;
  const left = Math.max(0, margin) / rate;
  return {
    what,
    left,
    low: left / BAND,
    high: left * BAND,
    margin,
    rate,
    unit,
    lost,
    distance,
    limit,
  };
}

/**
 * Forecast by every measurement given. Teeth tell only how far the adjuster still reaches, and the
 * drum's line counts on its diameter.
 */
export function forecast(brake: Brake, m: Measured): Forecast {
  const lines: ForecastLine[] = [];
  const put = (made: ForecastLine | null): void => {
    if (made) lines.push(made);
  };
  for (const side of ['front', 'rear'] as const) {
    const now = m.lining?.[side];
    if (now === undefined) continue;
    const l = brake.shoes[side].lining;
    const lost = (m.liningFitted ?? l.thicknessNew) - now;
    const margin = now - l.thicknessMin;
    put(line(`${side} lining`, lost, margin, 'mm', m.distance, l.thicknessMin));
  }
  if (m.drum !== undefined) {
    const lost = m.drum - (m.drumFitted ?? 2 * brake.drum.radiusNew);
    const most = 2 * brake.drum.radiusMax;
    put(line('drum', lost, most - m.drum, 'mm', m.distance, most));
  }
  if (m.teeth !== undefined) {
    const left = brake.adjuster.teeth - m.teeth;
    const unit = kindLaws[brake.adjuster.kind].countable ? 'teeth' : 'steps';
    put(line('teeth', m.teeth, left, unit, m.distance, brake.adjuster.teeth));
  }
  let first: ForecastLine | null = null;
  for (const l of lines) if (!first || l.left < first.left) first = l;
  return { lines, first };
}
