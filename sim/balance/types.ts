import type { Flex } from '../brake/flex.ts';
import type { Condition } from '../brake/state.ts';
import type { Brake, Point, Shoe, Side } from '../brake/types.ts';
import type { Bed, WornBed } from '../contact/bed.ts';
import type { DrumNow } from '../contact/drum.ts';
import type { Friction } from '../contact/friction.ts';
import type { Rub } from '../contact/rub.ts';
import type { Arrow } from './instant.ts';

/** What the solvers and the forces hand each other: the rig, places on it, forces, and the work they share. */

/**
 * A point of a shoe that carries a concentrated force: its place from the anchor in the shoe's
 * frame, and how the bending modes move it (null on a rigid shoe).
 */
export interface Spot {
  readonly part: 'front' | 'rear' | 'plate';
  readonly x: number;
  readonly y: number;
  /** Rides on the parking lever: turns with it about the lever's pivot. */
  readonly onLever: boolean;
  /** Interleaved (x, y) displacement of this point by unit mode, shoe frame; null when it does not bend. */
  readonly modes: Float64Array | null;
  /** Turn of the shoe's section at the lever's pivot by unit mode, which carries the lever along. */
  readonly turning: Float64Array | null;
}

export interface ShoeRig {
  readonly shoe: Shoe;
  readonly side: Side;
  /** Outward along x: -1 front, +1 rear. */
  readonly outward: -1 | 1;
  /** Turning sense that moves the toe outward: +1 front, -1 rear. */
  readonly opening: -1 | 1;
  readonly freedoms: 1 | 3;
  readonly modes: number;
  readonly n: number;
  /** First index of this shoe in the vector of all freedoms. */
  readonly at: number;
  readonly bed: Bed;
  /** Null on a rigid shoe. */
  readonly flex: Flex | null;
  /** Greatest displacement by a unit of each mode, mm/√(N·mm): brings modes to a scale of mm and N. */
  readonly reach: Float64Array;
  readonly toe: Spot;
  readonly seat: Spot;
  /** The strut's seat on the web itself: the rear shoe's strut is held to it by its spring, and stands on the parking lever. */
  readonly webSeat: Spot;
  readonly hold: Spot;
  readonly rub: Rub;
}

/** A brake with all that the solvers need of it, built once by `createRig`. */
export interface Rig {
  readonly brake: Brake;
  readonly options: RigOptions;
  readonly front: ShoeRig;
  readonly rear: ShoeRig;
  readonly springs: readonly { readonly a: Spot; readonly b: Spot }[];
  readonly hook: Spot;
  /** A place of a shoe or of the parking lever, by where it stands in the reference pose, mm. */
  readonly spotOn: (on: Side | 'lever', at: Point) => Spot;
  /** Where the cable's pull comes from: its guide, or far away along a given direction. */
  readonly guide: Spot;
  /** Lever pivot from the rear anchor, mm. */
  readonly pivot: Point;
  /** Sense of the lever's turn under the cable's pull: +1 counter-clockwise, -1 clockwise. */
  readonly leverSense: -1 | 1;
  /** Hook travel along the pull for a unit turn of the lever, mm/rad. */
  readonly hookArm: number;
  /** Give of all that bears the strut's force, mm/N: see brake/strut-path.ts. */
  readonly strutGive: number;
  /** All freedoms: front, rear, lever turn. */
  readonly n: number;
  readonly leverAt: number;
}

/** How a brake is taken by the solvers; each as told when left out. */
export interface RigOptions {
  /** Elements of each lining; the state's wear arrays must be as long. */
  readonly elements?: number;
  /** Steel shoes that bend (see brake/flex.ts); rigid when left out. Wear of one kind does not suit the other. */
  readonly flexible?: boolean;
  /** Forces beyond the brake's own, as in the list of forces. */
  readonly more?: readonly BrakeForce[];
  /** Give of what bears the strut's force, mm/N: the brake's own when left out, 0 for rigid parts. */
  readonly strutGive?: number;
}

/** Place of a spot and its motion in every freedom (dx, dy over all freedoms). */
export interface Placed {
  x: number;
  y: number;
  /** From the shoe's anchor as moved, mm: second derivative of the place in the turn is −(rx, ry). */
  rx: number;
  ry: number;
  /** From the lever's pivot, mm, and whether the lever's turn moves it. */
  lx: number;
  ly: number;
  shoe: ShoeRig | null;
  onLever: boolean;
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  /** Turn of the lever's pivot section by unit mode; null when the spot does not ride on a bending shoe's lever. */
  turning: Float64Array | null;
}

/** cos and sin of each shoe's turn and of the lever's, kept for one evaluation. */
export interface Turns {
  frontCos: number;
  frontSin: number;
  rearCos: number;
  rearSin: number;
  leverCos: number;
  leverSin: number;
}

/** A straight link between two places. */
export interface Link {
  readonly a: Placed;
  readonly b: Placed;
  /** mm, and its direction from a to b. */
  length: number;
  ex: number;
  ey: number;
}

/** What is built and in what state, as far as forces hang on it. */
export interface Fitted {
  readonly condition: Condition;
  readonly front: WornBed;
  readonly rear: WornBed;
  readonly strutLength: number;
  /** Growth of the strut by its next tooth, mm; 0 at the last. */
  readonly nextTooth: number;
  /** Force at the strut's seats while the lever climbs there, N. */
  readonly climbForce: number;
}

/** What a hand can take hold of beside the drum: a shoe, the strut, the parking lever, a piston. */
export type Holdable = Side | 'strut' | 'lever' | 'front piston' | 'rear piston';

/** A hand on a part: it draws the place that it holds towards itself through a soft spring. */
export interface Hand {
  readonly on: Holdable;
  /** The place that it holds, as that stands in the reference pose, mm. */
  readonly at: Point;
  /** Where the hand is, mm. */
  readonly to: Point;
  /** Of its spring, N/mm, and the most that it pulls, N. */
  readonly rate: number;
  readonly limit: number;
}

/** What is done to it at one instant. */
export interface Acting {
  /** Line pressure, MPa, and cable pull at the hook, N, as they really act. */
  pressure: number;
  cable: number;
  drum: DrumNow;
  frontLaw: Friction;
  rearLaw: Friction;
  /** What every force remembers before the instant (what after it, is in the work), and in the built rest pose. */
  memory: Float64Array;
  home: Float64Array;
  /** The strut from seat to seat, mm, and the clamp of the released brake, from which on it gives, N. */
  strutLength: number;
  strutRest: number;
  /** How much of what a turning drum can shake off it has, 0..1. */
  shaken: number;
  /** Hands on the parts; none when left out. */
  hands?: readonly Hand[] | undefined;
  /** The drum is off: what stops the shoes then bears. */
  drumOff?: boolean | undefined;
}

/**
 * One force of the brake. Solvers know a list of these and no member of it: they ask each to add what it
 * does, and let it remember.
 */
export interface Force {
  readonly name: string;
  /** How many numbers it remembers, and where in the brake's memory they begin. */
  readonly remembers: number;
  slot: number;
  /** Takes over the state of the brake. */
  prepare(now: Fitted): void;
  /** Notes in a memory how it stands in the built rest pose; the work's turns are those of the pose. */
  rest?(w: Work, y: Float64Array, memory: Float64Array): void;
  /**
   * Adds its generalised forces to `w.q` and their slopes dQ/dy to `w.k`, books what it does to the shoes'
   * outer balance, and notes in `w.after` what it remembers then.
   */
  add(w: Work, y: Float64Array, act: Acting): void;
  /**
   * Did something let go, at the pose last added, that does not take hold again in this press? Notes it in
   * the memory before and after; then the balance has to be found anew.
   */
  gaveWay?(w: Work, act: Acting): boolean;
  /** What let go takes hold again: the shoe is home on the strut. */
  takeHold?(memory: Float64Array): void;
  /** The rest pose has changed from one memory's to another's: what is remembered goes along. */
  moved?(memory: Float64Array, from: Float64Array, to: Float64Array): void;
  /** The forces on shoes at the pose last added. */
  arrows(): readonly Arrow[];
  /**
   * Energy stored in it, or its potential, at the pose last added, N·mm: Q = −dE/dy. Null where it has none,
   * as friction that slides.
   */
  energy(): number | null;
}

/** Makes a force for each shoe; null where there is none. */
export type ShoeForce = (rig: Rig, shoe: ShoeRig) => Force | null;
/** Makes the forces of a kind that are no shoe's own. */
export type BrakeForce = (rig: Rig) => readonly Force[];

/** The forces of a rig, and buffers of one evaluation and one solve, reused. */
export interface Work {
  readonly forces: readonly Force[];
  readonly q: Float64Array;
  readonly k: Float64Array;
  /** False: the forces alone are asked for, and what stands in `k` means nothing. */
  slopes: boolean;
  /** The strut's seats, front to rear, and the gradient of their distance over all freedoms. */
  readonly strut: Link;
  readonly seatGradient: Float64Array;
  /** dQ by the part of what a turning drum can shake off that is shaken off. */
  readonly byShaken: Float64Array;
  /** Motion of a link's ends against each other in every freedom: along it and across. */
  readonly along: Float64Array;
  readonly across: Float64Array;
  readonly turns: Turns;
  /** External force on each shoe without lining, strut, anchor: x, y. */
  readonly outer: Float64Array;
  /** Moment of the springs on each shoe about its anchor, N·mm. */
  readonly springMoment: Float64Array;
  /** What every force remembers: of a press from rest before it, and after the last evaluation. */
  readonly memory: Float64Array;
  readonly after: Float64Array;
  readonly matrix: Float64Array;
  readonly pivots: Int32Array;
  readonly rhs: Float64Array;
  /** For the solver: 1 for every freedom that is held where it is; the pose at the start of a round, before an iteration, and the iteration's step. */
  readonly held: Uint8Array;
  readonly start: Float64Array;
  readonly before: Float64Array;
  readonly step: Float64Array;
}
