import type { Side, WornAlong } from './types.ts';

/** Depth at a place, 0 at the toe end to 1 at the heel end, mm. */
export const depthAt = ({ toe, middle, heel }: WornAlong, place: number): number =>
  toe * (1 - place) * (1 - 2 * place) +
  4 * middle * place * (1 - place) +
  heel * place * (2 * place - 1);

/** Mean over the arc, mm: Simpson's rule, exact for a parabola. */
export const meanDepth = ({ toe, middle, heel }: WornAlong): number =>
  (toe + 4 * middle + heel) / 6;

/** Least and greatest depth anywhere, mm: at an end, or where the parabola turns. */
export function depthsWithin(worn: WornAlong): {
  readonly least: number;
  readonly greatest: number;
} {
  const { toe, middle, heel } = worn;
  const bend = 2 * toe - 4 * middle + 2 * heel;
  // The slope, 4 middle − 3 toe − heel + 2·bend·place, is nothing there.
  const turn = bend === 0 ? 0 : (3 * toe - 4 * middle + heel) / (2 * bend);
  const all = [toe, heel];
  if (turn > 0 && turn < 1) all.push(depthAt(worn, turn));
  return { least: Math.min(...all), greatest: Math.max(...all) };
}

/** Elements run counter-clockwise: the front shoe's toe is at its first, the rear's at its last. */
export const fromToe = (wear: Float64Array, side: Side): Float64Array =>
  side === 'front' ? wear : wear.slice().reverse();

/** Depth worn off each element, at its middle, index 0 at the arc's `from` end. */
export function wornElements(worn: WornAlong, side: Side, count: number): Float64Array {
  const depths = Float64Array.from({ length: count }, (_, i) => depthAt(worn, (i + 0.5) / count));
  return fromToe(depths, side);
}
