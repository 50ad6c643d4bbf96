import type { Point } from '../../sim/index.ts';
import { distance, TURN } from './geometry.ts';
import type { Path } from './path.ts';

/** A run of points x, y, x, y …; closed when its path was. */
export interface Polyline {
  readonly points: number[];
  readonly closed: boolean;
}

/** Coarsest deviation of a chord from its arc: the size of a gap worth seeing is ten times that. */
export const SAGITTA_MM = 0.02;
const SAGITTA_PX = 0.25;

/** Tolerance in mm at a scale (px per mm): 0.02 mm or 0.25 px, whichever is finer. */
export const tolerance = (scale: number): number => Math.min(SAGITTA_MM, SAGITTA_PX / scale);

/**
 * Chords for an arc. A chord over the angle a leaves its arc by r·(1 − cos(a/2)), the sagitta;
 * with 1 − cos(x) ≤ x²/2 the angle a = √(8 s / r) keeps it within s.
 */
export function chords(radius: number, sweep: number, sagitta: number): number {
  if (radius <= 0) return 1;
  const step = Math.min(Math.PI / 4, Math.sqrt((8 * sagitta) / radius));
  return Math.max(1, Math.ceil(Math.abs(sweep) / step));
}

/** A path as straight runs that stay within `sagitta` (mm) of it. */
export function flatten(path: Path, sagitta: number): Polyline[] {
  const out: Polyline[] = [];
  let points: number[] = [];
  const end = (closed: boolean) => {
    if (points.length >= 4) out.push({ points, closed });
    points = [];
  };
  for (const c of path) {
    if (c[0] === 'Z') {
      end(true);
    } else if (c[0] === 'A') {
      const [, cx, cy, radius, from, to] = c;
      const n = chords(radius, to - from, sagitta);
      const full = Math.abs(Math.abs(to - from) - TURN) < 1e-12;
      const first = points.length === 0 || !joins(points, cx, cy, radius, from) ? 0 : 1;
      for (let i = first; i <= (full ? n - 1 : n); i++) {
        const a = from + ((to - from) * i) / n;
        points.push(cx + radius * Math.cos(a), cy + radius * Math.sin(a));
      }
    } else {
      if (c[0] === 'M') end(false);
      points.push(c[1], c[2]);
    }
  }
  end(false);
  return out;
}

/** Does the pen already stand where an arc begins? */
function joins(points: number[], cx: number, cy: number, radius: number, from: number): boolean {
  const x = points[points.length - 2] as number;
  const y = points[points.length - 1] as number;
  return Math.hypot(x - cx - radius * Math.cos(from), y - cy - radius * Math.sin(from)) < 1e-9;
}

/** Cuts a run of points into dashes; lengths in the same unit as the points. */
export function dashes(line: Polyline, pattern: readonly number[]): number[][] {
  const { points, closed } = line;
  const n = points.length / 2;
  const at = (i: number): Point => [
    points[2 * (i % n)] as number,
    points[2 * (i % n) + 1] as number,
  ];
  const out: number[][] = [];
  let index = 0;
  let left = pattern[0] as number;
  let current: number[] | null = [...at(0)];
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    let a = at(i);
    const b = at(i + 1);
    let rest = distance(a, b);
    while (rest > left) {
      const share = left / rest;
      a = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
      rest -= left;
      if (current) {
        current.push(a[0], a[1]);
        out.push(current);
        current = null;
      } else current = [a[0], a[1]];
      index = (index + 1) % pattern.length;
      left = pattern[index] as number;
    }
    left -= rest;
    if (current && rest > 0) current.push(b[0], b[1]);
  }
  if (current && current.length >= 4) out.push(current);
  return out;
}
