import { type Brake, type Instant, type Role, roleOf, type Side } from '../../../sim/index.ts';
import type { Token } from '../../theme.ts';
import { rimRadius } from '../parts/drum.ts';

/** Everything about the rubbing face is drawn from here outward, at the angle where it happens. */
export const bandRadius = (brake: Brake): number => rimRadius(brake) + 2.6;

export const SIDES: readonly Side[] = ['front', 'rear'];

/** Leading is solid, trailing is open or dashed; colours belong to the role, not to the side. */
export interface RoleLook {
  /** None on a drum that stands: it drags neither shoe. */
  readonly role?: Role;
  readonly colour: Token;
  readonly fill: Token;
  readonly solid: boolean;
}
const LEADING: RoleLook = { role: 'leading', colour: 'lead', fill: 'leadFill', solid: true };
const TRAILING: RoleLook = { role: 'trailing', colour: 'trail', fill: 'trailFill', solid: false };

const STANDING: RoleLook = { colour: 'ink', fill: 'table', solid: true };

export function lookOf(side: Side, instant: Instant): RoleLook {
  if (instant.turning === 0) return STANDING;
  return roleOf(side, instant.turning) === 'leading' ? LEADING : TRAILING;
}

/** Value at an angle of a quantity known at the middle of each element; straight on between and past the ends. */
export function along(values: Float64Array, angles: Float64Array, angle: number): number {
  const n = values.length;
  const step = ((angles[n - 1] as number) - (angles[0] as number)) / (n - 1);
  const at = (angle - (angles[0] as number)) / step;
  const i = Math.max(0, Math.min(n - 2, Math.floor(at)));
  const low = values[i] as number;
  return low + ((values[i + 1] as number) - low) * (at - i);
}
