import type { Answer, Mark, VaryPoint } from '../../../sim/index.ts';
import { varyScale as texts } from '../../../sim/words/en.ts';

/** What a picture of curves is made of, free of any painter. */

/** One line of a picture: a reading of one curve. */
export interface Line {
  readonly key: string;
  readonly name: string;
  /** Number of its curve. */
  readonly curve: number;
  readonly role: 'lead' | 'trail' | 'plain';
  /** Pieces without a gap. */
  readonly pieces: readonly (readonly (readonly [x: number, y: number])[])[];
}

/** Readings of one unit share a panel and its scale. */
export interface Panel {
  readonly unit: string;
  readonly title: string;
  readonly lines: readonly Line[];
  readonly low: number;
  readonly high: number;
  readonly digits: number;
}

/** Where no force is told along a curve, and what it is called. */
export interface Region {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly curve: number;
  /** Forces are told there, though something is out of the way. */
  readonly soft: boolean;
}

/**
 * Lines of words one below the other, as near as they can be to where each would stand: `least` apart, none below
 * `lowest`. Where there is no room for all the first ones go up, out at the top.
 *
 * @param wanted baselines, from top to bottom, px
 */
export function apartDown(
  wanted: readonly number[],
  least: number,
  lowest = Number.POSITIVE_INFINITY,
): number[] {
  const down: number[] = [];
  for (const y of wanted) down.push(Math.max(y, (down.at(-1) ?? Number.NEGATIVE_INFINITY) + least));
  let under = lowest + least;
  return down
    .reverse()
    .map((y) => {
      under = Math.min(y, under - least);
      return under;
    })
    .reverse();
}

/** Round steps of an axis within its ends: 1, 2 or 5 times a power of ten, about so many. */
export function ticks(low: number, high: number, about: number): number[] {
  const span = high - low;
  if (!(span > 0)) return [low];
  const rough = span / about;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((m) => m * power >= rough * 0.999) ?? 10);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, k) => (first + k) * step);
}

/** Digits after the point that tell the steps of an axis apart. */
export function digitsOf(steps: readonly number[]): number {
  const [a, b] = steps;
  const step = a !== undefined && b !== undefined ? Math.abs(b - a) : Math.abs(a ?? 1) || 1;
  return Math.max(0, Math.min(6, -Math.floor(Math.log10(step) + 1e-9)));
}

/** Neighbours between which a curve is not drawn: a tooth was taken, or nothing is told. */
const broken = (a: VaryPoint, b: VaryPoint): boolean => a.clicked !== b.clicked;

function piecesOf(points: readonly VaryPoint[], k: number): (readonly [number, number])[][] {
  const out: (readonly [number, number])[][] = [];
  let now: (readonly [number, number])[] = [];
  points.forEach((p, i) => {
    const y = p.values[k] as number;
    const before = points[i - 1];
    const ends = !Number.isFinite(y) || (before !== undefined && broken(before, p));
    if (ends && now.length > 0) {
      out.push(now);
      now = [];
    }
    if (Number.isFinite(y)) now.push([p.at[0] as number, y]);
  });
  if (now.length > 0) out.push(now);
  return out;
}

/**
 * Of what grows without bound beside a lock only the foot is shown: so many times what the curve comes
 * to over this share of its way.
 */
const MOST_OF = 0.7;
const OVER = 1.6;
const WILD = 2.5;

/** The greatest value over the first share of a line's way, or the last where it falls. */
function usualTop(line: Line): number {
  const all = line.pieces.flat();
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last) return 0;
  const wide = last[0] - first[0];
  const near = all.filter(([x]) => x <= first[0] + MOST_OF * wide);
  const far = all.filter(([x]) => x >= last[0] - MOST_OF * wide);
  const top = (some: typeof all): number => Math.max(...some.map(([, y]) => y));
  return Math.min(top(near), top(far));
}

function spanOf(lines: readonly Line[]): readonly [number, number] {
  const all = lines.flatMap((l) => l.pieces.flat().map(([, y]) => y));
  if (all.length === 0) return [0, 1];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const most = Math.max(...lines.map(usualTop));
  const top = most > 0 && high > WILD * most ? OVER * most : high;
  const foot = low >= 0 && low < 0.6 * top ? 0 : low;
  if (top - foot < 1e-9 * Math.max(1, Math.abs(top))) {
    const half = Math.max(Math.abs(top) * 0.1, 0.5);
    return [foot - half, top + half];
  }
  const room = 0.06 * (top - foot);
  return [foot === 0 ? 0 : foot - room, top + room];
}

const roleOf = (key: string): Line['role'] =>
  /Leading|leading/.test(key) ? 'lead' : /Trailing|trailing/.test(key) ? 'trail' : 'plain';

/**
 * Panels by unit, in the order that is read.
 *
 * @param curves points of each curve, sorted
 */
export function panelsOf(
  curves: readonly (readonly VaryPoint[])[],
  read: readonly Answer[],
): readonly Panel[] {
  const units = [...new Set(read.map((a) => a.unit))];
  return units.map((unit) => {
    const mine = read.filter((a) => a.unit === unit);
    const lines = curves.flatMap((points, curve) =>
      mine.map(
        (a): Line => ({
          key: a.key,
          name: a.name,
          curve,
          role: roleOf(a.key),
          pieces: piecesOf(points, read.indexOf(a)),
        }),
      ),
    );
    const [low, high] = spanOf(lines);
    // Several lines carry their own names.
    const title = mine.length === 1 ? (mine[0]?.name ?? '') : '';
    return { unit, title, lines, low, high, digits: Math.max(...mine.map((a) => a.digits)) };
  });
}

/** What is out of the way, as it is called in a picture. */
export const markWords: Readonly<Record<Mark, string>> = texts.markWords;

/** Why nothing is told there; empty where it is. */
export const wordOf = (p: VaryPoint): string =>
  p.why === 'locks'
    ? texts.shoeLocks(p.locked)
    : p.why === 'cannot be'
      ? texts.noSuchBrake
      : p.why === 'yields'
        ? texts.aPartGivesWay
        : p.why === 'lost'
          ? 'no balance'
          : '';

/** Under this share of the way a region beside another is a step between the two. */
const SLIVER = 0.01;

/** Stretches of a curve in which something is so, from edge to edge. */
function stretches(
  points: readonly VaryPoint[],
  textOf: (p: VaryPoint) => string,
): { from: number; to: number; text: string }[] {
  const out: { from: number; to: number; text: string }[] = [];
  points.forEach((p, i) => {
    const text = textOf(p);
    if (text === '') return;
    const x = p.at[0] as number;
    const last = out.at(-1);
    if (last && last.text === text && last.to === points[i - 1]?.at[0]) last.to = x;
    else out.push({ from: x, to: x, text });
  });
  return out;
}

/** Where nothing is told, and where something is out of the way, from edge to edge. */
export function regionsOf(curves: readonly (readonly VaryPoint[])[]): readonly Region[] {
  return curves.flatMap((points, curve) => {
    const out = stretches(points, wordOf).map((r): Region => ({ ...r, curve, soft: false }));
    const wide = ((points.at(-1)?.at[0] ?? 0) - (points[0]?.at[0] ?? 0)) * SLIVER;
    const sliver = (r: Region): boolean =>
      r.to - r.from < wide && out.some((o) => o !== r && Math.abs(o.from - r.to) < wide);
    // Of a family the first curve tells: more words would lie on each other.
    const marks = curve > 0 ? [] : (Object.keys(markWords) as Mark[]);
    const soft = marks.flatMap((mark) =>
      stretches(points, (p) => (p.marks.includes(mark) ? markWords[mark] : ''))
        .filter((r) => r.to - r.from >= wide)
        .map((r): Region => ({ ...r, curve, soft: true })),
    );
    return [...out.filter((r) => !sliver(r)), ...soft];
  });
}

/** Values of a curve at a place: of the worked-out point that is nearest to it. */
export function nearestPoint(points: readonly VaryPoint[], x: number): VaryPoint | null {
  return points.reduce<VaryPoint | null>((best, p) => {
    const far = (q: VaryPoint): number => Math.abs((q.at[0] as number) - x);
    return best === null || far(p) < far(best) ? p : best;
  }, null);
}
