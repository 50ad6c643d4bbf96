import type { Reading, ReadingKey } from '../../readings/reading.ts';
import { figuresFor, type Term, worth } from './term.ts';

/** Whose law a formula is; `sim/workshop/working-text.ts` says it in words, with the source. */
export type Law =
  | 'definition'
  | 'given'
  | 'geometry'
  | 'statics'
  | 'moments'
  | 'coulomb'
  | 'winkler'
  | 'hooke'
  | 'pascal'
  | 'lever'
  | 'booster'
  | 'stack'
  | 'ratchet'
  | 'kinematics'
  | 'newton'
  | 'energy'
  | 'heat'
  | 'flash'
  | 'power'
  | 'slope'
  | 'cable'
  | 'search'
  | 'turn'
  | 'settles';

/** How a reading came about: what the page shows, with its numbers put in. */
export interface Working {
  readonly key: ReadingKey;
  readonly symbol: string;
  readonly formula: Term;
  readonly value: number;
  readonly unit: string;
  /** Digits after the point, as the reading is told. */
  readonly digits: number;
  /** Figures that each number is put in with, so that they give the result again. */
  readonly figures: number;
  readonly law: Law;
}

/** A formula and whose law it is. */
export type Derived = readonly [formula: Term, law: Law];

/** A formula with whose law it is. */
export const derived = (formula: Term, law: Law): Derived => [formula, law];

/** Workings of one list of readings; what a reading has no formula for by itself must not be left out. */
export type Derivations = Readonly<Partial<Record<ReadingKey, Derived>>>;

/** The working of a reading; null where there is nothing to read. */
export function working(r: Reading, [formula, law]: Derived): Working | null {
  if (!Number.isFinite(r.value)) return null;
  return {
    key: r.key,
    symbol: r.symbol,
    formula,
    value: worth(formula),
    unit: r.unit,
    digits: r.digits,
    figures: figuresFor(formula, r.value, r.digits),
    law,
  };
}

/** Workings of a list, by key. @throws Error for a reading that no formula is told of */
export function workingsOf(
  list: readonly Reading[],
  by: Derivations,
): ReadonlyMap<ReadingKey, Working> {
  const out = new Map<ReadingKey, Working>();
  for (const r of list) {
    const derived = by[r.key];
    if (!derived) throw new Error(`No working of "${r.key}"`);
    const made = working(r, derived);
    if (made) out.set(r.key, made);
  }
  return out;
}
