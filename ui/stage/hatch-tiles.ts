import { colourOf, type Theme } from '../theme.ts';
import { hatchKey, type TileView, tileOf } from './hatch.ts';
import { type AnyCanvas, ownCanvas, penOf } from './own-canvas.ts';
import type { Hatch } from './shapes.ts';

interface Tile {
  readonly tile: AnyCanvas;
  pattern?: CanvasPattern | undefined;
}

/** Tiles kept at once: several times what one moment shows. Zooming by the wheel asks for ever new ones. */
const MOST = 200;

/** Hatch tiles, made at the screen's own pixels so that they stay sharp. */
export class HatchTiles {
  readonly #kept = new Map<string, Tile>();
  #theme: Theme;
  #pixels = 1;

  constructor(theme: Theme) {
    this.#theme = theme;
  }

  /** Forgets all tiles when theme or device pixels per CSS pixel changed. */
  renew(theme: Theme, pixels: number): void {
    if (theme === this.#theme && pixels === this.#pixels) return;
    this.clear();
    this.#theme = theme;
    this.#pixels = pixels;
  }

  tile(hatch: Hatch, view: TileView): AnyCanvas {
    return this.#of(hatch, view).tile;
  }

  pattern(hatch: Hatch, view: TileView): CanvasPattern {
    const kept = this.#of(hatch, view);
    kept.pattern ??= penOf(kept.tile).createPattern(kept.tile, 'repeat') ?? undefined;
    if (!kept.pattern) throw new Error('This browser makes no pattern of a hatch.');
    kept.pattern.setTransform(new DOMMatrix([1 / this.#pixels, 0, 0, 1 / this.#pixels, 0, 0]));
    return kept.pattern;
  }

  #of(hatch: Hatch, view: TileView): Tile {
    const key = `${hatchKey(hatch)} ${view.scale.toFixed(3)} ${view.k}`;
    let kept = this.#kept.get(key);
    if (!kept) {
      if (this.#kept.size >= MOST) this.clear();
      kept = { tile: this.#draw(hatch, view) };
      this.#kept.set(key, kept);
    }
    return kept;
  }

  #draw(hatch: Hatch, view: TileView): AnyCanvas {
    const tile = tileOf(hatch, view);
    const across = Math.round(tile.width * this.#pixels);
    const canvas = ownCanvas(across, Math.round(tile.height * this.#pixels));
    const p = penOf(canvas);
    p.scale(canvas.width / tile.width, canvas.height / tile.height);
    if (tile.ground) {
      p.fillStyle = colourOf(this.#theme, tile.ground);
      p.globalAlpha = tile.groundAlpha ?? 1;
      p.fillRect(0, 0, tile.width, tile.height);
      p.globalAlpha = 1;
    }
    for (const { from, to, ink, width } of tile.lines) {
      p.strokeStyle = colourOf(this.#theme, ink);
      p.lineWidth = width;
      p.beginPath();
      p.moveTo(...from);
      p.lineTo(...to);
      p.stroke();
    }
    p.fillStyle = colourOf(this.#theme, tile.dotInk);
    for (const { at, radius } of tile.dots) {
      p.beginPath();
      p.arc(...at, radius, 0, 2 * Math.PI);
      p.fill();
    }
    return canvas;
  }

  clear(): void {
    this.#kept.clear();
  }
}
