import type { Reading } from '../../sim/index.ts';
import { number } from '../format.ts';

/** One value with its unit, as --json gives it. A value that cannot be told is null. */
export interface JsonValue {
  readonly name: string;
  readonly symbol: string;
  readonly value: number | null;
  readonly unit: string;
}

export const jsonValue = (r: Reading): JsonValue => ({
  name: r.side ? `${r.name}, ${r.side}` : r.name,
  symbol: r.symbol,
  value: Number.isFinite(r.value) ? r.value : null,
  unit: r.unit,
});

/** Readings by key. */
export const jsonValues = (list: readonly Reading[]): Record<string, JsonValue> =>
  Object.fromEntries(list.map((r) => [r.key, jsonValue(r)]));

/** Readings as lines: name, value and unit in columns. */
export function lines(list: readonly Reading[]): string {
  const names = list.map((r) => (r.side ? `${r.name}, ${r.side}` : r.name));
  const values = list.map((r) => number(r.value, r.digits));
  const wide = Math.max(...names.map((n) => n.length));
  const deep = Math.max(...values.map((v) => v.length));
  return list
    .map((r, i) =>
      `${(names[i] as string).padEnd(wide)}  ${(values[i] as string).padStart(deep)} ${r.unit}`.trimEnd(),
    )
    .join('\n');
}
