import type { Label, LabelStyle } from '../shapes.ts';
import type { View } from '../view.ts';

/** Sizes of stage text at full size, px, and the least that may be shown. */
const SIZES: Readonly<Record<LabelStyle, number>> = {
  role: 30,
  'role note': 17,
  caption: 15,
  turning: 17,
  peak: 22,
  force: 19,
  gap: 18,
  'gap word': 14,
  name: 18,
  number: 15,
  tooth: 20,
  lens: 26,
  'lens scale': 16,
  zone: 13,
  heat: 22,
  dial: 15,
};
const LEAST = 13;
const LEAST_NARROW = 14;
const LEAST_WALL = 34;

const leastOf = (view: View): number =>
  view.wall ? (LEAST_WALL * view.text) / 2 : view.narrow ? LEAST_NARROW : LEAST;

export const sizeOf = (view: View, style: LabelStyle): number =>
  ownSize(view, SIZES[style] * view.text);

/** A text's own size, px, or the least that the view may show. */
export const ownSize = (view: View, size: number): number => Math.max(leastOf(view), size);

/** Mean width of a letter as a share of the size: enough to leave room for words. */
const LETTER = 0.56;
export const textWidth = (text: string, size: number): number => text.length * LETTER * size;

/** A label with its size for the view; dx and dy default to 0. */
export const label = (
  view: View,
  given: Omit<Label, 'size' | 'dx' | 'dy'> & { dx?: number; dy?: number; size?: number },
): Label => ({
  dx: 0,
  dy: 0,
  ...given,
  size: given.size ? ownSize(view, given.size) : sizeOf(view, given.style),
});

interface Font {
  readonly weight: number;
  /** Width of the letters, percent. */
  readonly stretch: number;
}
const FONTS: Readonly<Record<LabelStyle, Font>> = {
  role: { weight: 790, stretch: 104 },
  'role note': { weight: 540, stretch: 100 },
  caption: { weight: 520, stretch: 100 },
  turning: { weight: 640, stretch: 100 },
  peak: { weight: 740, stretch: 100 },
  force: { weight: 650, stretch: 100 },
  gap: { weight: 650, stretch: 100 },
  'gap word': { weight: 540, stretch: 100 },
  name: { weight: 620, stretch: 100 },
  number: { weight: 700, stretch: 100 },
  tooth: { weight: 700, stretch: 100 },
  lens: { weight: 760, stretch: 100 },
  'lens scale': { weight: 520, stretch: 100 },
  zone: { weight: 600, stretch: 100 },
  heat: { weight: 760, stretch: 100 },
  dial: { weight: 680, stretch: 100 },
};
export const fontOf = (style: LabelStyle): Font => FONTS[style];

/**
 * Text that lies on the drawing carries a halo in the sheet's colour. Values that lie on web, cylinder or
 * rim have one so wide that it fills their letters, since their colours are made to be read on the sheet.
 */
const HALO: ReadonlySet<LabelStyle> = new Set([
  'role',
  'role note',
  'peak',
  'force',
  'gap',
  'gap word',
  'lens',
  'number',
  'dial',
]);
const ON_PARTS: ReadonlySet<LabelStyle> = new Set(['peak', 'force', 'gap', 'dial']);

/** px, both sides of the letter's edge together. */
export const haloOf = (style: LabelStyle, view: View): number =>
  HALO.has(style) ? (ON_PARTS.has(style) ? 8 : 4.5) * Math.max(0.8, view.k) : 0;
