import { type CanvasRenderer, Matrix, RenderContainer, type Renderer } from 'pixi.js';
import { colourOf } from '../theme.ts';
import type { Path } from './path.ts';
import { type Ground, type Hand, isBaked, standing } from './pixi-hand.ts';
import { type Shape, strokePx } from './shapes.ts';

interface Painted {
  readonly lines: Path2D;
  readonly rule: CanvasFillRule;
  readonly fill: string | CanvasPattern | null;
  readonly fillAlpha: number;
  readonly stroke: string | null;
  readonly strokeAlpha: number;
  readonly width: number;
  readonly cap: CanvasLineCap;
  readonly dash: number[];
  /** Where a shape that moves stands; null: as built. */
  place: Matrix | null;
}

/**
 * Paints a whole drawing as one custom node of Pixi's canvas renderer. Outlines are kept as Path2D,
 * so one call fills or strokes all of a shape's lines and the canvas cuts dashes itself; Pixi's own
 * Graphics would stroke every dash and every turn of a coil by a call of its own.
 */
export class CanvasHand implements Hand {
  readonly node = new RenderContainer({ render: (renderer) => this.#render(renderer) });
  readonly #kept = new Map<string, Painted>();
  readonly #order: Painted[] = [];
  readonly #matrix = new Matrix();

  begin(): void {
    this.#order.length = 0;
  }

  put(shape: Shape, build: boolean, move: boolean, ground: Ground): void {
    let painted = build ? undefined : this.#kept.get(shape.key);
    if (!painted) {
      painted = built(shape, ground);
      this.#kept.set(shape.key, painted);
    }
    this.#order.push(painted);
    if (!shape.place || isBaked(shape) || !(build || move)) return;
    const c = Math.cos(shape.place.angle);
    const s = Math.sin(shape.place.angle);
    const { x, y } = shape.place;
    painted.place ??= new Matrix();
    painted.place.set(c, -s, s, c, x * ground.scale, -y * ground.scale);
  }

  drop(key: string): void {
    this.#kept.delete(key);
  }

  #render(renderer: Renderer): void {
    const system = (renderer as CanvasRenderer).canvasContext;
    const pen = system.activeContext as unknown as CanvasRenderingContext2D;
    const base = this.node.groupTransform;
    pen.save();
    pen.lineJoin = 'round';
    let stands: Matrix | null | undefined;
    for (const p of this.#order) {
      if (stands !== p.place) {
        stands = p.place;
        system.setContextTransform(
          p.place ? this.#matrix.copyFrom(base).append(p.place) : base,
          false,
        );
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
        pen.setLineDash(p.dash);
        pen.stroke(p.lines);
      }
    }
    pen.restore();
  }
}

/**
 * Outline in CSS px, y down. A 2D canvas draws true arcs, and strokes them without a joint at every
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
      out.arc(x * scale, -y * scale, radius * scale, -from, -to, to > from);
    }
  }
  return out;
}

function built(shape: Shape, ground: Ground): Painted {
  const { style, evenOdd } = shape;
  const colour = style.fill ? colourOf(ground.theme, style.fill) : null;
  return {
    lines: outlinePath(standing(shape), ground.scale),
    rule: evenOdd ? 'evenodd' : 'nonzero',
    fill: style.hatch ? ground.tiles.pattern(style.hatch, ground) : colour,
    fillAlpha: style.fillAlpha ?? 1,
    stroke: style.stroke ? colourOf(ground.theme, style.stroke) : null,
    strokeAlpha: style.strokeAlpha ?? 1,
    width: strokePx(style.width, ground),
    cap: style.round ? 'round' : 'butt',
    dash: style.dash?.map((d) => d * ground.k) ?? [],
    place: null,
  };
}
