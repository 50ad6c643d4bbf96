import { Container, Graphics, Matrix, Texture } from 'pixi.js';
import { colourOf } from '../theme.ts';
import { dashes, flatten } from './flatten.ts';
import { TURN } from './geometry.ts';
import { type Ground, type Hand, isBaked, outlines, type Window } from './hand.ts';
import type { AnyCanvas } from './own-canvas.ts';
import { type Shape, strokePx } from './shapes.ts';

/** Deviation of a loupe's round edge, px. */
const EDGE = 0.1;

/** Paints with one Pixi Graphics a shape: triangles on the graphics card, kept while nothing changes. */
export class GraphicsHand implements Hand {
  readonly node = new Container({ sortableChildren: true });
  readonly #kept = new Map<string, Graphics>();
  #order = 0;
  #round: { ground: Graphics; mask: Graphics; key: string } | null = null;

  begin(x: number, y: number, window: Window | null, { pixels }: Ground): void {
    this.#order = 0;
    this.node.position.set(x, y);
    this.node.scale.set(pixels);
    const key = `${x} ${y} ${window?.key} ${pixels}`;
    if (!window || this.#round?.key === key) return;
    this.#round ??= this.#makeRound();
    this.#round.key = key;
    const [cx, cy] = [(window.x - x) / pixels, (window.y - y) / pixels];
    const circle = flatten([['A', cx, cy, window.radius / pixels, 0, TURN], ['Z']], EDGE);
    const points = circle[0]?.points ?? [];
    this.#round.mask.clear().poly(points).fill(0xffffff);
    this.#round.ground.clear().poly(points).fill(window.fill);
  }

  #makeRound() {
    const made = { ground: new Graphics(), mask: new Graphics(), key: '' };
    made.ground.zIndex = -1;
    this.node.addChild(made.ground, made.mask);
    this.node.mask = made.mask;
    return made;
  }

  put(shape: Shape, build: boolean, move: boolean, ground: Ground): void {
    let g = this.#kept.get(shape.key);
    if (!g) {
      g = new Graphics();
      this.#kept.set(shape.key, g);
      this.node.addChild(g);
    }
    g.zIndex = this.#order++;
    if (build) paint(g, shape, ground);
    if (!shape.place || isBaked(shape) || !(build || move)) return;
    g.rotation = -shape.place.angle;
    g.position.set(shape.place.x * ground.scale, -shape.place.y * ground.scale);
  }

  end(): void {}

  destroy(): void {
    this.node.destroy({ children: true });
  }

  drop(key: string): void {
    this.#kept.get(key)?.destroy();
    this.#kept.delete(key);
  }
}

/** By tile: Pixi's own cache would keep every one that was ever made. The renderer gives them back when they lie idle. */
const textures = new WeakMap<AnyCanvas, Texture>();

function textureOf(tile: AnyCanvas, pixels: number) {
  let texture = textures.get(tile);
  if (!texture) {
    texture = Texture.from(tile, true);
    texture.source.style.addressMode = 'repeat';
    textures.set(tile, texture);
  }
  const matrix = new Matrix(1 / pixels, 0, 0, 1 / pixels, 0, 0);
  return { texture, matrix, textureSpace: 'global' as const };
}

function paint(g: Graphics, shape: Shape, ground: Ground): void {
  const { style } = shape;
  const lines = outlines(shape, ground);
  g.clear();
  if (style.hatch || style.fill) {
    const alpha = style.fillAlpha ?? 1;
    const ink = style.hatch
      ? { ...textureOf(ground.tiles.tile(style.hatch, ground), ground.pixels), alpha }
      : { color: colourOf(ground.theme, style.fill ?? 'ink'), alpha };
    if (shape.evenOdd) {
      lines.forEach(({ points }, i) => {
        g.poly(points, true);
        if (i === 0) g.fill(ink);
        else g.cut();
      });
    } else {
      for (const { points } of lines) g.poly(points, true);
      g.fill(ink);
    }
  }
  if (!style.stroke) return;
  const pattern = style.dash?.map((d) => d * ground.k);
  for (const line of lines) {
    if (pattern) for (const piece of dashes(line, pattern)) g.poly(piece, false);
    else g.poly(line.points, line.closed);
  }
  g.stroke({
    color: colourOf(ground.theme, style.stroke),
    width: strokePx(style.width, ground),
    alpha: style.strokeAlpha ?? 1,
    join: 'round',
    cap: style.round ? 'round' : 'butt',
  });
}
