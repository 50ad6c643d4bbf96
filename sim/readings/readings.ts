import { type Instant, isTold } from '../balance/instant.ts';
import { usualSpeed } from '../brake/duty.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Brake } from '../brake/types.ts';
import { BAR } from '../units/units.ts';
import { readingNames as names } from '../words/en.ts';
import { adjusterReadings } from './adjuster.ts';
import { dragOf, shoeFactor, shoeFactorFull } from './factors.ts';
import { filmReadings } from './film.ts';
import { pedalReadings } from './pedal.ts';
import type { Reading } from './reading.ts';
import { type Role, roleOf } from './roles.ts';
import { shoeReadings } from './shoe.ts';

/** Factors, torque and push: the brake as a whole. */
function brakeReadings(brake: Brake, i: Instant): Reading[] {
  const factor = { front: shoeFactor(i, 'front'), rear: shoeFactor(i, 'rear') };
  const full = { front: shoeFactorFull(i, 'front'), rear: shoeFactorFull(i, 'rear') };
  const byRole = (role: Role, of: { front: number; rear: number }) =>
    roleOf('front', i.turning) === role ? of.front : of.rear;
  return [
    {
      key: 'brakeFactor',
      name: names.brakeFactor,
      symbol: 'C*',
      value: factor.front + factor.rear,
      unit: '',
      digits: 2,
      formula: 'C* = (T_lead + T_trail) / (R · F_toe)',
    },
    {
      key: 'brakeFactorFull',
      name: names.brakeFactorFull,
      symbol: 'C*_p',
      value: full.front + full.rear,
      unit: '',
      digits: 2,
      formula: 'C*_p = (T_lead + T_trail) / (R · p · A)',
    },
    {
      key: 'shoeFactorLeading',
      name: names.leading,
      symbol: 'C_lead',
      value: byRole('leading', factor),
      unit: '',
      digits: 2,
      formula: 'C_lead = T_lead / (R · F_toe)',
    },
    {
      key: 'shoeFactorTrailing',
      name: names.trailing,
      symbol: 'C_trail',
      value: byRole('trailing', factor),
      unit: '',
      digits: 2,
      formula: 'C_trail = T_trail / (R · F_toe)',
    },
    {
      key: 'torque',
      name: names.brakeTorque,
      symbol: 'T',
      value: isTold(i) ? (dragOf(i, 'front') + dragOf(i, 'rear')) / 1000 : Number.NaN,
      unit: 'N·m',
      digits: 1,
      formula: 'T = R · Σ μ N',
    },
    {
      key: 'linePressure',
      name: names.linePressure,
      symbol: 'p',
      value: i.pressure / BAR,
      unit: 'bar',
      digits: 1,
      formula: 'p',
    },
    {
      key: 'pistonForce',
      name: names.pistonForceEach,
      symbol: 'F_p',
      value: i.pressure * brake.cylinder.area,
      unit: 'N',
      digits: 0,
      formula: 'F_p = p · π d² / 4',
    },
  ];
}

/**
 * All readings of an instant.
 *
 * @param rest the released brake in the same state: gives the clearances at rest
 * @param speed that a stop is told from, mm/s; that of the first duty's first stop when left out
 */
export function readings(
  brake: Brake,
  state: BrakeState,
  i: Instant,
  rest: Instant,
  speed = usualSpeed(brake),
): Reading[] {
  return [
    ...brakeReadings(brake, i),
    ...shoeReadings(brake, state, i, rest, 'front'),
    ...shoeReadings(brake, state, i, rest, 'rear'),
    ...adjusterReadings(brake, state, i, rest, speed),
    ...pedalReadings(brake, i),
    ...filmReadings(state),
  ];
}

/** The reading of a key; throws when there is none by that name. */
export function readingOf(list: readonly Reading[], key: string): Reading {
  const found = list.find((r) => r.key === key);
  if (!found) throw new Error(`No reading "${key}"`);
  return found;
}
