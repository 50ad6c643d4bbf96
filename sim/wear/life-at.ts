import type { BrakeState } from '../brake/state.ts';
import type { LifeRow } from './life-types.ts';

/** Last row at or before a distance; after a click's pair: the one after it. −1: none. */
export function rowAt(rows: readonly LifeRow[], distance: number): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rows[middle] as LifeRow).distance <= distance) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/**
 * The brake at a distance of a driven life, for scrubbing along its chart: between two rows wear, drum
 * and heat go on evenly, and the tooth is that of the row before. The ends hold outside.
 */
export function lifeAt(rows: readonly LifeRow[], distance: number): BrakeState | null {
  const at = rowAt(rows, distance);
  const a = rows[Math.max(0, at)];
  if (!a) return null;
  const b = rows[at + 1];
  if (at < 0 || !b) return a.state;
  const f = (distance - a.distance) / (b.distance - a.distance);
  if (f === 0) return a.state;
  const mix = (x: number, y: number): number => x + f * (y - x);
  const worn = (x: Float64Array, y: Float64Array): Float64Array =>
    x.map((v, i) => mix(v, y[i] as number));
  const [s, t] = [a.state, b.state];
  return {
    ...s,
    wear: { front: worn(s.wear.front, t.wear.front), rear: worn(s.wear.rear, t.wear.rear) },
    drumRadius: mix(s.drumRadius, t.drumRadius),
    temperature: mix(s.temperature, t.temperature),
    distance,
    applications: Math.round(mix(s.applications, t.applications)),
  };
}
