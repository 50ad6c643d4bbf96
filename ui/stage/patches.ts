import type { Point } from '../../sim/index.ts';
import type { Polyline } from './flatten.ts';

/**
 * The screen in square patches, and which of them a shape touches. Where no graphics card paints,
 * only the patches on which something changed are painted anew: in a brake that is held while its
 * drum turns, those of the hub.
 */

/** Side of a patch, device px: fine enough to follow a rim, coarse enough to be told quickly. */
export const PATCH = 32;

/** One bit a patch, row by row. */
export type Patches = Uint32Array;

/** Whole patches, device px. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Rectangle of patches, ends not included. */
interface Block {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Patches painted needlessly that cost about as much as going through one shape once more. */
const WASTE = 0.7;

export class PatchGrid {
  readonly columns: number;
  readonly rows: number;

  /** @param width device px */
  constructor(width: number, height: number) {
    this.columns = Math.max(1, Math.ceil(width / PATCH));
    this.rows = Math.max(1, Math.ceil(height / PATCH));
  }

  none(): Patches {
    return new Uint32Array(Math.ceil((this.columns * this.rows) / 32));
  }

  all(): Patches {
    return this.#block({ left: 0, top: 0, right: this.columns, bottom: this.rows });
  }

  /**
   * Patches that a painted outline touches: its line with `reach` px to both sides, and what it
   * encloses. What lies outside the grid is left out.
   *
   * @param lines device px, y down
   */
  cover(lines: readonly Polyline[], reach: number, fill: CanvasFillRule | null): Patches {
    const out = this.none();
    for (const line of lines) {
      eachSide(line, fill !== null, (ax, ay, bx, by) => this.#line(out, ax, ay, bx, by, reach));
    }
    if (fill) this.#inside(out, lines, fill);
    return out;
  }

  /** Patches that a box of points touches, with `reach` px around it. */
  around(points: readonly Point[], reach: number): Patches {
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    const at = (px: number): number => Math.floor(px / PATCH);
    return this.#block({
      left: at(Math.min(...xs) - reach),
      top: at(Math.min(...ys) - reach),
      right: at(Math.max(...xs) + reach) + 1,
      bottom: at(Math.max(...ys) + reach) + 1,
    });
  }

  /**
   * Disjoint rectangles that hold all the patches, few rather than exact.
   *
   * @param steps in how many each rectangle is painted
   */
  rects(patches: Patches, steps: number): Rect[] {
    return joined(this.#runs(patches), WASTE * steps).map(({ left, top, right, bottom }) => ({
      x: left * PATCH,
      y: top * PATCH,
      width: (right - left) * PATCH,
      height: (bottom - top) * PATCH,
    }));
  }

  /** The patches of a rectangle made of whole ones. */
  of({ x, y, width, height }: Rect): Patches {
    const [left, top] = [x / PATCH, y / PATCH];
    return this.#block({ left, top, right: left + width / PATCH, bottom: top + height / PATCH });
  }

  has(patches: Patches, column: number, row: number): boolean {
    const bit = row * this.columns + column;
    return (((patches[bit >> 5] as number) >>> (bit & 31)) & 1) === 1;
  }

  #block({ left, top, right, bottom }: Block): Patches {
    const out = this.none();
    for (let row = top; row < bottom; row++) this.#run(out, row, left, right - 1);
    return out;
  }

  #run(out: Patches, row: number, first: number, last: number): void {
    if (row < 0 || row >= this.rows) return;
    const end = Math.min(last, this.columns - 1);
    for (let column = Math.max(0, first); column <= end; column++) {
      const bit = row * this.columns + column;
      out[bit >> 5] = (out[bit >> 5] as number) | (1 << (bit & 31));
    }
  }

  /** Marks a straight line in pieces no longer than a patch, each with the box around it. */
  #line(out: Patches, ax: number, ay: number, bx: number, by: number, reach: number): void {
    const pieces = Math.max(1, Math.ceil(Math.max(Math.abs(bx - ax), Math.abs(by - ay)) / PATCH));
    let [x, y] = [ax, ay];
    for (let i = 1; i <= pieces; i++) {
      const nx = ax + ((bx - ax) * i) / pieces;
      const ny = ay + ((by - ay) * i) / pieces;
      const first = Math.floor((Math.min(x, nx) - reach) / PATCH);
      const last = Math.floor((Math.max(x, nx) + reach) / PATCH);
      const end = Math.floor((Math.max(y, ny) + reach) / PATCH);
      for (let row = Math.floor((Math.min(y, ny) - reach) / PATCH); row <= end; row++) {
        this.#run(out, row, first, last);
      }
      [x, y] = [nx, ny];
    }
  }

  /**
   * Marks what is enclosed. A patch that the outline does not touch lies wholly inside or outside,
   * so its middle tells; those it touches are marked already.
   */
  #inside(out: Patches, lines: readonly Polyline[], rule: CanvasFillRule): void {
    const crossings: { x: number; way: number }[][] = Array.from({ length: this.rows }, () => []);
    for (const line of lines) {
      eachSide(line, true, (ax, ay, bx, by) => {
        const way = by > ay ? 1 : -1;
        const [low, high] = way > 0 ? [ay, by] : [by, ay];
        const end = Math.min(this.rows - 1, Math.ceil(high / PATCH - 0.5) - 1);
        for (let row = Math.max(0, Math.ceil(low / PATCH - 0.5)); row <= end; row++) {
          const y = (row + 0.5) * PATCH;
          crossings[row]?.push({ x: ax + ((bx - ax) * (y - ay)) / (by - ay), way });
        }
      });
    }
    crossings.forEach((found, row) => {
      found.sort((a, b) => a.x - b.x);
      let winding = 0;
      found.forEach(({ x, way }, i) => {
        winding += rule === 'evenodd' ? 1 : way;
        const to = found[i + 1]?.x;
        if (to === undefined || (rule === 'evenodd' ? winding % 2 === 0 : winding === 0)) return;
        this.#run(out, row, Math.ceil(x / PATCH - 0.5), Math.floor(to / PATCH - 0.5));
      });
    });
  }

  /** Runs of marked patches, equal ones in rows that follow each other as one block. */
  #runs(patches: Patches): Block[] {
    const out: Block[] = [];
    let above = new Map<string, number>();
    for (let row = 0; row < this.rows; row++) {
      const here = new Map<string, number>();
      for (let left = 0; left < this.columns; left++) {
        if (!this.has(patches, left, row)) continue;
        let right = left + 1;
        while (right < this.columns && this.has(patches, right, row)) right++;
        const key = `${left} ${right}`;
        const index = above.get(key) ?? out.length;
        const block = out[index] ?? { left, top: row, right, bottom: row };
        out[index] = { ...block, bottom: row + 1 };
        here.set(key, index);
        left = right;
      }
      above = here;
    }
    return out;
  }
}

/** The sides of an outline; one that is filled is closed by its filling. */
function eachSide(
  { points, closed }: Polyline,
  filled: boolean,
  side: (ax: number, ay: number, bx: number, by: number) => void,
): void {
  const n = points.length;
  const at = (i: number): number => points[i % n] as number;
  for (let i = 0; i < (closed || filled ? n : n - 2); i += 2) {
    side(at(i), at(i + 1), at(i + 2), at(i + 3));
  }
}

/** Do two sets share a patch? */
export function meet(a: Patches, b: Patches): boolean {
  for (let i = 0; i < a.length; i++) {
    if (((a[i] as number) & (b[i] as number)) !== 0) return true;
  }
  return false;
}

/** How many patches are in a set. */
export function countOf(patches: Patches): number {
  let count = 0;
  for (const word of patches) for (let left = word; left !== 0; left &= left - 1) count++;
  return count;
}

/** Puts the patches of `b` into `a`. */
export function join(a: Patches, b: Patches): void {
  for (let i = 0; i < a.length; i++) a[i] = (a[i] as number) | (b[i] as number);
}

/** The patches of `a` that are not in `b`. */
export const without = (a: Patches, b: Patches): Patches =>
  a.map((word, i) => word & ~(b[i] as number));

/** The patches in both. */
export const both = (a: Patches, b: Patches): Patches =>
  a.map((word, i) => word & (b[i] as number));

const areaOf = (b: Block): number => (b.right - b.left) * (b.bottom - b.top);

const around = (a: Block, b: Block): Block => ({
  left: Math.min(a.left, b.left),
  top: Math.min(a.top, b.top),
  right: Math.max(a.right, b.right),
  bottom: Math.max(a.bottom, b.bottom),
});

const overlap = (a: Block, b: Block): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Takes blocks together while that wastes little; none of those left overlap. */
function joined(blocks: readonly Block[], most: number): Block[] {
  const left: Block[] = [];
  const waste = (a: Block, b: Block): number =>
    overlap(a, b) ? -1 : areaOf(around(a, b)) - areaOf(a) - areaOf(b);
  for (const block of blocks) {
    let grown = block;
    // What has grown may reach others, so they are looked through again.
    for (let i = 0; i < left.length; ) {
      const other = left[i] as Block;
      if (waste(grown, other) < most) {
        grown = around(grown, other);
        left.splice(i, 1);
        i = 0;
      } else i++;
    }
    left.push(grown);
  }
  return left;
}
