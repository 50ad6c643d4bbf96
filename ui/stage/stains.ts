import { join, type Patches, PatchGrid, type Rect } from './patches.ts';

/** A rectangle to paint, and its patches. */
export interface Due {
  readonly rect: Rect;
  readonly patches: Patches;
}

/** What of a canvas has to be painted anew: told while a frame is got ready, taken once to paint it. */
export class Stains {
  #grid = new PatchGrid(1, 1);
  #stained = this.#grid.all();
  #due: readonly Due[] = [];

  get grid(): PatchGrid {
    return this.#grid;
  }

  /** Disjoint rectangles that this frame has to paint. */
  get due(): readonly Due[] {
    return this.#due;
  }

  /** Another size, device px: nothing painted stands. */
  resize(width: number, height: number): void {
    this.#grid = new PatchGrid(width, height);
    this.all();
  }

  all(): void {
    this.#stained = this.#grid.all();
  }

  add(patches: Patches): void {
    join(this.#stained, patches);
  }

  /**
   * Makes due what was stained, and begins anew.
   *
   * @param steps in how many the whole is painted
   */
  take(steps: number): readonly Due[] {
    const rects = this.#grid.rects(this.#stained, steps);
    this.#due = rects.map((rect) => ({ rect, patches: this.#grid.of(rect) }));
    this.#stained = this.#grid.none();
    return this.#due;
  }
}
