import { type Instant, isTold } from '../balance/instant.ts';
import { playToStep } from '../balance/ratchet.ts';
import { kindLaws } from '../brake/kinds.ts';
import type { BrakeState } from '../brake/state.ts';
import { decelerationBy } from '../brake/stopping.ts';
import type { Brake } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { drumShareOf, flashRise, stopped } from '../wear/interface.ts';
import { readingFormulas as formulas, readingNames as names } from '../words/en.ts';
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
  const { countable } = kindLaws[brake.adjuster.kind];
  return [
    {
      key: 'clearanceMean',
      name: names.clearanceBothLinings,
      symbol: 'g',
      value: meanGap(brake, i),
      unit: 'mm',
      digits: 2,
      formula: 'g = (g_front + g_rear) / 2',
    },
    {
      key: 'restClearanceMean',
      name: names.clearanceAtRestBoth,
      symbol: 'g_0',
      value: restGapOf(rest, meanGap(brake, rest)),
      unit: 'mm',
      digits: 2,
      formula: 'g_0 = (g_front + g_rear) / 2',
    },
    {
      key: 'tooth',
      name: countable ? names.adjusterTooth : names.adjusterStep,
      symbol: 'n',
      value: state.tooth,
      unit: names.ofTeeth(`${brake.adjuster.teeth}`),
      digits: 0,
      formula: 'n',
    },
    {
      key: 'strutForce',
      name: names.strutForce,
      symbol: 'S',
      value: i.yields ? Number.NaN : i.strutForce,
      unit: 'N',
      digits: 0,
      formula: formulas.strut,
    },
    {
      key: 'separation',
      name: names.strutPlaySensed,
      symbol: 's − L',
      value: i.separation - i.strutLength,
      unit: 'mm',
      digits: 2,
      formula: 's − L(n)',
    },
    {
      key: 'toNextTooth',
      name: countable ? names.neededTooth : names.neededStep,
      symbol: '',
      value: playToStep(brake, state),
      unit: 'mm',
      digits: 2,
      formula: formulas.toNextTooth,
    },
    {
      key: 'climb',
      name: countable ? names.toothClimbed : names.stepClimbed,
      symbol: '',
      value: 100 * i.climb,
      unit: '%',
      digits: 0,
      formula: formulas.climbed,
    },
    {
      key: 'drumDiameter',
      name: names.drumDiameter,
      symbol: 'D',
      value: 2 * state.drumRadius,
      unit: 'mm',
      digits: 2,
      formula: 'D = 2 R',
    },
    {
      key: 'temperature',
      name: names.drum,
      symbol: 'ϑ',
      value: state.temperature,
      unit: '°C',
      digits: 0,
      formula: 'ϑ',
    },
    {
      key: 'stopFace',
      name: names.drumsFaceInStop,
      symbol: 'ϑ_f',
      value: faceInStop(brake, state, i, speed),
      unit: '°C',
      digits: 0,
      formula: 'ϑ_f = ϑ + 0.532 · γ · q_0 · √t_s / √(k · ρ · c), q_0 = 2 E / (t_s · 2 π R b)',
    },
    {
      key: 'distance',
      name: names.distance,
      symbol: '',
      value: state.distance / KM,
      unit: 'km',
      digits: 0,
      formula: formulas.driven,
    },
    {
      key: 'leverOffStop',
      name: names.leverOffStop,
      symbol: '',
      value: state.leverOffStop,
      unit: 'mm',
      digits: 1,
      formula: formulas.hook,
    },
    ...i.springs.map((spring, n): Reading => {
      const name = brake.springs[n]?.name ?? names.spring;
      return {
        key: `spring${n}`,
        name: names.pullOf(name),
        symbol: 'F_s',
        value: spring.force,
        unit: 'N',
        digits: 0,
        formula: formulas.spring,
      };
    }),
  ];
}
