import type { Point, Side } from '../../sim/index.ts';
import { flatten, SAGITTA_MM } from './flatten.ts';
import { apply, IDENTITY } from './geometry.ts';
import type { PartId } from './part-names.ts';
import { type Drawing, type Shape, type Style, strokePx } from './shapes.ts';
import type { View } from './view.ts';

/** A part as pointed at; `side` where the brake has one on each shoe. */
export interface Pointed {
  readonly part: PartId;
  readonly side?: Side;
}

/** How near to a thin line counts as on it, px. */
const NEAR = 4;

/** Which shoe a shape belongs to, from its key ("shoe front web 0"). */
function sideOf({ key }: Shape): Side | undefined {
  const words = key.split(' ');
  if (words.includes('front')) return 'front';
  return words.includes('rear') ? 'rear' : undefined;
}

const solid = ({ fill, hatch }: Style): boolean => fill !== undefined || hatch !== undefined;

/** Squared distance of a point from the segment a–b. */
function offSegment(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const [dx, dy] = [bx - ax, by - ay];
  const long = dx * dx + dy * dy;
  const share = long > 0 ? Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / long)) : 0;
  return (ax + share * dx - x) ** 2 + (ay + share * dy - y) ** 2;
}

/**
 * Does a shape cover a point? A filled one does where a ray from the point crosses its outline an odd
 * number of times, so that holes are free; a bare line where the point is within its width or NEAR.
 */
function covers(shape: Shape, [px, py]: Point, view: View): boolean {
  const filled = solid(shape.style);
  const reach = Math.max(NEAR, strokePx(shape.style.width, view) / 2) / view.scale;
  let inside = false;
  for (const { points, closed } of flatten(shape.path, SAGITTA_MM)) {
    const n = points.length / 2;
    const at = (i: number): Point =>
      apply(shape.place ?? IDENTITY, [points[2 * i] as number, points[2 * i + 1] as number]);
    const last = filled || closed ? n : n - 1;
    let a = at(0);
    for (let i = 0; i < last; i++) {
      const b = at((i + 1) % n);
      if (filled) {
        if (a[1] > py !== b[1] > py && px < a[0] + ((b[0] - a[0]) * (py - a[1])) / (b[1] - a[1])) {
          inside = !inside;
        }
      } else if (offSegment(px, py, a[0], a[1], b[0], b[1]) <= reach * reach) return true;
      a = b;
    }
  }
  return inside;
}

/** The topmost part at a point in mm; null beside the brake. */
export function partAt(drawing: Drawing, at: Point): Pointed | null {
  for (let i = drawing.shapes.length - 1; i >= 0; i--) {
    const shape = drawing.shapes[i] as Shape;
    if (shape.part && covers(shape, at, drawing.view)) return pointed(shape, shape.part);
  }
  return null;
}

function pointed(shape: Shape, part: PartId): Pointed {
  const side = sideOf(shape);
  return side ? { part, side } : { part };
}

const same = (a: Pointed, b: Pointed): boolean => a.part === b.part && a.side === b.side;

/** Every part of a drawing once, in painting order: what the keys step through. */
export function partsOf(drawing: Drawing): Pointed[] {
  const all: Pointed[] = [];
  for (const shape of drawing.shapes) {
    if (!shape.part) continue;
    const here = pointed(shape, shape.part);
    if (!all.some((p) => same(p, here))) all.push(here);
  }
  return all;
}

/** Outline over a part: each of its shapes once more, as a broad line with a light one in it. */
export function outlineOf(drawing: Drawing, of: Pointed): Shape[] {
  const own = drawing.shapes.filter((s) => s.part && same(pointed(s, s.part), of));
  const faces = own.filter((s) => solid(s.style));
  return (faces.length > 0 ? faces : own).map((s, i) => ({
    key: `pointed ${i}`,
    path: s.path,
    ...(s.place ? { place: s.place } : {}),
    style: { stroke: 'ink', width: 4, round: true },
    group: 'pointed',
  }));
}
