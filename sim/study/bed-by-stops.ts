import type { Duty } from '../brake/duty.ts';
import type { Brake } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { AIR, cooled, descentForce, stopEnergyOf } from '../wear/heat.ts';

/** Bedding in by stops: how warm they make a drum, and how far of the brake's duty they are worth. */

/** Slow-downs, each from a speed to a lower one, and what lies between. */
export interface SlowDowns {
  /** mm/s */
  readonly from: number;
  readonly to: number;
  /** Driven between two of them, s, and how fast, mm/s. */
  readonly between: number;
  readonly at: number;
}

/**
 * Energy of a slow-down in one brake, N·mm: what the vehicle has at the first speed less what it keeps,
 * ½·m·(v₁² − v₂²)·share / brakes.
 */
export const slowDownEnergy = (brake: Brake, { from, to }: SlowDowns): number =>
  stopEnergyOf(brake, from) - stopEnergyOf(brake, to);

/** °C of the drum before and after each of so many slow-downs, the first from a cold one. */
export function slowDownsWarm(
  brake: Brake,
  how: SlowDowns,
  count: number,
): { readonly before: number; readonly after: number }[] {
  const rise = slowDownEnergy(brake, how) / brake.drum.heatCapacity;
  const out: { before: number; after: number }[] = [];
  let now = AIR;
  for (let n = 0; n < count; n++) {
    if (n > 0) now = cooled(brake, now, how.at, how.between);
    out.push({ before: now, after: now + rise });
    now += rise;
  }
  return out;
}

/** What a duty puts into one brake on a kilometre, N·mm: its stops and its descents. */
export function dutyEnergy(brake: Brake, duty: Duty = brake.duties[0]): number {
  const mass = duty.mass ?? brake.vehicle.mass;
  const stops = duty.stops.reduce(
    (sum, s) => sum + s.perKm * stopEnergyOf(brake, s.speed, mass),
    0,
  );
  return duty.descents.reduce(
    (sum, d) => sum + d.perKm * d.length * descentForce(brake, d.slope, d.speed, mass),
    stops,
  );
}

/**
 * Distance of the duty that so many slow-downs are worth, km: linings wear by the work that rubs them away
 * (Archard: worn volume ∝ load × way, which is friction work over the friction coefficient), so the same
 * energy beds them as far.
 */
export const worthKm = (brake: Brake, how: SlowDowns, count: number): number =>
  (count * slowDownEnergy(brake, how)) / dutyEnergy(brake);

/** The same the other way round: slow-downs for a distance, mm. */
export const slowDownsFor = (brake: Brake, how: SlowDowns, distance: number): number =>
  ((distance / KM) * dutyEnergy(brake)) / slowDownEnergy(brake, how);
