import { ln } from './pow.ts';

/** Chance that can be repeated: numbers from a seed, the same in every engine. */

/**
 * Numbers between 0 and 1, ends left out, alike likely, from a seed: a 32-bit counter mixed twice by products
 * and shifts (splitmix32; G. L. Steele, D. Lea & C. H. Flood, Fast Splittable Pseudorandom Number Generators,
 * 2014, its 32-bit variant from memory).
 */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    z ^= z >>> 15;
    return ((z >>> 0) + 0.5) / 4294967296;
  };
}

const ratio = (x: number, top: readonly number[], bottom: readonly number[]): number => {
  const at = (of: readonly number[]): number => of.reduceRight((sum, c) => sum * x + c, 0);
  return at(top) / at(bottom);
};

/**
 * Quantile of the normal distribution, mean 0 and deviation 1: rational approximations in three ranges, relative
 * error below 1.15e-9 (P. J. Acklam, An algorithm for computing the inverse normal cumulative distribution
 * function, 2003; coefficients from memory, held against tables by a test).
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1))
    return p === 0 ? Number.NEGATIVE_INFINITY : p === 1 ? Number.POSITIVE_INFINITY : Number.NaN;
  if (p < LOW) return tail(Math.sqrt(-2 * ln(p)));
  if (p > 1 - LOW) return -tail(Math.sqrt(-2 * ln(1 - p)));
  const q = p - 0.5;
  return q * ratio(q * q, MIDDLE_TOP, MIDDLE_BOTTOM);
}

const LOW = 0.02425;
const tail = (q: number): number => ratio(q, TAIL_TOP, TAIL_BOTTOM);

// By rising power.
const MIDDLE_TOP = [
  2.506628277459239, -30.66479806614716, 138.357751867269, -275.9285104469687, 220.9460984245205,
  -39.69683028665376,
];
const MIDDLE_BOTTOM = [
  1, -13.28068155288572, 66.80131188771972, -155.6989798598866, 161.5858368580409,
  -54.47609879822406,
];
const TAIL_TOP = [
  2.938163982698783, 4.374664141464968, -2.549732539343734, -2.400758277161838, -0.3223964580411365,
  -0.007784894002430293,
];
const TAIL_BOTTOM = [
  1, 3.754408661907416, 2.445134137142996, 0.3224671290700398, 0.007784695709041462,
];
