import { CanvasHand } from './canvas-hand.ts';
import type { Hand } from './hand.ts';
import type { Pen } from './own-canvas.ts';
import type { Painter } from './painter.ts';
import type { Stains } from './stains.ts';

/**
 * Paints on a 2D canvas, of each frame only what was stained. The canvas has the sheet's colour and hides
 * what lies under it: where software puts the page's layers together, one that lets through would cost as
 * much again as it takes to show it.
 */
export class CanvasPainter implements Painter {
  readonly kind = 'canvas';
  readonly canvas = document.createElement('canvas');
  sheet: string;
  readonly #stains: Stains;
  readonly #pen: Pen;
  readonly #hands: CanvasHand[] = [];

  constructor(stains: Stains, sheet: string) {
    this.#stains = stains;
    this.sheet = sheet;
    const pen = this.canvas.getContext('2d', { alpha: false });
    if (!pen) throw new Error('This browser gives no 2D canvas for the stage.');
    this.#pen = pen;
  }

  addHand(): Hand {
    const gone = () => this.#hands.splice(this.#hands.indexOf(hand), 1);
    const hand = new CanvasHand(this.#stains, gone, true);
    this.#hands.push(hand);
    return hand;
  }

  resize(width: number, height: number): void {
    Object.assign(this.canvas, { width, height });
  }

  render(): void {
    const pen = this.#pen;
    this.#stains.take(this.#hands.reduce((sum, hand) => sum + hand.arrange(), 0));
    pen.setTransform(1, 0, 0, 1, 0, 0);
    pen.globalAlpha = 1;
    pen.fillStyle = this.sheet;
    for (const { rect } of this.#stains.due) pen.fillRect(rect.x, rect.y, rect.width, rect.height);
    for (const hand of this.#hands) hand.render(pen);
  }

  stock(): boolean {
    return this.#hands.some((hand) => hand.stock());
  }

  destroy(): void {
    this.canvas.remove();
  }
}
