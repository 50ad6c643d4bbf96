import type { DrumNow } from './drum.ts';

/**
 * Friction between lining and drum, one law in three uses:
 * - `slide`: the drum turns (or is about to): friction is mu·N along the turning;
 * - `stick`: bristles: an elastic deflection clamped at mu·N (Dahl's model as regularised by
 *   Haessig & Friedland 1991, "bristle" friction), for stick, slip, reversal and holding;
 * - `press`: standing drum, one press from rest without memory: a bristle grows from the touch in
 *   proportion to the penetration, so friction is a share of N between −mu and mu, element by element.
 */
export type Friction =
  | { readonly kind: 'slide'; readonly mu: number; readonly sense: -1 | 0 | 1 }
  | { readonly kind: 'press'; readonly mu: number; readonly start: Float64Array }
  | Sticking;

export interface Sticking {
  readonly kind: 'stick';
  mu: number;
  /** Deflection of each bristle before the step, mm (drum ahead of the lining is positive). */
  readonly deflection: Float64Array;
  /** Place of each face before the step, mm. */
  readonly beforeX: Float64Array;
  readonly beforeY: Float64Array;
  /** Turn of the drum over the step, rad. */
  turn: number;
}

/**
 * Shear stiffness of the lining over its compressive stiffness: G / E = 1 / (2(1 + nu)) with nu of
 * about 0.25 (Hooke's law of an isotropic solid; nu of lining material from memory).
 */
export const SHEAR_SHARE = 0.4;

/**
 * Where stickOn() leaves the slopes of its friction, A and B (see rub.ts), N/mm, and how far a bristle would have gone
 * beyond its limit, N: numbers in an array cost no time.
 */
export const slopes = new Float64Array(3);
export const FOLLOWS = 0;
export const HOLDS = 1;
export const BEYOND = 2;

/** Shear stiffness of an element's bristle, N/mm. @param stiffness of the element, N/mm of penetration */
export const shearOf = (stiffness: number): number => stiffness * SHEAR_SHARE;

/**
 * The `stick` law on one bearing element: its bristle stretches by what the drum ran ahead, up to mu·N.
 * (Its sizes are handed over one by one: as an object they would take a fifth of a step of Motion.)
 *
 * @param i the element
 * @param x, y its face from the drum's centre, mm
 * @param distance of the face from there, mm
 * @param radius of the drum towards the face, mm
 * @param stiffness of the element, N/mm
 * @returns friction, N; its slopes stand in `slopes`
 */
export function stickOn(
  law: Sticking,
  i: number,
  drum: DrumNow,
  x: number,
  y: number,
  distance: number,
  radius: number,
  stiffness: number,
): number {
  const { mu, turn, beforeX, beforeY, deflection } = law;
  const penetration = distance - radius;
  const bx = (beforeX[i] as number) - drum.x;
  const by = (beforeY[i] as number) - drum.y;
  const moved = -(y / distance) * (x - bx) + (x / distance) * (y - by);
  // A face that was clear before the step rubs only for the part of it after the touch.
  const clear = radius - Math.sqrt(bx * bx + by * by);
  const rubbed = clear > 0 ? penetration / (penetration + clear) : 1;
  const slid = turn * distance - moved;
  const shear = shearOf(stiffness);
  const friction = shear * ((deflection[i] as number) + rubbed * slid);
  const most = mu * (stiffness * penetration);
  if (friction > most || friction < -most) {
    slopes[FOLLOWS] = friction > 0 ? mu * stiffness : -mu * stiffness;
    slopes[HOLDS] = 0;
    slopes[BEYOND] = Math.abs(friction) - most;
    return friction > 0 ? most : -most;
  }
  // A deeper face has rubbed for more of the step: d(rubbed) = clear/(penetration + clear)² of it.
  const way = penetration + clear;
  slopes[FOLLOWS] = clear > 0 ? (shear * slid * clear) / (way * way) : 0;
  slopes[HOLDS] = -shear * rubbed;
  slopes[BEYOND] = 0;
  return friction;
}
