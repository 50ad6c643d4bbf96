import type { Point } from '../../sim/index.ts';

/** Plane geometry of the drawing: millimetres, y up, angles in radians counter-clockwise. */

/** A rigid move: turn about the origin, then shift. */
export interface Frame {
  readonly angle: number;
  readonly x: number;
  readonly y: number;
}

export const IDENTITY: Frame = { angle: 0, x: 0, y: 0 };
export const TURN = 2 * Math.PI;
export const degrees = (d: number): number => (d * Math.PI) / 180;

export function apply(f: Frame, [x, y]: Point): Point {
  const c = Math.cos(f.angle);
  const s = Math.sin(f.angle);
  return [f.x + c * x - s * y, f.y + s * x + c * y];
}

/** The move that first does `inner`, then `outer`. */
export function after(outer: Frame, inner: Frame): Frame {
  const [x, y] = apply(outer, [inner.x, inner.y]);
  return { angle: outer.angle + inner.angle, x, y };
}

/** Turn by an angle about a point. */
export function turnAbout([px, py]: Point, angle: number): Frame {
  const [x, y] = apply({ angle, x: 0, y: 0 }, [px, py]);
  return { angle, x: px - x, y: py - y };
}

export const polar = (radius: number, angle: number, [cx, cy]: Point = [0, 0]): Point => [
  cx + radius * Math.cos(angle),
  cy + radius * Math.sin(angle),
];
export const angleOf = ([x, y]: Point, [cx, cy]: Point = [0, 0]): number =>
  Math.atan2(y - cy, x - cx);
export const distance = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(bx - ax, by - ay);
export const mix = ([ax, ay]: Point, [bx, by]: Point, share: number): Point => [
  ax + (bx - ax) * share,
  ay + (by - ay) * share,
];
export const add = ([ax, ay]: Point, [bx, by]: Point, times = 1): Point => [
  ax + bx * times,
  ay + by * times,
];
/** Unit vector from a to b. */
export function direction(a: Point, b: Point): Point {
  const d = distance(a, b);
  return d > 0 ? [(b[0] - a[0]) / d, (b[1] - a[1]) / d] : [1, 0];
}

/** Angle brought to within half a turn of `about`. */
export const nearAngle = (angle: number, about: number): number =>
  angle - TURN * Math.round((angle - about) / TURN);

/** Where the line through p along u meets the line through q along v; null when parallel. */
export function crossing(p: Point, u: Point, q: Point, v: Point): Point | null {
  const det = u[0] * v[1] - u[1] * v[0];
  if (Math.abs(det) < 1e-9) return null;
  const t = ((q[0] - p[0]) * v[1] - (q[1] - p[1]) * v[0]) / det;
  return add(p, u, t);
}

/**
 * Where a line from p touches a circle. `side` +1: the touching point lies counter-clockwise of
 * the line centre to p, −1: clockwise. A point inside the circle gives the nearest point on it.
 */
export function touchPoint(p: Point, centre: Point, radius: number, side: 1 | -1): Point {
  const d = distance(p, centre);
  const base = angleOf(p, centre);
  return polar(radius, base + (d > radius ? side * Math.acos(radius / d) : 0), centre);
}

/** Do the segments ab and cd cross (touching ends do not count)? */
export function segmentsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const turn = (p: Point, q: Point, r: Point) =>
    (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return turn(a, b, c) * turn(a, b, d) < -1e-12 && turn(c, d, a) * turn(c, d, b) < -1e-12;
}

export const clamp = (v: number, low: number, high: number): number =>
  Math.max(low, Math.min(high, v));
