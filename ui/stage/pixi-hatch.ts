import { Matrix, Texture } from 'pixi.js';
import { colourOf, type Theme } from '../theme.ts';
import { hatchKey, type TileView, tileOf } from './hatch.ts';
import type { Hatch } from './shapes.ts';

/** Hatch tiles as repeating textures, made at the screen's own pixels so that they stay sharp. */
export class HatchTextures {
  readonly #kept = new Map<string, Texture>();
  readonly #matrix = new Matrix();
  #theme: Theme;
  #pixels = 1;

  constructor(theme: Theme) {
    this.#theme = theme;
  }

  /** Forgets all textures when theme or device pixels per CSS pixel changed. */
  renew(theme: Theme, pixels: number): void {
    if (theme === this.#theme && pixels === this.#pixels) return;
    this.clear();
    this.#theme = theme;
    this.#pixels = pixels;
    this.#matrix.set(1 / pixels, 0, 0, 1 / pixels, 0, 0);
  }

  fill(hatch: Hatch, view: TileView): { texture: Texture; matrix: Matrix; textureSpace: 'global' } {
    const key = `${hatchKey(hatch)} ${view.scale.toFixed(3)} ${view.k}`;
    let texture = this.#kept.get(key);
    if (!texture) {
      texture = this.#make(hatch, view);
      this.#kept.set(key, texture);
    }
    return { texture, matrix: this.#matrix, textureSpace: 'global' };
  }

  #make(hatch: Hatch, view: TileView): Texture {
    const tile = tileOf(hatch, view);
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(tile.width * this.#pixels);
    canvas.height = Math.round(tile.height * this.#pixels);
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('This browser gives no 2D canvas to draw hatches on.');
    pen.scale(canvas.width / tile.width, canvas.height / tile.height);
    if (tile.ground) {
      pen.fillStyle = colourOf(this.#theme, tile.ground);
      pen.fillRect(0, 0, tile.width, tile.height);
    }
    for (const { from, to, ink, width } of tile.lines) {
      pen.strokeStyle = colourOf(this.#theme, ink);
      pen.lineWidth = width;
      pen.beginPath();
      pen.moveTo(...from);
      pen.lineTo(...to);
      pen.stroke();
    }
    pen.fillStyle = colourOf(this.#theme, tile.dotInk);
    for (const { at, radius } of tile.dots) {
      pen.beginPath();
      pen.arc(...at, radius, 0, 2 * Math.PI);
      pen.fill();
    }
    const texture = Texture.from(canvas);
    texture.source.style.addressMode = 'repeat';
    return texture;
  }

  clear(): void {
    for (const texture of this.#kept.values()) texture.destroy(true);
    this.#kept.clear();
  }
}
