import { GRAVITY } from '../units/units.ts';
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

/** Grip of a tyre on a dry road, and share of the weight on an axle of such brakes: common practice, assumed. */
const GRIP = 0.8;
const AXLE_LOAD = 0.4;

/** Torque of one brake at which its wheel slides instead of turning, N·mm: grip · load · radius (Coulomb). */
export const slidesAt = (v: Vehicle): number =>
  (GRIP * AXLE_LOAD * v.mass * GRAVITY * v.tyreRadius) / v.brakes;

/**
 * Power that an even level road asks for, N·mm/s: (c·m·g + k·v²)·v, rolling resistance and air (any text on
 * vehicle dynamics). @param speed mm/s
 */
export const roadPower = (v: Vehicle, speed: number): number =>
  (v.rolling * v.mass * GRAVITY + v.air * speed * speed) * speed;

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
