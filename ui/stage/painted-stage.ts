/**
 * Paints drawings (shapes.ts) into a canvas of its own.
 *
 *   const stage = new PaintedStage(host, theme);   // host: a positioned element
 *   stage.onResize = (width, height) => …make a new view…
 *   stage.draw([drawing, ...loupe]);               // once a frame; what rests costs nothing
 *   await stage.bringCard();                       // when there is time
 *
 * It begins on a 2D canvas. Where a graphics card draws WebGL, PixiJS is loaded for it and takes over; not
 * where WebGL is done in software, since filling pixels is then 25 to 35 times dearer. Pixi's own arcs are
 * never used: at a lining's radius they stand off by the size of a clearance. All lengths are CSS px inside;
 * the canvas has the screen's own pixels. A lost context, of WebGL or of the 2D canvas, comes back by
 * itself; when it does not within a few seconds, a new canvas takes over.
 */
import type { Theme } from '../theme.ts';
import { CanvasPainter } from './canvas-painter.ts';
import { HatchTiles } from './hatch-tiles.ts';
import { PaintedDrawing } from './painted-drawing.ts';
import type { Kind, Painter } from './painter.ts';
import type { Drawing } from './shapes.ts';
import { Stains } from './stains.ts';

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

export class PaintedStage {
  /** Called after the host changed its size, in CSS px. */
  onResize: ((width: number, height: number) => void) | null = null;

  readonly #host: HTMLElement;
  readonly #observer: ResizeObserver;
  readonly #tiles: HatchTiles;
  readonly #stains = new Stains();
  readonly #painted: PaintedDrawing[] = [];
  #painter: Painter;
  #theme: Theme;
  #last: readonly Drawing[] = [];
  /** What is ready to be painted, and is not yet. */
  #ready: readonly Drawing[] | null = null;
  #pixels = 1;
  #stale = true;
  #waiting: ReturnType<typeof setTimeout> | undefined;
  #gone = false;

  /** @param host a positioned element */
  constructor(host: HTMLElement, theme: Theme) {
    this.#host = host;
    this.#theme = theme;
    this.#painter = new CanvasPainter(this.#stains, theme.colours.sheet);
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

  get kind(): Kind {
    return this.#painter.kind;
  }

  get canvas(): HTMLCanvasElement {
    return this.#painter.canvas;
  }

  /** Paints the drawings on top of each other. */
  draw(drawings: readonly Drawing[]): void {
    if (this.#ready !== drawings) this.ready(drawings);
    this.#ready = null;
    if (!this.#stale || this.#waiting) return;
    this.#painter.render();
    this.#stale = false;
  }

  /** All of it but the painting, which is left to `draw` with the same drawings. */
  ready(drawings: readonly Drawing[]): void {
    this.#last = drawings;
    if (this.#waiting) return;
    this.#ready = drawings;
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
        painted = new PaintedDrawing(this.#painter.addHand());
        this.#painted.push(painted);
      }
      if (painted.update(drawing, this.#theme, screen, this.#tiles)) this.#stale = true;
    });
  }

  setTheme(theme: Theme): void {
    this.#theme = theme;
    this.#painter.sheet = theme.colours.sheet;
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
    this.#unmount();
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
    this.#painter.resize(w, h);
    this.#stains.resize(w, h);
    this.onResize?.(width, height);
    this.#again();
  }

  /** Draws the last drawings anew. */
  #again(): void {
    this.#stains.all();
    this.#stale = true;
    this.#ready = null;
    if (this.#last.length > 0) this.draw(this.#last);
  }

  #forget(): void {
    this.#ready = null;
    for (const painted of this.#painted.splice(0)) painted.destroy();
    this.#tiles.clear();
  }

  #lost = (): void => {
    if (this.#gone) return;
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => this.#renew(), PATIENCE);
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
  #renew(): void {
    if (this.#gone || !this.#waiting) return;
    this.#takeOver(new CanvasPainter(this.#stains, this.#theme.colours.sheet));
  }

  /**
   * Goes on with a graphics card, where there is one.
   *
   * @param anyway also where software does its work
   */
  async bringCard(anyway = false): Promise<void> {
    if (!anyway && !hardwareWebgl()) return;
    const { pixiPainter } = await import('./pixi-painter.ts');
    const painter = await pixiPainter(this.#theme.colours.sheet);
    if (this.#gone) return painter.destroy();
    this.#takeOver(painter);
  }

  /** Does, a little at a time, what would hold up a later picture; false when nothing is left. */
  stock(): boolean {
    return !this.#gone && this.#painter.stock?.() === true;
  }

  #takeOver(painter: Painter): void {
    this.#forget();
    const { width, height } = this.canvas;
    this.#unmount();
    this.#painter = painter;
    painter.sheet = this.#theme.colours.sheet;
    this.#mount();
    this.#painter.resize(width, height);
    this.#stains.resize(width, height);
    this.#restored();
  }

  #unmount(): void {
    const { canvas } = this;
    for (const name of LOST) canvas.removeEventListener(name, this.#lost);
    for (const name of RESTORED) canvas.removeEventListener(name, this.#restored);
    this.#painter.destroy();
  }
}
