import type { Instant } from '../balance/instant.ts';
import { seatsToStep } from '../balance/ratchet.ts';
import { type BrakeState, strutLength } from '../brake/state.ts';
import type { Brake } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { type Reading, row } from './reading.ts';
import { gapsOf } from './roles.ts';

/** Play at which the lever drops into its next tooth, mm; NaN when it never does. */
function toNextTooth(brake: Brake, { tooth, condition }: BrakeState): number {
  if (tooth >= brake.adjuster.teeth || condition.leverSpring <= 0) return Number.NaN;
  return seatsToStep(brake, condition, tooth) - strutLength(brake, tooth);
}

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
      (gapsOf(brake.shoes.front, i.shoes.front).centre +
        gapsOf(brake.shoes.rear, i.shoes.rear).centre) /
        2,
      'mm',
      2,
      "Mean of the two gaps at the linings' middles now.",
      'g = (g_front + g_rear) / 2',
    ),
    row(
      'restClearanceMean',
      'Clearance at rest, both linings',
      'g_0',
      (gapsOf(brake.shoes.front, rest.shoes.front).centre +
        gapsOf(brake.shoes.rear, rest.shoes.rear).centre) /
        2,
      'mm',
      2,
      "Mean of the two gaps at the linings' middles with the pedal let go.",
      'g_0 = (g_front + g_rear) / 2',
    ),
    row(
      'tooth',
      'Adjuster tooth',
      'n',
      state.tooth,
      `of ${brake.adjuster.teeth}`,
      0,
      'How many teeth the adjuster has stepped out.',
      'n',
    ),
    row(
      'strutForce',
      'Strut force',
      'S',
      i.strutForce,
      'N',
      0,
      'Clamp of the shoes on the strut; nothing once the pistons have spread them.',
      'S from the balance of both shoes',
    ),
    row(
      'separation',
      'Strut play sensed',
      's − L',
      i.separation - i.strutLength,
      'mm',
      2,
      'How far the strut seats have parted beyond the strut.',
      's − L(n)',
    ),
    row(
      'toNextTooth',
      'Needed for the next tooth',
      '',
      toNextTooth(brake, state),
      'mm',
      2,
      'Lost motion, one tooth, and what a weak spring is late: the play at which the lever drops in.',
      'lost motion + (2 − spring) · (L(n+1) − L(n))',
    ),
    row(
      'climb',
      'Tooth climbed',
      '',
      100 * i.climb,
      '%',
      0,
      'Part of the next tooth that the lever has climbed.',
      '(s − L − lost motion) / (L(n+1) − L(n))',
    ),
    row(
      'drumDiameter',
      'Drum diameter',
      'D',
      2 * state.drumRadius,
      'mm',
      2,
      'Inner diameter of the cold drum where it is swept.',
      'D = 2 R',
    ),
    row('temperature', 'Drum', 'ϑ', state.temperature, '°C', 0, 'Temperature of the drum.', 'ϑ'),
    row(
      'distance',
      'Distance',
      '',
      state.distance / KM,
      'km',
      0,
      'Driven since new.',
      'sum of the lumps driven',
    ),
    row(
      'leverOffStop',
      'Parking lever off its stop',
      '',
      state.leverOffStop,
      'mm',
      1,
      'How far the cable holds the parking lever off its stop, at the hook.',
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
        `What the ${name} pulls with now.`,
        'F_s = fitted + rate · stretch',
      );
    }),
  ];
}
