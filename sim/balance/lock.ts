import type { BrakeState } from '../brake/state.ts';
import type { Side, Turning } from '../brake/types.ts';
import { rub } from '../contact/rub.ts';
import { cos, sin } from '../math/trig.ts';
import { dress } from './dress.ts';
import type { Rig, ShoeRig } from './rig.ts';

/**
 * Does a shoe lock by itself? The toe is moved outward past the touch and the push it then needs is
 * asked for: none or a pull means that friction alone holds the drum (the practical limit of
 * friction in design texts: drag moment exceeds the moment of the radial thrust). For a shoe on a
 * pin this is the sign of mu·M_F − M_N (references: locks at mu = X/Y).
 */
function pinLocks(shoe: ShoeRig, rig: Rig, state: BrakeState, turning: Turning): boolean {
  const d = dress(rig, state);
  const worn = shoe.side === 'front' ? d.front : d.rear;
  const mu = shoe.side === 'front' ? d.friction.front : d.friction.rear;
  const q = new Float64Array(1);
  const force = new Float64Array(1);
  const tangent = new Float64Array(1);
  const law = { kind: 'slide', mu, sense: turning } as const;
  // Outward in small turns until the lining bears, then 0.02 mm more at the drum radius.
  const step = (0.005 / d.drum.radius) * shoe.opening;
  let touched = 0;
  for (let i = 0; i < 4000 && touched < 4; i++) {
    q[0] = (q[0] as number) + step;
    force[0] = 0;
    tangent[0] = 0;
    rub(
      worn,
      1,
      q,
      0,
      cos(q[0] as number),
      sin(q[0] as number),
      d.drum,
      law,
      force,
      tangent,
      shoe.rub,
    );
    if (shoe.rub.normal.some((v) => v > 0)) touched++;
  }
  return (force[0] as number) * shoe.opening >= 0;
}

/** The shoe that would lock at this turning, or null. */
export function lockedShoe(rig: Rig, state: BrakeState, turning: Turning): Side | null {
  if (turning === 0) return null;
  for (const shoe of [rig.front, rig.rear]) {
    if (shoe.freedoms === 1 && pinLocks(shoe, rig, state, turning)) return shoe.side;
  }
  return null;
}
