import { contours } from 'd3-contour';
import {
  type MapSide,
  type Mark,
  NETS,
  netPlaces,
  sideValues,
  type VaryPoint,
} from '../../../sim/index.ts';
import { varyContours as texts } from '../../../sim/words/en.ts';
import { markWords, ticks, wordOf } from './scale.ts';

/**
 * What a map is made of, free of any painter: lines of one height with their figures, and regions with
 * their names. Lines come from the finest net that is whole (marching squares: d3-contour), and stand
 * only where all four corners of a field are told. A region's edge crosses the sides of fields where the points
 * on them say.
 */

type Place = readonly [x: number, y: number];

export interface Level {
  readonly value: number;
  /** Where the height is at least so much, as rings. */
  readonly fill: readonly (readonly Place[])[];
  readonly lines: readonly (readonly Place[])[];
}

export interface MapRegion {
  readonly text: string;
  /** Forces are told there, though something is out of the way. */
  readonly soft: boolean;
  readonly rings: readonly (readonly Place[])[];
  /** Where its name has most room. */
  readonly at: Place;
}

export interface MapPicture {
  /** Points of the net that it is made of. */
  readonly net: number;
  readonly levels: readonly Level[];
  readonly regions: readonly MapRegion[];
  /** Digits that tell the levels apart. */
  readonly digits: number;
}

/** Lines asked for, about. */
const LINES = 12;
/** Beside a lock a reading grows without bound: above so many times what three of four come to no line is drawn. */
const WILD = 2.5;
/** Where no point lies on a side yet, a region of which nothing is told reaches so far towards the last point that is. */
const REACH = 0.98;
/** What being off the middle of a region costs its name, of a field's room. */
const CENTRED = 0.05;

interface Net {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly points: readonly VaryPoint[];
}

/** The finest net of which every point is there; null: not even the first. */
function wholeNet(all: readonly VaryPoint[], across: MapSide, up: MapSide): Net | null {
  const known = new Map(all.map((p) => [`${p.at[0]} ${p.at[1]}`, p]));
  const [xs, ys] = [sideValues(across), sideValues(up)];
  for (const every of [...NETS].reverse()) {
    const x = netPlaces(xs.length, every).map((i) => xs[i] as number);
    const y = netPlaces(ys.length, every).map((j) => ys[j] as number);
    const points = y.flatMap((b) => x.map((a) => known.get(`${a} ${b}`)));
    if (points.every((p) => p !== undefined)) return { xs: x, ys: y, points };
  }
  return null;
}

/** Points on the sides of fields, in their order from the lower end: by the side's lower end and its way. */
type Sides = ReadonlyMap<string, readonly VaryPoint[]>;

function sidesOf(all: readonly VaryPoint[], { xs, ys }: Net): Sides {
  const out = new Map<string, VaryPoint[]>();
  const [columns, rows] = [new Map(xs.map((x, i) => [x, i])), new Map(ys.map((y, j) => [y, j]))];
  const under = (values: readonly number[], v: number): number =>
    values.findLastIndex((value) => value < v);
  for (const p of all) {
    const [x, y] = p.at as [number, number];
    const [i, j] = [columns.get(x), rows.get(y)];
    if ((i === undefined) === (j === undefined)) continue;
    const key = j !== undefined ? texts.across(under(xs, x), j) : texts.up(i, under(ys, y));
    out.set(key, [...(out.get(key) ?? []), p]);
  }
  const order = (a: VaryPoint, b: VaryPoint): number =>
    (a.at[0] as number) - (b.at[0] as number) || (a.at[1] as number) - (b.at[1] as number);
  for (const points of out.values()) points.sort(order);
  return out;
}

/** Of a place counted in fields its value, by a line between two. */
const along = (values: readonly number[], at: number): number => {
  const i = Math.max(0, Math.min(values.length - 2, Math.floor(at)));
  const low = values[i] as number;
  return low + ((values[i + 1] ?? low) - low) * (at - i);
};

const digitsFor = (step: number): number =>
  Math.max(0, Math.min(6, -Math.floor(Math.log10(step) + 1e-9)));

function levelsOf(told: readonly number[]): readonly number[] {
  const sorted = [...told].sort((a, b) => a - b);
  const [low = 0, most = 0] = [sorted[0], sorted.at(-1)];
  const usual = sorted[Math.floor(0.75 * (sorted.length - 1))] ?? most;
  const high = most > WILD * usual && usual > 0 ? WILD * usual : most;
  return high > low ? ticks(low, high, LINES).filter((v) => v > low && v < high) : [];
}

/** A polynomial through as many points as there are (Lagrange). */
const through = (xs: readonly number[], fs: readonly number[], x: number): number =>
  fs.reduce(
    (sum, f, a) =>
      sum +
      f *
        xs.reduce(
          (product, at, b) => (a === b ? product : (product * (x - at)) / ((xs[a] as number) - at)),
          1,
        ),
    0,
  );

/** Halvings: to a millionth of a field. */
const HALVINGS = 20;

/**
 * Where a height is met between two neighbours of a row, from 0 to 1: by a curve through these two and the
 * next on either side that is told, since beside a lock a straight line between two is far off.
 */
function met(row: (k: number) => number, i: number, value: number, straight: number): number {
  const ks = [i - 1, i, i + 1, i + 2].filter((k) => Number.isFinite(row(k)));
  if (ks.length < 3) return straight;
  const fs = ks.map(row);
  const rises = row(i + 1) > row(i);
  let [low, high] = [0, 1];
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (low + high) / 2;
    if (through(ks, fs, i + middle) < value === rises) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Heights carried on by one point where nothing is told: as that of the greatest neighbour. Only shades go by them. */
function carriedOn(heights: readonly number[], wide: number): number[] {
  return heights.map((h, n) => {
    if (Number.isFinite(h)) return h;
    const i = n % wide;
    const beside = [
      i > 0 ? heights[n - 1] : undefined,
      i + 1 < wide ? heights[n + 1] : undefined,
      heights[n - wide],
      heights[n + wide],
    ].filter((x): x is number => x !== undefined && Number.isFinite(x));
    return beside.length > 0 ? Math.max(...beside) : h;
  });
}

/** A ring in pieces: only where its field is told at all four corners, and not along the map's edge. */
function told(
  ring: readonly Place[],
  wide: number,
  high: number,
  sound: (i: number, j: number) => boolean,
): Place[][] {
  const out: Place[][] = [];
  let now: Place[] = [];
  for (const [k, p] of ring.entries()) {
    const q = ring[k + 1];
    if (!q) break;
    const [i, j] = [Math.floor((p[0] + q[0]) / 2), Math.floor((p[1] + q[1]) / 2)];
    const inside = i >= 0 && j >= 0 && i < wide - 1 && j < high - 1;
    const ok = inside && sound(i, j) && sound(i + 1, j) && sound(i, j + 1) && sound(i + 1, j + 1);
    if (ok) {
      if (now.length === 0) now.push(p);
      now.push(q);
    } else if (now.length > 0) {
      out.push(now);
      now = [];
    }
  }
  if (now.length > 0) out.push(now);
  return out;
}

/** The point of a region that is farthest from all that is not of it, in fields. */
function middle(of: readonly boolean[], wide: number): Place {
  const high = of.length / wide;
  let best: Place = [0, 0];
  let most = Number.NEGATIVE_INFINITY;
  const mine = of.flatMap((is, k): Place[] => (is ? [[k % wide, Math.floor(k / wide)]] : []));
  const mean = (at: 0 | 1): number => mine.reduce((sum, p) => sum + p[at], 0) / mine.length;
  const centre = [mean(0), mean(1)] as const;
  const others = of.flatMap((is, k): Place[] => (is ? [] : [[k % wide, Math.floor(k / wide)]]));
  of.forEach((is, k) => {
    if (!is) return;
    const [i, j] = [k % wide, Math.floor(k / wide)];
    // A name is wider than high: room above and below counts for more.
    const edge = Math.min(i, wide - 1 - i, 2 * j, 2 * (high - 1 - j)) + 1;
    const near = others.reduce(
      (least, [a, b]) => Math.min(least, Math.hypot(a - i, 2 * (b - j))),
      2 * edge,
    );
    // Of places with as much room the one that is most in the middle.
    const score = near - CENTRED * Math.hypot(centre[0] - i, centre[1] - j);
    if (score > most) {
      most = score;
      best = [i, j];
    }
  });
  return best;
}

/** @param k which of the readings of a point */
export function mapPicture(
  all: readonly VaryPoint[],
  across: MapSide,
  up: MapSide,
  k: number,
): MapPicture | null {
  const net = wholeNet(all, across, up);
  if (!net || net.xs.length < 2 || net.ys.length < 2) return null;
  const { xs, ys, points } = net;
  const [wide, high] = [xs.length, ys.length];
  const place = ([x, y]: Place): Place => [along(xs, x), along(ys, y)];
  const shift = (ring: readonly (readonly number[])[]): Place[] =>
    ring.map(([x = 0, y = 0]): Place => [x - 0.5, y - 0.5]);
  const sides = sidesOf(all, net);
  const pointAt = (i: number, j: number): VaryPoint => points[j * wide + i] as VaryPoint;
  /** Where between two ends of a side something ends or begins, from 0 to 1. */
  const crossed = (i: number, j: number, way: 'across' | 'up', is: (p: VaryPoint) => boolean) => {
    const on = sides.get(`${way} ${i} ${j}`);
    if (!on) return null;
    const [from, to] = [pointAt(i, j), way === 'across' ? pointAt(i + 1, j) : pointAt(i, j + 1)];
    const row = [from, ...on, to];
    const n = row.findIndex((p) => is(p) !== is(from));
    if (n < 1) return null;
    const axis = way === 'across' ? 0 : 1;
    const at = (p: VaryPoint | undefined): number => p?.at[axis] as number;
    return ((at(row[n - 1]) + at(row[n])) / 2 - at(from)) / (at(to) - at(from));
  };
  const heights = points.map((p) => p.values[k] as number);
  const heightAt = (i: number, j: number): number =>
    i >= 0 && i < wide ? (heights[j * wide + i] ?? Number.NaN) : Number.NaN;
  const sound = (i: number, j: number): boolean => Number.isFinite(heightAt(i, j));
  /** A corner of a line lies on a side of a field: moved along it to where the height is met. */
  const exact = (value: number) => {
    return ([x, y]: Place): Place => {
      const [i, j] = [Math.floor(x), Math.floor(y)];
      if (y === j && x > i && sound(i, j) && sound(i + 1, j))
        return [i + met((k) => heightAt(k, j), i, value, x - i), y];
      if (x === i && y > j && sound(i, j) && sound(i, j + 1))
        return [x, j + met((k) => heightAt(i, k), j, value, y - j)];
      return [x, y];
    };
  };
  const shaded = carriedOn(heights, wide);
  const values = levelsOf(heights.filter(Number.isFinite));
  const drawn = contours().size([wide, high]);
  const levels = values.map((value): Level => {
    const ringsOf = (of: number[]): Place[][] =>
      drawn
        .contour(of, value)
        .coordinates.flatMap((polygon) => polygon.map((ring) => shift(ring).map(exact(value))));
    const rings = ringsOf(heights);
    return {
      value,
      // Shades go on under the regions' edges, where the field beyond has no height of its own.
      fill: ringsOf(shaded).map((ring) => ring.map(place)),
      lines: rings.flatMap((ring) => told(ring, wide, high, sound)).map((l) => l.map(place)),
    };
  });
  const region = (text: string, soft: boolean, is: (p: VaryPoint) => boolean): MapRegion[] => {
    const of = points.map(is);
    if (!of.includes(true)) return [];
    const { coordinates } = drawn.contour(of.map(Number), 0.5);
    // Corners of its edge lie in the middle of sides: moved to where it crosses them.
    const moved = ([x, y]: Place): Place => {
      const [i, j] = [Math.floor(x), Math.floor(y)];
      const way = y === j && x > i ? 'across' : x === i && y > j ? 'up' : null;
      const out = way === 'across' ? i + 1 >= wide : j + 1 >= high;
      if (!way || out || i < 0 || j < 0) return [x, y];
      const half = soft ? 0.5 : of[j * wide + i] ? REACH : 1 - REACH;
      const at = crossed(i, j, way, is) ?? half;
      return way === 'across' ? [i + at, y] : [x, j + at];
    };
    return [
      {
        text,
        soft,
        rings: coordinates.flatMap((polygon) =>
          polygon.map((ring) => shift(ring).map(moved).map(place)),
        ),
        at: place(middle(of, wide)),
      },
    ];
  };
  const words = [...new Set(points.map(wordOf))].filter((word) => word !== '');
  const step = (values[1] ?? 0) - (values[0] ?? 0);
  return {
    net: points.length,
    levels,
    digits: step > 0 ? digitsFor(step) : 1,
    regions: [
      ...(Object.keys(markWords) as Mark[]).flatMap((mark) =>
        region(markWords[mark], true, (p) => p.marks.includes(mark)),
      ),
      ...words.flatMap((word) => region(word, false, (p) => wordOf(p) === word)),
    ],
  };
}
