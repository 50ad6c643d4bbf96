import { type Instant, isTold } from '../balance/instant.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Brake, Side } from '../brake/types.ts';
import { liningShape, thinnestLeft } from '../contact/bed.ts';
import { readingFormulas as formulas, readingNames as names } from '../words/en.ts';
import { dragOf, peak } from './factors.ts';
import type { Reading } from './reading.ts';
import { gapsOf, restGapOf } from './roles.ts';

function liningLeft(brake: Brake, state: BrakeState, side: Side): number {
  const wear = state.wear[side];
  return thinnestLeft(liningShape(brake.shoes[side].lining, brake.drum, wear.length), wear);
}

/**
 * Readings of one shoe.
 *
 * @param rest the released brake in the same state
 */
export function shoeReadings(
  brake: Brake,
  state: BrakeState,
  i: Instant,
  rest: Instant,
  side: Side,
): Reading[] {
  const s = i.shoes[side];
  const key = side === 'front' ? 'Front' : 'Rear';
  const now = gapsOf(brake.shoes[side], s);
  const free = gapsOf(brake.shoes[side], rest.shoes[side]);
  const l = brake.shoes[side].lining;
  const left = liningLeft(brake, state, side);
  return [
    {
      key: `toeForce${key}`,
      name: names.leftOnToe,
      symbol: 'F_toe',
      value: Math.max(0, s.toeForce),
      unit: 'N',
      digits: 0,
      formula: 'F_toe = F_p − M_springs / h',
      side,
    },
    {
      key: `pistonTravel${key}`,
      name: names.pistonTravel,
      symbol: 'x',
      value: s.pistonTravel,
      unit: 'mm',
      digits: 2,
      formula: formulas.toe,
      side,
    },
    {
      key: `drag${key}`,
      name: names.drag,
      symbol: 'F_d',
      value: isTold(i) ? dragOf(i, side) / i.drumRadius : Number.NaN,
      unit: 'N',
      digits: 0,
      formula: 'F_d = Σ μ N',
      side,
    },
    {
      key: `peak${key}`,
      name: names.highestPressure,
      symbol: 'p_max',
      value: isTold(i) ? peak(s.pressure) : Number.NaN,
      unit: 'MPa',
      digits: 2,
      formula: formulas.pressure,
      side,
    },
    {
      key: `clearance${key}`,
      name: names.clearance,
      symbol: 'g',
      value: now.centre,
      unit: 'mm',
      digits: 2,
      formula: formulas.gap,
      side,
    },
    {
      key: `restClearance${key}`,
      name: names.clearanceAtRest,
      symbol: 'g_0',
      value: restGapOf(rest, free.centre),
      unit: 'mm',
      digits: 2,
      formula: formulas.gapAtRest,
      side,
    },
    {
      key: `lining${key}`,
      name: names.liningLeft,
      symbol: 't',
      value: left,
      unit: 'mm',
      digits: 1,
      formula: formulas.lining,
      side,
    },
    {
      key: `liningShare${key}`,
      name: names.liningLeftAbove,
      symbol: '',
      value: (100 * (left - l.thicknessMin)) / (l.thicknessNew - l.thicknessMin),
      unit: '%',
      digits: 0,
      formula: '(t − t_min) / (t_new − t_min)',
      side,
    },
    {
      key: `anchorForce${key}`,
      name: names.forceAtAnchor,
      symbol: 'R_a',
      value: isTold(i)
        ? Math.sqrt(s.anchorForce[0] * s.anchorForce[0] + s.anchorForce[1] * s.anchorForce[1])
        : Number.NaN,
      unit: 'N',
      digits: 0,
      formula: formulas.anchor,
      side,
    },
  ];
}
