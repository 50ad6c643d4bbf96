import type { Brake } from '../brake/types.ts';

/** A hand on the drum's rim. */
export interface RimHand {
  /** Where it holds, from the axis, mm. */
  readonly radius: number;
  /** Turn of the drum at which its spring is slack, rad, counter-clockwise: as far as the hand has gone round. */
  readonly angle: number;
  /** How fast it goes round, rad/s; 0 when left out. */
  readonly speed?: number;
  /** Of its spring along the rim, N/mm, and the most that it pulls, N. */
  readonly rate: number;
  readonly limit: number;
  /**
   * The hand damps the drum as an arm does. Without it a drum that drags sticks and slips on its spring for ever;
   * left out only where a free drum is to swing on it.
   */
  readonly damped: boolean;
}

/**
 * Moment of inertia that turns with the drum, tonne·mm². A wheel on the road carries its share of the vehicle:
 * v = ω·r, so m v²/2 = (m r²/brakes)·ω²/2 a wheel (rolling without slip, any text on dynamics). The mass that the
 * scene names is what its brakes hold.
 */
export function turningMass({ drum, vehicle }: Brake, rolling: boolean): number {
  if (!rolling) return drum.inertia;
  return drum.inertia + (vehicle.mass * vehicle.tyreRadius * vehicle.tyreRadius) / vehicle.brakes;
}

/** What a hub's seals and grease hold against its turning, N·mm: from memory. Full from this speed on, rad/s. */
const BEARING = 200;
const FULL_FROM = 0.02;

/** Torque of the hub's bearing on a drum that is left to itself after a hand, N·mm. */
export const bearingTorque = (speed: number): number =>
  -BEARING * Math.max(-1, Math.min(1, speed / FULL_FROM));

/**
 * Torque of a hand on the rim, N·mm: its spring k along the rim at the radius R, and a critical damper
 * c = 2√(K·I) with K = k R² (one freedom, any text on vibrations), against the drum's motion past the hand; never
 * more than the hand can: T = clamp(K(α − θ) + c(α̇ − ω), ± limit·R). Falls with θ and ω alike.
 */
export function rimTorque(rim: RimHand, angle: number, speed: number, inertia: number): number {
  const { radius, rate, limit } = rim;
  const stiff = rate * radius * radius;
  const damp = rim.damped ? 2 * Math.sqrt(stiff * inertia) : 0;
  const torque = stiff * (rim.angle - angle) + damp * ((rim.speed ?? 0) - speed);
  return Math.max(-limit * radius, Math.min(limit * radius, torque));
}
