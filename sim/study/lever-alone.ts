import { makePlaced, place, turnsOf } from '../balance/place.ts';
import { solveBalance } from '../balance/press.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Point, Turning } from '../brake/types.ts';

/**
 * The parking lever cut free: three forces on it, cable, strut and its pivot. With the pivot as the
 * point of moments, cable × its arm = strut × its arm (law of the lever); the pivot takes what is
 * left of both (sum of forces). Arms are measured where the lever stands, square to each force.
 */
export interface LeverAlone {
  readonly pivot: Point;
  readonly notch: Point;
  readonly hook: Point;
  /** Forces on the lever, N. */
  readonly cable: Point;
  readonly strut: Point;
  readonly pivotOnLever: Point;
  /** Their arms about the pivot, mm. */
  readonly cableArm: number;
  readonly strutArm: number;
  /** Cable arm over strut arm, as it stands and with the lever on its stop. */
  readonly ratio: number;
  readonly ratioAtRest: number;
  /** Turn of the lever off its stop, rad. */
  readonly turn: number;
}

const cross = (a: Point, b: Point): number => a[0] * b[1] - a[1] * b[0];
const size = (a: Point): number => Math.sqrt(a[0] * a[0] + a[1] * a[1]);
const from = (a: Point, b: Point): Point => [b[0] - a[0], b[1] - a[1]];

interface Arms {
  readonly pivot: Point;
  readonly notch: Point;
  readonly hook: Point;
  readonly along: Point;
  readonly strutAlong: Point;
  readonly cableArm: number;
  readonly strutArm: number;
}

/** Where the lever's three points stand in a pose, and the arms of the forces there. */
function armsAt(rig: Rig, pose: Float64Array): Arms {
  const turns = { frontCos: 1, frontSin: 0, rearCos: 1, rearSin: 0, leverCos: 1, leverSin: 0 };
  turnsOf(rig, pose, turns);
  const at = (spot: typeof rig.hook): Point => {
    const p = place(rig, pose, turns, spot, makePlaced(rig.n));
    return [p.x, p.y];
  };
  const hook = at(rig.hook);
  const notch = at(rig.rear.seat);
  const seat = at(rig.front.seat);
  // The pivot rides on the shoe as the lever's other points do, turned by nothing of its own.
  const pivot = at({ ...rig.hook, x: rig.pivot[0], y: rig.pivot[1] });
  const pull = from(hook, at(rig.guide));
  const along: Point = [pull[0] / size(pull), pull[1] / size(pull)];
  const push = from(seat, notch);
  const strutAlong: Point = [push[0] / size(push), push[1] / size(push)];
  return {
    pivot,
    notch,
    hook,
    along,
    strutAlong,
    cableArm: Math.abs(cross(from(pivot, hook), along)),
    strutArm: Math.abs(cross(from(pivot, notch), strutAlong)),
  };
}

/** @param cable pull at the hook, N @param turning way in which the drum is about to slip */
export function leverAlone(
  rig: Rig,
  state: BrakeState,
  cable: number,
  turning: Turning = 1,
): LeverAlone {
  const released = solveBalance(rig, state, { pressure: 0, turning: 0 });
  const rest = armsAt(rig, released.pose);
  const solved = solveBalance(rig, state, { pressure: 0, turning, cable });
  const { pose, solution, dressed } = solved;
  const a = armsAt(rig, pose);
  const clamp = solution.strutOn ? solution.clamp : 0;
  const onHook: Point = [cable * a.along[0], cable * a.along[1]];
  // The clamped strut pushes the lever's notch away from the front shoe.
  const onNotch: Point = [clamp * a.strutAlong[0], clamp * a.strutAlong[1]];
  return {
    pivot: a.pivot,
    notch: a.notch,
    hook: a.hook,
    cable: onHook,
    strut: onNotch,
    pivotOnLever: [-onHook[0] - onNotch[0], -onHook[1] - onNotch[1]],
    cableArm: a.cableArm,
    strutArm: a.strutArm,
    ratio: a.cableArm / a.strutArm,
    ratioAtRest: rest.cableArm / rest.strutArm,
    turn: (pose[rig.leverAt] as number) - dressed.leverStop,
  };
}
