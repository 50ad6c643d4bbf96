import type { Point } from '../../sim/index.ts';
import { apply, type Frame } from './geometry.ts';
import type { Command, Path } from './path.ts';
import type { Shape, Style } from './shapes.ts';

/** Likeness of what shapes are made of, so that a painter builds again only what is seen to change. */

/** What became of a painted shape: it needs building anew, or only stands elsewhere. */
export type Change = 'none' | 'moved' | 'built';

/** What has to be done to a shape as it was painted, where less than `slack` (mm) is not seen. */
export function changeOf(was: Shape, now: Shape, slack: number): Change {
  if (was === now) return 'none';
  if ((was.place === undefined) !== (now.place === undefined)) return 'built';
  if (!sameStyle(was.style, now.style) || !nearPath(was.path, now.path, slack)) return 'built';
  return shiftOf(was.path, was.place, now.place) > slack ? 'moved' : 'none';
}

/** Do two paths run alike, no point farther off than `slack` (mm)? */
export function nearPath(a: Path, b: Path, slack: number): boolean {
  if (a === b) return true;
  return a.length === b.length && a.every((c, i) => offOf(c, b[i] as Command) <= slack);
}

/** How far a point of one command can be off the other's, mm. */
function offOf(a: Command, b: Command): number {
  if (a[0] === 'Z' || b[0] === 'Z') return a[0] === b[0] ? 0 : Infinity;
  const off = Math.abs(a[1] - b[1]) + Math.abs(a[2] - b[2]);
  if (a[0] === 'A' && b[0] === 'A') {
    // An arc's angles move its ends as far as they do at its radius.
    const turned = Math.max(Math.abs(a[4] - b[4]), Math.abs(a[5] - b[5]));
    return off + Math.abs(a[3] - b[3]) + turned * a[3];
  }
  return a[0] === b[0] ? off : Infinity;
}

const corners = new WeakMap<Path, readonly Point[]>();

/** Corners of the box around a path in its own frame; an arc counts as its whole circle. */
export function cornersOf(path: Path): readonly Point[] {
  const kept = corners.get(path);
  if (kept) return kept;
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const c of path) {
    if (c[0] === 'Z') continue;
    const r = c[0] === 'A' ? c[3] : 0;
    left = Math.min(left, c[1] - r);
    low = Math.min(low, c[2] - r);
    right = Math.max(right, c[1] + r);
    high = Math.max(high, c[2] + r);
  }
  const made: Point[] = [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
  corners.set(path, made);
  return made;
}

/** How far a path's points go at most when its frame goes from one place to another, mm. */
export function shiftOf(path: Path, from: Frame | undefined, to: Frame | undefined): number {
  if (!from || !to || from === to || path.length === 0) return 0;
  if (from.angle === to.angle) return Math.hypot(to.x - from.x, to.y - from.y);
  // The way a point goes is linear in the point, so none goes farther than a corner of the box.
  return Math.max(
    ...cornersOf(path).map((p) => {
      const [ax, ay] = apply(from, p);
      const [bx, by] = apply(to, p);
      return Math.hypot(bx - ax, by - ay);
    }),
  );
}

const sameList = (a: readonly number[] | undefined, b: readonly number[] | undefined): boolean =>
  a === b ||
  (a !== undefined && b !== undefined && a.length === b.length && a.every((v, i) => v === b[i]));

/** A screen shows 255 steps. */
const sameAlpha = (a = 1, b = 1): boolean => Math.abs(a - b) < 0.5 / 255;

function sameWidth(a: Style['width'], b: Style['width']): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object') return false;
  return a.mm === b.mm && a.least === b.least && a.inset === b.inset;
}

function sameHatch(a: Style['hatch'], b: Style['hatch']): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object') return false;
  return a.dots === b.dots && a.colour === b.colour && a.veil === b.veil;
}

function sameStyle(a: Style, b: Style): boolean {
  if (a === b) return true;
  return (
    a.fill === b.fill &&
    sameAlpha(a.fillAlpha, b.fillAlpha) &&
    a.stroke === b.stroke &&
    sameAlpha(a.strokeAlpha, b.strokeAlpha) &&
    a.round === b.round &&
    sameHatch(a.hatch, b.hatch) &&
    sameWidth(a.width, b.width) &&
    sameList(a.dash, b.dash)
  );
}
