import { Container, Graphics } from 'pixi.js';
import { colourOf } from '../theme.ts';
import { dashes } from './flatten.ts';
import { type Ground, type Hand, isBaked, outlines } from './pixi-hand.ts';
import { type Shape, strokePx } from './shapes.ts';

/** Paints with one Pixi Graphics a shape: triangles on the graphics card, kept while nothing changes. */
export class GraphicsHand implements Hand {
  readonly node = new Container({ sortableChildren: true });
  readonly #kept = new Map<string, Graphics>();
  #order = 0;

  begin(): void {
    this.#order = 0;
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

  drop(key: string): void {
    this.#kept.get(key)?.destroy();
    this.#kept.delete(key);
  }
}

function paint(g: Graphics, shape: Shape, ground: Ground): void {
  const { style } = shape;
  const lines = outlines(shape, ground);
  g.clear();
  if (style.hatch || style.fill) {
    const alpha = style.fillAlpha ?? 1;
    const ink = style.hatch
      ? { ...ground.tiles.texture(style.hatch, ground), alpha }
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
