import type { Hand } from './hand.ts';

export type Kind = 'webgl' | 'canvas';

/** A canvas and what paints on it: a graphics card (pixi-painter.ts), or the browser's own pen (canvas-painter.ts). */
export interface Painter {
  readonly kind: Kind;
  readonly canvas: HTMLCanvasElement;
  /** Colour of the sheet, behind all drawings. */
  sheet: string;
  /** A hand for one more drawing, on top of the others. */
  addHand(): Hand;
  /** Device px. */
  resize(width: number, height: number): void;
  /** Paints what the hands hold. */
  render(): void;
  /** Does a little of what would hold up a later picture; false when nothing is left to do. Left out: there is nothing. */
  stock?(): boolean;
  /** Takes the canvas from the page and gives up all it holds; the hands are destroyed before. */
  destroy(): void;
}
