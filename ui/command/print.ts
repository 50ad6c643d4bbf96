import type { Reading, Side } from '../../sim/index.ts';
import { number } from '../format.ts';

/** Takes a text to be told, without the end of its line. */
export type Say = (text: string) => void;

export const nameOf = (r: Reading): string => (r.side ? `${r.name}, ${r.side}` : r.name);

/** Said in place of forces. */
export const locks = (side: Side): string =>
  `The ${side} shoe locks by itself: no force can be told.`;

/** Readings as lines: name, value and unit in columns. */
export function lines(list: readonly Reading[]): string {
  const names = list.map(nameOf);
  const values = list.map((r) => number(r.value, r.digits));
  const wide = Math.max(...names.map((n) => n.length));
  const deep = Math.max(...values.map((v) => v.length));
  return list
    .map((r, i) =>
      `${(names[i] as string).padEnd(wide)}  ${(values[i] as string).padStart(deep)} ${r.unit}`.trimEnd(),
    )
    .join('\n');
}
