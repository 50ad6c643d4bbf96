import type { Side } from '../brake/types.ts';

/** What a gauge would show: read from an instant, never fed back. */
export interface Reading {
  readonly key: string;
  readonly name: string;
  readonly symbol: string;
  /** NaN when there is nothing to read (no touch, locked). */
  readonly value: number;
  readonly unit: string;
  /** Digits after the point. */
  readonly digits: number;
  /** What it means, one plain sentence. */
  readonly means: string;
  /** The formula it comes from, in symbols. */
  readonly formula: string;
  readonly side?: Side;
}

/** One row of a list of readings. */
export const row = (
  key: string,
  name: string,
  symbol: string,
  value: number,
  unit: string,
  digits: number,
  means: string,
  formula: string,
  side?: Side,
): Reading => ({
  key,
  name,
  symbol,
  value,
  unit,
  digits,
  means,
  formula,
  ...(side ? { side } : {}),
});
