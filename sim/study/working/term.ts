import type { ReadingKey } from '../../readings/reading.ts';

/**
 * A formula as a tree: what the page writes as a formula, puts numbers into and copies, is one and the same
 * thing, and it can be worked out.
 */

/** Where a number of a formula comes from. */
export type From =
  /** A size of the brake, in its scene. */
  | 'scene'
  /** The brake as it stands: worn, set, warm. */
  | 'state'
  /** How it is pressed, or what was asked. */
  | 'asked'
  /** Found by the balance of both shoes: every force and every moment. */
  | 'balance'
  /** Another reading. */
  | 'reading'
  /** Worked out on the way, by a formula that its name says. */
  | 'worked'
  /** A constant of nature or of arithmetic. */
  | 'constant';

/** A number that is put in. */
export interface Given {
  readonly is: 'given';
  readonly symbol: string;
  readonly name: string;
  readonly value: number;
  /** In which `value` is; empty for a pure number. */
  readonly unit: string;
  readonly from: From;
  /** The reading that it is, which has a working of its own. */
  readonly key?: ReadingKey;
}

export type Term =
  | Given
  | { readonly is: 'number'; readonly value: number }
  | { readonly is: 'sum' | 'product' | 'greatest' | 'least'; readonly of: readonly Term[] }
  | { readonly is: 'less' | 'over'; readonly of: readonly [Term, Term] }
  | { readonly is: 'square' | 'root'; readonly of: readonly [Term] };

export const given = (
  symbol: string,
  value: number,
  unit: string,
  name: string,
  from: From,
  key?: ReadingKey,
): Given => ({ is: 'given', symbol, value, unit, name, from, ...(key ? { key } : {}) });

type In = Term | number;
const term = (t: In): Term => (typeof t === 'number' ? { is: 'number', value: t } : t);

export const sum = (...of: In[]): Term => ({ is: 'sum', of: of.map(term) });
export const product = (...of: In[]): Term => ({ is: 'product', of: of.map(term) });
export const greatest = (...of: In[]): Term => ({ is: 'greatest', of: of.map(term) });
export const least = (...of: In[]): Term => ({ is: 'least', of: of.map(term) });
export const less = (a: In, b: In): Term => ({ is: 'less', of: [term(a), term(b)] });
export const over = (a: In, b: In): Term => ({ is: 'over', of: [term(a), term(b)] });
export const square = (a: In): Term => ({ is: 'square', of: [term(a)] });
export const root = (a: In): Term => ({ is: 'root', of: [term(a)] });

/** What a formula comes to. @param as how its numbers are put in; as they are when left out */
export function worth(t: Term, as: (value: number) => number = (value) => value): number {
  if (t.is === 'given') return as(t.value);
  if (t.is === 'number') return t.value;
  const of = t.of.map((part) => worth(part, as));
  const [a = Number.NaN, b = Number.NaN] = of;
  switch (t.is) {
    case 'sum':
      return of.reduce((all, x) => all + x, 0);
    case 'product':
      return of.reduce((all, x) => all * x, 1);
    case 'greatest':
      return Math.max(...of);
    case 'least':
      return Math.min(...of);
    case 'less':
      return a - b;
    case 'over':
      return a / b;
    case 'square':
      return a * a;
    case 'root':
      return Math.sqrt(a);
  }
}

/** The numbers that are put in, each once, as they come. */
export function givens(t: Term): readonly Given[] {
  if (t.is === 'given') return [t];
  if (t.is === 'number') return [];
  const all = t.of.flatMap(givens);
  return all.filter((g, i) => all.findIndex((h) => h.symbol === g.symbol) === i);
}

/** Fewest figures that a number is told with, and most that tell a double apart. */
const FEWEST = 4;
const MOST = 17;

/**
 * So many figures of every number put in that the formula gives its result again to the digits shown: a
 * reader who works it out by the figures on the page comes to the same.
 *
 * @param digits of the result, after the point
 */
export function figuresFor(t: Term, result: number, digits: number): number {
  for (let figures = FEWEST; figures < MOST; figures++) {
    const came = worth(t, (value) => rounded(value, figures));
    if (same(came, result, digits)) return figures;
  }
  return MOST;
}

const same = (a: number, b: number, digits: number): boolean =>
  (a + 0).toFixed(digits) === (b + 0).toFixed(digits);

/** A number with so many figures that count. */
export const rounded = (value: number, figures: number): number =>
  Number(value.toPrecision(figures));
