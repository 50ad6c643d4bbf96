import type { Brake, Point } from '../../sim/index.ts';
import { clamp } from './geometry.ts';

/** How millimetres lie on the screen. px are CSS pixels, y down, from the host's top left. */
export interface View {
  readonly width: number;
  readonly height: number;
  /** px per mm. */
  readonly scale: number;
  /** Drum centre, px. */
  readonly origin: Point;
  /** Factor on line weights: 1 on a stage of 992 px, 2 on the wall. */
  readonly k: number;
  /** Factor on text sizes. */
  readonly text: number;
  /** No room for words beside the brake: names become numbers. */
  readonly narrow: boolean;
  /** px that lie under what is laid over the stage's foot, for words in its corners. */
  readonly foot?: number;
  /** From where to where the brake has the stage's width, px: names stand there. Left out: all of it. */
  readonly room?: readonly [left: number, right: number];
  /** A phone's lower corners hold its buttons: words stand in the upper ones. */
  readonly upper?: boolean;
  /** For a classroom's wall: no text under 34 px, words in the corners, double lines. */
  readonly wall?: boolean;
  /** The brake takes the stage's whole height: what stands over it elsewhere stands in a corner. */
  readonly tall?: boolean;
}

export const toPx = (v: View, [x, y]: Point): Point => [
  v.origin[0] + v.scale * x,
  v.origin[1] - v.scale * y,
];
export const toMm = (v: View, [x, y]: Point): Point => [
  (x - v.origin[0]) / v.scale,
  (v.origin[1] - y) / v.scale,
];

export interface Fit {
  readonly width: number;
  readonly height: number;
  /** px kept free of the brake. */
  readonly inset?: { top?: number; right?: number; bottom?: number; left?: number };
  /** mm kept free outside the rim, default 14. */
  readonly band?: number;
  readonly narrow?: boolean;
  readonly k?: number;
  readonly text?: number;
}

/** Smallest stage side, px, at which lines and text have their full size. */
const FULL = 992;

/** Line weight for a stage: 1 at 992 px, 0.8 at 690, not under 0.72. */
export const weightFor = (side: number): number => clamp(0.34 + (0.66 * side) / FULL, 0.72, 1);

/** Puts the whole drum, with a band around it, into the middle of what is left free. */
export function fitView(brake: Brake, fit: Fit): View {
  const { top = 0, right = 0, bottom = 0, left = 0 } = fit.inset ?? {};
  const wide = Math.max(1, fit.width - left - right);
  const high = Math.max(1, fit.height - top - bottom);
  const reach = brake.drum.radiusNew + brake.drum.rim + (fit.band ?? 14);
  const k = fit.k ?? weightFor(Math.min(fit.width, fit.height));
  return {
    width: fit.width,
    height: fit.height,
    scale: Math.min(wide, high) / (2 * reach),
    origin: [left + wide / 2, top + high / 2],
    k,
    text: fit.text ?? clamp(0.4 + 0.6 * k, 0.8, 1),
    narrow: fit.narrow ?? fit.width < 560,
  };
}

/** Zoom by a factor about a point of the screen (px) that stays. */
export function zoomView(v: View, factor: number, at: Point): View {
  const scale = clamp(v.scale * factor, 0.5, 60);
  const f = scale / v.scale;
  return {
    ...v,
    scale,
    origin: [at[0] + (v.origin[0] - at[0]) * f, at[1] + (v.origin[1] - at[1]) * f],
  };
}

export const panView = (v: View, dx: number, dy: number): View => ({
  ...v,
  origin: [v.origin[0] + dx, v.origin[1] + dy],
});
