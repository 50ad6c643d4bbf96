// Shaders are made by eval unless the library is told otherwise, and the page's security policy forbids it.
import 'pixi.js/unsafe-eval';
import { Container, WebGLRenderer } from 'pixi.js';
import type { Hand } from './hand.ts';
import type { Painter } from './painter.ts';
import { GraphicsHand } from './pixi-graphics.ts';

/** Paints on a graphics card, of each frame the whole. Fails where the browser gives no WebGL. */
export async function pixiPainter(sheet: string): Promise<Painter> {
  const renderer = new WebGLRenderer<HTMLCanvasElement>();
  await renderer.init({
    antialias: true,
    background: sheet,
    width: 16,
    height: 16,
    resolution: 1,
    // What the stage uses comes with it (ui/vite.config.ts): the library need not fetch the rest.
    skipExtensionImports: true,
  });
  return new PixiPainter(renderer, sheet);
}

class PixiPainter implements Painter {
  readonly kind = 'webgl';
  readonly #renderer: WebGLRenderer<HTMLCanvasElement>;
  readonly #root = new Container();
  #sheet: string;

  constructor(renderer: WebGLRenderer<HTMLCanvasElement>, sheet: string) {
    this.#renderer = renderer;
    this.#sheet = sheet;
  }

  get canvas(): HTMLCanvasElement {
    return this.#renderer.canvas;
  }

  get sheet(): string {
    return this.#sheet;
  }

  set sheet(colour: string) {
    this.#sheet = colour;
    this.#renderer.background.color = colour;
  }

  addHand(): Hand {
    const hand = new GraphicsHand();
    this.#root.addChild(hand.node);
    return hand;
  }

  resize(width: number, height: number): void {
    this.#renderer.resize(width, height, 1);
  }

  render(): void {
    this.#renderer.render(this.#root);
  }

  destroy(): void {
    this.#root.destroy();
    this.#renderer.destroy(true);
  }
}
