import type { Rig } from '../balance/rig.ts';
import { GRAVITY } from '../units/units.ts';
import { slopeTorque } from './parking.ts';

/** What is asked of a parked vehicle: a slope (rise over level distance) or holding force over weight, per cent. */
export interface Asked {
  readonly kind: 'slope' | 'force over weight';
  readonly percent: number;
}

/**
 * Torque a wheel that a rule asks of this vehicle, N·mm. A slope: m·g·sin(atan s)·r / brakes. Force
 * over weight e: the tyres together hold e·m·g, so e·m·g·r / brakes (force balance along the road).
 */
export function ruleTorque(rig: Rig, rule: Asked): number {
  const share = rule.percent / 100;
  if (rule.kind === 'slope') return slopeTorque(rig, share);
  const v = rig.brake.vehicle;
  return (share * v.mass * GRAVITY * v.tyreRadius) / v.brakes;
}
