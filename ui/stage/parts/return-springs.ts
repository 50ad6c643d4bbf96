import type { Brake, Instant } from '../../../sim/index.ts';
import type { PartId } from '../part-names.ts';
import type { Shape } from '../shapes.ts';
import { coil } from './coil.ts';

/** Closed pitch of a usual coil and its radii above and below the hub, mm: drawn only. */
const PITCH = 1.95;
const RADIUS = { upper: 2.3, lower: 2.9 };

/** Name of a return spring: by its ends, beside the cylinder or beside the anchors. */
export function springPart(brake: Brake, index: number): PartId {
  const spring = brake.springs[index];
  if (!spring || spring.ends.some((end) => end.on === 'plate')) return 'return spring';
  return spring.ends[0].at[1] + spring.ends[1].at[1] > 0 ? 'upper spring' : 'lower spring';
}

/**
 * Return springs between their moved ends; the coil of an upper one lies clear of the lever.
 *
 * @param unhooked those that are off, by their place in the brake's list
 */
export function returnSprings(
  brake: Brake,
  instant: Instant,
  unhooked: readonly number[] = [],
): Shape[] {
  return instant.springs.flatMap((now, i) => {
    const built = brake.springs[i];
    if (!built || unhooked.includes(i)) return [];
    const part = springPart(brake, i);
    const upper = part === 'upper spring';
    const [before, share] = upper && brake.adjuster.lever ? [0.46, 0.28] : [0.36, 0.28];
    const body = share * built.fittedLength;
    return coil(String(i), part, now.from, now.to, {
      lead: [before * built.fittedLength, (1 - before - share) * built.fittedLength],
      turns: Math.max(3, Math.round(body / PITCH)),
      radius: upper ? RADIUS.upper : RADIUS.lower,
      wire: 0.9,
      hooks: true,
    });
  });
}
