import type { Point } from '../../sim/index.ts';
import { colourOf } from '../theme.ts';
import { dashes, flatten, type Polyline } from './flatten.ts';
import { apply, distance, type Frame, TURN } from './geometry.ts';
import { type Ground, type Hand, isBaked, outlines, standing, type Window } from './hand.ts';
import { type AnyCanvas, ownCanvas, type Pen, penOf } from './own-canvas.ts';
import { both, join, meet, PATCH, type Patches, type PatchGrid, type Rect } from './patches.ts';
import { arcParts, moved, type Path } from './path.ts';
import { cornersOf } from './same.ts';
import { type Shape, strokePx } from './shapes.ts';
import type { Due, Stains } from './stains.ts';
import { type Standing, StillRun, StillRuns } from './still-runs.ts';

/** A shape as it is painted now. */
interface Painted extends Standing {
  readonly lines: Path2D;
  readonly rule: CanvasFillRule;
  readonly fill: string | CanvasPattern | null;
  readonly fillAlpha: number;
  /** What is stroked, where it is not the outline itself: its dashes. */
  readonly dashes: Path2D | null;
  readonly stroke: string | null;
  readonly strokeAlpha: number;
  readonly width: number;
  readonly cap: CanvasLineCap;
  /** Where a shape that moves stands; null: as built. */
  place: Frame | null;
  /** What of the screen it touches. */
  cover: Patches;
  /** Its turn in the painting. */
  rank: number;
}

/** How exactly an outline is followed to see which patches it touches, px. */
const NEARLY = 2;
/** What is no larger, device px, is taken for its box. */
const SMALL = 2 * PATCH;
/** Smoothing spreads an edge over the next pixel. */
const SMOOTH = 1;
/**
 * On a large canvas lines up to this wide, device px, are painted one pixel wide: software draws
 * those several times faster than any wider line, which it has to fill as an outline. A small
 * canvas has the time, and there all lines are near that width, so that it would blur their order.
 */
const HAIR = 1.35;
/** A stage on a screen of 1920×1080, and any larger; device px. */
const LARGE = 1.2e6;
/** A pixel, and room for what a small turn makes of it: the fast way is for one pixel at most. */
const ONE = 0.96;

/**
 * Paints a whole drawing on a 2D canvas. Outlines are kept as Path2D, so one call fills or strokes
 * all of a shape's lines, with every dash and every turn of a coil. Dashes are cut once, when a shape is built: a canvas
 * would cut them in every frame.
 *
 * Only the rectangles that are due (stains.ts) are painted, in each only the shapes that touch it; the
 * ground has cleared them before. A window's drawing is painted on a glass of its own, so that its
 * round edge is cut once and not with every shape.
 */
export class CanvasHand implements Hand {
  readonly #stains: Stains;
  readonly #kept = new Map<string, Painted>();
  readonly #order: Painted[] = [];
  /** The same, what stands still as pictures. */
  #steps: readonly (Painted | StillRun<Painted>)[] = this.#order;
  #glass: AnyCanvas | null = null;
  #window: Window | null = null;
  /** What the window shows. */
  #shown: Patches | null = null;
  /** What of this drawing itself has changed since it was last painted. */
  #own: Patches;
  #grid: PatchGrid;
  /** Drum's centre, device px. */
  #at: readonly [number, number] = [0, 0];
  #ground: Ground | null = null;
  /** Everything stands elsewhere on the screen. */
  #shifted = true;
  /** Highest rank put so far. */
  #last = -1;

  readonly #gone: () => void;
  /** Pictures of what stands still; null: each shape is painted, whatever it does. */
  readonly #runs: StillRuns<Painted> | null;

  /**
   * @param gone called when its drawing is no longer painted
   * @param copies what stands still may be copied from a picture of it
   */
  constructor(stains: Stains, gone: () => void, copies = false) {
    this.#stains = stains;
    this.#gone = gone;
    this.#runs = copies ? new StillRuns() : null;
    this.#grid = stains.grid;
    this.#own = this.#grid.all();
  }

  begin(x: number, y: number, window: Window | null, ground: Ground): void {
    const { grid } = this.#stains;
    const anew = grid !== this.#grid;
    // What was covered of the old grid says nothing in the new, which is stained all over.
    if (anew) for (const painted of this.#kept.values()) painted.cover = grid.none();
    if (anew || window?.key !== this.#window?.key) {
      if (this.#shown && !anew) this.#stain(this.#shown);
      this.#shown = window && grid.cover([round(window)], SMOOTH, 'nonzero');
      if (this.#shown) this.#stain(this.#shown);
      this.#shifted = true;
    } else this.#shifted = x !== this.#at[0] || y !== this.#at[1];
    if (anew || this.#shifted) this.#own = grid.all();
    this.#grid = grid;
    this.#at = [x, y];
    this.#ground = ground;
    this.#window = window;
    this.#order.length = 0;
    this.#last = -1;
  }

  put(shape: Shape, build: boolean, move: boolean, ground: Ground): void {
    const was = this.#kept.get(shape.key);
    let painted = was;
    if (build || !painted) {
      painted = built(shape, ground, was?.cover ?? this.#grid.none(), was?.rank ?? this.#last);
      this.#kept.set(shape.key, painted);
    }
    if (build || move || this.#shifted) {
      painted.place = isBaked(shape) ? null : (shape.place ?? null);
      this.#stain(painted.cover);
      painted.cover = this.#coverOf(shape, painted, ground);
      this.#stain(painted.cover);
      painted.still = 0;
    } else painted.still++;
    // One that was painted before its forerunner until now has changed its turn.
    if (painted.rank < this.#last) this.#stain(painted.cover);
    this.#last = Math.max(this.#last, painted.rank);
    this.#order.push(painted);
  }

  #stain(patches: Patches): void {
    this.#stains.add(patches);
    join(this.#own, patches);
  }

  end(): void {
    this.#order.forEach((painted, i) => {
      painted.rank = i;
    });
  }

  drop(key: string): void {
    const painted = this.#kept.get(key);
    if (painted) this.#stain(painted.cover);
    this.#kept.delete(key);
  }

  destroy(): void {
    this.#kept.clear();
    this.#runs?.drop();
    this.#gone();
  }

  #coverOf(shape: Shape, painted: Painted, ground: Ground): Patches {
    const cover = this.#touched(shape, painted, ground);
    return this.#shown ? both(cover, this.#shown) : cover;
  }

  #touched(shape: Shape, painted: Painted, { scale, pixels }: Ground): Patches {
    const px = scale * pixels;
    const [x, y] = this.#at;
    const half = painted.stroke ? (painted.width * pixels) / 2 : 0;
    const { place } = shape;
    // Of a stud or a rivet its box tells as much as its outline, and sooner.
    const corners = cornersOf(shape.path).map((p): Point => {
      const [cx, cy] = place ? apply(place, p) : p;
      return [x + cx * px, y - cy * px];
    });
    const [a, , c] = corners;
    if (a && c && distance(a, c) < SMALL) return this.#grid.around(corners, half + SMOOTH);
    const path = place ? moved(shape.path, place) : shape.path;
    const lines = flatten(path, NEARLY / px).map(({ points, closed }) => ({
      points: points.map((v, i) => (i % 2 === 0 ? x + v * px : y - v * px)),
      closed,
    }));
    const rule = painted.fill ? painted.rule : null;
    return this.#grid.cover(lines, half + NEARLY + SMOOTH, rule);
  }

  /** Sees what of the painting stands still, before anything is due; in how many steps it is painted. */
  arrange(): number {
    const { width, height } = this.#ground ?? { width: 0, height: 0 };
    this.#steps =
      this.#shown || !this.#runs
        ? this.#order
        : this.#runs.arrange(this.#order, this.#grid, width, height);
    return this.#steps.length;
  }

  /** Prepares for what will stand still, a little at a time; false when it is prepared. */
  stock(): boolean {
    const { width, height } = this.#ground ?? { width: 0, height: 0 };
    return !this.#shown && width > 0 && this.#runs?.stock(width, height) === true;
  }

  /** Paints what is due. */
  render(pen: Pen): void {
    const shown = this.#shown;
    for (const step of this.#steps)
      if (step instanceof StillRun)
        for (const due of this.#stains.due)
          if (meet(step.cover, due.patches))
            step.complete(due, (onto, missing) => this.#paint(onto, missing, 0, 0, step.shapes));
    for (const due of this.#stains.due) {
      if (!shown) this.#paint(pen, due, 0, 0, this.#steps);
      else if (this.#window && meet(due.patches, shown)) this.#look(pen, due, this.#window);
    }
    this.#own = this.#grid.none();
  }

  /** Paints on the glass, then shows what of it lies in the window. */
  #look(pen: Pen, due: Due, { x, y, radius, fill }: Window): void {
    const left = Math.floor(x - radius) - 1;
    const top = Math.floor(y - radius) - 1;
    const side = Math.ceil(2 * radius) + 3;
    this.#glass ??= ownCanvas(side, side);
    if (this.#glass.width !== side) Object.assign(this.#glass, { width: side, height: side });
    const inside = penOf(this.#glass, true);
    const { rect } = due;
    // Where only what lies under the glass has changed, the glass is as it was.
    if (meet(this.#own, due.patches)) {
      inside.setTransform(1, 0, 0, 1, 0, 0);
      inside.globalAlpha = 1;
      inside.fillStyle = fill;
      inside.fillRect(rect.x - left, rect.y - top, rect.width, rect.height);
      this.#paint(inside, due, left, top, this.#order);
    }
    pen.save();
    clipTo(pen, rect, 0, 0);
    pen.beginPath();
    pen.arc(x, y, radius, 0, TURN);
    pen.clip();
    pen.globalAlpha = 1;
    pen.drawImage(this.#glass, left, top);
    pen.restore();
  }

  /**
   * @param left what of the screen the pen's canvas begins with, device px
   * @param order what is painted, one on top of the other
   */
  #paint(
    pen: Pen,
    { rect, patches }: Due,
    left: number,
    top: number,
    order: readonly (Painted | StillRun<Painted>)[],
  ): void {
    const { pixels, scale } = this.#ground ?? { pixels: 1, scale: 1 };
    const [x, y] = [this.#at[0] - left, this.#at[1] - top];
    pen.save();
    clipTo(pen, rect, left, top);
    pen.lineJoin = 'round';
    let stands: Frame | null | undefined;
    for (const p of order) {
      if (!meet(p.cover, patches)) continue;
      if (p instanceof StillRun) {
        p.copy(pen);
        stands = undefined;
        continue;
      }
      if (stands !== p.place) {
        stands = p.place;
        const { angle, x: dx, y: dy } = p.place ?? { angle: 0, x: 0, y: 0 };
        const c = pixels * Math.cos(angle);
        const s = pixels * Math.sin(angle);
        const mm = pixels * scale;
        pen.setTransform(c, -s, s, c, x + dx * mm, y - dy * mm);
      }
      if (p.fill) {
        pen.globalAlpha = p.fillAlpha;
        pen.fillStyle = p.fill;
        pen.fill(p.lines, p.rule);
      }
      if (p.stroke) {
        pen.globalAlpha = p.strokeAlpha;
        pen.strokeStyle = p.stroke;
        pen.lineWidth = p.width;
        pen.lineCap = p.cap;
        pen.stroke(p.dashes ?? p.lines);
      }
    }
    pen.restore();
  }
}

function clipTo(pen: Pen, { x, y, width, height }: Rect, left: number, top: number): void {
  pen.setTransform(1, 0, 0, 1, 0, 0);
  pen.beginPath();
  pen.rect(x - left, y - top, width, height);
  pen.clip();
}

function round({ x, y, radius }: Window): Polyline {
  const [circle] = flatten([['A', x, y, radius, 0, TURN], ['Z']], NEARLY / 2);
  return circle ?? { points: [], closed: true };
}

/**
 * Outline in CSS px, y down. A 2D canvas draws arcs, and strokes them without a joint at every
 * chord, so here nothing has to be flattened.
 */
function outlinePath(path: Path, scale: number): Path2D {
  const out = new Path2D();
  for (const c of path) {
    if (c[0] === 'M') out.moveTo(c[1] * scale, -c[2] * scale);
    else if (c[0] === 'L') out.lineTo(c[1] * scale, -c[2] * scale);
    else if (c[0] === 'Z') out.closePath();
    else {
      const [, x, y, radius, from, to] = c;
      const parts = arcParts(radius * scale, to - from);
      const end = (i: number) => -from - ((to - from) * i) / parts;
      for (let i = 0; i < parts; i++)
        out.arc(x * scale, -y * scale, radius * scale, end(i), end(i + 1), to > from);
    }
  }
  return out;
}

function built(shape: Shape, ground: Ground, cover: Patches, rank: number): Painted {
  const { style, evenOdd } = shape;
  const colour = style.fill ? colourOf(ground.theme, style.fill) : null;
  return {
    lines: outlinePath(standing(shape), ground.scale),
    rule: evenOdd ? 'evenodd' : 'nonzero',
    fill: style.hatch ? ground.tiles.pattern(style.hatch, ground) : colour,
    fillAlpha: style.fillAlpha ?? 1,
    stroke: style.stroke ? colourOf(ground.theme, style.stroke) : null,
    strokeAlpha: style.strokeAlpha ?? 1,
    width: penWidth(strokePx(style.width, ground), ground),
    cap: style.round ? 'round' : 'butt',
    dashes: style.stroke && style.dash ? dashed(shape, style.dash, ground) : null,
    place: null,
    cover,
    rank,
    still: 0,
  };
}

function penWidth(width: number, { pixels, width: wide, height: high }: Ground): number {
  return wide * high > LARGE && width * pixels <= HAIR ? Math.min(width, ONE / pixels) : width;
}

/** The dashes of a shape's outline, in CSS px, y down. */
function dashed(shape: Shape, pattern: readonly number[], ground: Ground): Path2D {
  const out = new Path2D();
  const lengths = pattern.map((d) => d * ground.k);
  for (const line of outlines(shape, ground)) {
    for (const piece of dashes(line, lengths)) {
      out.moveTo(piece[0] as number, piece[1] as number);
      for (let i = 2; i < piece.length; i += 2) {
        out.lineTo(piece[i] as number, piece[i + 1] as number);
      }
    }
  }
  return out;
}
