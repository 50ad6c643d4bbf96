import { outlineSums, STEEL } from './outline-sums.ts';
import { pistonOutline, sicklePolygon } from './part-outlines.ts';
import type { Brake, Point } from './types.ts';

/** Bar of a strut, and plate of a parking lever, whose scene tells none, mm (from memory: usual sizes of such parts). */
const USUAL_BAR = { width: 12, thickness: 4, slotWidth: 0, slotLength: 0 };
const USUAL_PLATE = 5;

/**
 * Mass of a piston, tonne: its outline turned about its axis (Guldin: 2π·∫∫ y dA, for the trapezoid under each
 * side (x₂ − x₁)·π/3·(y₁² + y₁y₂ + y₂²)), of steel.
 */
export function pistonMass({ cylinder }: Brake): number {
  const outline = pistonOutline(cylinder.bore);
  const last = outline.at(-1) as Point;
  // Closed along the bottom of the fork and the axis: only the sides off the axis count.
  const around = [[(outline[0] as Point)[0], 0] as const, ...outline, [last[0], 0] as const];
  let volume = 0;
  for (let i = 1; i < around.length; i++) {
    const [x0, y0] = around[i - 1] as Point;
    const [x1, y1] = around[i] as Point;
    volume += ((x1 - x0) * Math.PI * (y0 * y0 + y0 * y1 + y1 * y1)) / 3;
  }
  return STEEL * volume;
}

/** Mass of the strut, tonne: its bar less its slot, of steel; its halves are as heavy as each other. */
export function strutMass({ strutPath, adjuster }: Brake): number {
  const { width, thickness, slotWidth, slotLength } = strutPath?.bar ?? USUAL_BAR;
  return STEEL * thickness * (width * adjuster.lengthAtZero - slotWidth * slotLength);
}

/** The parking lever as a body: mass, tonne; its middle as built, mm; inertia about that, tonne·mm². */
export interface ParkingLeverMass {
  readonly mass: number;
  readonly middle: Point;
  readonly inertia: number;
}

/** Mass and inertia of the parking lever from its outline, the plate that it is cut of and the density of steel. */
export function parkingLeverMass(brake: Brake): ParkingLeverMass {
  const { area, middle, polar } = outlineSums(sicklePolygon(brake));
  const sheet = STEEL * (brake.strutPath?.parkingLever.thickness ?? USUAL_PLATE);
  const [x, y] = middle;
  // Steiner: the polar moment about 0 less area·distance².
  return { mass: sheet * area, middle, inertia: sheet * (polar - area * (x * x + y * y)) };
}
