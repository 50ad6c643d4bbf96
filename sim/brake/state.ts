import type { Brake, Side } from './types.ts';

/** Number of lining elements along an arc. 48 stays within 0.02 % of a fine mesh. */
export const ELEMENTS = 48;

/**
 * What changes and lasts. Pure data, copied by value; the wear step makes a new one.
 */
export interface BrakeState {
  readonly tooth: number;
  /** Depth worn off each lining element, mm; index 0 at the arc's `from` end. */
  readonly wear: Readonly<Record<Side, Float64Array>>;
  /** Present inner radius of the cold drum, mm. */
  readonly drumRadius: number;
  /** °C */
  readonly temperature: number;
  /** mm driven. */
  readonly distance: number;
  readonly applications: number;
  /** How far the cable holds the parking lever off its stop, mm at the hook. */
  readonly leverOffStop: number;
}

/** A freshly built brake: new linings, tooth 0. Drum radius in mm, new when left out. */
export function freshState(brake: Brake, drumRadius = brake.drum.radiusNew): BrakeState {
  return {
    tooth: 0,
    wear: { front: new Float64Array(ELEMENTS), rear: new Float64Array(ELEMENTS) },
    drumRadius,
    temperature: 20,
    distance: 0,
    applications: 0,
    leverOffStop: 0,
  };
}

/** Length of the strut from seat to seat at the present tooth, mm. */
export function strutLength(brake: Brake, tooth: number): number {
  return brake.adjuster.lengthAtZero + (brake.adjuster.growth[tooth] ?? Number.NaN);
}
