import { type Instant, isTold } from '../../balance/instant.ts';
import type { Rig } from '../../balance/rig.ts';
import type { BrakeState } from '../../brake/state.ts';
import { liningReading } from '../measured.ts';

/**
 * What is out of the way at a point, though its forces can be told: a lining that rubs on the released
 * brake's drum; a shoe that a press does not bring to the drum, or that lifts off it; a lining thinner or a
 * drum wider than the scene's limits.
 */
export type Mark = 'drags' | 'front off' | 'rear off' | 'lining limit' | 'drum limit';

/** @param rest the released brake in the same state */
export function marksOf(
  rig: Rig,
  state: BrakeState,
  instant: Instant,
  rest: Instant,
): readonly Mark[] {
  const { brake } = rig;
  const out: Mark[] = [];
  const { front, rear } = rest.shoes;
  if (front.normalSum > 0 || rear.normalSum > 0) out.push('drags');
  if (isTold(instant) && (instant.pressure > 0 || instant.cableForce > 0)) {
    if (!(instant.shoes.front.normalSum > 0)) out.push('front off');
    if (!(instant.shoes.rear.normalSum > 0)) out.push('rear off');
  }
  const thin = (side: 'front' | 'rear'): boolean =>
    liningReading(brake, state, side).thinnest < brake.shoes[side].lining.thicknessMin;
  if (thin('front') || thin('rear')) out.push('lining limit');
  if (state.drumRadius > brake.drum.radiusMax) out.push('drum limit');
  return out;
}
