import { atan2, cos, sin } from '../math/trig.ts';
import type { Brake, Point } from './types.ts';

/**
 * Outlines of what rides along with the shoes, as they are drawn and weighed.
 *
 * A piston of a usual form, above its axis, outward +x, the toe's face at x = 0, u = 1 on a bore of 19.05 mm: its
 * shank, its groove for the boot, and the fork that takes the toe.
 */
const PISTON: readonly Point[] = [
  [-14.5, 8.9],
  [-2.9, 8.9],
  [-2.9, 7.4],
  [-0.9, 7.4],
  [-0.9, 8.9],
  [0.7, 8.9],
  [3, 8.6],
  [3, 6],
  [0, 6],
];

/** Upper half of a piston in section, mm. @param bore mm */
export const pistonOutline = (bore: number): readonly Point[] =>
  PISTON.map(([x, y]) => [(x * bore) / 19.05, (y * bore) / 19.05]);

/**
 * One stretch of an outline: a line to a point, or a bend that leaves towards a corner and comes to the point from it.
 * The sickle of the parking lever stands here for a pivot at 0, 0 and a hook 109.1 mm off, nearly straight below;
 * a similarity brings it to a brake's own, with the notch at the strut's seat.
 */
export type Stretch =
  | { readonly to: Point }
  | { readonly corner: Point; readonly to: Point }
  | { readonly notch: -4 | 4 };

/** Pivot to hook in the sickle's own sizes, mm, and its direction, rad. */
const REACH = Math.sqrt(5 * 5 + 109 * 109);
const BASE = atan2(-109, 5);

const SICKLE: readonly Stretch[] = [
  { to: [10.5, -8] },
  { to: [12.5, -16] },
  { corner: [15.5, -25], to: [22.3, -62] },
  { to: [22.2, -77] },
  { corner: [21, -93], to: [11, -107] },
  { corner: [9.5, -112], to: [1.5, -112.5] },
  { to: [0.5, -109.5] },
  { to: [3.5, -108] },
  { to: [5.5, -105] },
  { corner: [13.5, -88], to: [14, -68] },
  { corner: [14, -46], to: [5.5, -26] },
  { to: [2.6, -20.8] },
  { notch: -4 },
  { notch: 4 },
  { to: [-4, -10.5] },
  { to: [-6.4, -5] },
];

/** Eye about the pivot, in the sickle's own sizes: radius, mm, and where it begins and ends, rad. */
const EYE = { radius: 7, from: (200 / 180) * Math.PI, to: (20 / 180) * Math.PI };

export interface Sickle {
  /** mm of the brake for each of the sickle's own; turn, rad. */
  readonly size: number;
  readonly turn: number;
  /** A place of the sickle's own sizes in the brake, mm. */
  readonly to: (x: number, y: number) => Point;
  readonly eye: { readonly radius: number; readonly from: number; readonly to: number };
  /** From the end of the eye round to its beginning. */
  readonly edge: readonly (
    | { readonly to: Point }
    | { readonly corner: Point; readonly to: Point }
  )[];
}

/** The parking lever's outline in a brake, as built. */
export function sickleOf({ parkingLever, shoes }: Brake): Sickle {
  const { pivot, hook } = parkingLever;
  const [dx, dy] = [hook[0] - pivot[0], hook[1] - pivot[1]];
  const size = Math.sqrt(dx * dx + dy * dy) / REACH;
  const turn = atan2(dy, dx) - BASE;
  const [c, s] = [cos(turn) * size, sin(turn) * size];
  const to = (x: number, y: number): Point => [pivot[0] + c * x - s * y, pivot[1] + s * x + c * y];
  const [nx, ny] = shoes.rear.strutSeat;
  const edge = SICKLE.map((stretch) => {
    if ('notch' in stretch) return { to: [nx, ny + stretch.notch] as const };
    const end = to(...stretch.to);
    return 'corner' in stretch ? { corner: to(...stretch.corner), to: end } : { to: end };
  });
  const eye = { radius: EYE.radius * size, from: EYE.from + turn, to: EYE.to + turn };
  return { size, turn, to, eye, edge };
}

/** Chords for each bend, and for the eye. */
const CHORDS = 16;

/** The sickle as a closed polygon, mm: bends as parabolas, whose area differs from the drawn arcs' by under 1 %. */
export function sicklePolygon(brake: Brake): readonly Point[] {
  const { eye, edge } = sickleOf(brake);
  const [px, py] = brake.parkingLever.pivot;
  const out: Point[] = [];
  for (let i = 0; i <= CHORDS; i++) {
    const a = eye.from + ((eye.to - eye.from) * i) / CHORDS;
    out.push([px + eye.radius * cos(a), py + eye.radius * sin(a)]);
  }
  let at = out[CHORDS] as Point;
  for (const stretch of edge) {
    if ('corner' in stretch) {
      const { corner, to } = stretch;
      for (let i = 1; i < CHORDS; i++) {
        const t = i / CHORDS;
        const of = (k: 0 | 1): number =>
          (1 - t) * (1 - t) * at[k] + 2 * t * (1 - t) * corner[k] + t * t * to[k];
        out.push([of(0), of(1)]);
      }
    }
    at = stretch.to;
    out.push(at);
  }
  return out;
}
