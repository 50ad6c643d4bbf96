import direct from 'ml-direct';
import { type Base, type Free, type Miss, missOf, Vary, type Wish } from '../sim/index.ts';

/**
 * Looks for sizes that give what is wished: an even net first, then by dividing rectangles (D. R. Jones,
 * C. D. Perttunen & B. E. Stuckman, J. Optimization Theory and Applications 79, 1993; from memory) over all
 * of it and around the net's best places, so that a thin region is found too, then along each size from
 * what was found to where it ends. What comes of it is a region: points that do and do not, and how far
 * each size reaches among those that do.
 */

export interface DesignAsk {
  readonly base: Base;
  readonly free: readonly Free[];
  readonly wishes: readonly Wish[];
}

export interface DesignPoint {
  readonly at: readonly number[];
  readonly miss: Miss;
}

export interface DesignFound {
  readonly points: readonly DesignPoint[];
  /** How far each size reaches among brakes that do; none do: null. */
  readonly reach: readonly (readonly [number, number])[] | null;
  /** The brake that misses least. */
  readonly best: DesignPoint;
  readonly done: boolean;
}

/** Places of a net along each size, by how many are free. */
const NET: Readonly<Record<number, number>> = { 1: 49, 2: 15, 3: 7 };
/** Places around which rectangles are divided, and how often; over all of it more often. */
const PLACES = 6;
const ROUNDS = 9;
const OVER_ALL = 18;
/** Brakes asked for by one division at most: where many are alike good it would divide all of them. */
const MOST = 60;
/** Halvings to the end of a region along a size; where others are looked for anew at each, fewer. */
const HALVINGS = { alone: 12, among: 8 };
/** A miss as small as that is none, in shares. */
const MET = 1e-9;

export const isMet = (p: DesignPoint): boolean => p.miss.all <= MET;

/** All places of an even net between the bounds. */
function netOf(free: readonly Free[]): readonly (readonly number[])[] {
  const count = NET[free.length] ?? 7;
  return free.reduce<readonly (readonly number[])[]>(
    (all, { from, to, whole }) => {
      const even = Array.from({ length: count }, (_, k) => from + ((to - from) * k) / (count - 1));
      const values = whole ? [...new Set(even.map(Math.round))] : even;
      return all.flatMap((at) => values.map((x) => [...at, x]));
    },
    [[]],
  );
}

/** What has been found so far, again and again; the last is done. */
export function* searchDesign({ base, free, wishes }: DesignAsk): Generator<DesignFound, void> {
  const vary = new Vary(base);
  const points: DesignPoint[] = [];
  const held = (x: number, k: number): number => {
    const { from, to, whole } = free[k] as Free;
    const inside = Math.max(from, Math.min(to, x));
    return whole ? Math.round(inside) : inside;
  };
  const ask = (at: readonly number[]): DesignPoint => {
    const inside = at.map(held);
    const point = { at: inside, miss: missOf(vary, free, wishes, inside) };
    points.push(point);
    return point;
  };
  const found = (done: boolean): DesignFound => {
    const met = points.filter(isMet);
    const best = points.reduce((a, b) => (b.miss.all < a.miss.all ? b : a));
    const reach = free.map((_, k): readonly [number, number] => {
      const all = met.map((p) => p.at[k] as number);
      return [Math.min(...all), Math.max(...all)];
    });
    return { points: [...points], reach: met.length > 0 ? reach : null, best, done };
  };
  for (const at of netOf(free)) {
    ask(at);
    if (points.length % 5 === 0) yield found(false);
  }
  const near = points
    .filter((p) => !isMet(p))
    .sort((a, b) => a.miss.all - b.miss.all)
    .slice(0, PLACES);
  /** Stops at the first that does, where one is looked for. @param whole puts the sizes that stay to those that are divided */
  const divide = (
    low: number[],
    high: number[],
    iterations: number,
    whole?: (at: readonly number[]) => number[],
  ): DesignPoint | null => {
    const enough = new Error('enough');
    let asked = 0;
    let met: DesignPoint | null = null;
    try {
      direct(
        (at) => {
          if (asked++ >= MOST || met) throw enough;
          const point = ask(whole ? whole([...at]) : [...at]);
          if (whole && isMet(point)) met = point;
          return point.miss.all;
        },
        low,
        high,
        { iterations },
      );
    } catch (error) {
      if (error !== enough) throw error;
    }
    return met;
  };
  divide(
    free.map((f) => f.from),
    free.map((f) => f.to),
    OVER_ALL,
  );
  yield found(false);
  const fields = (NET[free.length] ?? 7) - 1;
  for (const { at } of near) {
    const around = (side: -1 | 1): number[] =>
      free.map(({ from, to }, k) => held((at[k] as number) + (side * (to - from)) / fields, k));
    const [low, high] = [around(-1), around(1)];
    if (low.every((x, k) => x < (high[k] as number))) divide(low, high, ROUNDS);
    yield found(false);
  }
  /** A brake that does, with one size at a value; the others as they were, or looked for anew. */
  const withSize = (k: number, x: number, like: DesignPoint): DesignPoint | null => {
    const plain = ask(like.at.map((v, i) => (i === k ? x : v)));
    if (isMet(plain) || free.length === 1) return isMet(plain) ? plain : null;
    const others = free.filter((_, i) => i !== k);
    const whole = (rest: readonly number[]): number[] => [...rest.slice(0, k), x, ...rest.slice(k)];
    return divide(
      others.map((f) => f.from),
      others.map((f) => f.to),
      OVER_ALL,
      whole,
    );
  };
  for (const [k, { from, to, whole }] of free.entries()) {
    for (const end of [from, to]) {
      const side = end === from ? -1 : 1;
      const met = points.filter(isMet);
      if (met.length === 0) break;
      let good = met.reduce((a, b) =>
        side * ((b.at[k] as number) - (a.at[k] as number)) > 0 ? b : a,
      );
      if (good.at[k] === end || withSize(k, end, good)) continue;
      let bad = end;
      const most = free.length === 1 ? HALVINGS.alone : HALVINGS.among;
      for (let n = 0; n < most; n++) {
        const middle = ((good.at[k] as number) + bad) / 2;
        if (whole && Math.abs(bad - (good.at[k] as number)) <= 1) break;
        const next = withSize(k, middle, good);
        if (next) good = next;
        else bad = middle;
      }
      yield found(false);
    }
  }
  yield found(true);
}

export interface Leaning {
  readonly id: string;
  readonly end: 'least' | 'most';
  readonly value: number;
}

/** Sizes whose bound the brake that misses least leans on: within a hundredth of their room. */
export function leansOn(free: readonly Free[], { at }: DesignPoint): readonly Leaning[] {
  return free.flatMap(({ id, from, to }, k): Leaning[] => {
    const near = 0.01 * (to - from);
    const x = at[k] as number;
    if (x - from <= near) return [{ id, end: 'least', value: from }];
    return to - x <= near ? [{ id, end: 'most', value: to }] : [];
  });
}

/** A net over the first two sizes, or over the only one. */
export interface Slice {
  /** What the third size is on it; null: there is none. */
  readonly third: number | null;
  readonly xs: readonly number[];
  /** One place where only one size is free. */
  readonly ys: readonly number[];
  /** Row by row: room to the wishes (`roomOf`); NaN where nothing is told. */
  readonly rooms: readonly number[];
  /** Row by row the values, by the order of the wishes. */
  readonly values: readonly (readonly number[])[];
}

export interface SeekFound {
  /** Brakes worked out by now. */
  readonly brakes: number;
  readonly stage: 'looking' | 'drawing' | 'done';
  /** How far each size reaches among brakes that do; none do: null. */
  readonly reach: readonly (readonly [number, number])[] | null;
  /** The brake with the most room among those that do; without one the brake that misses least. */
  readonly best: DesignPoint;
  /** Bounds that the brake leans on, where none does. */
  readonly leaning: readonly Leaning[];
  readonly slices: readonly Slice[];
}
