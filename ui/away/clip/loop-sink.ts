import { awayClipLoopSink as words } from '../../../sim/words/en.ts';
import { penOf } from '../../stage/own-canvas.ts';
import { apng, type Cel } from './apng.ts';
import type { Made, Order } from './picture.ts';
import type { Sink } from './sink.ts';

/** A picture's pixels, four bytes each, as whole numbers. */
const pixelsOf = (canvas: OffscreenCanvas): Uint32Array => {
  const { height, width } = canvas;
  return new Uint32Array(penOf(canvas, true).getImageData(0, 0, width, height).data.buffer);
};

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The smallest rectangle that holds all that differs; null: nothing does. */
export function changed(a: Uint32Array, b: Uint32Array, width: number): Rect | null {
  let [left, right, top, bottom] = [width, -1, -1, -1];
  for (let i = 0; i < a.length; i++) {
    if (a[i] === b[i]) continue;
    const x = i % width;
    const y = (i - x) / width;
    if (top < 0) top = y;
    bottom = y;
    if (x < left) left = x;
    if (x > right) right = x;
  }
  if (top < 0) return null;
  return { x: left, y: top, width: right - left + 1, height: bottom - top + 1 };
}

/** Pictures as one animated PNG, of each what is another than in the one before. */
class LoopSink implements Sink {
  readonly #rate: number;
  readonly #cels: Cel[] = [];
  #before: Uint32Array | null = null;

  constructor(rate: number) {
    this.#rate = rate;
  }

  async add(canvas: OffscreenCanvas): Promise<void> {
    const now = pixelsOf(canvas);
    const { height, width } = canvas;
    const rect = this.#before ? changed(this.#before, now, width) : { x: 0, y: 0, width, height };
    this.#before = now;
    const last = this.#cels.at(-1);
    if (!rect && last) last.lasts += 1;
    if (!rect) return;
    const part = new OffscreenCanvas(rect.width, rect.height);
    penOf(part, true).drawImage(canvas, -rect.x, -rect.y);
    const blob = await part.convertToBlob({ type: 'image/png' });
    this.#cels.push({ ...rect, png: new Uint8Array(await blob.arrayBuffer()), lasts: 1 });
  }

  async end(): Promise<Made> {
    const bytes = apng(this.#cels, this.#rate);
    return {
      bytes: bytes.buffer as ArrayBuffer,
      type: 'image/apng',
      extension: '.png',
      codecs: [words.animatedPng],
    };
  }
}

export const loopSink = ({ rate }: Order): Sink => new LoopSink(rate);
