import type { Adjuster, Point } from '../../../sim/index.ts';
import type { Frame } from '../geometry.ts';
import { circlePath, type Path, polygon } from '../path.ts';
import { outlined, type Shape, WEIGHT } from '../shapes.ts';
import { maker } from './make.ts';

/**
 * The hot lock: a strip of two metals that bends as it warms, until its nib stands in the way of
 * the part that sets the strut's length. Drawn in a frame of its own: clamped at 0, its length
 * along +x, the nib at the tip pointing to −y, the way it bends.
 */

/** Length and thickness of the strip, mm; specific bending, 1/K (a usual value, from memory). */
const STRIP = { thick: 0.8, bending: 14e-6 };
export const STRIP_LENGTH = 19;
/** Temperature at which the strip lies straight, °C. */
const STRAIGHT = 20;

/**
 * How far the tip of a strip clamped at one end has moved at a temperature, mm: a·ΔT·L²/t, the
 * common formula for a thermostatic bimetal strip (from memory).
 */
export function tipTravel(temperature: number, length = STRIP_LENGTH): number {
  return (STRIP.bending * (temperature - STRAIGHT) * length * length) / STRIP.thick;
}

/** Has this adjuster a hot lock? */
export const hasHotLock = ({ hotLock }: Adjuster): boolean => Number.isFinite(hotLock);

/** Travel at which the nib has reached what it holds: it gets there at the lock's temperature. */
export const reachAt = (adjuster: Adjuster, length = STRIP_LENGTH): number =>
  Math.max(0.2, tipTravel(adjuster.hotLock, length));

export interface HotStrip {
  /** Where the strip is clamped and which way it lies. */
  readonly at: Frame;
  /** From the strip's middle down to the nib's end, mm, in the cold. */
  readonly nib: number;
  /** Farthest that the tip can go, mm: there the nib bears on something. */
  readonly most: number;
  /** mm, STRIP_LENGTH when left out. */
  readonly length?: number;
  /** +1 mirrors the strip: its nib points to +y and it bends that way. */
  readonly towards?: 1 | -1;
}

/** Strip of two layers, one of them yellow, with its rivet. */
export function hotStrip(temperature: number, strip: HotStrip): Shape[] {
  const { at, length = STRIP_LENGTH, most, nib, towards = -1 } = strip;
  const fall = Math.max(-0.4, Math.min(most, tipTravel(temperature, length)));
  const half = STRIP.thick / 2;
  const put = (points: readonly Point[]): Path =>
    polygon(points.map(([x, y]): Point => [x, -towards * y]));
  // A strip of even curvature leaves its clamp straight and bends as the square of the distance.
  const steps = Array.from({ length: 17 }, (_, i) => (length * i) / 16);
  const middle = (x: number): number => -fall * (x / length) ** 2;
  const line = (off: number): Point[] => steps.map((x) => [x, middle(x) + off]);
  const tip = middle(length);
  const body = put([
    ...line(half),
    [length + 0.7, tip + half],
    [length + 0.7, tip - nib],
    [length - 0.25, tip - nib],
    [length - 0.25, tip - half],
    ...line(-half).reverse().slice(1),
  ]);
  const upper = put([...line(half), ...line(0).reverse()]);
  const make = maker('strut', 'hot lock');
  return [
    make(body, outlined('bolt', WEIGHT.medium), { place: at }),
    make(upper, outlined('warn', WEIGHT.axis, 'warnInk'), { place: at }),
    make(circlePath([1.6, 0], 0.8), outlined('bolt', WEIGHT.narrow), { place: at }),
  ];
}
