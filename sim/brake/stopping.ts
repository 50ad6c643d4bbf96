import type { Vehicle } from './types.ts';

/**
 * A vehicle that is stopped by its brakes. Only this axle's brakes are known. The vehicle's share of
 * the braking is theirs, and the other axle is taken to do the rest in proportion. Rolling resistance
 * and air are left out: they are small beside a stop, and help it.
 *
 * Newton's second law at the tyres: m·a·share = n·T/r, n brakes of this axle each with the torque T on
 * wheels of the rolling radius r (plane dynamics of braking; R. Limpert, Brake Design and Safety, ch. 7,
 * from memory).
 */

/** Torque of each brake at which the vehicle slows so, N·mm. @param deceleration mm/s²; @param mass tonne */
export const torqueFor = (v: Vehicle, deceleration: number, mass = v.mass): number =>
  (mass * deceleration * v.share * v.tyreRadius) / v.brakes;

/** Braking of this axle at the road, N. @param torque of each brake, N·mm */
export const axleForce = (v: Vehicle, torque: number): number => (v.brakes * torque) / v.tyreRadius;

/** How the vehicle slows under that torque of each brake, mm/s². */
export const decelerationBy = (v: Vehicle, torque: number, mass = v.mass): number =>
  axleForce(v, torque) / (mass * v.share);

/**
 * Speed that stands for a whole stop: the mean over its way. v = v_0·√(1 − x/d) at an even deceleration,
 * and ∫√(1 − x/d) dx/d = 2/3.
 */
export const meanSpeed = (speed: number): number => (2 / 3) * speed;

/** Distance from a speed to a stand at an even deceleration, mm: v²/2a (kinematics). */
export const stoppingDistance = (speed: number, deceleration: number): number =>
  (speed * speed) / (2 * deceleration);
