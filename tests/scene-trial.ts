import {
  type Brake,
  balance,
  createRig,
  freshState,
  type Instant,
  KM,
  type Rig,
  readScene,
  rest,
  startState,
  usualPressure,
  wearOn,
} from '../sim/index.ts';
import { drawBrake } from '../ui/stage/scene.ts';
import { fitView } from '../ui/stage/view.ts';
import { themes } from '../ui/theme.ts';
import type { Json } from './mutate.ts';
import { unsound } from './soundness.ts';

/** How far every accepted brake is driven. */
const ROAD = 3000 * KM;

/** Numbers that are none, by path; `null` where something says itself that it has no number. */
function notFinite(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
}

/** What became of an accepted scene. */
export interface Trial {
  /** What is wrong with it; empty for a sound one. */
  readonly wrong: readonly string[];
  /** Processor time of one press, and of the road, ms. */
  readonly press: number;
  readonly road: number;
}

/** Processor time, ms: what the clock on the wall says hangs on what else the machine does. */
const busy = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** At rest, pressed forward as new and as it starts, backward, and pulled by the hand lever. */
function presses(rig: Rig, brake: Brake): Instant[] {
  const pressure = usualPressure(brake);
  const fresh = freshState(brake);
  return [
    rest(rig, fresh),
    ...([1, -1] as const).map((turning) => balance(rig, fresh, { pressure, turning })),
    balance(rig, fresh, { pressure: 0, turning: 0, cable: 300 }),
    balance(rig, startState(brake), { pressure, turning: 1 }),
  ];
}

/** Numbers in the drawing that are none. */
function drawn(brake: Brake, instant: Instant, still: Instant): string[] {
  const drawing = drawBrake({
    brake,
    state: freshState(brake),
    instant,
    rest: still,
    layers: { forces: true },
    view: fitView(brake, { width: 1370, height: 992, band: 30 }),
    theme: themes.sheet,
  });
  return drawing.shapes.flatMap(({ key, path, place }) => notFinite([path, place], `drawn ${key}`));
}

/** What neither presses nor the first duty ask for: texts, the other duties, standing states. */
const ASIDE = new Set(['name', 'title', 'about', 'source', 'states']);
const asked = (key: string, value: unknown): unknown =>
  ASIDE.has(key) ? undefined : key === 'duties' ? (value as readonly unknown[])[0] : value;
/** What the last brakes without an edit that matters came to: half of the edits are of such a kind. */
const kept = new Map<string, Trial>();

/** Reads a scene and tries the brake out; null where it is refused. */
export function trial(data: Json): Trial | null {
  const read = readScene(data);
  if (!read.ok) return null;
  const { brake } = read;
  const wrong = unsound(read.scene);
  if (wrong.length > 0) return { wrong, press: 0, road: 0 };
  const what = JSON.stringify(read.scene, asked);
  const seen = kept.get(what);
  if (seen) return seen;
  const start = busy();
  const rig = createRig(brake);
  const all = presses(rig, brake);
  const pressed = busy();
  for (const i of all) wrong.push(...notFinite(i, 'press'));
  const [still, forward] = all as [Instant, Instant];
  wrong.push(...drawn(brake, forward, still));
  const road = busy();
  const end = wearOn(rig, freshState(brake), { distance: ROAD });
  wrong.push(...notFinite(end.state, 'road'));
  const made = { wrong, press: (pressed - start) / all.length, road: busy() - road };
  if (kept.size < 2000) kept.set(what, made);
  return made;
}
