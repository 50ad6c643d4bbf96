import type { Press } from '../balance/press.ts';
import type { Solution } from '../balance/solve.ts';
import type { Force, Rig, ShoeRig } from '../balance/types.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Sticking } from '../contact/friction.ts';
import type { LeverRecord } from './lever-body.ts';
import type { RimHand } from './rim.ts';

/** A press in time. With a torque (N·mm, counter-clockwise) or a hand on its rim the drum is free under it; else driven. */
export interface MotionPress extends Press {
  readonly torque?: number | undefined;
  readonly rim?: RimHand | undefined;
  /** The drum is left to itself, held by nothing but its bearing and the linings. */
  readonly coasts?: boolean | undefined;
  /** The wheel stands on the road: its share of the vehicle's mass rolls with the drum. */
  readonly rolling?: boolean | undefined;
}

/** Bristles of one lining: their state between two steps. */
export interface Bristles {
  /** Deflection, mm: drum ahead of the lining is positive. */
  readonly deflection: Float64Array;
  /** Where each face stands, mm. */
  readonly beforeX: Float64Array;
  readonly beforeY: Float64Array;
}

export const makeBristles = (count: number): Bristles => ({
  deflection: new Float64Array(count),
  beforeX: new Float64Array(count),
  beforeY: new Float64Array(count),
});

/** The friction law of a lining by its bristles; its friction coefficient and the drum's turn are set later. */
export const sticking = (bristles: Bristles): Sticking => ({
  kind: 'stick',
  mu: 0,
  turn: 0,
  ...bristles,
});

/** Pose, speeds and both linings' bristles of one moment. */
type Kept = Pick<MotionRecord, 'pose' | 'speeds' | 'bristles'>;

/**
 * Own copies in one piece of memory: to ask for a piece takes longer than to fill it, and each step is kept.
 *
 * @param freedoms so many places and speeds, which are still to be filled in
 */
export function copyOf(freedoms: number, front: Bristles, rear: Bristles): Kept {
  const [before, after] = [front.deflection.length, rear.deflection.length];
  const all = new Float64Array(2 * freedoms + 3 * (before + after));
  let at = 0;
  const next = (length: number): Float64Array => {
    at += length;
    return all.subarray(at - length, at);
  };
  const own = (of: Bristles): Bristles => {
    const { length } = of.deflection;
    const to = { deflection: next(length), beforeX: next(length), beforeY: next(length) };
    copyBristles(of, to);
    return to;
  };
  return { pose: next(freedoms), speeds: next(freedoms), bristles: [own(front), own(rear)] };
}

export function copyBristles(from: Bristles, to: Bristles): void {
  to.deflection.set(from.deflection);
  to.beforeX.set(from.beforeX);
  to.beforeY.set(from.beforeY);
}

/** What Motion counts and turns by itself; the rest of a moment belongs to the joint and the bodies. */
export interface Clockwork {
  /** Length of a step, s; and steps of that length, after so much time at others since the state was put on, s. */
  dt: number;
  steps: number;
  since: number;
  /** Turn of the drum since the start, rad, and its speed, rad/s. */
  drumAngle: number;
  drumSpeed: number;
  /** Steps that the adjuster has taken since the strut was last clamped, without regard to their sense. */
  clickedThisPress: number;
  /** Time handed in that no whole step has used yet, s. */
  backlog: number;
  /** Steps in a row in which nothing moved; see still.ts. */
  quiet: number;
  /** What was done to the brake in the last step. */
  press: MotionPress;
  /** What the toothed lever's body remembers. */
  lever: LeverRecord;
}

/**
 * One moment of Motion, whole: whatever a step depends on is in it, so restore() goes on bit for bit, in
 * the same Motion or in another of the same brake. Own copies, but for the state, which never changes.
 */
export interface MotionRecord extends Readonly<Clockwork> {
  readonly state: BrakeState;
  readonly solution: Readonly<Solution>;
  /** Pose and speeds of all freedoms, as the engine's bodies hold them. */
  readonly pose: Float64Array;
  readonly speeds: Float64Array;
  /** What each force remembers, by its name. */
  readonly memory: Readonly<Record<string, readonly number[]>>;
  readonly bristles: readonly [Bristles, Bristles];
}

/** What each force remembers, taken out of the brake's memory. */
export function memoryByName(
  forces: readonly Force[],
  memory: Float64Array,
): MotionRecord['memory'] {
  const out: Record<string, number[]> = {};
  for (const { name, remembers, slot } of forces) {
    if (remembers === 0) continue;
    const own: number[] = [];
    for (let i = 0; i < remembers; i++) own.push(memory[slot + i] as number);
    out[name] = own;
  }
  return out;
}

/** And put back. */
export function fillMemory(
  forces: readonly Force[],
  kept: MotionRecord['memory'],
  memory: Float64Array,
): void {
  for (const { name, remembers, slot } of forces) {
    if (remembers === 0) continue;
    const own = kept[name];
    if (!own) throw new Error(`Record of another brake: it knows no ${name}`);
    memory.set(own, slot);
  }
}

/** Throws, with what is wrong, when a record is not one of this brake. */
export function mustFit(rig: Rig, r: MotionRecord): void {
  const check = (what: string, found: number, allowed: number): void => {
    if (found !== allowed) {
      throw new Error(`Record of another brake: ${what} is ${found}; here it is ${allowed}`);
    }
  };
  check('the number of freedoms', r.pose.length, rig.n);
  const count = (shoe: ShoeRig, i: 0 | 1): void =>
    check(
      `the number of elements on the ${shoe.side} lining`,
      r.bristles[i].deflection.length,
      shoe.bed.count,
    );
  count(rig.front, 0);
  count(rig.rear, 1);
}
