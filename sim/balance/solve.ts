import { forgetTangent } from '../contact/rub.ts';
import { rootBetween } from '../math/root.ts';
import { factor, solveInPlace, substitute } from '../math/solve.ts';
import { addClampTangent, assemble } from './assemble.ts';
import type { Acting, Rig, Work } from './types.ts';

/**
 * Inertia of a step of time h: the solver then finds the pose at its end by backward Euler,
 * M (y − y0 − h v0) / h² = Q(y). Null at rest: Q(y) = 0.
 */
export interface Inertia {
  /** Mass matrix over all freedoms, n×n, over h². */
  readonly massOverH2: Float64Array;
  /** y0 + h·v0. */
  readonly free: Float64Array;
}

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
}

/** Which one-sided supports act. */
export interface Supports {
  /** The strut is clamped between its seats. */
  strutOn: boolean;
  /** The parking lever has left its stop. */
  leverFree: boolean;
}

/** How a solve ended. */
interface Ended {
  /** Greatest unbalanced force, N (moments over a 100 mm arm). */
  residual: number;
  iterations: number;
  converged: boolean;
}

export interface Solution extends Supports, Ended {
  /** Clamp force of the strut, N. */
  clamp: number;
  /** The supports that act are those that the pose asks for; false when they still changed at the end. */
  settled: boolean;
}

/** A length that is kept by a force, which is sought with the pose. */
export interface Bound {
  /** How much it shortens under its force (compression), mm/N, beyond a force from which on it gives, N. */
  readonly give: number;
  readonly from: number;
  /** How each freedom lengthens it, at the pose for which its excess was last asked. */
  readonly gradient: Float64Array;
  /** How much too long it is at a pose that has just been assembled, mm. */
  readonly excess: (y: Float64Array) => number;
  /** Adds the geometric tangent of its force (compression positive) to the work. */
  readonly addTangent: (force: number) => void;
}

/** What is solved: the brake, what acts on it, and what holds it. */
interface System {
  readonly rig: Rig;
  readonly w: Work;
  readonly act: Acting;
  readonly inertia: Inertia | null;
  bound: Bound | null;
  /** Its force, N. */
  force: number;
  /** 1 for every freedom that is held where it is. */
  readonly held: Uint8Array;
}

/** Moments are weighed as forces on this arm, mm. */
const ARM = 100;
/** Largest turn in one iteration, rad: 0.15 mm at a 100 mm radius, so that contact is not jumped over. */
const MOST_TURN = 1.5e-3;
const MOST_SHIFT = 0.15;
/** Unbalanced force that counts as nothing, N: 1e-9 of a usual piston force. */
const NOTHING = 1e-6;
/** The same of bending shoes, whose evaluations are dear: 1e-8 of a usual piston force. */
const NOTHING_BENT = 1e-5;

/** Unbalanced force from which a pose is no balance, N: the last digit that any reading shows. */
const LOST = 0.5;
/**
 * Moment that lifts a lever off its stop, N·mm; and off one that it has come back to: a hand right at its pivot may
 * balance it behind the stop, unstable, where it would be freed and come back without end. So small a moment, a
 * thousandth of a newton at 100 mm, leaves it leaning there.
 */
const LIFTS = 1e-6;
const LEANS = 0.1;
/** Most changes of the supports in one solve. */
const ROUNDS = 8;

/** Is a solution a balance? Else its numbers mean nothing. */
export const balances = (s: Readonly<Solution>): boolean => s.residual < LOST && s.settled;

function rowScale(rig: Rig, j: number): number {
  if (j === rig.leverAt) return 1 / ARM;
  const shoe = j >= rig.rear.at ? rig.rear : rig.front;
  const local = j - shoe.at;
  if (local >= shoe.freedoms) return 1 / (shoe.reach[local - shoe.freedoms] as number);
  return local === shoe.freedoms - 1 ? 1 / ARM : 1;
}

/** Largest step of each freedom in one iteration. */
function mostStep(rig: Rig, j: number): number {
  if (j === rig.leverAt) return 0.1;
  const shoe = j >= rig.rear.at ? rig.rear : rig.front;
  const local = j - shoe.at;
  if (local >= shoe.freedoms) return MOST_SHIFT / (shoe.reach[local - shoe.freedoms] as number);
  return local === shoe.freedoms - 1 ? MOST_TURN : MOST_SHIFT;
}

/**
 * Fills the residual (into w.rhs) and returns its greatest entry in newtons.
 *
 * @param slopes whether the tangent is asked for
 */
function residualOf(x: System, y: Float64Array, slopes = true): number {
  const { rig, w, act, inertia, bound, force, held } = x;
  w.slopes = slopes;
  assemble(rig, w, y, act);
  w.slopes = true;
  // What its force shortens it by, the ends come nearer.
  const excess = bound ? bound.excess(y) + bound.give * Math.max(0, force - bound.from) : 0;
  const n = rig.n;
  let worst = 0;
  for (let j = 0; j < n; j++) {
    let r = (w.q[j] as number) + (bound ? force * (bound.gradient[j] as number) : 0);
    if (inertia) {
      for (let l = 0; l < n; l++) {
        const m = inertia.massOverH2[j * n + l] as number;
        if (m !== 0) r -= m * ((y[l] as number) - (inertia.free[l] as number));
      }
    }
    if (held[j] === 1) r = 0;
    w.rhs[j] = -r;
    worst = Math.max(worst, Math.abs(r) * rowScale(rig, j));
  }
  if (bound) {
    w.rhs[n] = -excess;
    // A gap counts as the force it would make in a lining, about 1e4 N/mm.
    worst = Math.max(worst, Math.abs(excess) * 1e4);
  }
  return worst;
}

function fillMatrix(x: System, steady: boolean): number {
  const { rig, w, inertia, bound, held } = x;
  const n = rig.n;
  const size = bound ? n + 1 : n;
  bound?.addTangent(x.force);
  const { k, matrix } = w;
  const mass = inertia?.massOverH2;
  for (let j = 0; j < n; j++) {
    for (let l = 0; l < n; l++) {
      let a = k[j * n + l] as number;
      if (mass) a -= mass[j * n + l] as number;
      // A free shoe pushed across its arm has a slightly unstable tangent (the push turns with it);
      // a Newton step along it would run the wrong way. Only the step is turned, not the balance.
      // (A bending shoe in contact may well have one that its modes outweigh.)
      if (j === l && a > 0 && steady) a = -a;
      matrix[j * size + l] = a;
    }
    if (bound) {
      w.matrix[j * size + n] = bound.gradient[j] as number;
      w.matrix[n * size + j] = bound.gradient[j] as number;
    }
  }
  if (bound) w.matrix[n * size + n] = x.force > bound.from ? bound.give : 0;
  for (let l = 0; l < n; l++) {
    if (held[l] !== 1) continue;
    for (let j = 0; j < size; j++) w.matrix[l * size + j] = 0;
    w.matrix[l * size + l] = 1;
    w.rhs[l] = 0;
  }
  return size;
}

/** Unbalanced force below which a bending brake is near enough for its matrix to serve on, N. */
const NEAR = 50;
/** A step that leaves more than this of the unbalanced force needs a matrix of its own. */
const WELL = 0.01;

/**
 * Newton with a capped step and halving; supports held as given. The matrix of bending shoes is dear: near the
 * balance it serves as long as each step takes nearly all that is unbalanced (the chord method; C. T. Kelley,
 * Iterative Methods for Linear and Nonlinear Equations, 5.4).
 */
function newton(x: System, y: Float64Array, s: Ended): boolean {
  const { rig, w } = x;
  const n = rig.n;
  const bends = rig.front.modes + rig.rear.modes > 0;
  const nothing = bends ? NOTHING_BENT : NOTHING;
  /** Are there slopes of this pose, and does the last matrix do without them? */
  let known = true;
  let serves = false;
  let size = 0;
  forgetTangent(rig.front.rub);
  forgetTangent(rig.rear.rub);
  let worst = residualOf(x, y);
  const { before, step } = w;
  for (let i = 0; i < 60; i++) {
    if (worst < nothing) {
      s.residual = worst;
      return true;
    }
    s.iterations++;
    if (!serves) {
      if (!known) residualOf(x, y);
      size = fillMatrix(x, rig.front.n === 1);
      if (!factor(w.matrix, w.pivots, size)) break;
    }
    substitute(w.matrix, w.pivots, w.rhs, size);
    const light = bends && worst < NEAR;
    let scale = 1;
    for (let j = 0; j < n; j++) {
      const wide = Math.abs(w.rhs[j] as number);
      const most = mostStep(rig, j);
      if (wide * scale > most) scale = most / wide;
      before[j] = y[j] as number;
    }
    const forceBefore = x.force;
    for (let j = 0; j < size; j++) step[j] = w.rhs[j] as number;
    let tries = 0;
    let next = Number.POSITIVE_INFINITY;
    for (; tries < 12; tries++) {
      for (let j = 0; j < n; j++) y[j] = (before[j] as number) + scale * (step[j] as number);
      // The force is linear in its own row: take its full Newton value.
      if (x.bound) x.force = forceBefore + (step[n] as number);
      next = residualOf(x, y, !light);
      // A touch makes the residual jump up once; only halve when late and not falling.
      if (i < 8 || next <= worst * 1.0001 || next < nothing) break;
      scale /= 2;
    }
    known = !light;
    serves = light && next < WELL * worst;
    worst = next;
    if (!Number.isFinite(worst)) break;
  }
  s.residual = worst;
  // Rounding can keep the last digit from settling; this is still 1e-7 of a usual force.
  return worst < 1e-4;
}

/** Stiffness of the drag in a slow march, N/mm, at its first step: as a lining has. */
const FIRST_DRAG = 2e4;
const MOST_DRAG = 1e8;
const LEAST_DRAG = 1e-3;
/** Steps of a march without getting nearer, after which it goes slower. */
const IDLE = 20;
/** A step that leaves more than this many times the unbalanced force is taken back. */
const JUMPED = 4;
/** Steps after which a slow march gives up. */
const MARCH = 400;

/** Less drag the better it goes. @param ratio of the unbalanced force after and before the step */
const nextDrag = (drag: number, ratio: number): number =>
  Math.max(LEAST_DRAG, drag * Math.max(0.2, Math.min(2, 0.5 * ratio)));

/**
 * Where Newton jumps to and fro between sets of bearing elements: march to the balance as the brake
 * itself would, moving slowly against a drag (pseudo-transient continuation; C. T. Kelley & D. E.
 * Keyes 1998: the drag falls in proportion to what is unbalanced, and the end of the march is Newton).
 */
function march(x: System, y: Float64Array, s: Ended): boolean {
  const { rig, w } = x;
  const n = rig.n;
  const from = new Float64Array(n);
  let worst = residualOf(x, y);
  let drag = FIRST_DRAG;
  // A hold-down about to slip throws a shoe to and fro without end: then the march goes slower.
  let best = worst;
  let idle = 0;
  let leastDrag = LEAST_DRAG;
  for (let i = 0; i < MARCH && worst >= NOTHING; i++) {
    s.iterations++;
    const size = fillMatrix(x, false);
    for (let j = 0; j < n; j++) {
      // The same drag for a millimetre of each freedom.
      const at = j * size + j;
      if (x.held[j] !== 1) {
        const perMm = MOST_SHIFT / mostStep(rig, j);
        w.matrix[at] = (w.matrix[at] as number) - drag * perMm * perMm;
      }
    }
    if (!solveInPlace(w.matrix, w.rhs, size)) return false;
    let scale = 1;
    for (let j = 0; j < n; j++) {
      scale = Math.min(scale, mostStep(rig, j) / Math.abs(w.rhs[j] as number));
    }
    from.set(y);
    const force = x.force;
    for (let j = 0; j < n; j++) y[j] = (y[j] as number) + scale * (w.rhs[j] as number);
    if (x.bound) x.force += w.rhs[n] as number;
    const before = worst;
    worst = residualOf(x, y);
    if (!(worst < JUMPED * before) && drag < MOST_DRAG) {
      // Ran into something: back, and slower.
      y.set(from);
      x.force = force;
      worst = residualOf(x, y);
      drag *= 10;
      continue;
    }
    if (worst < 0.9 * best) {
      best = worst;
      idle = 0;
      leastDrag = Math.max(LEAST_DRAG, leastDrag / 10);
    } else if (++idle > IDLE) {
      idle = 0;
      leastDrag = Math.min(FIRST_DRAG, Math.max(1, leastDrag * 100));
    }
    drag = Math.max(leastDrag, nextDrag(drag, worst / before));
  }
  s.residual = worst;
  return worst < 1e-4;
}

/** Newton, and where it jumps to and fro the slow march. */
function settle(x: System, y: Float64Array, s: Ended): void {
  const { start } = x.w;
  start.set(y);
  s.converged = newton(x, y, s);
  if (s.converged) return;
  y.set(start);
  x.force = 0;
  s.converged = march(x, y, s);
}

/** Parting of strut and seat that counts as none, mm; parts shaken off that are alike, and a hair of them; the most trials. */
const TOUCHES = 1e-9;
const SAME_PART = 1e-9;
const HAIR = 1e-5;
const TRIALS = 60;

/**
 * With all their hold-down friction the shoes leave the strut, without it they fall back on it: then
 * the drum has shaken them just so far that they lie on it without force, or are about to fall on it.
 * The part shaken off is found as the root of the parting of strut and seat.
 *
 * @param y where the strut let go; the pose out
 * @param gap parting with all friction shaken off, mm: below zero
 * @returns whether there is such a pose
 */
function shakenTo(x: System, y: Float64Array, s: Solution, gap: number): boolean {
  const { w, act } = x;
  const from = y.slice();
  const parting = (by: number): number => {
    act.shaken = by;
    y.set(from);
    settle(x, y, s);
    return w.strut.length - act.strutLength;
  };
  const whole = parting(0);
  if (!(whole >= 0)) return false;
  let kept = 0;
  // Where friction gives way the shoe runs far for nothing: hence the halving.
  let [, parted] = rootBetween(
    (by) => {
      const gap = parting(by);
      if (gap >= 0) kept = by;
      return gap;
    },
    [1, gap],
    [0, whole],
    { near: TOUCHES, apart: (a, b) => Math.abs(b - a) <= SAME_PART, trials: TRIALS, halving: true },
  );
  // A heel that lets go makes the parting jump past nothing: then the side on which the strut is free
  // counts, a hair before the jump, where the pose does not hang on the last digit of the part.
  if (Math.abs(parted) > TOUCHES) parted = parting(Math.floor(kept / HAIR) * HAIR);
  s.strutOn = !(parted > TOUCHES);
  s.clamp = 0;
  return s.converged;
}

/** The strut as a bound between its seats. */
const strutBound = (rig: Rig, w: Work, act: Acting): Bound => ({
  give: rig.strutGive,
  from: act.strutRest,
  gradient: w.seatGradient,
  excess: () => w.strut.length - act.strutLength,
  addTangent: (force) => addClampTangent(rig, w, force),
});

/**
 * A pose under one bound, all freedoms but some held: the same Newton and march, without the brake's
 * one-sided supports.
 *
 * @param force a guess of the bound's
 * @param y pose, guess in, solution out
 * @returns the bound's force, and what is left unbalanced, N
 */
export function solveBound(
  rig: Rig,
  w: Work,
  y: Float64Array,
  act: Acting,
  bound: Bound,
  force: number,
  held: Uint8Array,
): { readonly force: number; readonly residual: number } {
  const x: System = { rig, w, act, inertia: null, bound, force, held };
  const s: Ended = { residual: 0, iterations: 0, converged: false };
  settle(x, y, s);
  return { force: x.force, residual: s.residual };
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
  { inertia, leverStop, shaken }: Settling,
  guess: Supports,
): Solution {
  const s: Solution = {
    strutOn: guess.strutOn,
    leverFree: guess.leverFree,
    clamp: 0,
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
  // Let go of off the strut, nothing but its stop holds it.
  if (!byHand && !s.strutOn) s.leverFree = false;
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
      // A hand holds a lever also where it presses no strut.
      if (!byHand) s.leverFree = false;
      changed = true;
    } else if (!s.strutOn && w.strut.length < act.strutLength - 1e-12) {
      if (letGo) {
        const gap = w.strut.length - act.strutLength;
        y.set(letGo);
        if (shakenTo(x, y, s, gap)) return s;
      }
      s.strutOn = true;
      changed = true;
    } else if (!s.leverFree && (act.cable > 0 || byHand)) {
      const drive =
        (w.q[rig.leverAt] as number) +
        (s.strutOn ? s.clamp * (w.seatGradient[rig.leverAt] as number) : 0);
      if (drive > (cameBack ? LEANS : LIFTS)) {
        s.leverFree = true;
        if (!byHand) s.strutOn = true;
        changed = true;
      }
    } else if (s.leverFree && (y[rig.leverAt] as number) < leverStop) {
      s.leverFree = false;
      cameBack = true;
      changed = true;
    }
    if (!changed) return s;
  }
  s.settled = false;
  return s;
}
