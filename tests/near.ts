import { expect } from 'vitest';

export interface Tolerance {
  /** Of the expected value. */
  readonly rel?: number;
  /** In the value's own unit. */
  readonly abs?: number;
}

/**
 * The one tolerance helper. Passes when |actual − expected| is within abs + rel·|expected|; says the
 * residual when it is not. With RESIDUALS=1 every true residual is printed.
 */
export function near(actual: number, expected: number, tolerance: Tolerance, label = ''): void {
  const most = (tolerance.abs ?? 0) + (tolerance.rel ?? 0) * Math.abs(expected);
  const off = Math.abs(actual - expected);
  const text = `${label ? `${label}: ` : ''}${actual} against ${expected}, off by ${off.toExponential(2)}, allowed ${most.toExponential(2)}`;
  if (process.env['RESIDUALS']) console.log(text);
  expect(off <= most, text).toBe(true);
}
