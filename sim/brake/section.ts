import type { ShoeSteel } from './types.ts';

/**
 * Cross section of a curved shoe, by the theory of strongly curved bars (Winkler 1858, Bach; e.g.
 * Timoshenko, Strength of Materials II, "Curved bars").
 *
 * Plane sections stay plane. Let a section at radius r stretch by a + b·(r − r_n) for a unit of angle:
 * a is the stretch of the fibre at r_n, b the turn of the section. That fibre is r long, so its strain is
 * (a + b(r − r_n))/r. With w(r) the width of the steel and
 *   A = ∫ w dr,  J0 = ∫ w/r dr,  r_n = A/J0,  J2 = ∫ w (r − r_n)²/r dr
 * the forces are N = ∫ E·strain·w dr = E·J0·a and, about r_n, M = E·J2·b: stretching and bending do
 * not mix there. Work stored in a unit of angle: N²/(2 E J0) + M²/(2 E J2) + V² r_n/(2 G A_s), the
 * last from the shear V that the web carries.
 *
 * Left out: the curling of a wide table's edges and holes in the web.
 */
export interface Section {
  /** mm */
  readonly neutral: number;
  /** Turn for a unit moment, stretch for a unit pull, slip for a unit shear, each for a unit of angle. */
  readonly bending: number;
  readonly stretching: number;
  readonly shearing: number;
}

/** Gauss-Legendre, five points on [-1, 1] (Abramowitz & Stegun, table 25.4). */
const GAUSS = [
  [0, 0.5688888888888889],
  [-0.5384693101056831, 0.4786286704993665],
  [0.5384693101056831, 0.4786286704993665],
  [-0.906179845938664, 0.2369268850561891],
  [0.906179845938664, 0.2369268850561891],
] as const;
/** Each part is cut into so many slices: 1e-11 of J0 for a web as deep as half its radius. */
const SLICES = 4;

/** Sum of width·f(r) over the parts. By quadrature: a logarithm would differ between engines. */
function over(parts: readonly (readonly number[])[], f: (r: number) => number): number {
  let sum = 0;
  for (const [from = 0, to = 0, width = 0] of parts) {
    const half = (to - from) / (2 * SLICES);
    for (let i = 0; i < SLICES; i++) {
      const middle = from + (2 * i + 1) * half;
      for (const [x, weight] of GAUSS) sum += width * half * weight * f(middle + half * x);
    }
  }
  return sum;
}

/**
 * @param outer radius of the table's outside (the back of the lining), mm
 * @param width of the table, mm; 0 where the web goes on without it
 */
export function sectionOf(steel: ShoeSteel, outer: number, width: number): Section {
  const under = outer - steel.tableThickness;
  const web = steel.webCount * steel.webThickness;
  const parts = [
    [under - steel.webDepth, under, web],
    [under, outer, width],
  ];
  const area = over(parts, () => 1);
  const j0 = over(parts, (r) => 1 / r);
  const neutral = area / j0;
  const j2 = over(parts, (r) => ((r - neutral) * (r - neutral)) / r);
  const shearArea = web * (steel.webDepth + (width > 0 ? steel.tableThickness : 0));
  const shearModulus = steel.modulus / (2 * (1 + steel.poisson));
  return {
    neutral,
    bending: 1 / (steel.modulus * j2),
    stretching: 1 / (steel.modulus * j0),
    shearing: neutral / (shearModulus * shearArea),
  };
}
