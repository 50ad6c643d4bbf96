import type { Point } from '../../sim/index.ts';
import { add, apply, direction, distance, type Frame, polar, TURN } from './geometry.ts';

/**
 * An outline: moves, straight lines and true arcs, so that every painter may flatten at its own
 * tolerance and the SVG writer may keep arcs as arcs. An arc runs from angle `from` to `to` (to >
 * from: counter-clockwise); where it does not begin at the pen's place, a line leads there.
 */
export type Command =
  | readonly ['M', x: number, y: number]
  | readonly ['L', x: number, y: number]
  | readonly ['A', cx: number, cy: number, radius: number, from: number, to: number]
  | readonly ['Z'];
export type Path = readonly Command[];

/** How far a browser may paint beside an arc, px. */
const BESIDE = 0.02;

/**
 * In how many commands a browser is told an arc. It paints each as parabolas (and an arc of an SVG as cubics), as few
 * as keep within a quarter of a pixel: of a drum's rim that is seen. A parabola through the ends of an arc of half the
 * angle h, with its tangents there, has its apex at r·(cos h + 1/cos h)/2: beside the arc by r·h⁴/8 and less than
 * 1/6 of it more up to 1 rad (by the series of both). So short an arc is painted as one.
 *
 * @param radius px
 * @param turn rad
 */
export function arcParts(radius: number, turn: number): number {
  const half = Math.min(1, ((8 * BESIDE) / Math.max(radius, BESIDE)) ** 0.25);
  return Math.max(1, Math.ceil(Math.abs(turn) / (2 * half)));
}

/** Pen that traces a path. */
export class Trace {
  readonly path: Command[] = [];
  private at: Point = [0, 0];

  move(p: Point): this {
    this.path.push(['M', p[0], p[1]]);
    this.at = p;
    return this;
  }

  line(...points: Point[]): this {
    for (const p of points) {
      this.path.push([this.path.length === 0 ? 'M' : 'L', p[0], p[1]]);
      this.at = p;
    }
    return this;
  }

  arc(centre: Point, radius: number, from: number, to: number): this {
    this.path.push(['A', centre[0], centre[1], radius, from, to]);
    this.at = polar(radius, to, centre);
    return this;
  }

  /** Arc from the pen to p that leaves along the unit vector `along`; a line where nearly straight. */
  sweep(along: Point, p: Point): this {
    const [dx, dy] = [p[0] - this.at[0], p[1] - this.at[1]];
    // normal to the left of the start
    const off = -along[1] * dx + along[0] * dy;
    const chord = dx * dx + dy * dy;
    if (Math.abs(off) < 1e-6 * Math.sqrt(chord) || chord < 1e-12) return this.line(p);
    const radius = chord / (2 * off);
    const centre = add(this.at, [-along[1], along[0]], radius);
    const from = Math.atan2(this.at[1] - centre[1], this.at[0] - centre[0]);
    let to = Math.atan2(p[1] - centre[1], p[0] - centre[0]);
    if (radius > 0) while (to < from) to += TURN;
    else while (to > from) to -= TURN;
    return this.arc(centre, Math.abs(radius), from, to);
  }

  /**
   * Smooth bend from the pen to p whose ends point at the corner `c`: two arcs that meet, with one
   * tangent, in the centre of the inscribed circle of the triangle pen, c, p (there both arcs'
   * tangents lie along the line pen to p).
   */
  bend(c: Point, p: Point): this {
    const a = this.at;
    const toC = distance(a, c);
    const fromC = distance(c, p);
    const straight = distance(a, p);
    const sum = toC + fromC + straight;
    if (straight < 1e-9 || toC < 1e-9 || fromC < 1e-9) return this.line(p);
    const meet: Point = [
      (a[0] * fromC + c[0] * straight + p[0] * toC) / sum,
      (a[1] * fromC + c[1] * straight + p[1] * toC) / sum,
    ];
    return this.sweep(direction(a, c), meet).sweep(direction(a, p), p);
  }

  close(): this {
    this.path.push(['Z']);
    return this;
  }

  append(path: Path): this {
    this.path.push(...path);
    return this;
  }
}

export const trace = (): Trace => new Trace();

export const circlePath = (centre: Point, radius: number): Path => [
  ['M', centre[0] + radius, centre[1]],
  ['A', centre[0], centre[1], radius, 0, TURN],
  ['Z'],
];

export const polygon = (points: readonly Point[]): Path => [...trace().line(...points).path, ['Z']];
export const polyline = (...points: Point[]): Path => trace().line(...points).path;

/** Long hole: two half circles about a and b. */
export function slotPath(a: Point, b: Point, radius: number): Path {
  const t = Math.atan2(b[1] - a[1], b[0] - a[0]);
  const half = Math.PI / 2;
  return trace()
    .move(polar(radius, t + half, a))
    .arc(a, radius, t + half, t + 3 * half)
    .arc(b, radius, t - half, t + half)
    .close().path;
}

export function regular(centre: Point, radius: number, corners: number, turn = 0): Path {
  return polygon(
    Array.from({ length: corners }, (_, i) => polar(radius, turn + (i * TURN) / corners, centre)),
  );
}

/** A path after a rigid move. */
export function moved(path: Path, f: Frame): Path {
  return path.map((c): Command => {
    if (c[0] === 'Z') return c;
    const [x, y] = apply(f, [c[1], c[2]]);
    return c[0] === 'A' ? ['A', x, y, c[3], c[4] + f.angle, c[5] + f.angle] : [c[0], x, y];
  });
}

/** Mirror image about the y axis. */
export function mirrored(path: Path): Path {
  return path.map((c): Command => {
    if (c[0] === 'Z') return c;
    if (c[0] === 'A') return ['A', -c[1], c[2], c[3], Math.PI - c[4], Math.PI - c[5]];
    return [c[0], -c[1], c[2]];
  });
}
