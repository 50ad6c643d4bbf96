import type { Theme } from '../theme.ts';
import { flatten, type Polyline, tolerance } from './flatten.ts';
import type { HatchTiles } from './hatch-tiles.ts';
import { moved, type Path } from './path.ts';
import type { Shape } from './shapes.ts';

/** What shapes are painted with. */
export interface Ground {
  readonly scale: number;
  readonly k: number;
  readonly theme: Theme;
  /** Device pixels per CSS pixel. */
  readonly pixels: number;
  /** Whole canvas, device px. */
  readonly width: number;
  readonly height: number;
  readonly tiles: HatchTiles;
}

/** Round window through which alone a drawing is seen, over a ground of its own; device px. */
export interface Window {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly fill: string;
  /** The same for equal windows. */
  readonly key: string;
}

/** The hand that paints one drawing: one for the graphics card, one for the 2D canvas. */
export interface Hand {
  /**
   * Starts over with the painting order.
   *
   * @param x drum's centre, device px
   * @param y the same
   */
  begin(x: number, y: number, window: Window | null, ground: Ground): void;
  /**
   * Next shape in order.
   *
   * @param build its outline or style changed, or where it stands and its hatch must not move along
   * @param move only where it stands changed
   */
  put(shape: Shape, build: boolean, move: boolean, ground: Ground): void;
  drop(key: string): void;
  /** All shapes are put. */
  end(): void;
  destroy(): void;
}

/** A hatched shape is built where it stands, so that its hatch keeps its place on the screen. */
export const isBaked = (shape: Shape): boolean => shape.style.hatch !== undefined;

/** A shape's path as it is built: where it stands, or in its own frame. */
export const standing = (shape: Shape): Path =>
  isBaked(shape) && shape.place ? moved(shape.path, shape.place) : shape.path;

/** Outlines of a shape as straight runs, in CSS px about the drum's centre, y down. */
export const outlines = (shape: Shape, { scale }: Ground): Polyline[] =>
  turnedDown(flatten(standing(shape), tolerance(scale)), scale);

export function turnedDown(lines: Polyline[], scale: number): Polyline[] {
  for (const { points } of lines) {
    for (let i = 0; i < points.length; i += 2) {
      points[i] = (points[i] as number) * scale;
      points[i + 1] = -(points[i + 1] as number) * scale;
    }
  }
  return lines;
}
