import type { Token } from './theme.ts';

/**
 * Renderer-neutral shapes in millimetres, y up, origin on the drum axis. Pure data: the same list is
 * painted by Pixi on the page and written as SVG for figures and print. Arcs stay arcs here; each
 * painter keeps or flattens them.
 */
export type XY = readonly [number, number];

export type Command =
  | { readonly c: 'M' | 'L'; readonly x: number; readonly y: number }
  /** Arc about (x, y) from angle a to b, rad; b > a runs counter-clockwise. */
  | {
      readonly c: 'A';
      readonly x: number;
      readonly y: number;
      readonly r: number;
      readonly a: number;
      readonly b: number;
    }
  | { readonly c: 'Z' };

export interface Shape {
  readonly path: readonly Command[];
  readonly fill?: Token;
  readonly opacity?: number;
  readonly stroke?: Token;
  /** Line width in px at stage weight k = 1, or in mm when `mm` is set. */
  readonly width?: number;
  readonly mm?: boolean;
  /** px at k = 1. */
  readonly dash?: readonly number[];
  readonly round?: boolean;
}

export interface Label {
  readonly at: XY;
  /** Shift in px, y down. */
  readonly dx?: number;
  readonly dy?: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly text: string;
  /** CSS class of the overlay text. */
  readonly kind: string;
}

/** Shapes that change together: `key` says when they have to be painted anew. */
export interface Group {
  readonly name: string;
  readonly key: string;
  /** Made only when the key changed. */
  readonly make: () => readonly Shape[];
}

export type Move = (p: XY) => XY;

const RAD = Math.PI / 180;
/** Point at radius r and angle a (degrees) about c. */
export const polar = (r: number, a: number, c: XY = [0, 0]): XY => [
  c[0] + r * Math.cos(a * RAD),
  c[1] + r * Math.sin(a * RAD),
];
export const mirrored = (p: XY): XY => [-p[0], p[1]];
export const turned = (p: XY, angle: number, c: XY = [0, 0]): XY => {
  const s = Math.sin(angle);
  const k = Math.cos(angle);
  const x = p[0] - c[0];
  const y = p[1] - c[1];
  return [c[0] + x * k - y * s, c[1] + x * s + y * k];
};
export const along = (a: XY, b: XY, t: number): XY => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
];
export const away = (a: XY, b: XY): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** Points of a quadratic curve. */
export const curve = (a: XY, c: XY, b: XY, n = 10): XY[] =>
  Array.from({ length: n + 1 }, (_, i) => {
    const t = i / n;
    return along(along(a, c, t), along(c, b, t), t);
  });

/** Points of an arc, for outlines that are moved point by point; `step` in degrees. */
export const arcPoints = (r: number, a: number, b: number, c: XY = [0, 0], step = 1.5): XY[] => {
  const n = Math.max(2, Math.ceil(Math.abs(b - a) / step));
  return Array.from({ length: n + 1 }, (_, i) => polar(r, a + ((b - a) * i) / n, c));
};

export const slotPoints = (a: XY, b: XY, r: number): XY[] => {
  const t = Math.atan2(b[1] - a[1], b[0] - a[0]) / RAD;
  return [...arcPoints(r, t + 90, t + 270, a, 9), ...arcPoints(r, t - 90, t + 90, b, 9)];
};

export const polygon = (points: readonly XY[], close = true): Command[] => {
  const out: Command[] = points.map(([x, y], i) => ({ c: i === 0 ? 'M' : 'L', x, y }));
  if (close) out.push({ c: 'Z' });
  return out;
};
export const line = (...points: XY[]): Command[] => polygon(points, false);

export const circle = (c: XY, r: number): Command[] => [
  { c: 'M', x: c[0] + r, y: c[1] },
  { c: 'A', x: c[0], y: c[1], r, a: 0, b: 2 * Math.PI },
  { c: 'Z' },
];

/** Arc as a path of its own; degrees. */
export const arc = (r: number, a: number, b: number, c: XY = [0, 0]): Command[] => {
  const [x, y] = polar(r, a, c);
  return [
    { c: 'M', x, y },
    { c: 'A', x: c[0], y: c[1], r, a: a * RAD, b: b * RAD },
  ];
};
