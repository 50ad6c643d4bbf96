import { type Instant, isTold } from '../balance/instant.ts';
import { playToStep } from '../balance/ratchet.ts';
import { kindLaws } from '../brake/kinds.ts';
import type { BrakeState } from '../brake/state.ts';
import { decelerationBy } from '../brake/stopping.ts';
import type { Brake } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { drumShareOf, flashRise, stopped } from '../wear/interface.ts';
import type { Reading } from './reading.ts';
import { gapsOf, restGapOf } from './roles.ts';

/** Mean clearance at the middle of both linings, mm. */
const meanGap = (brake: Brake, i: Instant): number =>
  (gapsOf(brake.shoes.front, i.shoes.front).centre +
    gapsOf(brake.shoes.rear, i.shoes.rear).centre) /
  2;

/** Hottest that the drum's face gets in a stop from a speed, mm/s, with the torque of an instant, °C. */
function faceInStop(brake: Brake, state: BrakeState, i: Instant, speed: number): number {
  const torque = isTold(i) && i.turning !== 0 ? -i.turning * i.torqueOnDrum : 0;
  if (!(torque > 0)) return Number.NaN;
  const stop = stopped(brake, speed, decelerationBy(brake.vehicle, torque));
  return state.temperature + flashRise(brake, stop, drumShareOf(brake), state.drumRadius);
}

/**
 * Readings of both shoes together, the adjuster, the drum and the springs.
 *
 * @param rest the released brake in the same state; @param speed that a stop is told from, mm/s
 */
export function adjusterReadings(
  brake: Brake,
  state: BrakeState,
  i: Instant,
  rest: Instant,
  speed: number,
): Reading[] {
  // A wedge has no teeth: it is reckoned in steps too small to be told one by one.
  const step = kindLaws[brake.adjuster.kind].countable ? 'tooth' : 'step';
  return [
    {
      key: 'clearanceMean',
      name: 'Clearance, both linings',
      symbol: 'g',
      value: meanGap(brake, i),
      unit: 'mm',
      digits: 2,
      formula: 'g = (g_front + g_rear) / 2',
    },
    {
      key: 'restClearanceMean',
      name: 'Clearance at rest, both linings',
      symbol: 'g_0',
      value: restGapOf(rest, meanGap(brake, rest)),
      unit: 'mm',
      digits: 2,
      formula: 'g_0 = (g_front + g_rear) / 2',
    },
    {
      key: 'tooth',
      name: `Adjuster ${step}`,
      symbol: 'n',
      value: state.tooth,
      unit: `of ${brake.adjuster.teeth}`,
      digits: 0,
      formula: 'n',
    },
    {
      key: 'strutForce',
      name: 'Strut force',
      symbol: 'S',
      value: i.yields ? Number.NaN : i.strutForce,
      unit: 'N',
      digits: 0,
      formula: 'S from the balance of both shoes',
    },
    {
      key: 'separation',
      name: 'Strut play sensed',
      symbol: 's − L',
      value: i.separation - i.strutLength,
      unit: 'mm',
      digits: 2,
      formula: 's − L(n)',
    },
    {
      key: 'toNextTooth',
      name: `Needed for the next ${step}`,
      symbol: '',
      value: playToStep(brake, state),
      unit: 'mm',
      digits: 2,
      formula: 'lost motion + (2 − spring) · (L(n+1) − L(n))',
    },
    {
      key: 'climb',
      name: step === 'tooth' ? 'Tooth climbed' : 'Step climbed',
      symbol: '',
      value: 100 * i.climb,
      unit: '%',
      digits: 0,
      formula: '(s − L − lost motion) / (L(n+1) − L(n))',
    },
    {
      key: 'drumDiameter',
      name: 'Drum diameter',
      symbol: 'D',
      value: 2 * state.drumRadius,
      unit: 'mm',
      digits: 2,
      formula: 'D = 2 R',
    },
    {
      key: 'temperature',
      name: 'Drum',
      symbol: 'ϑ',
      value: state.temperature,
      unit: '°C',
      digits: 0,
      formula: 'ϑ',
    },
    {
      key: 'stopFace',
      name: 'Drum’s face in such a stop',
      symbol: 'ϑ_f',
      value: faceInStop(brake, state, i, speed),
      unit: '°C',
      digits: 0,
      formula: 'ϑ_f = ϑ + 0.532 · γ · q_0 · √t_s / √(k · ρ · c), q_0 = 2 E / (t_s · 2 π R b)',
    },
    {
      key: 'distance',
      name: 'Distance',
      symbol: '',
      value: state.distance / KM,
      unit: 'km',
      digits: 0,
      formula: 'sum of the lumps driven',
    },
    {
      key: 'leverOffStop',
      name: 'Parking lever off its stop',
      symbol: '',
      value: state.leverOffStop,
      unit: 'mm',
      digits: 1,
      formula: 'hook travel',
    },
    ...i.springs.map((spring, n): Reading => {
      const name = brake.springs[n]?.name ?? 'spring';
      return {
        key: `spring${n}`,
        name: `Pull of the ${name}`,
        symbol: 'F_s',
        value: spring.force,
        unit: 'N',
        digits: 0,
        formula: 'F_s = fitted + rate · stretch',
      };
    }),
  ];
}
