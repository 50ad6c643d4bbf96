import { forgetTangent } from '../contact/rub.ts';
import { factor, solveInPlace, substitute } from '../math/solve.ts';
import { assemble } from './assemble.ts';
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

/** How a solve ended. */
export interface Ended {
  /** Greatest unbalanced force, N (moments over a 100 mm arm). */
  residual: number;
  iterations: number;
  converged: boolean;
}

/** A length that is kept by a force, or by the part of hold-down friction shaken off, which is sought with the pose. */
export interface Bound {
  /** By what it is kept: its unknown. */
  readonly by: 'force' | 'shaken';
  /** How much it shortens under its force (compression), mm/N, beyond a force from which on it gives, N. */
  readonly give: number;
  readonly from: number;
  /** How each freedom lengthens it, at the pose for which its excess was last asked. */
  readonly gradient: Float64Array;
  /** How much too long it is at a pose that has just been assembled, mm. */
  readonly excess: (y: Float64Array) => number;
  /** Adds the geometric tangent of its force (compression positive) to the work. */
  readonly addTangent?: (force: number) => void;
}

/** What is solved: the brake, what acts on it, and what holds it. */
export interface System {
  readonly rig: Rig;
  readonly w: Work;
  readonly act: Acting;
  readonly inertia: Inertia | null;
  bound: Bound | null;
  /** Its unknown: force, N, or part shaken off. */
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
export function residualOf(x: System, y: Float64Array, slopes = true): number {
  const { rig, w, act, inertia, bound, force, held } = x;
  w.slopes = slopes;
  const shaken = bound?.by === 'shaken';
  if (shaken) act.shaken = force;
  assemble(rig, w, y, act);
  w.slopes = true;
  // What its force shortens it by, the ends come nearer.
  const excess = bound ? bound.excess(y) + bound.give * Math.max(0, force - bound.from) : 0;
  const pushes = bound !== null && !shaken;
  const n = rig.n;
  let worst = 0;
  for (let j = 0; j < n; j++) {
    let r = (w.q[j] as number) + (pushes ? force * (bound.gradient[j] as number) : 0);
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

export function fillMatrix(x: System, steady: boolean): number {
  const { rig, w, inertia, bound, held } = x;
  const n = rig.n;
  const size = bound ? n + 1 : n;
  bound?.addTangent?.(x.force);
  const { k, matrix } = w;
  const mass = inertia?.massOverH2;
  const column = bound?.by === 'shaken' ? w.byShaken : bound?.gradient;
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
    if (bound && column) {
      w.matrix[j * size + n] = column[j] as number;
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

/** A bound's unknown after a step. A force is linear in its own row: it takes its full Newton value. */
const goneBy = ({ by }: Bound, from: number, step: number, scale: number): number =>
  by === 'force' ? from + step : Math.max(0, Math.min(1, from + scale * step));

/**
 * Iterations with a part shaken off at its end, all or nothing, after which it is sought beyond: where no part
 * between them lets the shoes lie there, Newton stays at one.
 */
const AT_END = 2;
/** What a step of a descent may leave of what is unbalanced. */
const NEARER = 0.9999;
/** Iterations that do not halve what is unbalanced, after which Newton is stuck, to and fro over a kink. */
const STUCK = 10;
/** Unbalanced force below which a bending brake is near enough for its matrix to serve on, N. */
const NEAR = 50;
/** A step that leaves more than this of the unbalanced force needs a matrix of its own. */
const WELL = 0.01;

/**
 * Newton with a capped step and halving; supports held as given. The first steps go whole, since a touch makes what is
 * unbalanced jump up once; later ones must not leave more. Where dry friction turns round within a step, equally much
 * is left on both sides of a bristle's narrow reach, and it steps over it to and fro for good: `nearer` asks each step
 * to leave less, which closes in on it from one side (descent with halving; C. T. Kelley, Iterative Methods for
 * Linear and Nonlinear Equations, chapter 8). The matrix of bending shoes is dear: near the
 * balance it serves as long as each step takes nearly all that is unbalanced (the chord method; C. T. Kelley,
 * Iterative Methods for Linear and Nonlinear Equations, 5.4).
 */
function newton(x: System, y: Float64Array, s: Ended, nearer = false): boolean {
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
  let best = worst;
  let idle = 0;
  let atEnd = 0;
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
      if (x.bound) x.force = goneBy(x.bound, forceBefore, step[n] as number, scale);
      next = residualOf(x, y, !light);
      const enough = nearer ? next < worst * NEARER : i < 8 || next <= worst * 1.0001;
      if (enough || next < nothing) break;
      scale /= 2;
    }
    known = !light;
    serves = light && next < WELL * worst;
    worst = next;
    if (!Number.isFinite(worst)) break;
    if (x.bound?.by === 'shaken' && (x.force === 0 || x.force === 1)) {
      if (++atEnd > AT_END) break;
    } else atEnd = 0;
    if (worst < best / 2) {
      best = worst;
      idle = 0;
    } else if (++idle > STUCK) break;
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
/** Steps after which a slow march gives up; and one that seeks a part shaken off, which can be found otherwise. */
const MARCH = 400;
const MARCH_SHAKEN = 80;

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
  const most = x.bound?.by === 'shaken' ? MARCH_SHAKEN : MARCH;
  for (let i = 0; i < most && worst >= NOTHING; i++) {
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
    if (x.bound) x.force = goneBy(x.bound, force, w.rhs[n] as number, scale);
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

/** Newton alone, from a pose that is near; the pose before it stays in the work's `start`. */
export function settleNear(x: System, y: Float64Array, s: Ended): boolean {
  x.w.start.set(y);
  s.converged = newton(x, y, s);
  return s.converged;
}

/** Newton; where it jumps to and fro the slow march; and where that stops half-way Newton that only descends. */
export function settle(x: System, y: Float64Array, s: Ended): void {
  const { start } = x.w;
  const { force } = x;
  start.set(y);
  s.converged = newton(x, y, s);
  if (s.converged) return;
  y.set(start);
  x.force = x.bound?.by === 'shaken' ? force : 0;
  s.converged = march(x, y, s);
  // A step in time has an end always; at rest there may be no balance to be found.
  if (s.converged || x.inertia === null) return;
  s.converged = newton(x, y, s, true);
}

/** A brake under one bound. */
export interface Bounded extends Omit<System, 'inertia'> {
  readonly bound: Bound;
}

/**
 * A pose under one bound, all freedoms but some held: the same Newton and march, without the brake's
 * one-sided supports.
 *
 * @param asked with a guess of the bound's force
 * @param y pose, guess in, solution out
 * @returns the bound's force, and what is left unbalanced, N
 */
export function solveBound(
  asked: Bounded,
  y: Float64Array,
): { readonly force: number; readonly residual: number } {
  const x: System = { ...asked, inertia: null };
  const s: Ended = { residual: 0, iterations: 0, converged: false };
  settle(x, y, s);
  return { force: x.force, residual: s.residual };
}
