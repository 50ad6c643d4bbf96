import { balance } from '../balance/balance.ts';
import { drumRadiusNow } from '../balance/dress.ts';
import type { Press } from '../balance/press.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { cos, sin } from '../math/trig.ts';
import type { Reading } from '../readings/reading.ts';
import { gapsOf } from '../readings/roles.ts';
import { PI } from '../units/units.ts';
import { studyTurn as words } from '../words/en.ts';

/** One place of the drum in its turn. */
export interface TurnPoint {
  /** rad */
  readonly angle: number;
  /** N·mm against the turning. */
  readonly torque: number;
  readonly frontGap: number;
  readonly rearGap: number;
}

/** Clearance and torque around one turn of the drum: what an off-centre or oval drum does. */
export function aroundTurn(rig: Rig, state: BrakeState, press: Press, places = 72): TurnPoint[] {
  return Array.from({ length: places }, (_, k) => {
    const angle = (2 * PI * k) / places;
    const i = balance(rig, state, { ...press, drumAngle: angle });
    return {
      angle,
      torque: -press.turning * i.torqueOnDrum,
      frontGap: gapsOf(rig.brake.shoes.front, i.shoes.front).centre,
      rearGap: gapsOf(rig.brake.shoes.rear, i.shoes.rear).centre,
    };
  });
}

export const PLACES = 72;

/** Least and greatest of gaps and torque in one turn of the drum, and what two gauges say of its bore. */
export function turnReadings(rig: Rig, state: BrakeState, press: Press): Reading[] {
  const points = aroundTurn(rig, state, press, PLACES);
  const row = (
    key: 'turnFront' | 'turnRear' | 'turnTorque' | 'turnBore',
    name: string,
    values: readonly number[],
    unit: string,
    digits: number,
    formula: string,
  ): Reading[] =>
    (['least', 'greatest'] as const).map((end) => ({
      key: `${key}${end === 'least' ? 'Least' : 'Greatest'}` as const,
      name: end === 'least' ? words.leastInATurn(name) : words.greatestInATurn(name),
      symbol: '',
      value: end === 'least' ? Math.min(...values) : Math.max(...values),
      unit,
      digits,
      formula,
    }));
  const bores = Array.from({ length: PLACES }, (_, k) =>
    boreDiameter(rig, state, (PI * k) / PLACES),
  );
  return [
    ...row(
      'turnFront',
      words.clearanceFront,
      points.map((p) => p.frontGap),
      'mm',
      2,
      'g(θ)',
    ),
    ...row(
      'turnRear',
      words.clearanceRear,
      points.map((p) => p.rearGap),
      'mm',
      2,
      'g(θ)',
    ),
    ...row(
      'turnTorque',
      words.torque,
      points.map((p) => p.torque / 1000),
      'N·m',
      1,
      'T(θ)',
    ),
    ...row('turnBore', words.bore, bores, 'mm', 2, 'D(θ) = 2 (R + e₂ cos 2θ)'),
  ];
}

/** What a two-point gauge reads across the bore at an angle, mm: the oval shows, an offset does not. */
export function boreDiameter(rig: Rig, state: BrakeState, angle: number): number {
  const { oval } = state.condition;
  const c = cos(angle);
  const s = sin(angle);
  return 2 * (drumRadiusNow(rig, state) + oval * (c * c - s * s));
}
