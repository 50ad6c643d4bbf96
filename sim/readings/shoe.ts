import { type Instant, isTold } from '../balance/instant.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Brake, Side } from '../brake/types.ts';
import { liningShape, thinnestLeft } from '../contact/bed.ts';
import { dragOf, peak } from './factors.ts';
import { type Reading, row } from './reading.ts';
import { gapsOf } from './roles.ts';

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
    row(
      `toeForce${key}`,
      'Left on the toe after springs',
      'F_toe',
      Math.max(0, s.toeForce),
      'N',
      0,
      'F_toe = F_p − M_springs / h',
      side,
    ),
    row(
      `pistonTravel${key}`,
      'Piston travel',
      'x',
      s.pistonTravel,
      'mm',
      2,
      'x = toe now − toe at rest',
      side,
    ),
    row(
      `drag${key}`,
      'Drag',
      'F_d',
      isTold(i) ? dragOf(i, side) / i.drumRadius : Number.NaN,
      'N',
      0,
      'F_d = Σ μ N',
      side,
    ),
    row(
      `peak${key}`,
      'Highest pressure',
      'p_max',
      isTold(i) ? peak(s.pressure) : Number.NaN,
      'MPa',
      2,
      'p = E / t · penetration',
      side,
    ),
    row(
      `clearance${key}`,
      'Clearance',
      'g',
      now.centre,
      'mm',
      2,
      'g = R − face of the lining',
      side,
    ),
    row(
      `restClearance${key}`,
      'Clearance at rest',
      'g_0',
      free.centre,
      'mm',
      2,
      'g_0 = R − face of the lining',
      side,
    ),
    row(`lining${key}`, 'Lining left', 't', left, 'mm', 1, 't = t_new − wear', side),
    row(
      `liningShare${key}`,
      'Lining left above its limit',
      '',
      (100 * (left - l.thicknessMin)) / (l.thicknessNew - l.thicknessMin),
      '%',
      0,
      '(t − t_min) / (t_new − t_min)',
      side,
    ),
    row(
      `anchorForce${key}`,
      'Force at the anchor',
      'R_a',
      isTold(i)
        ? Math.sqrt(s.anchorForce[0] * s.anchorForce[0] + s.anchorForce[1] * s.anchorForce[1])
        : Number.NaN,
      'N',
      0,
      'R_a = −Σ of all other forces on the shoe',
      side,
    ),
  ];
}
