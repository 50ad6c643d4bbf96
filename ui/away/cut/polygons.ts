import { Clipper, EndType, FillRule, JoinType, type PathsD } from 'clipper2-ts';
import type { Point } from '../../../sim/index.ts';
import { flatten } from '../../stage/flatten.ts';
import { apply, type Frame } from '../../stage/geometry.ts';
import type { Path } from '../../stage/path.ts';

/**
 * Areas in the plane as polygons, mm, y up: outer sides counter-clockwise, holes clockwise. Union, difference and
 * offset are the polygon library's; it reckons in whole numbers of 10⁻⁵ mm, so no outcome depends on rounding.
 */
export type Polygon = readonly Point[];
export type Area = readonly Polygon[];

/** Digits after the point that the library keeps, mm. */
const DIGITS = 5;
/** Chords of an arc leave it by no more than this, mm: a tenth of the finest kerf. */
export const CHORD = 0.01;
/** A corner sharper than this many times the offset is cut off square: the saw's crests stay whole. */
const MITRE = 6;

const toLibrary = (area: Area): PathsD => area.map((p) => p.map(([x, y]) => ({ x, y })));
const fromLibrary = (paths: PathsD): Area => paths.map((p) => p.map(({ x, y }): Point => [x, y]));

/** The closed runs of a path as an area; later ones are holes in it. */
export function areaOf(path: Path, chord = CHORD): Area {
  const runs = flatten(path, chord).map(({ points }) => {
    const out: Point[] = [];
    for (let i = 0; i < points.length; i += 2)
      out.push([points[i] as number, points[i + 1] as number]);
    return out;
  });
  return fromLibrary(Clipper.unionD(toLibrary(runs), [], FillRule.EvenOdd, DIGITS));
}

export const union = (...areas: readonly Area[]): Area =>
  fromLibrary(Clipper.unionD(toLibrary(areas.flat()), [], FillRule.NonZero, DIGITS));

export const minus = (from: Area, ...off: readonly Area[]): Area =>
  fromLibrary(
    Clipper.differenceD(toLibrary(from), toLibrary(off.flat()), FillRule.NonZero, DIGITS),
  );

export const common = (a: Area, b: Area): Area =>
  fromLibrary(Clipper.intersectD(toLibrary(a), toLibrary(b), FillRule.NonZero, DIGITS));

/** The area grown by `by` on all sides (negative: shrunk), mm; corners stay sharp, or become round. */
export function offset(area: Area, by: number, corners: 'sharp' | 'round' = 'sharp'): Area {
  if (by === 0) return area;
  const join = corners === 'sharp' ? JoinType.Miter : JoinType.Round;
  return fromLibrary(
    Clipper.inflatePathsD(toLibrary(area), by, join, EndType.Polygon, MITRE, DIGITS, CHORD / 4),
  );
}

/** Twice the area of one run by its sides (Gauss's sum), mm²; negative: clockwise, a hole. */
const turned = (p: Polygon): number =>
  p.reduce((sum, [x, y], i) => {
    const [u, v] = p[(i + 1) % p.length] as Point;
    return sum + x * v - u * y;
  }, 0);

/** The area with its holes filled. */
export const outside = (area: Area): Area => area.filter((p) => turned(p) > 0);

/** mm², holes taken off. */
export const sizeOf = (area: Area): number => Clipper.areaPathsD(toLibrary(area));

export const placed = (area: Area, f: Frame): Area => area.map((p) => p.map((q) => apply(f, q)));

/** The area as it lay before the move. */
export const unplaced = (area: Area, { angle, x, y }: Frame): Area =>
  placed(placed(area, { angle: 0, x: -x, y: -y }), { angle: -angle, x: 0, y: 0 });

export const scaled = (area: Area, by: number): Area =>
  area.map((p) => p.map(([x, y]): Point => [x * by, y * by]));

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

export function boxOf(area: Area): Box {
  const xs = area.flat().map(([x]) => x);
  const ys = area.flat().map(([, y]) => y);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    low: Math.min(...ys),
    high: Math.max(...ys),
  };
}

export const rectangle = ({ left, right, low, high }: Box): Area => [
  [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ],
];
