import { diffusivity, effusivity } from '../brake/heat-of.ts';
import type { Brake, Shoe } from '../brake/types.ts';
import { PI } from '../units/units.ts';
import { stopEnergyOf } from './heat.ts';

/**
 * Where lining and drum rub, the drum is hotter than its mean: the heat of a stop needs longer to go
 * through the rim than the stop takes.
 */

/**
 * Share of the heat that goes into the drum. Two thick bodies in touch share it as their effusivities; the
 * lining covers only a part of the circle, so a spot of the drum meets it for that part of a turn:
 * γ = e_d / (e_d + e_l·arc/2π) (R. Limpert, Brake Design and Safety, from memory; Carslaw & Jaeger ch. 2
 * for two half-spaces in touch).
 *
 * @param arc of all linings together, rad
 */
export function drumShare({ heat }: Brake, arc: number): number {
  const drum = effusivity(heat.drum);
  return drum / (drum + (effusivity(heat.lining) * arc) / (2 * PI));
}

const arcOf = ({ lining }: Shoe): number => lining.to - lining.from;

/** Share of the heat that goes into the drum, both linings on it. */
export const drumShareOf = (brake: Brake): number =>
  drumShare(brake, arcOf(brake.shoes.front) + arcOf(brake.shoes.rear));

/** Greatest rise of the face, over γ·q0·√t_s/e: (4/3)/√(2π) = 0.532. */
const FLASH = 4 / 3 / Math.sqrt(2 * PI);

/** One stop of an even deceleration, as one brake feels it. */
export interface Stopped {
  /** N·mm */
  readonly energy: number;
  /** s */
  readonly time: number;
}

/**
 * A stop from a speed with a deceleration: its energy in one brake, and its time v/a.
 *
 * @param speed mm/s; @param deceleration mm/s²; @param mass tonne
 */
export const stopped = (
  brake: Brake,
  speed: number,
  deceleration: number,
  mass = brake.vehicle.mass,
): Stopped => ({ energy: stopEnergyOf(brake, speed, mass), time: speed / deceleration });

/**
 * Greatest rise of the drum's face over the drum before a stop, K; it is reached in the middle of the stop's
 * time. Speed falls evenly, so the heat's flux does: q = q0·(1 − t/t_s) with q0 = 2E/(t_s·2πRb), all round
 * the bore. On a half-space whose face takes γ·q it makes (Carslaw & Jaeger, Conduction of Heat in Solids,
 * ch. 2: ∫ q(τ)/(e·√(π(t − τ))) dτ)
 *   θ(t) = 2γ·q0·√t/(√π·e)·(1 − 2t/(3t_s)),
 * which is greatest at t_s/2: θ = (4/3)/√(2π)·γ·q0·√t_s/e = 0.532·… . (Limpert, Brake Design and Safety,
 * from memory, has √(5/18) = 0.527: the same within 1 %.) The drum's mean rise is in it, not beside it.
 *
 * @param share of the heat that the drum takes
 * @returns NaN where the heat goes through the rim meanwhile, √(a·t_s) ≥ rim: it is no half-space then
 */
export function flashRise(
  brake: Brake,
  { energy, time }: Stopped,
  share = drumShareOf(brake),
  radius = brake.drum.radiusNew,
): number {
  const { drum, heat, shoes } = brake;
  if (!(Math.sqrt(diffusivity(heat.drum) * time) < drum.rim)) return Number.NaN;
  const width = Math.max(shoes.front.lining.width, shoes.rear.lining.width);
  const flux = (2 * energy) / (time * 2 * PI * radius * width);
  return (FLASH * share * flux * Math.sqrt(time)) / effusivity(heat.drum);
}
