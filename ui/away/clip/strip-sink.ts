import { penOf } from '../../stage/own-canvas.ts';
import type { Theme } from '../../theme.ts';
import type { Made, Order } from './picture.ts';
import type { Sink } from './sink.ts';
import { cellAt, STRIP } from './strip.ts';
import { writeWord } from './write-words.ts';

/** Eight pictures on one sheet of paper, as a PNG. */
class StripSink implements Sink {
  readonly #sheet: OffscreenCanvas;
  readonly #scale: number;
  readonly #ink: string;

  constructor({ title, width }: Order, theme: Theme) {
    const { colours } = theme;
    this.#scale = width / STRIP.cell;
    const px = (v: number): number => Math.round(v * this.#scale);
    this.#sheet = new OffscreenCanvas(px(STRIP.width), px(STRIP.height));
    this.#ink = colours.ink;
    const pen = penOf(this.#sheet, true);
    pen.fillStyle = colours.sheet;
    pen.fillRect(0, 0, this.#sheet.width, this.#sheet.height);
    const look = { size: 40 * this.#scale, weight: 720, anchor: 'start', colour: 'ink' } as const;
    writeWord(pen, { ...look, text: title, x: 2, y: 24 * this.#scale }, theme);
  }

  async add(canvas: OffscreenCanvas, index: number): Promise<void> {
    const { height, width, x, y } = cellAt(index);
    const pen = penOf(this.#sheet, true);
    const s = this.#scale;
    pen.drawImage(canvas, x * s, y * s, width * s, height * s);
    pen.strokeStyle = this.#ink;
    pen.lineWidth = 2 * s;
    pen.strokeRect(x * s, y * s, width * s, height * s);
  }

  async end(): Promise<Made> {
    const blob = await this.#sheet.convertToBlob({ type: 'image/png' });
    const bytes = await blob.arrayBuffer();
    return { bytes, type: 'image/png', extension: '.png', codecs: ['PNG'] };
  }
}

export const stripSink = (order: Order, theme: Theme): Sink => new StripSink(order, theme);
