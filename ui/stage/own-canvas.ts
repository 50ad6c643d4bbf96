/** Canvases that are not on the page, in a worker too, where there is no document. */

export type AnyCanvas = HTMLCanvasElement | OffscreenCanvas;
export type Pen = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

/** @param width device px, as the height */
export function ownCanvas(width: number, height: number): AnyCanvas {
  if (typeof document === 'undefined') return new OffscreenCanvas(width, height);
  return Object.assign(document.createElement('canvas'), { width, height });
}

/** Throws where the browser gives none. */
export function penOf(canvas: AnyCanvas, opaque = false): Pen {
  const told: CanvasRenderingContext2DSettings = opaque ? { alpha: false } : {};
  // Both kinds have it, by two declarations that cannot be called as one.
  const pen = (canvas as HTMLCanvasElement).getContext('2d', told) as Pen | null;
  if (!pen) throw new Error('This browser gives no 2D canvas to draw on.');
  return pen;
}
