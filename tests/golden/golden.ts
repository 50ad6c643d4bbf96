import benchBrake from '../../scenes/bench-brake.json';
import farmTrailer from '../../scenes/farm-trailer.json';
import ferryRunabout from '../../scenes/ferry-runabout.json';
import quayVan from '../../scenes/quay-van.json';
import {
  type Brake,
  balance,
  createMotion,
  createRig,
  freshState,
  KM,
  type MotionRecord,
  wearOn,
} from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';

/** A golden run of each scene: what happened, and a hash of every bit of the end state. */
export interface Golden {
  readonly scene: string;
  readonly clicks: number;
  readonly steps: number;
  readonly hash: string;
}

/** FNV-1a over bytes, 32 bits (Fowler, Noll, Vo). */
function fnv(bytes: Uint8Array, from: number): number {
  let h = from;
  for (const b of bytes) h = Math.imul(h ^ b, 16777619) >>> 0;
  return h;
}

const bytesOf = (values: Float64Array): Uint8Array => new Uint8Array(values.buffer.slice(0));

/** A moment's numbers in an order that stays, so that hashes can be laid beside older ones. */
function numbersOf(m: MotionRecord): Float64Array {
  const { press, solution, memory } = m;
  const kept = (force: string, numbers: number): number[] =>
    ['front', 'rear'].flatMap((side) => (memory[`${side} ${force}`] ?? [0]).slice(0, numbers));
  return Float64Array.from([
    ...[m.steps, m.drumAngle, m.drumSpeed, m.clickedThisPress, m.backlog],
    ...[press.pressure, press.turning, press.cable ?? 0, m.state.tooth],
    ...[Number(solution.strutOn), Number(solution.leverFree), solution.clamp],
    ...[m.pose, m.speeds].flatMap((a) => [...a]),
    ...[...kept('hold-down', 2), ...kept('piston', 1), ...kept('heel', 1)],
    ...m.bristles.flatMap((b) => [...b.deflection, ...b.beforeX, ...b.beforeY]),
  ]);
}

function run(brake: Brake): Golden {
  const rig = createRig(brake);
  const life = wearOn(rig, freshState(brake), { distance: 6000 * KM });
  const motion = createMotion(rig, life.state);
  let clicks = life.events.filter((e) => e.kind === 'click').length;
  let steps = 0;
  for (const turning of [1, -1, 0] as const) {
    for (let n = 0; n < 240; n++, steps++) {
      const pressure = n < 90 ? n / 18 : n < 160 ? 5 : Math.max(0, 5 - (n - 160) / 8);
      clicks += motion.step({ pressure, turning }).clicked;
    }
  }
  let hash = fnv(bytesOf(numbersOf(motion.snapshot())), 2166136261);
  hash = fnv(bytesOf(life.state.wear.front), hash);
  hash = fnv(bytesOf(life.state.wear.rear), hash);
  const i = balance(rig, motion.state, { pressure: 3, turning: 1 });
  hash = fnv(
    bytesOf(Float64Array.of(i.separation, i.shoes.front.torqueOnDrum, i.shoes.rear.torqueOnDrum)),
    hash,
  );
  return { scene: brake.name, clicks, steps, hash: hash.toString(16) };
}

export function goldenRuns(): Golden[] {
  return [quayVan, benchBrake, farmTrailer, ferryRunabout].map((scene) => run(mustRead(scene)));
}
