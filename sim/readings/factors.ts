import { type Instant, isTold } from '../balance/instant.ts';
import type { Side } from '../brake/types.ts';

/** Torque of a shoe against the turning, N·mm. Standing still: 0. */
export const dragOf = (i: Instant, side: Side): number =>
  !isTold(i) || i.turning === 0 ? 0 : -i.turning * i.shoes[side].torqueOnDrum;

/** Share of a piston's push below which no lining bears: no factor is told. */
const TOUCH = 1e-6;

/** Shoe factor: drag at the drum radius over the push left on its toe after the springs. */
export function shoeFactor(i: Instant, side: Side): number {
  const s = i.shoes[side];
  if (!isTold(i) || i.turning === 0 || !(s.normalSum > TOUCH) || !(s.toeForce > 0))
    return Number.NaN;
  return dragOf(i, side) / i.drumRadius / s.toeForce;
}

/** Shoe factor on the full piston force. */
export function shoeFactorFull(i: Instant, side: Side): number {
  const s = i.shoes[side];
  if (!isTold(i) || i.turning === 0 || !(s.normalSum > TOUCH) || !(s.pistonForce > 0))
    return Number.NaN;
  return dragOf(i, side) / i.drumRadius / s.pistonForce;
}

/**
 * Highest pressure anywhere on the lining. Elements stand half a step inside the ends; where the
 * pressure still rises there, it goes on along the line through the last two.
 */
export function peak(values: Float64Array): number {
  const n = values.length;
  let most = 0;
  for (const v of values) most = Math.max(most, v);
  if (n < 2) return most;
  const end = (a: number, b: number): number => a + (a - b) / 2;
  return Math.max(
    most,
    end(values[0] as number, values[1] as number),
    end(values[n - 1] as number, values[n - 2] as number),
  );
}
