/**
 * Exponential that gives the same bits in every JavaScript engine (see trig.ts for why). The argument
 * is brought to [-ln2/2, ln2/2] by a two-part ln 2 (Cody & Waite 1980), a Taylor polynomial is summed
 * there (next term below 1e-17), and the power of two is multiplied on, which is exact.
 */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
/** Natural logarithm of 2. */
export const LN2 = LN2_HIGH + LN2_LOW;
const ONE_OVER_LN2 = 1 / LN2;

/** e to the power of x; 0 below -700, Infinity above 700. Relative error below 1e-15. */
export function exp(x: number): number {
  if (x < -700) return 0;
  if (x > 700) return Number.POSITIVE_INFINITY;
  const n = Math.round(x * ONE_OVER_LN2);
  const r = x - n * LN2_HIGH - n * LN2_LOW;
  let sum = 1;
  for (let k = 14; k >= 1; k--) sum = 1 + (r / k) * sum;
  let power = 1;
  let base = n < 0 ? 0.5 : 2;
  for (let m = Math.abs(n); m > 0; m = Math.floor(m / 2)) {
    if (m % 2 === 1) power *= base;
    base *= base;
  }
  return sum * power;
}
