import type { Point } from './types.ts';

/** Steel, tonne/mm³ (common practice). */
export const STEEL = 7.85e-9;

/** Area of a closed outline, mm², its middle, mm, and its polar moment about 0, mm⁴. */
export interface OutlineSums {
  readonly area: number;
  readonly middle: Point;
  readonly polar: number;
}

/** Gauss's sums over the sides of a closed outline, whichever way round it is told. */
export function outlineSums(points: readonly Point[]): OutlineSums {
  let [area, mx, my, moment] = [0, 0, 0, 0];
  points.forEach(([x, y], i) => {
    const [p, q] = points[(i + 1) % points.length] as Point;
    const cross = x * q - p * y;
    area += cross / 2;
    mx += (cross * (x + p)) / 6;
    my += (cross * (y + q)) / 6;
    moment += (cross * (x * x + x * p + p * p + y * y + y * q + q * q)) / 12;
  });
  return { area: Math.abs(area), middle: [mx / area, my / area], polar: Math.abs(moment) };
}
