import { addClampTangent } from './assemble.ts';
import { type Bound, type Ended, type Inertia, type System, settle } from './newton.ts';
import { shakenTo, stillTouch } from './shaken.ts';
import type { Acting, Rig, Work } from './types.ts';

/**
 * What a turning drum shakes off hold-downs: nothing where it stands; their friction's share once the strut
 * lets its shoes go; or all along, where it rubs on released shoes for kilometres and the strut lets no go.
 */
export type Shaken = 'not' | 'off the strut' | 'all along';

/** What a pose settles under, beside the forces that act. */
export interface Settling {
  readonly inertia: Inertia | null;
  /** Turn of the lever on its stop (or where a short cable holds it), rad. */
  readonly leverStop: number;
  /** The drum turns: hold-downs of shoes free of the strut lose their friction's share. */
  readonly shaken: Shaken;
  /** Clamp of the strut to begin with, N, where nearly the same was solved before; 0 when left out. */
  readonly clamp?: number;
}

/** Which one-sided supports act. */
export interface Supports {
  /** The strut is clamped between its seats. */
  strutOn: boolean;
  /** The parking lever has left its stop. */
  leverFree: boolean;
  /** Part that is shaken off of what a turning drum can shake off hold-downs. */
  shakenPart?: number;
}

export interface Solution extends Supports, Ended {
  /** Clamp force of the strut, N. */
  clamp: number;
  /** The supports that act are those that the pose asks for; false when they still changed at the end. */
  settled: boolean;
}

/** Unbalanced force from which a pose is no balance, N: the last digit that any reading shows. */
const LOST = 0.5;
/**
 * Moment that lifts a lever off its stop, N·mm; and off one that it has come back to: a hand right at its pivot may
 * balance it behind the stop, unstable, where it would be freed and come back without end. So small a moment, a
 * thousandth of a newton at 100 mm, leaves it leaning there.
 */
const LIFTS = 1e-6;
const LEANS = 0.1;
/**
 * How far a lever that has come back to its stop may stand behind it, rad: 0.01 mm at a hook 100 mm off. A turning drum
 * shakes hold-downs off where the strut lets go, and not where the lever presses it; shoes that are held may leave a
 * pressed lever no room before its stop, and shoes that are not press no strut: between the two it leans.
 */
const BEHIND = 1e-4;
/** Most changes of the supports in one solve. */
const ROUNDS = 8;

/** Is a solution a balance? Else its numbers mean nothing. */
export const balances = (s: Readonly<Solution>): boolean => s.residual < LOST && s.settled;

/** The strut as a bound between its seats. */
const strutBound = (rig: Rig, w: Work, act: Acting): Bound => ({
  by: 'force',
  give: rig.strutGive,
  from: act.strutRest,
  gradient: w.seatGradient,
  excess: () => w.strut.length - act.strutLength,
  addTangent: (force) => addClampTangent(rig, w, force),
});

/** What inertia takes of the force in a freedom: its row of M (y − y0 − h v0)/h²; a shoe that moves carries its lever along. */
function inertiaIn(inertia: Inertia | null, y: Float64Array, j: number): number {
  if (!inertia) return 0;
  const n = y.length;
  let sum = 0;
  for (let l = 0; l < n; l++) {
    const gone = (y[l] as number) - (inertia.free[l] as number);
    sum += (inertia.massOverH2[j * n + l] as number) * gone;
  }
  return sum;
}

function told(s: Solution, act: Acting): Solution {
  s.shakenPart = act.shaken;
  return s;
}

/**
 * Finds the pose where all forces balance, with the one-sided supports (strut clamp, lever stop)
 * decided by an active set: drop a strut that would pull, put on one that would be entered, free a
 * lever that leaves its stop, stop one that would pass it. Where they change to and fro without end the
 * solution says that it is not settled.
 *
 * @param y pose, guess in, solution out
 */
export function solvePose(
  rig: Rig,
  w: Work,
  y: Float64Array,
  act: Acting,
  { inertia, leverStop, shaken, clamp = 0 }: Settling,
  guess: Supports,
): Solution {
  const s: Solution = {
    strutOn: guess.strutOn,
    leverFree: guess.leverFree,
    clamp,
    residual: 0,
    iterations: 0,
    converged: false,
    settled: true,
  };
  const strut = strutBound(rig, w, act);
  const { held } = w;
  held.fill(0);
  const x: System = { rig, w, act, inertia, bound: null, force: 0, held };
  const byHand = act.hands?.some((h) => h.on === 'lever') === true;
  /** Without a strut to press, nothing but its stop holds the lever: unless it hangs on its cable or a hand. */
  const hangs = byHand || act.cable > 0;
  if (!hangs && !s.strutOn) s.leverFree = false;
  const part = guess.shakenPart ?? 0;
  if (shaken === 'off the strut' && s.strutOn && part > 0 && part < 1) {
    if (!s.leverFree) y[rig.leverAt] = leverStop;
    held[rig.leverAt] = s.leverFree ? 0 : 1;
    if (stillTouch(x, y, s, part)) return told(s, act);
  }
  let letGo: Float64Array | null = null;
  let cameBack = false;
  for (let round = 0; round < ROUNDS; round++) {
    if (!s.leverFree) y[rig.leverAt] = leverStop;
    act.shaken = shaken === 'all along' || (shaken === 'off the strut' && !s.strutOn) ? 1 : 0;
    x.bound = s.strutOn ? strut : null;
    x.force = s.strutOn ? s.clamp : 0;
    held[rig.leverAt] = s.leverFree ? 0 : 1;
    settle(x, y, s);
    s.clamp = x.force;
    let changed = false;
    if (s.strutOn && s.clamp < 0) {
      if (shaken === 'off the strut') letGo = y.slice();
      s.strutOn = false;
      // A hand holds a lever also where it presses no strut; so does a cable, which draws it straight.
      if (!hangs) s.leverFree = false;
      changed = true;
    } else if (!s.strutOn && w.strut.length < act.strutLength - 1e-12) {
      if (letGo && shakenTo(x, y, s, letGo)) return told(s, act);
      s.strutOn = true;
      changed = true;
    } else if (!s.leverFree && (act.cable > 0 || byHand)) {
      const drive =
        (w.q[rig.leverAt] as number) +
        (s.strutOn ? s.clamp * (w.seatGradient[rig.leverAt] as number) : 0) -
        inertiaIn(inertia, y, rig.leverAt);
      if (drive > (cameBack ? LEANS : LIFTS)) {
        s.leverFree = true;
        if (!byHand) s.strutOn = true;
        changed = true;
      }
    } else if (
      s.leverFree &&
      (y[rig.leverAt] as number) < leverStop - (cameBack && x.bound ? BEHIND : 0)
    ) {
      s.leverFree = false;
      cameBack = true;
      changed = true;
    }
    if (!changed) return told(s, act);
  }
  s.settled = false;
  return s;
}
