import type uPlot from 'uplot';
import { type Brake, KM, type LifeEvent, type LifeRow } from '../../sim/index.ts';
import type { Theme, Token } from '../theme.ts';
import { type KeptRow, keptOf, type Lane } from './lanes.ts';

/** What stands in a lane beside its curves, painted on the plot's own canvas. */

export const font = (size: number, weight: number): string =>
  `${weight} ${size}px "Encode Sans Variable", sans-serif`;

export interface LaneView {
  readonly brake: Brake;
  readonly rows: readonly LifeRow[];
  readonly events: readonly LifeEvent[];
  /** Row that the stage shows. */
  readonly at: number;
  readonly theme: Theme;
  readonly narrow: boolean;
  /** A kept moment that is to be seen. */
  readonly kept: KeptRow | null;
  /** Carries the marks of the events. */
  readonly first: boolean;
  /** Its title is written by a control over the canvas. */
  readonly titled: boolean;
}

/** How an event is marked: every colour with a form of its own. */
export type MarkForm = 'tooth' | 'reject' | 'watch';
export function markOf(kind: LifeEvent['kind']): MarkForm {
  switch (kind) {
    case 'click':
    case 'stepped hot':
    case 'tooth lost':
      return 'tooth';
    case 'lever off its stop':
    case 'drag ends':
    case 'teeth used up':
      return 'watch';
    default:
      return 'reject';
  }
}

/** Marks nearer than this are thinned, px; their numbers need more. */
const MARK_APART = 8;
const NUMBER_APART = 14;
const DIGIT = 9;

class Pen {
  readonly #c: CanvasRenderingContext2D;
  readonly #view: LaneView;
  readonly r = devicePixelRatio;

  constructor(c: CanvasRenderingContext2D, view: LaneView) {
    this.#c = c;
    this.#view = view;
    c.textBaseline = 'middle';
  }

  colour(token: Token): string {
    return this.#view.theme.colours[token];
  }

  text(
    words: string,
    x: number,
    y: number,
    token: Token,
    size: number,
    weight: number,
    align: CanvasTextAlign = 'left',
  ): void {
    const c = this.#c;
    c.font = font(size * this.r, weight);
    c.textAlign = align;
    c.lineWidth = 4 * this.r;
    c.lineJoin = 'round';
    c.strokeStyle = this.colour('panel');
    c.strokeText(words, x, y);
    c.fillStyle = this.colour(token);
    c.fillText(words, x, y);
  }

  line(token: Token, width: number, dash: readonly number[], points: readonly number[]): void {
    const c = this.#c;
    c.strokeStyle = this.colour(token);
    c.lineWidth = width * this.r;
    c.setLineDash(dash.map((d) => d * this.r));
    c.beginPath();
    c.moveTo(points[0] as number, points[1] as number);
    c.lineTo(points[2] as number, points[3] as number);
    c.stroke();
    c.setLineDash([]);
  }

  /** Words on a ground of their own, so that a curve behind them does not strike them through. */
  label(words: string, x: number, y: number, token: Token, align: 'left' | 'right'): void {
    const c = this.#c;
    c.font = font(15 * this.r, 660);
    const wide = c.measureText(words).width + 6 * this.r;
    c.globalAlpha = 0.88;
    c.fillStyle = this.colour('panel');
    c.fillRect(
      align === 'left' ? x - 3 * this.r : x - wide + 3 * this.r,
      y - 8 * this.r,
      wide,
      16 * this.r,
    );
    c.globalAlpha = 1;
    this.text(words, x, y, token, 15, 660, align);
  }

  ring(token: Token, x: number, y: number, radius: number): void {
    const c = this.#c;
    c.beginPath();
    c.arc(x, y, radius, 0, 2 * Math.PI);
    c.fillStyle = this.colour('panel');
    c.fill();
    c.strokeStyle = this.colour(token);
    c.lineWidth = 1.5 * this.r;
    c.stroke();
  }

  shape(token: Token, points: readonly (readonly [number, number])[]): void {
    const c = this.#c;
    c.fillStyle = this.colour(token);
    c.beginPath();
    for (const [x, y] of points) c.lineTo(x, y);
    c.closePath();
    c.fill();
  }
}

function mark(pen: Pen, form: MarkForm, x: number, top: number): void {
  const { r } = pen;
  const y = top - 6 * r;
  if (form === 'tooth') {
    pen.shape('adj', [
      [x - 6 * r, y],
      [x + 6 * r, y],
      [x, y + 11 * r],
    ]);
  } else if (form === 'watch') {
    pen.shape('warn', [
      [x, y - 1 * r],
      [x + 7.5 * r, y + 12 * r],
      [x - 7.5 * r, y + 12 * r],
    ]);
    pen.line('warnInk', 2, [], [x, y + 3 * r, x, y + 7.5 * r]);
    pen.line('warnInk', 2, [], [x, y + 9 * r, x, y + 11 * r]);
  } else {
    const h = 6.5 * r;
    const m = y + 5 * r;
    pen.shape('bad', [
      [x - h, m - h],
      [x + h, m - h],
      [x + h, m + h],
      [x - h, m + h],
    ]);
    const d = 3.4 * r;
    pen.line('panel', 2, [], [x - d, m - d, x + d, m + d]);
    pen.line('panel', 2, [], [x - d, m + d, x + d, m - d]);
  }
}

/** Marks of the events: the teeth first, thinned where they stand close, then what needs an eye. */
function marks(pen: Pen, u: uPlot, view: LaneView): void {
  const { r } = pen;
  const { top } = u.bbox;
  let lastMark = Number.NEGATIVE_INFINITY;
  let lastNumber = Number.NEGATIVE_INFINITY;
  const place = (e: LifeEvent): number => u.valToPos(e.distance / KM, 'x', true);
  for (const e of view.events) {
    if (markOf(e.kind) !== 'tooth') continue;
    const x = place(e);
    if (x - lastMark < MARK_APART * r) continue;
    lastMark = x;
    mark(pen, 'tooth', x, top);
    const tooth = String(e.tooth);
    if (x - lastNumber < (NUMBER_APART + DIGIT * tooth.length) * r) continue;
    lastNumber = x;
    pen.text(tooth, x, top - 14 * r, 'adj', view.narrow ? 14 : 13.5, 700, 'center');
  }
  for (const e of view.events) {
    const form = markOf(e.kind);
    if (form !== 'tooth') mark(pen, form, place(e), top - 1 * r);
  }
}

/** Line of the moment that the stage shows, with a handle where the strip begins. */
function moment(pen: Pen, u: uPlot, view: LaneView, x: number): void {
  const { r } = pen;
  const { top, height } = u.bbox;
  pen.line('ink', 2, [], [x, view.first ? 0 : top - 8 * r, x, top + height]);
  if (!view.first) return;
  pen.shape('ink', [
    [x - 8 * r, 0],
    [x + 8 * r, 0],
    [x, 11 * r],
  ]);
}

/** Values of the moment beside its line, kept apart from each other. */
function ends(pen: Pen, u: uPlot, lane: Lane, row: LifeRow, x: number): void {
  const { r } = pen;
  // Near the end the limits' words stand beside it.
  const left = x > u.bbox.left + u.bbox.width - 84 * r;
  const { top, height } = u.bbox;
  const told = lane.series
    .map((s) => ({ s, value: s.value(row), y: u.valToPos(s.value(row), 'y', true) }))
    .filter((t) => Number.isFinite(t.value))
    .sort((a, b) => a.y - b.y);
  let before = Number.NEGATIVE_INFINITY;
  told.forEach(({ s, value, y }, i) => {
    // Beside a line that has curves under it, the words stand off the curve.
    const off = left ? (i === 0 ? -11 : 12) * r : 0;
    const free = Math.max(y + off, before + 17 * r, top + 7 * r);
    const at = Math.min(free, top + height - 8 * r);
    before = at;
    const side = left ? 'right' : 'left';
    pen.label(s.end(value), x + (left ? -10 : 10) * r, at, s.colour, side);
  });
}

/** The kept moment: thin grey lines at its values, a ring where it stood on the way, where that is in sight. */
function ghost(pen: Pen, u: uPlot, lane: Lane, view: LaneView): void {
  const { kept } = view;
  if (!kept) return;
  const { r } = pen;
  const { left, width } = u.bbox;
  const x = u.valToPos(kept.distance / KM, 'x', true);
  const values = keptOf(lane.id, kept);
  values.forEach((value, i) => {
    const y = u.valToPos(value, 'y', true);
    pen.line('ink2', 1.5, [3, 4], [left, y, left + width, y]);
    if (x >= left && x <= left + width) pen.ring('ink2', x, y, 5 * r);
    if (!view.narrow && i === 0) pen.text('kept', left + 6 * r, y - 9 * r, 'ink2', 14, 560);
  });
}

/** Titles, limits, marks, the moment and its values. */
export function paintLane(u: uPlot, lane: Lane, view: LaneView): void {
  const { ctx } = u;
  ctx.save();
  const pen = new Pen(ctx, view);
  const { r } = pen;
  const { left, top, width } = u.bbox;
  const { narrow } = view;
  if (!view.titled) {
    pen.text(
      lane.title,
      (narrow ? 8 : 16) * r,
      top + (narrow ? 6 : 10) * r,
      'ink',
      narrow ? 14 : 16,
      660,
    );
  }
  const unitAt = top + (view.titled ? 40 : narrow ? 23 : 29) * r;
  pen.text(lane.unit, (narrow ? 8 : 16) * r, unitAt, 'ink2', narrow ? 14 : 13.5, 540);
  const y = (v: number): number => u.valToPos(v, 'y', true);
  for (const limit of lane.limits) {
    pen.line(limit.colour, 1.6, [16, 4], [left, y(limit.at), left + width, y(limit.at)]);
    if (!narrow) pen.text(limit.text, left + width + 10 * r, y(limit.at), limit.colour, 16, 660);
  }
  ghost(pen, u, lane, view);
  const row = view.rows[view.at];
  if (row) {
    const x = u.valToPos(row.distance / KM, 'x', true);
    moment(pen, u, view, x);
    if (!narrow) ends(pen, u, lane, row, x);
  }
  if (view.first) marks(pen, u, view);
  ctx.restore();
}
