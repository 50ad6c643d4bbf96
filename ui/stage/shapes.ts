import type { Point, Role } from '../../sim/index.ts';
import type { Ink, Token } from '../theme.ts';
import type { Frame } from './geometry.ts';
import type { PartId } from './part-names.ts';
import type { Path } from './path.ts';
import type { View } from './view.ts';

/**
 * What is drawn, free of any painter: a list of shapes in millimetres (y up), painted in order, and
 * a list of labels shown as text over it. Lengths called px are CSS pixels at line weight 1 and are
 * multiplied by the view's k.
 */

/** Hatches are tied to the drawing's origin on the screen, never to the part: they do not turn. */
export type Hatch =
  | 'drum'
  | 'cylinder'
  | 'piston'
  | 'rubber'
  | 'fluid'
  | 'lining'
  | 'overlap'
  /** Dot screen of the heat layer: diameter of a dot as a share of the pitch, over a veil of its colour. */
  | { readonly dots: number; readonly colour: Ink; readonly veil: number };

/** Real width in mm, at least `least` px; `inset` px taken off (the core of an outlined wire). */
export interface WireWidth {
  readonly mm: number;
  readonly least: number;
  readonly inset: number;
}

export interface Style {
  readonly fill?: Ink;
  readonly fillAlpha?: number;
  readonly hatch?: Hatch;
  readonly stroke?: Ink;
  readonly strokeAlpha?: number;
  /** px, default 1. */
  readonly width?: number | WireWidth;
  /** px on, off, on, off … */
  readonly dash?: readonly number[];
  readonly round?: boolean;
}

export interface Shape {
  /** Unique in its drawing. */
  readonly key: string;
  readonly path: Path;
  /** Subpaths after the first are holes in it. */
  readonly evenOdd?: boolean;
  /** Where the path's frame stands now; left out: as traced. */
  readonly place?: Frame;
  readonly style: Style;
  readonly role?: Role;
  readonly part?: PartId;
  readonly group: string;
}

export type LabelStyle =
  | 'role'
  | 'role note'
  | 'caption'
  | 'turning'
  | 'peak'
  | 'force'
  | 'gap'
  | 'gap word'
  | 'name'
  | 'number'
  | 'tooth'
  | 'lens'
  | 'lens scale'
  | 'zone'
  | 'heat'
  | 'dial';

export interface Label {
  readonly key: string;
  readonly text: string;
  /** mm */
  readonly at: Point;
  /** px from there, y down. */
  readonly dx: number;
  readonly dy: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly style: LabelStyle;
  /** px */
  readonly size: number;
  readonly colour: Token;
  readonly part?: PartId;
  /** Labels of one block are lines of one text: they stand together, in their order, below its first. */
  readonly block?: string;
}

export interface Drawing {
  readonly shapes: readonly Shape[];
  readonly labels: readonly Label[];
  readonly view: View;
  /** Shows only inside this circle (px), over a ground of its own. */
  readonly clip?: {
    readonly at: Point;
    readonly radius: number;
    readonly fill: Token;
  };
}

/** Width of a stroke in px at a view. */
export function strokePx(width: Style['width'], view: { k: number; scale: number }): number {
  if (width === undefined) return view.k;
  if (typeof width === 'number') return width * view.k;
  const full = Math.max(width.least * view.k, width.mm * view.scale);
  return width.inset > 0 ? Math.max(full * 0.45, full - width.inset * view.k) : full;
}

/** Line weights of the drawing, px. */
export const WEIGHT = {
  heavy: 2.2,
  adjuster: 2,
  wide: 1.6,
  medium: 1.3,
  narrow: 1,
  axis: 0.8,
};
export const DASH = {
  hidden: [5, 3],
  axis: [13, 3, 2, 3],
  ghost: [12, 3, 2, 3, 2, 3],
  lip: [6, 3],
  trailing: [9, 4],
} as const;

export const outlined = (fill: Ink, width: number = WEIGHT.wide, stroke: Ink = 'ink'): Style => ({
  fill,
  stroke,
  width,
});
export const hatched = (hatch: Hatch, width: number = WEIGHT.wide): Style => ({
  hatch,
  stroke: 'ink',
  width,
});
export const stroked = (stroke: Ink, width: number, dash?: readonly number[]): Style => ({
  stroke,
  width,
  ...(dash ? { dash } : {}),
});
