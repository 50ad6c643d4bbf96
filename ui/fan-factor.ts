import { gapsOf } from '../sim/index.ts';
import { restOf } from './record/derive.ts';
import type { Session } from './session.ts';

/** Gaps may be drawn so many times as wide; the first is the most that can be chosen. */
const FACTORS = [40, 20, 10, 5, 2, 1] as const;
/** Most height of a gap fan, mm of the drawing: beside the brake a wall has 24 mm, figures among them. */
const MOST_HIGH = 18;

/**
 * How many times as wide as they are the gaps are drawn: as chosen, or less where the fan would hang over the
 * stage. It goes by the gaps at rest, so that a press closes one and the same fan.
 */
export function fanFactor({ magnification, brake, rig, shown }: Session): number {
  if (magnification === 1) return 1;
  const rest = restOf(rig, shown);
  const gaps = (['front', 'rear'] as const).map((side) =>
    gapsOf(brake.shoes[side], rest.shoes[side]),
  );
  const widest = Math.max(...gaps.flatMap(({ toe, centre, heel }) => [toe, centre, heel]));
  return FACTORS.find((f) => f <= magnification && f * widest <= MOST_HIGH) ?? 1;
}
