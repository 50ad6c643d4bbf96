import { type AnyCanvas, ownCanvas, type Pen, penOf } from './own-canvas.ts';
import { countOf, join, type Patches, type PatchGrid, without } from './patches.ts';
import type { Due } from './stains.ts';

/**
 * Shapes that follow each other in the painting and stand still are painted once, onto a picture of their own, and from
 * then on copied: while a pressed brake is held and its drum turns, five shapes of the hub and a stroke of paint move
 * among a hundred and forty. A picture lets through what lies under it, and painting over is associative, so the canvas
 * comes out as if each had been painted (to one step in 255, by rounding).
 */

/** What may stand in a run. */
export interface Standing {
  /** Pictures since it was last seen to change. */
  still: number;
  /** What of the screen it touches. */
  readonly cover: Patches;
}

/** What has stood still for so many pictures is taken to go on so. */
const PATIENCE = 20;
/** So few shapes are painted as quickly as copied, unless they are large. */
const FEW = 6;
/** Patches that are large: the drum by itself, hatched and lined, takes a fifth of a whole picture. */
const LARGE = 48;
/** Pixels of all pictures together, each of 4 bytes; what has no room is painted. */
const ROOM = 8e6;

/** So many sheets are kept ready: a press that comes to rest seldom has more runs. */
const STOCK = 5;

/**
 * What a run is painted on. A browser gets the memory of a canvas when something is first painted there, 3 to 12 ms for
 * one of the stage's size: so it is kept for the next run, or every press that comes to rest would cost that anew; and
 * the first ones are made while nobody waits for them.
 */
interface Sheet {
  readonly canvas: AnyCanvas;
  readonly pen: Pen;
}

function newSheet(width: number, height: number): Sheet {
  const canvas = ownCanvas(width, height);
  return { canvas, pen: penOf(canvas) };
}

/** Gives up the memory at once, where collecting it may take a while. */
const giveUp = ({ canvas }: Sheet): void => {
  Object.assign(canvas, { width: 0, height: 0 });
};

/** Is a run copied sooner than painted? */
function isWorth(order: readonly Standing[], from: number, to: number): boolean {
  if (to - from >= FEW) return true;
  let touched = 0;
  for (let i = from; i < to; i++) touched += countOf((order[i] as Standing).cover);
  return touched >= LARGE;
}

/** A run and its picture. */
export class StillRun<T extends Standing> {
  readonly shapes: readonly T[];
  readonly cover: Patches;
  readonly sheet: Sheet;
  readonly #grid: PatchGrid;
  /** What of it is painted. */
  readonly #has: Patches;

  /** @param sheet as large as the stage; what stands on it is wiped off where it is painted */
  constructor(shapes: readonly T[], grid: PatchGrid, sheet: Sheet) {
    this.shapes = shapes;
    this.sheet = sheet;
    this.#grid = grid;
    this.cover = grid.none();
    for (const { cover } of shapes) join(this.cover, cover);
    this.#has = grid.none();
  }

  /**
   * Paints onto its picture what of it is due and not painted yet. All that is due in a frame comes before the first
   * copy: a picture that was copied and is painted on afterwards, in the same frame, is doubled by the browser first,
   * 8 ms for one of the stage's size.
   *
   * @param paint paints what is missing onto its picture
   */
  complete({ patches }: Due, paint: (pen: Pen, missing: Due) => void): void {
    const { pen } = this.sheet;
    for (const missing of this.#grid.rects(without(patches, this.#has), this.shapes.length)) {
      const { x, y, width, height } = missing;
      const all = this.#grid.of(missing);
      pen.setTransform(1, 0, 0, 1, 0, 0);
      pen.clearRect(x, y, width, height);
      paint(pen, { rect: missing, patches: all });
      join(this.#has, all);
    }
  }

  /** Copies what is due; it is complete there. */
  copy(onto: Pen): void {
    onto.setTransform(1, 0, 0, 1, 0, 0);
    onto.globalAlpha = 1;
    onto.imageSmoothingEnabled = false;
    onto.drawImage(this.sheet.canvas, 0, 0);
  }

  /** Is it the run that begins there in the painting? */
  is(order: readonly T[], from: number, to: number): boolean {
    return (
      this.shapes.length === to - from && this.shapes.every((shape, i) => shape === order[from + i])
    );
  }
}

/** The runs of one drawing. */
export class StillRuns<T extends Standing> {
  #kept: StillRun<T>[] = [];
  /** Of runs that are no more. */
  #spare: Sheet[] = [];

  /** The painting, in its order: shapes that move, and runs of those that stand. */
  arrange(
    order: readonly T[],
    grid: PatchGrid,
    width: number,
    height: number,
  ): readonly (T | StillRun<T>)[] {
    const before = this.#kept;
    this.#kept = [];
    const most = Math.floor(ROOM / Math.max(1, width * height));
    const out: (T | StillRun<T>)[] = [];
    for (let from = 0; from < order.length; ) {
      let to = from;
      while (to < order.length && (order[to] as T).still >= PATIENCE) to++;
      if (!isWorth(order, from, to) || this.#kept.length >= most) {
        to = Math.max(to, from + 1);
        for (let i = from; i < to; i++) out.push(order[i] as T);
      } else {
        const run =
          before.find((old) => old.is(order, from, to)) ??
          new StillRun(order.slice(from, to), grid, this.#sheet(width, height));
        this.#kept.push(run);
        out.push(run);
      }
      from = to;
    }
    for (const old of before) if (!this.#kept.includes(old)) this.#spare.push(old.sheet);
    for (const sheet of this.#spare.splice(Math.max(0, most - this.#kept.length))) giveUp(sheet);
    return out;
  }

  /** Makes one more sheet to be used later; false when there are enough. */
  stock(width: number, height: number): boolean {
    const most = Math.min(STOCK, Math.floor(ROOM / Math.max(1, width * height)));
    if (this.#kept.length + this.#spare.length >= most) return false;
    const sheet = newSheet(width, height);
    sheet.pen.clearRect(0, 0, 1, 1);
    this.#spare.push(sheet);
    return true;
  }

  #sheet(width: number, height: number): Sheet {
    for (const sheet of this.#spare.splice(0)) {
      const { canvas } = sheet;
      if (canvas.width === width && canvas.height === height) this.#spare.push(sheet);
      else giveUp(sheet);
    }
    return this.#spare.pop() ?? newSheet(width, height);
  }

  drop(): void {
    for (const run of this.#kept.splice(0)) giveUp(run.sheet);
    for (const sheet of this.#spare.splice(0)) giveUp(sheet);
  }
}
