import { setterOf } from './quantities.ts';
import type { Vary, VaryPoint } from './vary.ts';

/**
 * A map of two quantities: a coarse net of points first, then nets twice as fine, each point worked out.
 * So a first picture comes soon and gets finer; every net is whole before the next begins. At last the sides of
 * fields of the finest net that an edge of a region crosses are halved where it does.
 */

/** One side of a map. */
export interface MapSide {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly whole: boolean;
}

/** What is asked of a map: two quantities over their ranges, and what is read. */
export interface MapAsk {
  readonly across: MapSide;
  readonly up: MapSide;
  readonly keys: readonly string[];
}

/** Steps of a side in the finest net, and of how many of them each net goes. */
const FINEST = 48;
export const NETS = [4, 2, 1] as const;

/** So often is a side of a field halved where a region's edge crosses it: to an eighth of it. */
const HALVINGS = 3;

/** What a point is of, as a region is told: two neighbours that differ have an edge between them. */
const kindOf = ({ why, locked, marks }: VaryPoint): string => [why, locked, ...marks].join(' ');

/** Points on the way from one point of the net to the next, where an edge crosses it. */
function* crossing(
  vary: Vary,
  [across, up, keys]: readonly [string, string, readonly string[]],
  from: VaryPoint,
  to: VaryPoint,
): Generator<VaryPoint, void> {
  let [a, b] = [from, to];
  for (let n = 0; n < HALVINGS; n++) {
    const [x, y] = [0, 1].map((i) => ((a.at[i] as number) + (b.at[i] as number)) / 2);
    const between = vary.point(
      [
        [across, x as number],
        [up, y as number],
      ],
      keys,
    );
    yield between;
    if (kindOf(between) === kindOf(a)) a = between;
    else b = between;
  }
}

/** Values of a side in the finest net: whole ones where it takes no others, at most as many. */
export function sideValues({ from, to, whole }: MapSide): readonly number[] {
  const even = Array.from({ length: FINEST + 1 }, (_, i) => from + ((to - from) * i) / FINEST);
  return whole ? [...new Set(even.map(Math.round))].filter((x) => x >= from && x <= to) : even;
}

/** Places of a net along a side: every so many, and the last. */
export function netPlaces(count: number, every: number): readonly number[] {
  const out = Array.from({ length: Math.ceil(count / every) }, (_, k) => k * every);
  if (out.at(-1) !== count - 1) out.push(count - 1);
  return out;
}

/** Points of a map, each as it is worked out; `at` is across, up. */
export function* mapping(vary: Vary, { across, up, keys }: MapAsk): Generator<VaryPoint, void> {
  const [xs, ys] = [sideValues(across), sideValues(up)];
  const seen = new Map<number, VaryPoint>();
  // A brake is built anew for each size: what is a press or a state goes over it in one go.
  const turned = setterOf(up.id) !== undefined && setterOf(across.id) === undefined;
  for (const every of NETS) {
    const [is, js] = [netPlaces(xs.length, every), netPlaces(ys.length, every)];
    for (const outer of turned ? is : js) {
      for (const inner of turned ? js : is) {
        const [i, j] = turned ? [outer, inner] : [inner, outer];
        const place = j * xs.length + i;
        if (seen.has(place)) continue;
        const [x, y] = [xs[i] as number, ys[j] as number];
        const point = vary.point(
          [
            [across.id, x],
            [up.id, y],
          ],
          keys,
        );
        seen.set(place, point);
        yield point;
      }
    }
  }
  const asked = [across.id, up.id, keys] as const;
  for (const [place, point] of seen) {
    const i = place % xs.length;
    const right = across.whole || i + 1 === xs.length ? undefined : seen.get(place + 1);
    const above = up.whole ? undefined : seen.get(place + xs.length);
    for (const next of [right, above])
      if (next && kindOf(next) !== kindOf(point)) yield* crossing(vary, asked, point, next);
  }
}
