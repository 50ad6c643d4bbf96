import type { Instant } from '../balance/instant.ts';
import { playToStep } from '../balance/ratchet.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Brake } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { type Reading, row } from './reading.ts';
import { gapsOf } from './roles.ts';

/** Mean clearance at the middle of both linings, mm. */
const meanGap = (brake: Brake, i: Instant): number =>
  (gapsOf(brake.shoes.front, i.shoes.front).centre +
    gapsOf(brake.shoes.rear, i.shoes.rear).centre) /
  2;

/**
 * Readings of both shoes together, the adjuster, the drum and the springs.
 *
 * @param rest the released brake in the same state
 */
export function adjusterReadings(
  brake: Brake,
  state: BrakeState,
  i: Instant,
  rest: Instant,
): Reading[] {
  return [
    row(
      'clearanceMean',
      'Clearance, both linings',
      'g',
      meanGap(brake, i),
      'mm',
      2,
      'g = (g_front + g_rear) / 2',
    ),
    row(
      'restClearanceMean',
      'Clearance at rest, both linings',
      'g_0',
      meanGap(brake, rest),
      'mm',
      2,
      'g_0 = (g_front + g_rear) / 2',
    ),
    row('tooth', 'Adjuster tooth', 'n', state.tooth, `of ${brake.adjuster.teeth}`, 0, 'n'),
    row('strutForce', 'Strut force', 'S', i.strutForce, 'N', 0, 'S from the balance of both shoes'),
    row(
      'separation',
      'Strut play sensed',
      's − L',
      i.separation - i.strutLength,
      'mm',
      2,
      's − L(n)',
    ),
    row(
      'toNextTooth',
      'Needed for the next tooth',
      '',
      playToStep(brake, state),
      'mm',
      2,
      'lost motion + (2 − spring) · (L(n+1) − L(n))',
    ),
    row(
      'climb',
      'Tooth climbed',
      '',
      100 * i.climb,
      '%',
      0,
      '(s − L − lost motion) / (L(n+1) − L(n))',
    ),
    row('drumDiameter', 'Drum diameter', 'D', 2 * state.drumRadius, 'mm', 2, 'D = 2 R'),
    row('temperature', 'Drum', 'ϑ', state.temperature, '°C', 0, 'ϑ'),
    row('distance', 'Distance', '', state.distance / KM, 'km', 0, 'sum of the lumps driven'),
    row(
      'leverOffStop',
      'Parking lever off its stop',
      '',
      state.leverOffStop,
      'mm',
      1,
      'hook travel',
    ),
    ...i.springs.map((spring, n) => {
      const name = brake.springs[n]?.name ?? 'spring';
      return row(
        `spring${n}`,
        `Pull of the ${name}`,
        'F_s',
        spring.force,
        'N',
        0,
        'F_s = fitted + rate · stretch',
      );
    }),
  ];
}
