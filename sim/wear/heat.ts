import type { Brake } from '../brake/types.ts';
import { exp } from '../math/exp.ts';
import { GRAVITY, KMH } from '../units/units.ts';

/**
 * The drum as one lump of heat: C dϑ/dt = P − G(v)·(ϑ − ϑ_air), with a cooling G that grows with the
 * vehicle's speed, G = still + perKmh·v (lumped capacity, e.g. F. P. Incropera & D. P. DeWitt,
 * Fundamentals of Heat and Mass Transfer, ch. 5). All friction goes into the drum: linings insulate.
 */

/** Temperature of the air where nobody says another, °C. */
export const AIR = 20;

/** Cooling at a speed (mm/s), N·mm/s/K. */
export function coolingAt(brake: Brake, speed: number): number {
  const { still, perKmh } = brake.drum.cooling;
  return still + (perKmh * speed) / KMH;
}

/**
 * Temperature after a time of even heating. Exact for any length of time, since the equation is
 * linear: ϑ = ϑ_end + (ϑ_0 − ϑ_end)·exp(−t·G/C) with ϑ_end = ϑ_air + P/G.
 *
 * @param power friction, N·mm/s; @param speed mm/s; @param time s
 */
export function warmed(
  brake: Brake,
  temperature: number,
  power: number,
  speed: number,
  time: number,
  air = AIR,
): number {
  const g = coolingAt(brake, speed);
  const c = brake.drum.heatCapacity;
  // Nothing carries heat away: it only gathers.
  if (!(g > 0)) return temperature + (power * time) / c;
  const end = air + power / g;
  return end + (temperature - end) * exp((-time * g) / c);
}

/** Temperature after a time without braking, °C. */
export const cooled = (
  brake: Brake,
  temperature: number,
  speed: number,
  time: number,
  air = AIR,
): number => warmed(brake, temperature, 0, speed, time, air);

/**
 * Energy of one stop in one brake, N·mm: ½·m·v²·share / brakes.
 *
 * @param mass tonne; the vehicle's own when left out
 */
export function stopEnergyOf(brake: Brake, speed: number, mass = brake.vehicle.mass): number {
  const { vehicle } = brake;
  return (0.5 * mass * speed * speed * vehicle.share) / vehicle.brakes;
}

/**
 * Rise of the drum by one stop that is short against its cooling, K: E / C, all of the
 * energy going into the drums (heat balance of a single stop; Limpert, Brake Design and Safety).
 */
export const stopRise = (brake: Brake, speed: number, mass = brake.vehicle.mass): number =>
  stopEnergyOf(brake, speed, mass) / brake.drum.heatCapacity;

/**
 * Drag that one brake holds a vehicle back with on a slope at even speed, N at the tyre: the weight's
 * pull less rolling resistance and air, times the axle's share, over its brakes (plane statics; e.g.
 * any text on vehicle dynamics). Never negative: nothing is driven.
 *
 * @param slope rise over level distance
 */
export function descentForce(
  brake: Brake,
  slope: number,
  speed: number,
  mass = brake.vehicle.mass,
): number {
  const { vehicle } = brake;
  const weight = mass * GRAVITY;
  const c = 1 / Math.sqrt(1 + slope * slope);
  const pull = weight * slope * c - vehicle.rolling * weight * c - vehicle.air * speed * speed;
  return (Math.max(0, pull) * vehicle.share) / vehicle.brakes;
}

/**
 * Temperature at the foot of a descent, °C.
 *
 * @param length mm along the road; @param speed mm/s
 */
export function descended(
  brake: Brake,
  temperature: number,
  hill: { readonly slope: number; readonly length: number; readonly speed: number },
  air = AIR,
  mass = brake.vehicle.mass,
): number {
  const { slope, length, speed } = hill;
  const power = descentForce(brake, slope, speed, mass) * speed;
  return warmed(brake, temperature, power, speed, length / speed, air);
}
