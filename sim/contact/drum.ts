/** Where the drum stands: centre, inner radius, and an oval part: r = radius + oval·cos 2(angle − phase). */
export interface DrumNow {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly oval: number;
  /** cos and sin of twice the phase. */
  readonly ovalCos: number;
  readonly ovalSin: number;
}

export const roundDrum = (radius: number): DrumNow => ({
  x: 0,
  y: 0,
  radius,
  oval: 0,
  ovalCos: 1,
  ovalSin: 0,
});

/**
 * A drum out of round, turned by an angle: its bore off centre by e, and oval by ±o (the slope of the
 * oval, at most 2·o/r of a few thousandths, is left out of the normal's direction).
 */
export function runningDrum(radius: number, e: number, o: number, c: number, s: number): DrumNow {
  return { x: e * c, y: e * s, radius, oval: o, ovalCos: c * c - s * s, ovalSin: 2 * s * c };
}

/**
 * Inner radius of the drum towards a point of its bore, mm.
 *
 * @param nx, ny direction of the point from the drum's centre
 */
export function radiusTowards(drum: DrumNow, nx: number, ny: number): number {
  if (drum.oval === 0) return drum.radius;
  const { radius, oval, ovalCos, ovalSin } = drum;
  return radius + oval * ((nx * nx - ny * ny) * ovalCos + 2 * nx * ny * ovalSin);
}
