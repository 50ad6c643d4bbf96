import type { Point } from '../../../sim/index.ts';
import type { CutPart, CutSettings } from './part.ts';
import { boxOf, offset, type Polygon } from './polygons.ts';

/** What is cut, laid out side by side on one sheet, mm; the sheet's lower left corner is 0, y up. */

export interface Circle {
  readonly at: Point;
  readonly radius: number;
}

/** One part as its cut runs: half a kerf outside of it, and inside of its holes. */
export interface Piece {
  readonly part: CutPart;
  readonly lines: readonly Polygon[];
  readonly circles: readonly Circle[];
  /** Where its name stands, and how high its letters are. */
  readonly name: { readonly at: Point; readonly size: number };
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly pieces: readonly Piece[];
}

/** Free between two parts, mm; a name stands under each. */
const GAP = 6;
const NAME = 4.5;

interface Cut {
  readonly lines: readonly Polygon[];
  readonly circles: readonly Circle[];
}

/** The cuts of a part where it stands in the brake. */
export function cutsOf(part: CutPart, { kerf }: CutSettings): Cut {
  return {
    lines: offset(part.area, kerf / 2),
    circles: part.holes.map(({ at, radius }) => ({ at, radius: radius - kerf / 2 })),
  };
}

const shifted = ({ lines, circles }: Cut, [dx, dy]: Point): Cut => ({
  lines: lines.map((p) => p.map(([x, y]): Point => [x + dx, y + dy])),
  circles: circles.map(({ at: [x, y], radius }) => ({ at: [x + dx, y + dy], radius })),
});

/**
 * Rows of parts, the highest first: each row is as high as its first part, and full when the next would not go in.
 *
 * @param least width of the sheet, mm: wider only where a part is
 */
export function layOut(parts: readonly CutPart[], set: CutSettings, least = 0): Layout {
  const all = parts
    .flatMap((part) => Array.from({ length: part.count }, () => part))
    .map((part) => ({ part, cut: cutsOf(part, set) }))
    .map((p) => ({ ...p, box: boxOf(p.cut.lines) }))
    .sort((a, b) => b.box.high - b.box.low - (a.box.high - a.box.low));
  const width = Math.max(least, ...all.map(({ box }) => box.right - box.left + 2 * GAP));
  const pieces: Piece[] = [];
  let [x, top, row] = [GAP, GAP, 0];
  for (const { part, cut, box } of all) {
    const [wide, high] = [box.right - box.left, box.high - box.low];
    if (x > GAP && x + wide > width - GAP) {
      top += row + GAP + NAME;
      [x, row] = [GAP, 0];
    }
    row = Math.max(row, high);
    // Laid from the top down; turned upright below, once the height is known.
    const moved = shifted(cut, [x - box.left, -top - box.high]);
    pieces.push({ part, ...moved, name: { at: [x, -top - high - NAME + 1], size: 3 } });
    x += Math.max(wide, 0.55 * 3 * part.name.length) + GAP;
  }
  const height = top + row + NAME + GAP;
  return {
    width,
    height,
    pieces: pieces.map((p) => ({
      ...p,
      ...shifted(p, [0, height]),
      name: { ...p.name, at: [p.name.at[0], p.name.at[1] + height] },
    })),
  };
}
