import type { BrakeState } from '../brake/state.ts';
import { strutLength } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import { boreAt, frictionAt } from '../brake/warm.ts';
import { type WornBed, wornBed } from '../contact/bed.ts';
import { type DrumNow, roundDrum, runningDrum } from '../contact/rub.ts';
import { cos, sin } from '../math/trig.ts';
import { builtRest, keepPlaces, makeRestRig, type RestRig, reach } from './rest.ts';
import type { Rig } from './rig.ts';
import { type Memory, makeMemory, makeWork, type Work } from './work.ts';

/** A rig with a state put on: worn linings, drum as it is, the built rest pose and what it remembers. */
export interface Dressed {
  readonly rig: Rig;
  readonly state: BrakeState;
  readonly front: WornBed;
  readonly rear: WornBed;
  readonly drum: DrumNow;
  readonly strutLength: number;
  readonly nextTooth: number;
  readonly leverStop: number;
  /** Gap of the linings' middle in that pose, both shoes alike, mm (negative: dragging). */
  readonly restGap: number;
  /** Built rest pose: on the strut, both centre gaps alike, heels at home. */
  readonly restPose: Float64Array;
  readonly memory: Memory;
  readonly toeRest: Float64Array;
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

/** Dressing has buffers of its own, so that it can be done between a solve and its reading. */
const dressing = new WeakMap<Rig, RestRig>();
const dressed = new WeakMap<Rig, Dressed>();

/** Puts a state on the rig. The last one is kept, so asking again for the same state is free. */
export function dress(rig: Rig, state: BrakeState): Dressed {
  const last = dressed.get(rig);
  if (last && last.state === state) return last;
  const on = dressing.get(rig) ?? makeRestRig(rig);
  dressing.set(rig, on);
  const w = on.work;
  const front = wornBed(rig.front.bed, state.wear.front);
  const rear = wornBed(rig.rear.bed, state.wear.rear);
  const length = strutLength(rig.brake, state.tooth);
  const { growth } = rig.brake.adjuster;
  const next = growth[state.tooth + 1];
  const leverStop = rig.hookArm > 0 ? state.leverOffStop / rig.hookArm : 0;
  const restPose = builtRest(on, state, front, rear, leverStop);
  const memory = makeMemory();
  const toeRest = new Float64Array(2);
  keepPlaces(on.rig, w, restPose, memory, toeRest);
  const friction = (side: Side): number =>
    frictionAt(rig.brake, side, state.condition.surface[side], state.temperature);
  const made: Dressed = {
    rig,
    state,
    front,
    rear,
    drum: { ...roundDrum(drumRadiusNow(rig, state)), y: state.condition.drumRise },
    strutLength: length,
    nextTooth: next === undefined ? 0 : next - (growth[state.tooth] as number),
    leverStop,
    restGap:
      drumRadiusNow(rig, state) -
      reach(rig.front, front, restPose, w.turns.frontCos, w.turns.frontSin),
    restPose,
    memory,
    toeRest,
    friction: { front: friction('front'), rear: friction('rear') },
  };
  dressed.set(rig, made);
  return made;
}
