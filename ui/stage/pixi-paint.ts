import { Container, Graphics } from 'pixi.js';
import { colourOf, type Theme } from '../theme.ts';
import { dashes, flatten, type Polyline, tolerance } from './flatten.ts';
import { moved } from './path.ts';
import type { HatchTextures } from './pixi-hatch.ts';
import { samePath, samePlace, sameStyle } from './same.ts';
import { type Drawing, type Shape, strokePx } from './shapes.ts';

/** What a shape is painted with; equal as long as nothing of it changed. */
interface Ground {
  readonly scale: number;
  readonly k: number;
  readonly theme: Theme;
  readonly pixels: number;
}

interface Kept {
  readonly graphics: Graphics;
  shape: Shape;
}

const turnedDown = (lines: Polyline[], scale: number): Polyline[] => {
  for (const { points } of lines) {
    for (let i = 0; i < points.length; i += 2) {
      points[i] = (points[i] as number) * scale;
      points[i + 1] = -(points[i + 1] as number) * scale;
    }
  }
  return lines;
};

/**
 * One drawing as a container with one Graphics a shape, in CSS px about the drum's centre. A shape
 * is built again only when its outline or style changed; a rigid move alone moves its Graphics.
 * Hatched shapes are built where they stand, so that the hatch keeps its place on the screen.
 */
export class PaintedDrawing {
  readonly container = new Container({ sortableChildren: true });
  readonly #shapes = new Map<string, Kept>();
  readonly #clip = new Graphics();
  #clipKey = '';
  #ground: Ground | null = null;

  /** Brings the container up to date; true when anything changed. */
  update(drawing: Drawing, theme: Theme, pixels: number, hatches: HatchTextures): boolean {
    const { view } = drawing;
    const ground: Ground = { scale: view.scale, k: view.k, theme, pixels };
    const old = this.#ground;
    const fresh =
      !old ||
      old.scale !== ground.scale ||
      old.k !== ground.k ||
      old.theme !== theme ||
      old.pixels !== pixels;
    this.#ground = ground;
    let changed = this.#window(drawing, theme, pixels) || fresh;
    const x = Math.round(view.origin[0] * pixels);
    const y = Math.round(view.origin[1] * pixels);
    if (this.container.x !== x || this.container.y !== y || this.container.scale.x !== pixels) {
      this.container.position.set(x, y);
      this.container.scale.set(pixels);
      changed = true;
    }
    const seen = new Set<string>();
    drawing.shapes.forEach((shape, order) => {
      seen.add(shape.key);
      if (this.#shape(shape, order, ground, hatches, fresh)) changed = true;
    });
    if (seen.size < this.#shapes.size) {
      changed = true;
      for (const [key, kept] of this.#shapes) {
        if (seen.has(key)) continue;
        kept.graphics.destroy();
        this.#shapes.delete(key);
      }
    }
    return changed;
  }

  #shape(
    shape: Shape,
    order: number,
    ground: Ground,
    hatches: HatchTextures,
    fresh: boolean,
  ): boolean {
    let kept = this.#shapes.get(shape.key);
    const isNew = !kept;
    if (!kept) {
      kept = { graphics: new Graphics(), shape };
      this.#shapes.set(shape.key, kept);
      this.container.addChild(kept.graphics);
    }
    const was = kept.shape;
    kept.shape = shape;
    const { graphics } = kept;
    const reordered = graphics.zIndex !== order + 1;
    graphics.zIndex = order + 1;
    const rests = samePlace(shape.place, was.place);
    const baked = shape.style.hatch !== undefined;
    const build =
      isNew ||
      fresh ||
      (was !== shape && !(samePath(shape.path, was.path) && sameStyle(shape.style, was.style))) ||
      (baked && !rests);
    if (build) paint(graphics, shape, ground, hatches);
    if (shape.place && !baked && (build || !rests)) {
      graphics.rotation = -shape.place.angle;
      graphics.position.set(shape.place.x * ground.scale, -shape.place.y * ground.scale);
    }
    return build || reordered || !rests;
  }

  /** Round window of a loupe, with its own ground. */
  #window({ clip, view }: Drawing, theme: Theme, pixels: number): boolean {
    if (!clip) return false;
    const [x, y] = [clip.at[0] - view.origin[0], clip.at[1] - view.origin[1]];
    const key = `${x} ${y} ${clip.radius} ${pixels} ${theme.name}`;
    if (key === this.#clipKey) return false;
    this.#clipKey = key;
    const disc = this.#shapes.get('window ground')?.graphics ?? new Graphics();
    if (!disc.parent) this.container.addChild(disc);
    // The mask is told by our own flattener like everything else.
    const points = turnedDown(
      flatten([['A', x, -y, clip.radius, 0, 2 * Math.PI], ['Z']], 0.1),
      1,
    )[0]?.points as number[];
    this.#clip.clear().poly(points).fill(0xffffff);
    disc.clear().poly(points).fill(theme.colours[clip.fill]);
    disc.zIndex = 0;
    if (!this.#clip.parent) this.container.addChild(this.#clip);
    this.container.mask = this.#clip;
    return true;
  }

  destroy(): void {
    this.container.destroy({ children: true });
    this.#shapes.clear();
  }
}

function paint(g: Graphics, shape: Shape, ground: Ground, hatches: HatchTextures): void {
  const { style } = shape;
  const baked = style.hatch !== undefined && shape.place;
  const path = baked ? moved(shape.path, baked) : shape.path;
  const lines = turnedDown(flatten(path, tolerance(ground.scale)), ground.scale);
  g.clear();
  if (style.hatch || style.fill) {
    const ink = style.hatch
      ? { ...hatches.fill(style.hatch, ground), alpha: style.fillAlpha ?? 1 }
      : {
          color: colourOf(ground.theme, style.fill ?? 'ink'),
          alpha: style.fillAlpha ?? 1,
        };
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
