import type { WornBed } from '../contact/bed.ts';
import type { DrumNow, Friction, ShoeStance } from '../contact/rub.ts';
import { makePlaced, type Placed, type Turns } from './place.ts';
import type { Rig, ShoeRig } from './rig.ts';

/** Where each dry-friction bristle holds: what a brake remembers between two instants. */
export interface Memory {
  /** Hold-down anchor of front and rear shoe: x, y, x, y, mm. */
  readonly hold: Float64Array;
  /** Piston cups: travel at which each bristle holds, mm. */
  readonly cup: Float64Array;
  /** Heel slip at which each abutment's bristle holds, mm. */
  readonly heel: Float64Array;
}

export const makeMemory = (): Memory => ({
  hold: new Float64Array(4),
  cup: new Float64Array(2),
  heel: new Float64Array(2),
});

export function copyMemory(from: Memory, to: Memory): void {
  to.hold.set(from.hold);
  to.cup.set(from.cup);
  to.heel.set(from.heel);
}

/** Everything that acts at one instant beside the pose. */
export interface Load {
  pressure: number;
  /** Cable pull at the hook, N. */
  cable: number;
  frontWorn: WornBed;
  rearWorn: WornBed;
  frontLaw: Friction;
  rearLaw: Friction;
  drum: DrumNow;
  /** Anchors before the instant; the evaluation writes those after it to `after`. */
  memory: Memory;
  /** Hold-down places of the built rest pose: x, y, x, y, mm. */
  home: Float64Array;
  /** Toe x of each shoe in the built rest pose, from which piston travel counts, mm. */
  toeRest: Float64Array;
  strutLength: number;
  /** Growth of the strut by its next tooth, mm; 0 at the last. */
  nextTooth: number;
  /** Share of hold-down friction that acts on each shoe: 1 or 1 − shakenOff. */
  holdShareFront: number;
  holdShareRear: number;
  /** Force at which a shoe breaks out of a groove in its pad, N; 0 once it slides or without a groove. */
  groove: readonly [number, number];
  stuck: readonly [boolean, boolean];
  cupExtra: number;
  springFactor: number;
  /** Push of a stuck part on each toe, N. */
  lean: readonly [number, number];
}

/** Buffers of one evaluation, reused. */
export interface Work {
  readonly q: Float64Array;
  readonly k: Float64Array;
  readonly stance: readonly [ShoeStance, ShoeStance];
  /** Gradient of the strut seat distance over all freedoms. */
  readonly seatGradient: Float64Array;
  /** Motion of a link's ends against each other in every freedom: along it and across. */
  readonly along: Float64Array;
  readonly across: Float64Array;
  separation: number;
  /** Unit vector from front to rear seat. */
  seatX: number;
  seatY: number;
  readonly turns: Turns;
  readonly toe: readonly [Placed, Placed];
  readonly seat: readonly [Placed, Placed];
  readonly hold: readonly [Placed, Placed];
  readonly hook: Placed;
  readonly guide: Placed;
  readonly springA: Placed;
  readonly springB: Placed;
  readonly springForce: Float64Array;
  /** Spring ends, x y x y for each spring, mm. */
  readonly springEnds: Float64Array;
  /** External force on each shoe without strut, anchor: x, y. */
  readonly outer: Float64Array;
  /** Moment of the springs on each shoe about its anchor, N·mm. */
  readonly springMoment: Float64Array;
  readonly piston: Float64Array;
  readonly travel: Float64Array;
  readonly heel: Float64Array;
  /** Friction of each hold-down on its shoe: x, y. */
  readonly held: Float64Array;
  climbForce: number;
  readonly after: Memory;
  readonly matrix: Float64Array;
  readonly rhs: Float64Array;
  /** For the solver: the pose at the start of a round, before an iteration, and the iteration's step. */
  readonly start: Float64Array;
  readonly before: Float64Array;
  readonly step: Float64Array;
}

/** A shoe as built, in a vector of its own until it is given another. */
export const makeStance = ({ freedoms, at, n }: ShoeRig): ShoeStance => ({
  freedoms,
  at,
  q: new Float64Array(at + n),
  cos: 1,
  sin: 0,
});

export function makeWork(rig: Rig): Work {
  const n = rig.n;
  const size = n + 1;
  return {
    q: new Float64Array(n),
    k: new Float64Array(n * n),
    stance: [makeStance(rig.front), makeStance(rig.rear)],
    seatGradient: new Float64Array(n),
    along: new Float64Array(n),
    across: new Float64Array(n),
    separation: 0,
    seatX: 1,
    seatY: 0,
    turns: { frontCos: 1, frontSin: 0, rearCos: 1, rearSin: 0, leverCos: 1, leverSin: 0 },
    toe: [makePlaced(n), makePlaced(n)],
    seat: [makePlaced(n), makePlaced(n)],
    hold: [makePlaced(n), makePlaced(n)],
    hook: makePlaced(n),
    guide: makePlaced(n),
    springA: makePlaced(n),
    springB: makePlaced(n),
    springForce: new Float64Array(rig.springs.length),
    springEnds: new Float64Array(4 * rig.springs.length),
    outer: new Float64Array(4),
    springMoment: new Float64Array(2),
    piston: new Float64Array(2),
    travel: new Float64Array(2),
    heel: new Float64Array(4),
    held: new Float64Array(4),
    climbForce: 0,
    after: makeMemory(),
    matrix: new Float64Array(size * size),
    rhs: new Float64Array(size),
    start: new Float64Array(n),
    before: new Float64Array(n),
    step: new Float64Array(size),
  };
}
