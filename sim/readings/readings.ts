import { type Instant, isTold } from '../balance/instant.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Brake } from '../brake/types.ts';
import { BAR } from '../units/units.ts';
import { adjusterReadings } from './adjuster.ts';
import { dragOf, shoeFactor, shoeFactorFull } from './factors.ts';
import { pedalReadings } from './pedal.ts';
import { type Reading, row } from './reading.ts';
import { type Role, roleOf } from './roles.ts';
import { shoeReadings } from './shoe.ts';

/** Factors, torque and push: the brake as a whole. */
function brakeReadings(brake: Brake, i: Instant): Reading[] {
  const factor = { front: shoeFactor(i, 'front'), rear: shoeFactor(i, 'rear') };
  const full = { front: shoeFactorFull(i, 'front'), rear: shoeFactorFull(i, 'rear') };
  const byRole = (role: Role, of: { front: number; rear: number }) =>
    roleOf('front', i.turning) === role ? of.front : of.rear;
  return [
    row(
      'brakeFactor',
      'Brake factor, after springs',
      'C*',
      factor.front + factor.rear,
      '',
      2,
      'C* = (T_lead + T_trail) / (R · F_toe)',
    ),
    row(
      'brakeFactorFull',
      'Brake factor on full piston force',
      'C*_p',
      full.front + full.rear,
      '',
      2,
      'C*_p = (T_lead + T_trail) / (R · p · A)',
    ),
    row(
      'shoeFactorLeading',
      'Leading',
      'C_lead',
      byRole('leading', factor),
      '',
      2,
      'C_lead = T_lead / (R · F_toe)',
    ),
    row(
      'shoeFactorTrailing',
      'Trailing',
      'C_trail',
      byRole('trailing', factor),
      '',
      2,
      'C_trail = T_trail / (R · F_toe)',
    ),
    row(
      'torque',
      'Brake torque',
      'T',
      isTold(i) ? (dragOf(i, 'front') + dragOf(i, 'rear')) / 1000 : Number.NaN,
      'N·m',
      1,
      'T = R · Σ μ N',
    ),
    row('linePressure', 'Line pressure', 'p', i.pressure / BAR, 'bar', 1, 'p'),
    row(
      'pistonForce',
      'Piston force, each',
      'F_p',
      i.pressure * brake.cylinder.area,
      'N',
      0,
      'F_p = p · π d² / 4',
    ),
  ];
}

/**
 * All readings of an instant.
 *
 * @param rest the released brake in the same state: gives the clearances at rest
 */
export function readings(brake: Brake, state: BrakeState, i: Instant, rest: Instant): Reading[] {
  return [
    ...brakeReadings(brake, i),
    ...shoeReadings(brake, state, i, rest, 'front'),
    ...shoeReadings(brake, state, i, rest, 'rear'),
    ...adjusterReadings(brake, state, i, rest),
    ...pedalReadings(brake, i),
  ];
}

/** The reading of a key; throws when there is none by that name. */
export function readingOf(list: readonly Reading[], key: string): Reading {
  const found = list.find((r) => r.key === key);
  if (!found) throw new Error(`No reading "${key}"`);
  return found;
}
