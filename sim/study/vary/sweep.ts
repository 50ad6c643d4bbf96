import type { Vary, VaryPoint } from './vary.ts';

/**
 * A curve of one quantity: evenly spaced points first, then more where it bends and at the edges of
 * where it can be told, each of them worked out. So a first picture comes soon and gets finer.
 */

/** What is asked of a curve: a quantity by its id, its range in its own unit, and the keys of what is read. */
export interface SweepAsk {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  /** Takes whole numbers only. */
  readonly whole: boolean;
  readonly keys: readonly string[];
  /** Set besides, such as the second quantity of a family of curves. */
  readonly also?: readonly (readonly [id: string, value: number])[];
  /** Evenly spaced points, and most in all. */
  readonly first?: number;
  readonly most?: number;
}

/** A point that its neighbours' line misses by less than this share of itself is no bend. */
const STRAIGHT = 0.002;
/** Edges are found to this share of the range. */
const EDGE = 1e-4;

const told = (p: VaryPoint): boolean => p.why === 'sound';

/** Height of each key's curve over the told points. */
function heights(points: readonly VaryPoint[]): number[] {
  const keys = points[0]?.values.length ?? 0;
  return Array.from({ length: keys }, (_, k) => {
    const all = points.map((p) => p.values[k] as number).filter(Number.isFinite);
    return all.length > 0 ? Math.max(...all) - Math.min(...all) : 0;
  });
}

/** Near nought a share says nothing: there a value counts as so much of the curve's height. */
const LEAST = 0.02;

/** How far a line between its neighbours misses a point, as a share of it; the greatest of all keys. */
function bend(points: readonly VaryPoint[], i: number, high: readonly number[]): number {
  const miss = (a: VaryPoint | undefined, b: VaryPoint | undefined, c: VaryPoint | undefined) => {
    if (!a || !b || !c) return 0;
    const [xa, xb, xc] = [a, b, c].map((p) => p.at[0] as number) as [number, number, number];
    return high.reduce((worst, h, k) => {
      const [ya, yb, yc] = [a, b, c].map((p) => p.values[k] as number) as [number, number, number];
      const straight = ya + ((yc - ya) * (xb - xa)) / (xc - xa);
      const size = Math.max(Math.abs(yb), LEAST * h);
      return size > 0 ? Math.max(worst, Math.abs(yb - straight) / size) : worst;
    }, 0);
  };
  const around = [points[i - 1], points[i], points[i + 1], points[i + 2]];
  return Math.max(miss(around[0], around[1], around[2]), miss(around[1], around[2], around[3]));
}

const sameSort = (a: VaryPoint, b: VaryPoint): boolean =>
  a.why === b.why &&
  a.locked === b.locked &&
  a.finding?.path === b.finding?.path &&
  a.marks.join() === b.marks.join();

/** Where the next points go: between unlike neighbours, and where the curve bends. */
function wanted(points: readonly VaryPoint[], ask: SweepAsk): number[] {
  const high = heights(points);
  const fine = EDGE * Math.abs(ask.to - ask.from);
  const middles: number[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [VaryPoint, VaryPoint];
    const [x, y] = [a.at[0], b.at[0]] as [number, number];
    if (y - x <= (ask.whole ? 1 : fine)) continue;
    const edge = !sameSort(a, b) || a.clicked !== b.clicked;
    if (edge || (told(a) && told(b) && bend(points, i, high) > STRAIGHT)) {
      const middle = (x + y) / 2;
      middles.push(ask.whole ? Math.floor(middle) : middle);
    }
  }
  return middles;
}

/**
 * Points of a curve, each as it is worked out; what has come so far, sorted by the first of `at`, is a
 * curve at any time.
 */
export function* sweep(vary: Vary, ask: SweepAsk): Generator<VaryPoint, void> {
  const [low, high] = ask.from <= ask.to ? [ask.from, ask.to] : [ask.to, ask.from];
  const { first = 25, most = 240 } = ask;
  const points: VaryPoint[] = [];
  const at = (x: number): VaryPoint => vary.point([[ask.id, x], ...(ask.also ?? [])], ask.keys);
  const add = (p: VaryPoint): void => {
    const i = points.findIndex((q) => (q.at[0] as number) > (p.at[0] as number));
    points.splice(i < 0 ? points.length : i, 0, p);
  };
  const steps = ask.whole ? Math.min(first - 1, Math.floor(high) - Math.ceil(low)) : first - 1;
  const seen = new Set<number>();
  for (let i = 0; i <= steps; i++) {
    const even = steps > 0 ? low + ((high - low) * i) / steps : low;
    const x = ask.whole ? Math.round(even) : even;
    if (seen.has(x)) continue;
    seen.add(x);
    const p = at(x);
    add(p);
    yield p;
  }
  while (points.length < most) {
    const next = wanted(points, { ...ask, from: low, to: high }).filter((x) => !seen.has(x));
    if (next.length === 0) return;
    for (const x of next.slice(0, most - points.length)) {
      seen.add(x);
      const p = at(x);
      add(p);
      yield p;
    }
  }
}

/** All points of a curve, sorted. */
export const curveOf = (vary: Vary, ask: SweepAsk): readonly VaryPoint[] =>
  [...sweep(vary, ask)].sort((a, b) => (a.at[0] as number) - (b.at[0] as number));
