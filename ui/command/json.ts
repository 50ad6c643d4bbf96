import type { Reading } from '../../sim/index.ts';
import { nameOf } from './print.ts';

/**
 * The shape of --json. Values keep the simulator's digits and carry their unit; the objects of the
 * three commands are listed in help.ts, which `--help` prints.
 */
export interface JsonValue {
  readonly name: string;
  readonly symbol: string;
  /** Null where there is nothing to tell: JSON has no word for it. */
  readonly value: number | null;
  readonly unit: string;
}

export const jsonValue = (r: Reading): JsonValue => ({
  name: nameOf(r),
  symbol: r.symbol,
  value: Number.isFinite(r.value) ? r.value : null,
  unit: r.unit,
});

/** Readings by key. */
export const jsonValues = (list: readonly Reading[]): Record<string, JsonValue> =>
  Object.fromEntries(list.map((r) => [r.key, jsonValue(r)]));

export const asJson = (value: unknown): string => JSON.stringify(value, null, 2);
