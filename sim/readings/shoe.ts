import { type Instant, isTold } from '../balance/instant.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Brake, Side } from '../brake/types.ts';
import { liningShape, thinnestLeft } from '../contact/bed.ts';
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
      name: 'Left on the toe after springs',
      symbol: 'F_toe',
      value: Math.max(0, s.toeForce),
      unit: 'N',
      digits: 0,
      formula: 'F_toe = F_p − M_springs / h',
      side,
    },
    {
      key: `pistonTravel${key}`,
      name: 'Piston travel',
      symbol: 'x',
      value: s.pistonTravel,
      unit: 'mm',
      digits: 2,
      formula: 'x = toe now − toe at rest',
      side,
    },
    {
      key: `drag${key}`,
      name: 'Drag',
      symbol: 'F_d',
      value: isTold(i) ? dragOf(i, side) / i.drumRadius : Number.NaN,
      unit: 'N',
      digits: 0,
      formula: 'F_d = Σ μ N',
      side,
    },
    {
      key: `peak${key}`,
      name: 'Highest pressure',
      symbol: 'p_max',
      value: isTold(i) ? peak(s.pressure) : Number.NaN,
      unit: 'MPa',
      digits: 2,
      formula: 'p = E / t · penetration',
      side,
    },
    {
      key: `clearance${key}`,
      name: 'Clearance',
      symbol: 'g',
      value: now.centre,
      unit: 'mm',
      digits: 2,
      formula: 'g = R − face of the lining',
      side,
    },
    {
      key: `restClearance${key}`,
      name: 'Clearance at rest',
      symbol: 'g_0',
      value: restGapOf(rest, free.centre),
      unit: 'mm',
      digits: 2,
      formula: 'g_0 = R − face of the lining',
      side,
    },
    {
      key: `lining${key}`,
      name: 'Lining left',
      symbol: 't',
      value: left,
      unit: 'mm',
      digits: 1,
      formula: 't = t_new − wear',
      side,
    },
    {
      key: `liningShare${key}`,
      name: 'Lining left above its limit',
      symbol: '',
      value: (100 * (left - l.thicknessMin)) / (l.thicknessNew - l.thicknessMin),
      unit: '%',
      digits: 0,
      formula: '(t − t_min) / (t_new − t_min)',
      side,
    },
    {
      key: `anchorForce${key}`,
      name: 'Force at the anchor',
      symbol: 'R_a',
      value: isTold(i)
        ? Math.sqrt(s.anchorForce[0] * s.anchorForce[0] + s.anchorForce[1] * s.anchorForce[1])
        : Number.NaN,
      unit: 'N',
      digits: 0,
      formula: 'R_a = −Σ of all other forces on the shoe',
      side,
    },
  ];
}
