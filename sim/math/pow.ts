import { exp, LN2 } from './exp.ts';

const ROOT_HALF = Math.sqrt(0.5);

/**
 * Natural logarithm that gives the same bits in every JavaScript engine (see trig.ts for why). The argument
 * is brought to [√½, √2] by powers of two, which is exact, and 2·artanh((m − 1)/(m + 1)) is summed there
 * (Abramowitz & Stegun 4.1.27; next term below 1e-18). Error below 4e-16·(1 + |ln x|).
 *
 * @param x more than 0
 */
export function ln(x: number): number {
  let m = x;
  let twos = 0;
  for (; m > 2 * ROOT_HALF; twos++) m /= 2;
  for (; m < ROOT_HALF; twos--) m *= 2;
  const s = (m - 1) / (m + 1);
  const t = s * s;
  let sum = 0;
  for (let k = 21; k >= 1; k -= 2) sum = 1 / k + t * sum;
  return twos * LN2 + 2 * s * sum;
}

/** x to the power of y, x more than 0; exactly 1 for y = 0. */
export const pow = (x: number, y: number): number => exp(y * ln(x));
