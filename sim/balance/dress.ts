import { filmShares } from '../brake/film.ts';
import { climbForceAt } from '../brake/lever-form.ts';
import type { BrakeState } from '../brake/state.ts';
import { strutLength } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import { boreAt, frictionAt } from '../brake/warm.ts';
import { wornBed } from '../contact/bed.ts';
import { type DrumNow, roundDrum, runningDrum } from '../contact/drum.ts';
import { cos, sin } from '../math/trig.ts';
import {
  builtRest,
  makeRestRig,
  noteRest,
  type Resting,
  type RestRig,
  reach,
  restClamp,
} from './rest.ts';
import type { Fitted, Rig, Work } from './types.ts';
import { makeWork, prepare } from './work.ts';

/** A rig with a state put on: worn linings, drum as it is, the built rest pose and what it remembers. */
export interface Dressed extends Fitted {
  readonly rig: Rig;
  readonly state: BrakeState;
  readonly drum: DrumNow;
  readonly leverStop: number;
  /** Clamp of the strut in the released brake, its drum away, N. */
  readonly strutRest: number;
  /** Gap of the linings' middle in that pose, both shoes alike, mm (negative: dragging). */
  readonly restGap: number;
  /** Built rest pose: on the strut, both centre gaps alike, heels at home. */
  readonly restPose: Float64Array;
  /** What every force remembers in it. */
  readonly home: Float64Array;
  readonly friction: { readonly front: number; readonly rear: number };
}

/** Inner radius of the drum as warm as it is, mm. */
export const drumRadiusNow = (rig: Rig, state: BrakeState): number =>
  boreAt(rig.brake, state.drumRadius, state.temperature);

/** The drum at a turn of it; round and central on a sound brake. */
export function drumAt(d: Dressed, angle: number): DrumNow {
  const { offCentre, oval } = d.state.condition;
  if (offCentre === 0 && oval === 0) return d.drum;
  const turned = runningDrum(d.drum.radius, offCentre, oval, cos(angle), sin(angle));
  return { ...turned, y: turned.y + d.drum.y };
}

/** A drum that is off: so wide that nothing meets it. */
export const noDrum = (rig: Rig): DrumNow => roundDrum(2 * rig.brake.drum.radiusMax);

const works = new WeakMap<Rig, Work>();
/** The rig's own buffers. One evaluation at a time; nothing in them outlives a call. */
export function workOf(rig: Rig): Work {
  let w = works.get(rig);
  if (!w) {
    w = makeWork(rig);
    works.set(rig, w);
  }
  return w;
}

/** The rig's buffers, its forces prepared for a state. */
export function workFor(d: Dressed): Work {
  const w = workOf(d.rig);
  prepare(w, d);
  return w;
}

const asides = new WeakMap<Rig, RestRig>();
/**
 * The rig once more with buffers of its own: what is asked there, as dressing does and whether a shoe
 * locks, can be asked between a solve and its reading.
 */
export function asideOf(rig: Rig): RestRig {
  const on = asides.get(rig) ?? makeRestRig(rig);
  asides.set(rig, on);
  return on;
}

const dressed = new WeakMap<Rig, Dressed>();

/** Puts a state on the rig. The last one is kept, so asking again for the same state is free. */
export function dress(rig: Rig, state: BrakeState): Dressed {
  const last = dressed.get(rig);
  if (last && last.state === state) return last;
  const on = asideOf(rig);
  const w = on.work;
  const front = wornBed(rig.front.bed, state.wear.front);
  const rear = wornBed(rig.rear.bed, state.wear.rear);
  const length = strutLength(rig.brake, state.tooth);
  const { growth } = rig.brake.adjuster;
  const next = growth[state.tooth + 1];
  const leverStop = rig.hookArm > 0 ? state.leverOffStop / rig.hookArm : 0;
  const resting: Resting = { on, state, worn: { front, rear }, leverStop };
  const restPose = builtRest(resting);
  const clamp = restClamp(resting, restPose);
  const home = new Float64Array(w.memory.length);
  noteRest(on, restPose, home);
  const films = state.film && filmShares(rig.brake, state.film);
  const friction = (side: Side): number =>
    frictionAt(rig.brake, side, state.condition.surface[side], state.temperature, films);
  const made: Dressed = {
    rig,
    state,
    condition: state.condition,
    front,
    rear,
    drum: { ...roundDrum(drumRadiusNow(rig, state)), y: state.condition.drumRise },
    strutLength: length,
    strutRest: clamp,
    nextTooth: next === undefined ? 0 : next - (growth[state.tooth] as number),
    climbForce: climbForceAt(rig.brake, state.tooth, state.condition.leverSpring),
    leverStop,
    restGap:
      drumRadiusNow(rig, state) -
      reach(rig.front, front, restPose, w.turns.frontCos, w.turns.frontSin),
    restPose,
    home,
    friction: { front: friction('front'), rear: friction('rear') },
  };
  dressed.set(rig, made);
  return made;
}
