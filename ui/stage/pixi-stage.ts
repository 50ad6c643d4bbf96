/**
 * Paints drawings (shapes.ts) with PixiJS into a canvas of its own.
 *
 *   const stage = await PixiStage.create(host, theme);   // host: a positioned element
 *   stage.onResize = (width, height) => …make a new view…
 *   stage.draw([drawing, ...loupe]);                     // once a frame; what rests costs nothing
 *
 * WebGL where a graphics card draws it; the canvas renderer where WebGL is missing or done in
 * software, because filling pixels is then 25 to 35 times dearer than a 2D canvas. Pixi's own arcs
 * are never used: at a lining's radius they stand off by the size of a clearance. All lengths are
 * CSS px inside; the canvas has the screen's own pixels. A lost context, of WebGL or of the 2D
 * canvas, comes back by itself; when it does not within a few seconds, a new canvas takes over.
 */
import { AbstractRenderer, autoDetectRenderer, Container, type Renderer } from 'pixi.js';
import type { Theme } from '../theme.ts';
import { CanvasHand, canvasGround } from './pixi-canvas.ts';
import { PaintedDrawing } from './pixi-drawing.ts';
import { GraphicsHand } from './pixi-graphics.ts';
import { HatchTiles } from './pixi-hatch.ts';
import type { Drawing } from './shapes.ts';
import { Stains } from './stains.ts';

type Kind = 'webgl' | 'canvas';

/** Time that a lost context is waited for, ms. */
const PATIENCE = 3000;

/** A WebGL canvas and a 2D canvas tell it under names of their own. */
const LOST = ['webglcontextlost', 'contextlost'] as const;
const RESTORED = ['webglcontextrestored', 'contextrestored'] as const;

const SOFTWARE = /swiftshader|llvmpipe|softpipe|software|basic render/i;

/** Is WebGL there, and drawn by hardware? Only the renderer's name tells. */
function hardwareWebgl(): boolean {
  const gl = document.createElement('canvas').getContext('webgl2');
  if (!gl) return false;
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = String(gl.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : gl.RENDERER));
  gl.getExtension('WEBGL_lose_context')?.loseContext();
  return !SOFTWARE.test(name);
}

/**
 * The canvas has the sheet's colour and hides what lies under it: where software puts the page's
 * layers together, a canvas that lets through would cost as much again as it takes to show it.
 */
async function makeRenderer(kind: Kind, theme: Theme): Promise<Renderer> {
  // Shaders are made by eval unless the library is told otherwise, and the page's security policy forbids it. A 2D
  // canvas has no shaders: there only the question whether eval is allowed must not be asked.
  if (kind === 'webgl') await import('pixi.js/unsafe-eval');
  else Object.assign(AbstractRenderer.prototype, { _unsafeEvalCheck: () => undefined });
  return autoDetectRenderer({
    preference: kind === 'webgl' ? ['webgl', 'canvas'] : ['canvas'],
    antialias: true,
    background: theme.colours.sheet,
    width: 16,
    height: 16,
    resolution: 1,
    // What the stage uses comes with it (ui/vite.config.ts): the library need not fetch the rest.
    skipExtensionImports: true,
  });
}

/**
 * Device pixels of a length. What the browser tells is exact to a part of a pixel that the CSS length,
 * a whole number, has lost; but with an emulated screen it tells the real one's.
 *
 * @param css px
 * @param told device pixels, as far as the browser tells them
 */
function devicePixels(css: number, ratio: number, told: number | undefined): number {
  const near = css * ratio;
  const exact = told !== undefined && Math.abs(told - near) <= Math.max(1, ratio / 2) ? told : near;
  return Math.max(1, Math.round(exact));
}

export interface PixiStageOptions {
  /** Left out: WebGL on a graphics card, else canvas. */
  readonly prefer?: Kind;
}

export class PixiStage {
  /** Called after the host changed its size, in CSS px. */
  onResize: ((width: number, height: number) => void) | null = null;

  readonly #host: HTMLElement;
  readonly #observer: ResizeObserver;
  readonly #tiles: HatchTiles;
  readonly #stains = new Stains();
  readonly #root = new Container();
  readonly #painted: PaintedDrawing[] = [];
  #renderer: Renderer;
  #kind: Kind;
  #ground: Container | null = null;
  #theme: Theme;
  #last: readonly Drawing[] = [];
  #pixels = 1;
  #stale = true;
  #waiting: ReturnType<typeof setTimeout> | undefined;
  #gone = false;

  private constructor(host: HTMLElement, theme: Theme, renderer: Renderer, kind: Kind) {
    this.#host = host;
    this.#theme = theme;
    this.#renderer = renderer;
    this.#kind = kind;
    this.#tiles = new HatchTiles(theme);
    this.#mount();
    this.#observer = new ResizeObserver((entries) => {
      const box = entries.at(-1)?.devicePixelContentBoxSize?.[0];
      this.#fit(box?.inlineSize, box?.blockSize);
    });
    this.#watch();
    document.addEventListener('visibilitychange', this.#shown);
    this.resize();
  }

  static async create(
    host: HTMLElement,
    theme: Theme,
    { prefer }: PixiStageOptions = {},
  ): Promise<PixiStage> {
    const kind = prefer ?? (hardwareWebgl() ? 'webgl' : 'canvas');
    const renderer = await makeRenderer(kind, theme);
    // Pixi takes the canvas by itself where WebGL cannot be had.
    return new PixiStage(host, theme, renderer, 'gl' in renderer ? 'webgl' : 'canvas');
  }

  get kind(): Kind {
    return this.#kind;
  }

  get canvas(): HTMLCanvasElement {
    return this.#renderer.canvas as HTMLCanvasElement;
  }

  /** Paints the drawings on top of each other. */
  draw(drawings: readonly Drawing[]): void {
    this.#last = drawings;
    if (this.#waiting) return;
    this.#tiles.renew(this.#theme, this.#pixels);
    while (this.#painted.length > drawings.length) {
      this.#painted.pop()?.destroy();
      this.#stains.all();
      this.#stale = true;
    }
    const { width, height } = this.canvas;
    const screen = { pixels: this.#pixels, width, height };
    drawings.forEach((drawing, i) => {
      let painted = this.#painted[i];
      if (!painted) {
        painted = new PaintedDrawing(
          this.#kind === 'webgl' ? new GraphicsHand() : new CanvasHand(this.#stains),
        );
        this.#painted.push(painted);
        this.#root.addChild(painted.container);
      }
      if (painted.update(drawing, this.#theme, screen, this.#tiles)) this.#stale = true;
    });
    if (!this.#stale) return;
    this.#render();
    this.#stale = false;
  }

  /** A card paints the whole; a 2D canvas what was stained. */
  #render(): void {
    if (this.#kind === 'webgl') {
      this.#renderer.render(this.#root);
      return;
    }
    this.#stains.take();
    this.#renderer.render({ container: this.#root, clear: false });
  }

  setTheme(theme: Theme): void {
    this.#theme = theme;
    this.#renderer.background.color = theme.colours.sheet;
    this.#again();
  }

  /** Takes over the host's size; its own observer calls this too. */
  resize(): void {
    this.#fit();
  }

  destroy(): void {
    this.#gone = true;
    clearTimeout(this.#waiting);
    document.removeEventListener('visibilitychange', this.#shown);
    this.#observer.disconnect();
    this.#forget();
    this.#root.destroy();
    this.#renderer.destroy(true);
  }

  #mount(): void {
    const { canvas } = this;
    Object.assign(canvas.style, {
      position: 'absolute',
      inset: '0',
      width: '100%',
      height: '100%',
      display: 'block',
    });
    canvas.setAttribute('aria-hidden', 'true');
    for (const name of LOST) canvas.addEventListener(name, this.#lost);
    for (const name of RESTORED) canvas.addEventListener(name, this.#restored);
    this.#host.prepend(canvas);
    if (this.#kind === 'webgl') return;
    this.#ground = canvasGround(this.#stains, () => this.#theme.colours.sheet);
    this.#root.addChildAt(this.#ground, 0);
  }

  #watch(): void {
    try {
      this.#observer.observe(this.#host, { box: 'device-pixel-content-box' });
    } catch {
      // Not every browser measures in device pixels; CSS pixels times their ratio come close.
      this.#observer.observe(this.#host);
    }
  }

  /** @param wide device pixels, as far as the browser tells them exactly */
  #fit(wide?: number, high?: number): void {
    const { clientWidth: width, clientHeight: height } = this.#host;
    if (width === 0 || height === 0) return;
    const ratio = globalThis.devicePixelRatio || 1;
    const w = devicePixels(width, ratio, wide);
    const h = devicePixels(height, ratio, high);
    if (this.canvas.width === w && this.canvas.height === h && this.#pixels === w / width) return;
    this.#pixels = w / width;
    this.#renderer.resize(w, h, 1);
    this.#stains.resize(w, h);
    this.onResize?.(width, height);
    this.#again();
  }

  /** Draws the last drawings anew. */
  #again(): void {
    this.#stains.all();
    this.#stale = true;
    if (this.#last.length > 0) this.draw(this.#last);
  }

  #forget(): void {
    for (const painted of this.#painted.splice(0)) painted.destroy();
    this.#tiles.clear();
  }

  #lost = (): void => {
    if (this.#gone) return;
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => void this.#takeOver(), PATIENCE);
  };

  /**
   * When the browser's graphics process dies, the hatch tiles and the loupe's glass die with the
   * canvas: all is built anew.
   */
  #restored = (): void => {
    clearTimeout(this.#waiting);
    this.#waiting = undefined;
    this.#forget();
    this.#again();
  };

  /** What a browser did with the canvas of a hidden page is not told everywhere. */
  #shown = (): void => {
    if (document.visibilityState === 'visible' && !this.#waiting) this.#restored();
  };

  /** The context does not come back: go on with a new 2D canvas. */
  async #takeOver(): Promise<void> {
    const renderer = await makeRenderer('canvas', this.#theme);
    // It may have come back while the new one was made.
    if (this.#gone || !this.#waiting) {
      renderer.destroy(true);
      return;
    }
    this.#forget();
    const old = this.#renderer;
    const { width, height } = this.canvas;
    this.#renderer = renderer;
    this.#kind = 'canvas';
    this.#unmount(old);
    this.#mount();
    renderer.resize(width, height, 1);
    this.#stains.resize(width, height);
    this.#restored();
  }

  #unmount(renderer: Renderer): void {
    const canvas = renderer.canvas as HTMLCanvasElement;
    for (const name of LOST) canvas.removeEventListener(name, this.#lost);
    for (const name of RESTORED) canvas.removeEventListener(name, this.#restored);
    this.#ground?.destroy();
    canvas.remove();
    renderer.destroy();
  }
}
