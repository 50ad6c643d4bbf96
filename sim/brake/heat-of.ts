/** What heat meets in a brake: the stuffs of drum and linings, and shoes that warm. */

/** A stuff that heat goes through, in inside units. */
export interface Stuff {
  /** N/(s·K), the same number as W/(m·K). */
  readonly conductivity: number;
  /** tonne/mm³ */
  readonly density: number;
  /** mm²/(s²·K), which is N·mm/(tonne·K). */
  readonly specificHeat: number;
}

/** Shoes that take heat through their linings and give it to the air. */
export interface WarmShoes {
  /** Of both shoes, N·mm/K. */
  readonly capacity: number;
  /** Given to the air by both shoes, N·mm/s/K. */
  readonly loss: number;
  /** Of the shoes' steel and of the linings' stuff, 1/K. */
  readonly expansion: number;
  readonly liningExpansion: number;
}

export interface HeatOf {
  readonly drum: Stuff;
  readonly lining: Stuff;
  /** Where the numbers come from: said wherever they are used. */
  readonly source: string;
  /** Null: the shoes stay cold. */
  readonly shoes: WarmShoes | null;
}

/**
 * Effusivity √(k·ρ·c), N/(mm·K·√s): how much heat a thick body takes for each kelvin of its face (e.g.
 * H. S. Carslaw & J. C. Jaeger, Conduction of Heat in Solids, ch. 2).
 */
export const effusivity = ({ conductivity, density, specificHeat }: Stuff): number =>
  Math.sqrt(conductivity * density * specificHeat);

/** Diffusivity k/(ρ·c), mm²/s. */
export const diffusivity = ({ conductivity, density, specificHeat }: Stuff): number =>
  conductivity / (density * specificHeat);
