import type { Point } from '../../../sim/index.ts';
import type { Shape } from '../shapes.ts';

/** What the loupe marks on an adjuster: shapes that point, and numbers on what they point at. */
export interface StepMarks {
  readonly shapes: Shape[];
  readonly numbers: { readonly key: string; readonly text: string; readonly at: Point }[];
}
