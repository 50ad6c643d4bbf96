import type { BrakeState } from '../brake/state.ts';
import { strutLength } from '../brake/state.ts';
import { surfaceFactor } from '../brake/surface.ts';
import { type WornBed, wornBed } from '../contact/bed.ts';
import { type DrumNow, roundDrum, runningDrum } from '../contact/rub.ts';
import { solveInPlace } from '../math/solve.ts';
import { cos, sin } from '../math/trig.ts';
import { place, turnsOf } from './place.ts';
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

/** Straight-line table; flat outside its ends. */
export function tableAt(table: readonly (readonly [number, number])[], t: number): number {
  const first = table[0];
  if (!first) return 1;
  if (t <= first[0]) return first[1];
  for (let i = 1; i < table.length; i++) {
    const a = table[i - 1];
    const b = table[i];
    if (a && b && t <= b[0]) return a[1] + ((t - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
  }
  return table[table.length - 1]?.[1] ?? 1;
}

/** Temperature at which drum and linings have their written sizes, °C. */
export const ROOM = 20;

/** Inner radius now: linear expansion of a ring, r·(1 + alpha·ΔT); the shoes stay cold. */
export function drumRadiusNow(rig: Rig, state: BrakeState): number {
  return state.drumRadius * (1 + rig.brake.drum.expansion * (state.temperature - ROOM));
}

/** Distance of a lining's middle (mean of the two middle elements) from the axis, shoe turned, mm. */
function reach(worn: WornBed, c: number, s: number): number {
  const half = worn.bed.count / 2;
  let sum = 0;
  for (let i = half - 1; i <= half; i++) {
    const x = worn.bed.anchor[0] + c * (worn.x[i] as number) - s * (worn.y[i] as number);
    const y = worn.bed.anchor[1] + s * (worn.x[i] as number) + c * (worn.y[i] as number);
    sum += Math.sqrt(x * x + y * y);
  }
  return sum / 2;
}

/** The drum at a turn of it; round and central on a sound brake. */
export function drumAt(d: Dressed, angle: number): DrumNow {
  const { offCentre, oval } = d.state.condition;
  if (offCentre === 0 && oval === 0) return d.drum;
  return runningDrum(d.drum.radius, offCentre, oval, cos(angle), sin(angle));
}

/**
 * Built rest pose. The strut fixes the distance of the seats; how the pair stands sideways is a
 * rule: both centre gaps alike (mean of the two middle elements), as a brake stands after its drum
 * has turned. Newton on two turns with difference quotients; heels at home (shift 0).
 */
function builtRest(
  rig: Rig,
  w: Work,
  front: WornBed,
  rear: WornBed,
  length: number,
  leverStop: number,
): Float64Array {
  const y = new Float64Array(rig.n);
  y[rig.leverAt] = leverStop;
  const turnF = rig.front.at + rig.front.freedoms - 1;
  const turnR = rig.rear.at + rig.rear.freedoms - 1;
  const errors = (): [number, number] => {
    turnsOf(rig, y, w.turns);
    const a = place(rig, y, w.turns, rig.front.seat, w.seat[0]);
    const b = place(rig, y, w.turns, rig.rear.seat, w.seat[1]);
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    return [
      Math.sqrt(dx * dx + dy * dy) - length,
      reach(front, w.turns.frontCos, w.turns.frontSin) -
        reach(rear, w.turns.rearCos, w.turns.rearSin),
    ];
  };
  const jac = new Float64Array(4);
  const step = new Float64Array(2);
  const d = 1e-6;
  for (let i = 0; i < 30; i++) {
    const e = errors();
    if (Math.abs(e[0]) < 1e-12 && Math.abs(e[1]) < 1e-12) break;
    for (const [col, at] of [
      [0, turnF],
      [1, turnR],
    ] as const) {
      const keep = y[at] as number;
      y[at] = keep + d;
      const f = errors();
      y[at] = keep;
      jac[col] = (f[0] - e[0]) / d;
      jac[2 + col] = (f[1] - e[1]) / d;
    }
    step[0] = -e[0];
    step[1] = -e[1];
    if (!solveInPlace(jac, step, 2)) break;
    y[turnF] = (y[turnF] as number) + (step[0] as number);
    y[turnR] = (y[turnR] as number) + (step[1] as number);
  }
  return y;
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
const dressing = new WeakMap<Rig, Work>();
const dressed = new WeakMap<Rig, Dressed>();

/** Puts a state on the rig. The last one is kept, so asking again for the same state is free. */
export function dress(rig: Rig, state: BrakeState): Dressed {
  const last = dressed.get(rig);
  if (last && last.state === state) return last;
  const w = dressing.get(rig) ?? makeWork(rig);
  dressing.set(rig, w);
  const front = wornBed(rig.front.bed, state.wear.front);
  const rear = wornBed(rig.rear.bed, state.wear.rear);
  const length = strutLength(rig.brake, state.tooth);
  const { growth } = rig.brake.adjuster;
  const next = growth[state.tooth + 1];
  const leverStop = rig.hookArm > 0 ? state.leverOffStop / rig.hookArm : 0;
  const restPose = builtRest(rig, w, front, rear, length, leverStop);
  const memory = makeMemory();
  const toeRest = new Float64Array(2);
  turnsOf(rig, restPose, w.turns);
  for (const [shoe, i] of [
    [rig.front, 0],
    [rig.rear, 1],
  ] as const) {
    const h = place(rig, restPose, w.turns, shoe.hold, w.hold[i]);
    memory.hold[2 * i] = h.x;
    memory.hold[2 * i + 1] = h.y;
    toeRest[i] = place(rig, restPose, w.turns, shoe.toe, w.toe[i]).x;
    if (shoe.shoe.anchor.kind === 'abutment') {
      memory.heel[i] =
        -shoe.shoe.anchor.heelRadius * (restPose[shoe.at + shoe.freedoms - 1] as number);
    }
  }
  const factor = tableAt(rig.brake.frictionTable, state.temperature);
  const { surface } = state.condition;
  const made: Dressed = {
    rig,
    state,
    front,
    rear,
    drum: roundDrum(drumRadiusNow(rig, state)),
    strutLength: length,
    nextTooth: next === undefined ? 0 : next - (growth[state.tooth] as number),
    leverStop,
    restGap: drumRadiusNow(rig, state) - reach(front, w.turns.frontCos, w.turns.frontSin),
    restPose,
    memory,
    toeRest,
    friction: {
      front: rig.front.shoe.lining.friction * factor * surfaceFactor[surface.front],
      rear: rig.rear.shoe.lining.friction * factor * surfaceFactor[surface.rear],
    },
  };
  dressed.set(rig, made);
  return made;
}
