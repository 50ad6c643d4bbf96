import type { Rig } from '../balance/rig.ts';
import { type Parked, slopeHeld } from './parking.ts';
import { type Asked, ruleTorque } from './parking-rules.ts';

/** Does the vehicle stand? One way round on the hill. */
export interface OnHill {
  readonly holds: boolean;
  /** Torque a wheel that its brakes can hold, mean of the axle, N·mm; Infinity when one locks. */
  readonly can: number;
  /** Torque a wheel that is asked for, N·mm. */
  readonly need: number;
  /** can − need, N·mm a wheel; negative: so much short. */
  readonly margin: number;
  /** Steepest slope held, rise over level distance. */
  readonly slope: number;
}

/**
 * The wheels of an axle stand on one vehicle: it rolls when the torques of all of them together are
 * too small, so the mean counts. Tyres are taken to grip.
 *
 * @param wheels one for each brake of the vehicle, or a single one for all alike
 */
export function onHill(
  rig: Rig,
  wheels: readonly Pick<Parked, 'forward' | 'backward' | 'locked'>[],
  rule: Asked,
  nose: 'down' | 'up',
): OnHill {
  const way = nose === 'down' ? 'forward' : 'backward';
  const can = wheels.some((w) => w.locked)
    ? Number.POSITIVE_INFINITY
    : wheels.reduce((sum, w) => sum + w[way], 0) / wheels.length;
  const need = ruleTorque(rig, rule);
  return { holds: can >= need, can, need, margin: can - need, slope: slopeHeld(rig, can) };
}
