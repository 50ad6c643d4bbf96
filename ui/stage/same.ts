import type { Frame } from './geometry.ts';
import type { Path } from './path.ts';
import type { Style } from './shapes.ts';

/** Equality of what shapes are made of, so that a painter builds again only what has changed. */

export function samePath(a: Path, b: Path): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) {
    const c = a[i];
    const d = b[i];
    if (c === d || !c || !d) continue;
    if (c.length !== d.length) return false;
    for (let j = 0; j < c.length; j++) if (c[j] !== d[j]) return false;
  }
  return true;
}

export function samePlace(a: Frame | undefined, b: Frame | undefined): boolean {
  if (a === b) return true;
  return a !== undefined && b !== undefined && a.angle === b.angle && a.x === b.x && a.y === b.y;
}

const sameList = (a: readonly number[] | undefined, b: readonly number[] | undefined): boolean =>
  a === b ||
  (a !== undefined && b !== undefined && a.length === b.length && a.every((v, i) => v === b[i]));

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

export function sameStyle(a: Style, b: Style): boolean {
  if (a === b) return true;
  return (
    a.fill === b.fill &&
    a.fillAlpha === b.fillAlpha &&
    a.stroke === b.stroke &&
    a.strokeAlpha === b.strokeAlpha &&
    a.round === b.round &&
    sameHatch(a.hatch, b.hatch) &&
    sameWidth(a.width, b.width) &&
    sameList(a.dash, b.dash)
  );
}
