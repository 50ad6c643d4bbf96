import { factor, substitute } from '../math/solve.ts';
import {
  type Bound,
  type Ended,
  fillMatrix,
  residualOf,
  type System,
  settle,
  settleNear,
} from './newton.ts';
import type { Acting, Work } from './types.ts';

/** Parting of strut and seat that counts as none, mm: what a thousandth of a newton on a shoe's springs makes. */
const TOUCHES = 1e-7;
/** A part shaken off is known to a quarter of this where the shoes jump past the strut. */
const HAIR = 1e-5;
const TRIALS = 60;
/**
 * A hold-down that slid before lies just at its limit: whether it slides on is decided by the last digit, and of
 * two that slid one would seem to stick. With so much more shaken off both slide on.
 */
const NUDGE = 1e-3;

/** How it ended: on the strut or off it, and the strut's clamp, N. */
interface Lying extends Ended {
  strutOn: boolean;
  clamp: number;
}

/** That strut and seats touch, by the part shaken off. */
const touching = (w: Work, act: Acting): Bound => ({
  by: 'shaken',
  give: 0,
  from: 0,
  gradient: w.seatGradient,
  excess: () => w.strut.length - act.strutLength,
});

/**
 * Do the shoes still lie on the strut without force, with nearly the same part shaken off as before?
 *
 * @param y where they lay; the pose out, or as it was
 * @param before part that was shaken off
 */
export function stillTouch(x: System, y: Float64Array, s: Lying, before: number): boolean {
  x.bound = touching(x.w, x.act);
  x.force = before + NUDGE * (1 - before);
  if (settleNear(x, y, s) && x.force > 0 && x.force < 1) {
    s.clamp = 0;
    return true;
  }
  y.set(x.w.start);
  return false;
}

/**
 * With all their hold-down friction the shoes leave the strut, without it they fall back on it: then the drum has
 * shaken them just so far that they lie on it without force. The part shaken off is one more unknown of the same
 * Newton, and that strut and seats touch is its equation. Where that comes to no end, the part is sought by itself.
 *
 * @param y where they fell back with all shaken off; the pose out
 * @param letGo where the strut let go
 * @returns whether there is such a pose
 */
export function shakenTo(x: System, y: Float64Array, s: Lying, letGo: Float64Array): boolean {
  const { w, act } = x;
  const gap = w.strut.length - act.strutLength;
  x.bound = touching(w, act);
  x.force = 1;
  settle(x, y, s);
  s.clamp = 0;
  s.strutOn = true;
  if (s.converged) return true;
  y.set(letGo);
  return search(x, y, s, gap);
}

/**
 * The part shaken off as the root of the parting: Newton by its slope, within a bracket that is halved where that does
 * not get nearer. A heel that lets go can make the parting jump past nothing: then the side counts on which the
 * strut is free, a hair before the jump, where the pose does not hang on the last digit of the part.
 *
 * @param y where the strut let go; the pose out
 * @param gap parting with all friction shaken off, mm: below zero
 */
function search(x: System, y: Float64Array, s: Lying, gap: number): boolean {
  const { w, act, rig } = x;
  x.bound = null;
  const parting = (by: number): number => {
    act.shaken = by;
    settle(x, y, s);
    return w.strut.length - act.strutLength;
  };
  let parted = parting(0);
  if (!(parted >= 0)) return false;
  const first = y.slice();
  const free = y.slice();
  let low = 0;
  let high = 1;
  let at = 0;
  let before = -gap;
  let halved = false;
  for (let n = 0; n < TRIALS && Math.abs(parted) >= TOUCHES; n++) {
    if (halved && high - low < HAIR / 4) break;
    const by = -parted / partingSlope(x, y);
    halved = !(at + by > low && at + by < high && Math.abs(parted) < before / 2);
    before = Math.abs(parted);
    if (halved) {
      at = (low + high) / 2;
      y.set(free);
    } else {
      at += by;
      for (let j = 0; j < rig.n; j++) y[j] = (y[j] as number) + by * (w.rhs[j] as number);
    }
    parted = parting(at);
    if (parted < 0) high = at;
    else {
      low = at;
      free.set(y);
    }
  }
  if (Math.abs(parted) > TOUCHES) {
    y.set(first);
    parted = parting(Math.floor(low / HAIR) * HAIR);
  }
  s.strutOn = !(parted > TOUCHES);
  return s.converged;
}

/** How the parting grows with the part shaken off, at a balance, mm; how the pose does, into the work's right side. */
function partingSlope(x: System, y: Float64Array): number {
  const { w, held } = x;
  residualOf(x, y);
  const size = fillMatrix(x, false);
  for (let j = 0; j < size; j++) w.rhs[j] = held[j] === 1 ? 0 : -(w.byShaken[j] as number);
  if (!factor(w.matrix, w.pivots, size)) return 0;
  substitute(w.matrix, w.pivots, w.rhs, size);
  let slope = 0;
  for (let j = 0; j < size; j++) slope += (w.seatGradient[j] as number) * (w.rhs[j] as number);
  return slope;
}
