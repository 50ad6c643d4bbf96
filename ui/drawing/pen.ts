import { hatchLines } from './flatten.ts';
import { along, away, type Command, circle, line, polygon, type Shape, type XY } from './shapes.ts';
import type { Token } from './theme.ts';

/** Line widths of the drawing, px at k = 1. */
export const WIDE = 2.2;
export const EDGE = 1.6;
export const NARROW = 1;

/** Gathers shapes; each method adds one and returns the pen. */
export class Pen {
  readonly shapes: Shape[] = [];

  add(shape: Shape): this {
    this.shapes.push(shape);
    return this;
  }

  /** Closed outline of points. */
  body(points: readonly XY[], fill: Token, width = EDGE, stroke: Token = 'ink'): this {
    return this.add({ path: polygon(points), fill, stroke, width, round: true });
  }

  /** Several outlines, filled where an odd number lies over (holes). */
  holed(
    outlines: readonly (readonly XY[])[],
    fill: Token,
    width = EDGE,
    stroke: Token = 'ink',
  ): this {
    return this.add({
      path: outlines.flatMap((o) => polygon(o)),
      fill,
      stroke,
      width,
      round: true,
    });
  }

  path(path: Command[], stroke: Token, width: number, dash?: readonly number[]): this {
    return this.add({ path, stroke, width, ...(dash ? { dash } : {}) });
  }

  disc(c: XY, r: number, fill: Token | null, width = EDGE, stroke: Token | null = 'ink'): this {
    return this.add({
      path: circle(c, r),
      ...(fill ? { fill } : {}),
      ...(stroke ? { stroke, width } : {}),
    });
  }

  axis(a: XY, b: XY): this {
    return this.path(line(a, b), 'ink2', 0.8, [13, 3, 2, 3]);
  }

  /** Section lines in a region; `gap` in mm. */
  hatch(
    outlines: readonly (readonly XY[])[],
    angle: number,
    gap: number,
    stroke: Token = 'hatch',
    width = NARROW,
  ): this {
    const path = hatchLines(outlines, angle, gap).flatMap(([a, b]) => line(a, b));
    return this.add({ path, stroke, width });
  }

  /** A wire: dark edge, pale core. */
  wire(points: readonly XY[], thick: number): this {
    const path = line(...points);
    this.add({ path, stroke: 'ink', width: thick, mm: true, round: true });
    return this.add({ path, stroke: 'wire', width: thick * 0.52, mm: true, round: true });
  }

  /**
   * A spring between two holes: straight ends, coils between c0 and c1 of its length that stretch
   * with it; `n` turns of radius `r`, wire thickness in mm.
   */
  spring(a: XY, b: XY, c0: number, c1: number, n: number, r: number, thick: number): this {
    const length = away(a, b);
    const u: XY = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    const at = (t: number, y: number): XY => [
      a[0] + u[0] * t - u[1] * y,
      a[1] + u[1] * t + u[0] * y,
    ];
    const s0 = c0 * length;
    const s1 = c1 * length;
    const p = (s1 - s0) / n;
    const back: Command[] = [];
    const front: Command[] = [];
    for (let i = 0; i < n; i++) {
      back.push(...line(at(s0 + i * p + p * 0.5, r), at(s0 + (i + 1) * p, -r)));
      front.push(...line(at(s0 + i * p, -r), at(s0 + i * p + p * 0.5, r)));
    }
    this.add({ path: back, stroke: 'wireBack', width: thick * 0.8, mm: true, round: true });
    front.push(...line(a, at(s0 - p * 0.6, 0), at(s0 - 0.1 * p, -r * 0.55), at(s0, -r)));
    front.push(...line(at(s1, -r), at(s1 + p * 0.2, -r * 0.5), at(s1 + p * 0.7, 0), b));
    this.add({ path: front, stroke: 'ink', width: thick, mm: true, round: true });
    return this.add({ path: front, stroke: 'wire', width: thick * 0.5, mm: true, round: true });
  }

  /** Filled arrow of width w and given length from a towards b; sizes in mm. */
  arrow(a: XY, b: XY, w: number, fill: Token): this {
    const length = away(a, b);
    if (length < 0.5) return this;
    const u: XY = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    const head = Math.min(length * 0.6, w * 1.9);
    const q = (t: number, y: number): XY => [
      a[0] + u[0] * t - u[1] * y,
      a[1] + u[1] * t + u[0] * y,
    ];
    return this.add({
      path: polygon([
        q(0, w / 2),
        q(length - head, w / 2),
        q(length - head, w * 1.15),
        along(a, b, 1),
        q(length - head, -w * 1.15),
        q(length - head, -w / 2),
        q(0, -w / 2),
      ]),
      fill,
      stroke: 'sheet',
      width: 1.2,
    });
  }
}
