import type { Brake, Instant, Point } from '../../../sim/index.ts';
import type { PartId } from '../part-names.ts';
import type { Places } from '../place.ts';
import type { Shape } from '../shapes.ts';
import { screwSight, screwSpots, screwStrut } from './screw-strut.ts';
import { strutSpots, toothedSight, toothedStrut } from './strut.ts';
import { wedgeSight, wedgeSpots, wedgeStrut } from './wedge.ts';

/**
 * Strut and adjuster of whichever kind the brake has, where they stand.
 *
 * @param temperature °C, bends the hot lock
 * @param flash strength of the click's flash, 0 to 1
 */
export function adjuster(
  brake: Brake,
  instant: Instant,
  places: Places,
  temperature: number,
  flash: number,
): Shape[] {
  if (brake.adjuster.kind === 'wedge') {
    return wedgeStrut(brake, instant, places, temperature, flash);
  }
  if (places.lever) return toothedStrut(brake, places, places.lever, temperature, flash);
  return screwStrut(brake, instant, places, temperature, flash);
}

/** Points for the names layer. */
export function adjusterSpots(
  brake: Brake,
  instant: Instant,
  places: Places,
): { part: PartId; at: Point }[] {
  if (brake.adjuster.kind === 'wedge') return wedgeSpots(brake, instant, places);
  return places.lever
    ? strutSpots(brake, places, places.lever)
    : screwSpots(brake, instant, places);
}

/** What a loupe on the adjuster looks at, mm, and the radius that it sees, mm. */
export function adjusterSight(
  brake: Brake,
  instant: Instant,
  places: Places,
): { look: Point; radius: number } {
  if (brake.adjuster.kind === 'wedge') return wedgeSight(brake, instant, places);
  return places.lever ? toothedSight(brake, places) : screwSight(brake, instant, places);
}
