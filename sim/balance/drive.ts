import { asideOf, type Dressed } from './dress.ts';
import { Bending } from './forces/bending.ts';
import { Heel } from './forces/heel.ts';
import { Lining } from './forces/lining.ts';
import { addBend, addForce, addSlope } from './forces/sums.ts';
import { type Bound, solveBound } from './newton.ts';
import { makePlaced, place, turnsOf } from './place.ts';
import type { Acting, Force, Rig, ShoeRig, Work } from './types.ts';
import { prepare } from './work.ts';

/** One shoe whose toe is held at a place; the push it needs there is an unknown. */
export interface Drive {
  readonly pose: Float64Array;
  /** Outward push on the toe, N; negative: it must be held back. */
  push: number;
  /** Sum of the drum's normal forces, N, and least gap, mm. */
  bearing: number;
  gap: number;
}

/** Balanced to this, N: far below any push that matters. */
const BALANCED = 1e-3;
/** N/mm: 0.05 N at a millimetre. */
const THREAD = 0.05;

/** A shoe that nothing holds yet is kept at home by a thread. */
class Thread implements Force {
  readonly name = 'thread';
  readonly remembers = 0;
  slot = 0;
  readonly #rig: Rig;
  readonly #shoe: ShoeRig;
  readonly #home: readonly [x: number, y: number];
  readonly #at;

  constructor(rig: Rig, shoe: ShoeRig, restPose: Float64Array) {
    this.#rig = rig;
    this.#shoe = shoe;
    this.#at = makePlaced(rig.n);
    const turns = { frontCos: 1, frontSin: 0, rearCos: 1, rearSin: 0, leverCos: 1, leverSin: 0 };
    const { x, y } = place(rig, restPose, turnsOf(rig, restPose, turns), shoe.hold, this.#at);
    this.#home = [x, y];
  }

  prepare(): void {}

  add(w: Work, y: Float64Array): void {
    const p = place(this.#rig, y, w.turns, this.#shoe.hold, this.#at);
    const [hx, hy] = this.#home;
    addForce(this.#rig, w, p, -THREAD * (p.x - hx), -THREAD * (p.y - hy));
    addSlope(this.#rig, w, p, this.#shoe, -THREAD);
  }

  arrows(): readonly [] {
    return [];
  }

  energy(): null {
    return null;
  }
}

/**
 * Drives a shoe's toe outward to a place and balances the shoe there, its drum turning: the toe's push is
 * sought with the pose, as the strut's clamp is. Posed this way the balance has an answer on both sides
 * of self-locking, where a given push has none.
 *
 * @param shoe of the rig's aside (see dress.ts)
 * @param target outward place of the toe, mm
 * @returns false when it did not settle
 */
export function driveToe(
  d: Dressed,
  shoe: ShoeRig,
  turning: -1 | 1,
  target: number,
  drive: Drive,
): boolean {
  const { rig, work: all } = asideOf(d.rig);
  prepare(all, d);
  const anchored = (f: Force): boolean =>
    (f instanceof Lining || f instanceof Bending || f instanceof Heel) && f.shoe === shoe;
  const w = { ...all, forces: [...all.forces.filter(anchored), new Thread(rig, shoe, d.restPose)] };
  const law = { kind: 'slide', mu: d.friction[shoe.side], sense: turning } as const;
  const act: Acting = {
    pressure: 0,
    cable: 0,
    drum: d.drum,
    frontLaw: law,
    rearLaw: law,
    memory: d.home,
    home: d.home,
    strutLength: d.strutLength,
    strutRest: 0,
    shaken: 0,
  };
  const toe = makePlaced(rig.n);
  const gradient = new Float64Array(rig.n);
  // Only the driven shoe moves.
  const held = new Uint8Array(rig.n).fill(1).fill(0, shoe.at, shoe.at + shoe.n);
  const bound: Bound = {
    by: 'force',
    give: 0,
    from: 0,
    gradient,
    excess: (y) => {
      place(rig, y, w.turns, shoe.toe, toe);
      for (let j = 0; j < rig.n; j++) gradient[j] = shoe.outward * (toe.dx[j] as number);
      return shoe.outward * toe.x - target;
    },
    addTangent: (push) => addBend(rig, w, toe, shoe.outward * push, 0),
  };
  const { force, residual } = solveBound(
    { rig, w, act, bound, force: drive.push, held },
    drive.pose,
  );
  drive.push = force;
  let bearing = 0;
  for (const v of shoe.rub.normal) bearing += v;
  drive.bearing = bearing;
  drive.gap = shoe.rub.gap.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  return residual < BALANCED;
}
