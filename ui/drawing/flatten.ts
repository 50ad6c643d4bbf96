import type { Command, XY } from './shapes.ts';

/**
 * Arcs to straight pieces, to a tolerance. A painter's own arc() is too coarse for millimetres: at a
 * lining's radius its sagitta is the size of a clearance, so the drawing would show false gaps.
 */

/** Largest distance of a chord from its arc, mm: 0.02 mm or a quarter pixel, whichever is finer. */
export const toleranceAt = (pixelsPerMm: number): number => Math.min(0.02, 0.25 / pixelsPerMm);

/** Pieces for an arc: a chord over angle d stands r(1 − cos d/2) ≈ r·d²/8 off it. */
export const pieces = (r: number, angle: number, tolerance: number): number =>
  Math.max(
    2,
    Math.ceil(Math.abs(angle) / Math.sqrt((8 * Math.min(tolerance, r)) / Math.max(r, 1e-9))),
  );

/** One polyline for each M…; `closed` when it ends in Z. */
export interface Polyline {
  readonly points: number[];
  closed: boolean;
}

export function flatten(path: readonly Command[], tolerance: number): Polyline[] {
  const out: Polyline[] = [];
  let now: Polyline | null = null;
  for (const c of path) {
    if (c.c === 'M') {
      now = { points: [c.x, c.y], closed: false };
      out.push(now);
    } else if (now && c.c === 'L') {
      now.points.push(c.x, c.y);
    } else if (now && c.c === 'A') {
      const n = pieces(c.r, c.b - c.a, tolerance);
      for (let i = 0; i <= n; i++) {
        const a = c.a + ((c.b - c.a) * i) / n;
        now.points.push(c.x + c.r * Math.cos(a), c.y + c.r * Math.sin(a));
      }
    } else if (now && c.c === 'Z') now.closed = true;
  }
  return out;
}

/** Cuts a polyline into dashes; lengths in the polyline's own unit. */
export function dashes(line: Polyline, pattern: readonly number[]): number[][] {
  const { points } = line;
  const all = line.closed ? [...points, points[0] as number, points[1] as number] : points;
  const out: number[][] = [];
  let at = 0;
  let left = pattern[0] ?? 1;
  let on = true;
  let piece: number[] = [all[0] as number, all[1] as number];
  for (let i = 2; i < all.length; i += 2) {
    let x = all[i - 2] as number;
    let y = all[i - 1] as number;
    const ex = all[i] as number;
    const ey = all[i + 1] as number;
    let rest = Math.hypot(ex - x, ey - y);
    while (rest > 1e-9) {
      const step = Math.min(rest, left);
      const t = step / rest;
      x += (ex - x) * t;
      y += (ey - y) * t;
      rest -= step;
      left -= step;
      if (on) piece.push(x, y);
      if (left <= 1e-9) {
        if (on && piece.length >= 4) out.push(piece);
        on = !on;
        at = (at + 1) % pattern.length;
        left = pattern[at] as number;
        piece = [x, y];
      }
    }
  }
  if (on && piece.length >= 4) out.push(piece);
  return out;
}

/**
 * Hatch lines inside a region (even-odd), as segments: lines at `angle` (degrees) every `gap` mm,
 * cut where they cross the outline. They stand still on the sheet whatever moves.
 */
export function hatchLines(
  outlines: readonly (readonly XY[])[],
  angle: number,
  gap: number,
): [XY, XY][] {
  const s = Math.sin((angle * Math.PI) / 180);
  const k = Math.cos((angle * Math.PI) / 180);
  const rings = outlines.map((ring) => ring.map(([x, y]): XY => [x * k + y * s, -x * s + y * k]));
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const ring of rings) {
    for (const p of ring) {
      low = Math.min(low, p[1]);
      high = Math.max(high, p[1]);
    }
  }
  const out: [XY, XY][] = [];
  for (let v = Math.ceil(low / gap) * gap; v < high; v += gap) {
    const cuts: number[] = [];
    for (const ring of rings) {
      for (let i = 0; i < ring.length; i++) {
        const a = ring[i] as XY;
        const b = ring[(i + 1) % ring.length] as XY;
        if (a[1] <= v === b[1] <= v) continue;
        cuts.push(a[0] + ((v - a[1]) / (b[1] - a[1])) * (b[0] - a[0]));
      }
    }
    cuts.sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      const a = cuts[i] as number;
      const b = cuts[i + 1] as number;
      out.push([
        [a * k - v * s, a * s + v * k],
        [b * k - v * s, b * s + v * k],
      ]);
    }
  }
  return out;
}
