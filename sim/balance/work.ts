import { makeForces, memorySize } from './forces/list.ts';
import { makeLink } from './forces/sums.ts';
import type { Acting, Fitted, Rig, Work } from './types.ts';

export type { Work } from './types.ts';

export function makeWork(rig: Rig): Work {
  const n = rig.n;
  const size = n + 1;
  const forces = makeForces(rig);
  return {
    forces,
    q: new Float64Array(n),
    k: new Float64Array(n * n),
    slopes: true,
    strut: makeLink(n),
    seatGradient: new Float64Array(n),
    byShaken: new Float64Array(n),
    along: new Float64Array(n),
    across: new Float64Array(n),
    turns: { frontCos: 1, frontSin: 0, rearCos: 1, rearSin: 0, leverCos: 1, leverSin: 0 },
    outer: new Float64Array(4),
    springMoment: new Float64Array(2),
    memory: new Float64Array(memorySize(forces)),
    after: new Float64Array(memorySize(forces)),
    matrix: new Float64Array(size * size),
    pivots: new Int32Array(size),
    rhs: new Float64Array(size),
    held: new Uint8Array(n),
    start: new Float64Array(n),
    before: new Float64Array(n),
    step: new Float64Array(size),
  };
}

/** Every force of a rig takes over a state of the brake. */
export function prepare({ forces }: Work, now: Fitted): void {
  for (let i = 0; i < forces.length; i++) forces[i]?.prepare(now);
}

/** Lets go of what slid out of its hold in the last evaluation and stays out; says whether anything did. */
export function gaveWay(w: Work, act: Acting): boolean {
  let gave = false;
  for (let i = 0; i < w.forces.length; i++) if (w.forces[i]?.gaveWay?.(w, act)) gave = true;
  return gave;
}
