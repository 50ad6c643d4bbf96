import type { Motion, MotionPress, MotionRecord } from '../sim/index.ts';

/** What was done to the brake in one step: pressed, turned, held by hands. */
export type Done = MotionPress;

/** A record of the moving brake, and what was done to it in the steps after it, all of the record's length. */
export interface Cell {
  readonly from: MotionRecord;
  readonly done: Done[];
}

/** A stretch of the brake's time, s. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** So long is kept, s of the brake's time. */
export const KEPT = 10;
/** A record for each step of ordinary time, s: a finer step is run again from the last one. */
const APART = 1 / 240;

export const timeOf = ({ since, steps, dt }: MotionRecord): number => since + steps * dt;
const endOf = ({ from, done }: Cell): number => timeOf(from) + done.length * from.dt;

/**
 * The last ten seconds of the moving brake: records, and what was done between them, so that any moment of
 * them can be had again to the bit, or any stretch run again by finer steps. Some 2.5 kB a record, 6 MB in all.
 */
export class Reel {
  #cells: Cell[] = [];
  /** When teeth dropped, s: the crests of the toothed lever. */
  #crests: number[] = [];

  #parted = false;

  /** The next step begins a record of its own: something was done to the brake that no press says. */
  part(): void {
    this.#parted = true;
  }

  /**
   * The brake stands before a step in which this is done to it.
   *
   * @param before the brake as it stands, where that was taken down already: no need to do it twice
   */
  note(motion: Motion, done: Done, before?: MotionRecord): void {
    const last = this.#cells.at(-1);
    const { dt, time } = motion;
    const goesOn =
      last !== undefined &&
      !this.#parted &&
      last.from.dt === dt &&
      Math.abs(endOf(last) - time) < dt / 4 &&
      (last.done.length + 1) * dt <= APART * 1.001;
    this.#parted = false;
    if (goesOn) last.done.push(done);
    else {
      // Steps of another length are counted anew.
      const from = before?.dt === dt ? before : motion.snapshot();
      this.#cells.push({ from, done: [done] });
    }
    this.#forget(time - KEPT);
  }

  crest(at: number): void {
    this.#crests.push(at);
  }

  #forget(before: number): void {
    let gone = 0;
    while (gone < this.#cells.length && endOf(this.#cells[gone] as Cell) < before) gone++;
    if (gone > 0) this.#cells.splice(0, gone);
    while (this.#crests.length > 0 && (this.#crests[0] as number) < before) this.#crests.shift();
  }

  /** Nothing is kept of what came after a time; all is forgotten when none is named. */
  cut(after = Number.NEGATIVE_INFINITY): void {
    while (this.#cells.length > 0 && timeOf((this.#cells.at(-1) as Cell).from) >= after) {
      this.#cells.pop();
    }
    const last = this.#cells.at(-1);
    if (last) {
      const left = Math.round((after - timeOf(last.from)) / last.from.dt);
      if (left < last.done.length) last.done.length = left;
    }
    this.#crests = this.#crests.filter((at) => at < after);
  }

  get cells(): readonly Cell[] {
    return this.#cells;
  }

  get crests(): readonly number[] {
    return this.#crests;
  }

  /** From when on it is kept, s; NaN when nothing is. */
  get begin(): number {
    const first = this.#cells[0];
    return first ? timeOf(first.from) : Number.NaN;
  }

  /** The last record at or before a time; the first when there is none. */
  before(time: number): { readonly cell: Cell; readonly index: number } | null {
    let [low, high] = [0, this.#cells.length - 1];
    if (high < 0) return null;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (timeOf((this.#cells[middle] as Cell).from) <= time + 1e-9) low = middle;
      else high = middle - 1;
    }
    return { cell: this.#cells[low] as Cell, index: low };
  }
}
