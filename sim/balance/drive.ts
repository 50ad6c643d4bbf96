import { forgetTangent, rub } from '../contact/rub.ts';
import { solveInPlace } from '../math/solve.ts';
import { CENTRING } from './assemble.ts';
import type { Dressed } from './dress.ts';
import { heelForce, makeHeelForce } from './heel.ts';
import { makePlaced, place, turnsOf } from './place.ts';
import type { ShoeRig } from './rig.ts';
import { FIRST_DRAG, JUMPED, MARCH, MOST_DRAG, MOST_SHIFT, mostStep, nextDrag } from './solve.ts';
import { makeStance } from './work.ts';

/** One shoe whose toe is held at a place; the push it needs there is an unknown. */
export interface Drive {
  readonly pose: Float64Array;
  /** Outward push on the toe, N; negative: it must be held back. */
  push: number;
  /** Sum of the drum's normal forces, N, and least gap, mm. */
  bearing: number;
  gap: number;
  /** Outward place of the toe, mm. */
  toe: number;
}

/** Balanced to this, N: far below any push that matters. */
const BALANCED = 1e-3;
const NEWTON = 25;

/**
 * Drives a shoe's toe outward to a place and balances the shoe there, its drum turning: Newton on
 * the shoe's own freedoms and the toe's push together. Posed this way the balance has an answer on
 * both sides of self-locking, where a given push has none.
 *
 * @returns false when it did not settle
 */
export function driveToe(
  d: Dressed,
  shoe: ShoeRig,
  turning: -1 | 1,
  target: number,
  drive: Drive,
): boolean {
  const { rig } = d;
  const front = shoe.side === 'front';
  const worn = front ? d.front : d.rear;
  const mu = front ? d.friction.front : d.friction.rear;
  const law = { kind: 'slide', mu, sense: turning } as const;
  const { n, at } = shoe;
  const y = drive.pose;
  const size = n + 1;
  const { force, tangent } = shoe.rub;
  const stance = makeStance(shoe);
  stance.q = y;
  const matrix = new Float64Array(size * size);
  const rhs = new Float64Array(size);
  const toe = makePlaced(rig.n);
  const hold = makePlaced(rig.n);
  const heel = makeHeelForce();
  const held = d.memory.heel[front ? 0 : 1] as number;
  const home = [d.memory.hold[front ? 0 : 2] as number, d.memory.hold[front ? 1 : 3] as number];
  const turns = { frontCos: 1, frontSin: 0, rearCos: 1, rearSin: 0, leverCos: 1, leverSin: 0 };
  forgetTangent(shoe.rub);

  const evaluate = (): number => {
    turnsOf(rig, y, turns);
    stance.cos = front ? turns.frontCos : turns.rearCos;
    stance.sin = front ? turns.frontSin : turns.rearSin;
    rub(worn, stance, d.drum, law, shoe.rub);
    place(rig, y, turns, shoe.toe, toe);
    place(rig, y, turns, shoe.hold, hold);
    const { anchor } = shoe.shoe;
    if (anchor.kind === 'abutment') {
      heelForce(anchor, y[at] as number, y[at + 1] as number, y[at + 2] as number, held, heel);
    }
    const onHeel = [heel.x, heel.y, heel.moment];
    let worst = 0;
    for (let j = 0; j < n; j++) {
      const toeMotion = shoe.outward * (toe.dx[at + j] as number);
      let r = (force[j] as number) + drive.push * toeMotion;
      for (let l = 0; l < n; l++) matrix[j * size + l] = tangent[j * n + l] as number;
      if (j < 3 && shoe.freedoms === 3) {
        r += onHeel[j] as number;
        for (let l = 0; l < 3; l++) {
          matrix[j * size + l] =
            (matrix[j * size + l] as number) + (heel.tangent[3 * j + l] as number);
        }
      }
      if (j >= shoe.freedoms) {
        r -= y[at + j] as number;
        matrix[j * size + j] = (matrix[j * size + j] as number) - 1;
      }
      // A shoe that nothing holds yet is kept in place by a thread.
      const hx = hold.dx[at + j] as number;
      const hy = hold.dy[at + j] as number;
      r -= CENTRING * (hx * (hold.x - (home[0] as number)) + hy * (hold.y - (home[1] as number)));
      for (let l = 0; l < n; l++) {
        matrix[j * size + l] =
          (matrix[j * size + l] as number) -
          CENTRING * (hx * (hold.dx[at + l] as number) + hy * (hold.dy[at + l] as number));
      }
      matrix[j * size + n] = toeMotion;
      matrix[n * size + j] = toeMotion;
      rhs[j] = -r;
      worst = Math.max(worst, (Math.abs(r) * mostStep(rig, at + j)) / MOST_SHIFT);
    }
    matrix[n * size + n] = 0;
    drive.toe = shoe.outward * toe.x;
    rhs[n] = target - drive.toe;
    return Math.max(worst, Math.abs(target - drive.toe) * 1e4);
  };

  const start = y.slice();
  const pushed = drive.push;
  let worst = evaluate();
  const step = (drag: number): boolean => {
    for (let j = 0; j < n; j++) {
      const perMm = MOST_SHIFT / mostStep(rig, at + j);
      matrix[j * size + j] = (matrix[j * size + j] as number) - drag * perMm * perMm;
    }
    if (!solveInPlace(matrix, rhs, size)) return false;
    let scale = 1;
    for (let j = 0; j < n; j++) {
      scale = Math.min(scale, mostStep(rig, at + j) / Math.abs(rhs[j] as number));
    }
    for (let j = 0; j < n; j++) y[at + j] = (y[at + j] as number) + scale * (rhs[j] as number);
    drive.push += scale * (rhs[n] as number);
    return true;
  };
  for (let i = 0; i < NEWTON && !(worst < BALANCED); i++) {
    if (!step(0)) break;
    worst = evaluate();
  }
  if (!(worst < BALANCED)) {
    // As in solve.ts: slowly, against a drag.
    y.set(start);
    drive.push = pushed;
    worst = evaluate();
    let drag = FIRST_DRAG;
    for (let i = 0; i < MARCH && !(worst < BALANCED); i++) {
      const before = worst;
      const from = y.slice();
      const push = drive.push;
      if (!step(drag)) break;
      worst = evaluate();
      if (!(worst < JUMPED * before) && drag < MOST_DRAG) {
        y.set(from);
        drive.push = push;
        worst = evaluate();
        drag *= 10;
      } else {
        drag = nextDrag(drag, worst / before);
      }
    }
  }
  let bearing = 0;
  for (const v of shoe.rub.normal) bearing += v;
  drive.bearing = bearing;
  drive.gap = shoe.rub.gap.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  return worst < BALANCED;
}
