import { contours } from 'd3-contour';
import { roomOf, type Wish } from '../../../sim/index.ts';
import type { Slice } from '../../vary-seek.ts';

/**
 * Where brakes do what is wished, free of any painter. The edge of the region is the line on which the room to the
 * wishes is nought (`roomOf`), drawn on the net that was worked out (marching squares: d3-contour); what no force is
 * told for is a region of its own.
 */

type Place = readonly [x: number, y: number];
type Rings = readonly (readonly Place[])[];

export interface RegionPicture {
  /** Where the wishes are kept, in the sizes' own units. */
  readonly does: Rings;
  /** Where nothing is told: it locks, gives way, or no such brake can be. */
  readonly untold: Rings;
}

/** Beside what is told an untold place counts as that far outside. */
const OUTSIDE = -1;

const along = (values: readonly number[], at: number): number => {
  const i = Math.max(0, Math.min(values.length - 2, Math.floor(at)));
  const low = values[i] as number;
  return low + ((values[i + 1] ?? low) - low) * (at - i);
};

/** Places along a side of the finer net, about. */
const FINE = 200;

/** A net of numbers, row by row. */
interface Net {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly heights: readonly number[];
}

/**
 * The room on a finer net. Each reading goes between two of its places by a line, and the room follows from that: a
 * band thinner than a field is then whole, since what bends there is the room and not the reading.
 */
function finer({ xs, ys, values }: Slice, wishes: readonly Wish[]): Net {
  const [wide, high] = [xs.length, ys.length];
  const parts = (count: number): number => Math.max(1, Math.round(FINE / Math.max(1, count - 1)));
  const [px, py] = [parts(wide), parts(high)];
  const places = (count: number, by: number): readonly number[] =>
    Array.from({ length: (count - 1) * by + 1 }, (_, k) => k / by);
  const [us, vs] = [places(wide, px), places(high, py)];
  const heights = vs.flatMap((v) =>
    us.map((u) => {
      const [i, j] = [Math.min(wide - 2, Math.floor(u)), Math.min(high - 2, Math.floor(v))];
      const [s, t] = [u - i, v - j];
      const told = wishes.map((_, k) => {
        const of = (di: number, dj: number): number =>
          values[(j + dj) * wide + i + di]?.[k] ?? Number.NaN;
        const low = s === 0 ? of(0, 0) : of(0, 0) * (1 - s) + of(1, 0) * s;
        if (t === 0) return low;
        const up = s === 0 ? of(0, 1) : of(0, 1) * (1 - s) + of(1, 1) * s;
        return low * (1 - t) + up * t;
      });
      return told.every(Number.isFinite) ? roomOf(wishes, told) : Number.NaN;
    }),
  );
  return { xs: us.map((u) => along(xs, u)), ys: vs.map((v) => along(ys, v)), heights };
}

/** Rings of what is at least nought; beyond the net's rim it goes on as at the rim. */
function ringsOf({ xs, ys, heights }: Net): Rings {
  const { coordinates } = contours()
    .size([xs.length, ys.length])
    .contour([...heights], 0);
  const held = (at: number, count: number): number => Math.max(0, Math.min(count - 1, at - 0.5));
  return coordinates.flatMap((polygon) =>
    polygon.map((ring) =>
      ring.map(
        ([x = 0, y = 0]): Place => [along(xs, held(x, xs.length)), along(ys, held(y, ys.length))],
      ),
    ),
  );
}

/** Room that counts as none, so that its edge lies just outside of what is kept: whole teeth have no more. */
const KEPT = 1e-9;

/** @param wishes those that the slice has values of */
export function regionPicture(slice: Slice, wishes: readonly Wish[]): RegionPicture {
  if (slice.xs.length < 2 || slice.ys.length < 2) return { does: [], untold: [] };
  const net = finer(slice, wishes);
  const told = slice.rooms.map((room) => Number.isFinite(room));
  return {
    does: ringsOf({
      ...net,
      heights: net.heights.map((room) => (Number.isFinite(room) ? room + KEPT : OUTSIDE)),
    }),
    untold: told.includes(false)
      ? ringsOf({ xs: slice.xs, ys: slice.ys, heights: told.map((is) => (is ? -0.5 : 0.5)) })
      : [],
  };
}

/** A stretch of a line. */
export interface Band {
  readonly from: number;
  readonly to: number;
}

/** Of one size: stretches on which the wishes are kept; their ends by a line between two neighbours. */
export function bandsOf({ xs, rooms }: Slice): readonly Band[] {
  const out: { from: number; to: number }[] = [];
  const met = (k: number): boolean => (rooms[k] as number) >= 0;
  const edge = (inside: number, outside: number): number => {
    const [a, b] = [rooms[inside] as number, rooms[outside] ?? Number.NaN];
    const [x, y] = [xs[inside] as number, xs[outside] ?? (xs[inside] as number)];
    // Where nothing is told beside it, or a reading jumps, its end is the last that does.
    return Number.isFinite(b) && a > 0 && a - b > 0 ? x + ((y - x) * a) / (a - b) : x;
  };
  xs.forEach((_, k) => {
    if (!met(k)) return;
    const last = out.at(-1);
    if (k > 0 && met(k - 1) && last) last.to = edge(k, k + 1);
    else out.push({ from: edge(k, k - 1), to: edge(k, k + 1) });
  });
  return out;
}
