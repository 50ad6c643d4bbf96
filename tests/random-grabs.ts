import fc from 'fast-check';
import {
  type Brake,
  createMotion,
  type Hand,
  type Holdable,
  type Instant,
  type MotionPress,
  type Point,
} from '../sim/index.ts';
import { flatten } from '../ui/stage/flatten.ts';
import { apply, type Frame } from '../ui/stage/geometry.ts';
import { webPath } from '../ui/stage/parts/web.ts';
import { placesOf } from '../ui/stage/place.ts';
import { benchBrake, quay } from './brakes.ts';
import { drawn, stopsDeep } from './hands.ts';

/** As many under one seed. */
export const BATCH = 100;
const SEED = 5;

/** Without a test's own tools: thousands of grabs run several times faster so. */
function must(holds: boolean, what: string): void {
  if (!holds) throw new Error(what);
}

const brakes = [quay(), benchBrake()] as const;

export interface Grab {
  readonly which: 0 | 1;
  readonly parts: readonly {
    readonly on: Holdable;
    readonly t: number;
    readonly to: readonly [number, number];
    readonly rate: number;
  }[];
  readonly jumps: boolean;
  readonly drumOff: boolean;
  readonly bar: number;
  readonly unhooked: readonly number[];
  readonly unheld: readonly ('front' | 'rear')[];
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const holdable = fc.constantFrom<Holdable>(
  ...(['front', 'rear', 'front', 'rear', 'lever', 'strut', 'front piston', 'rear piston'] as const),
);
const grab: fc.Arbitrary<Grab> = fc.record({
  which: fc.constantFrom<0 | 1>(0, 1),
  parts: fc.array(
    fc.record({
      on: holdable,
      t: between(0, 1),
      to: fc.tuple(between(-80, 80), between(-80, 80)),
      rate: between(5, 500),
    }),
    { minLength: 1, maxLength: 2 },
  ),
  jumps: fc.boolean(),
  drumOff: fc.boolean(),
  bar: fc.constantFrom(0, 0, 3, 20),
  unhooked: fc.constantFrom([], [], [0], [1], [0, 1]),
  unheld: fc.constantFrom<readonly ('front' | 'rear')[]>([], [], ['front'], ['front', 'rear']),
});

/** Anywhere on the part, by a share of its length. */
function placeOn(brake: Brake, on: Holdable, t: number): Point {
  const { shoes, parkingLever: lever } = brake;
  const along = (a: Point, b: Point): Point => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
  if (on === 'lever') return along(lever.pivot, lever.hook);
  if (on === 'strut') return along(shoes.front.strutSeat, shoes.rear.strutSeat);
  if (on === 'front piston' || on === 'rear piston') {
    return shoes[on === 'front piston' ? 'front' : 'rear'].toe;
  }
  return along(shoes[on].toe, shoes[on].holdDown.at);
}

const handsOf = (brake: Brake, g: Grab): Hand[] =>
  g.parts.map(({ on, t, to, rate }) => {
    const at = placeOn(brake, on, t);
    return { on, at, to: [at[0] + to[0], at[1] + to[1]], rate, limit: 200 };
  });

function outline(brake: Brake, side: 'front' | 'rear', place: Frame): Point[] {
  const [first] = flatten(webPath(brake, brake.shoes[side]), 0.02);
  const points: Point[] = [];
  for (let i = 0; i + 1 < (first?.points.length ?? 0); i += 2) {
    points.push(apply(place, [first?.points[i] as number, first?.points[i + 1] as number]));
  }
  return points;
}

/** Ray to the right, odd crossings inside. */
function inside(polygon: readonly Point[], [px, py]: Point): boolean {
  let odd = false;
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const [ax, ay] = polygon[i] as Point;
    const [bx, by] = polygon[j] as Point;
    if (ay > py !== by > py && px < ((bx - ax) * (py - ay)) / (by - ay) + ax) odd = !odd;
  }
  return odd;
}

/** No web in the other one or in the hub, no lining in the drum beyond its own compression, mm. */
function nothingThrough(brake: Brake, i: Instant, drumOff: boolean): void {
  const { shoes } = placesOf(brake, i);
  const webs = {
    front: outline(brake, 'front', shoes.front),
    rear: outline(brake, 'rear', shoes.rear),
  };
  for (const [a, b] of [
    ['front', 'rear'],
    ['rear', 'front'],
  ] as const) {
    must(!webs[a].some((p) => inside(webs[b], p)), `${a} web in the other`);
    const least = Math.min(...webs[a].map((p) => Math.hypot(...p)));
    must(least > brake.look.hubRadius - 0.01, `${a} web in the hub: ${least}`);
    if (drumOff) continue;
    const { lining } = brake.shoes[a];
    i.shoes[a].gap.forEach((gap, n) => {
      const pressed = ((i.shoes[a].pressure[n] as number) * lining.thicknessNew) / lining.modulus;
      must(gap > -pressed - 0.01, `${a} lining in the drum at ${n}: ${gap}, pressed by ${pressed}`);
    });
  }
}

function takes(g: Grab) {
  const { rig, state: sound, brake } = brakes[g.which];
  const { unhooked, unheld } = g;
  const state = { ...sound, condition: { ...sound.condition, unhooked, unheld } };
  const motion = createMotion(rig, state);
  const hands = handsOf(brake, g);
  const press = (part: number, holds: boolean): MotionPress => ({
    ...{ pressure: (g.bar / 10) * part, turning: 0, drumOff: g.drumOff },
    ...(holds ? { hands: drawn(hands, part) } : {}),
  });
  const seen: number[] = [];
  const step = (p: MotionPress): void => {
    motion.step(p);
    const { solution } = motion.snapshot();
    must(solution.residual < 1e-3, `unbalanced: ${solution.residual} N`);
    must(solution.settled, 'supports not settled');
    seen.push(...motion.snapshot().pose);
  };
  for (let n = 1; n <= 96; n++) step(press(g.jumps ? 1 : n / 96, true));
  for (let n = 0; n < 96; n++) step(press(1, true));
  const held = motion.instant();
  for (let n = 0; n < 48; n++) step(press(1, false));
  return { seen, held, brake };
}

/** What went wrong with a grab. */
export interface Wrong {
  readonly grab: Grab;
  readonly why: string;
}

/** @throws what goes wrong with it */
export function tryOne(g: Grab, twice: boolean): void {
  const { seen, held, brake } = takes(g);
  nothingThrough(brake, held, g.drumOff);
  for (const { name, deep } of stopsDeep(brake, held))
    must(deep < 0.01, `${name}: ${deep} mm deep`);
  if (!twice) return;
  const again = takes(g).seen;
  must(
    again.length === seen.length && again.every((v, i) => Object.is(v, seen[i])),
    'other bits the second time',
  );
}

/**
 * Takes hold and lets go at random: balanced at every step from 5 to 500 N/mm, through nothing, no stop deeper than
 * 0.01 mm, and every eighth once more to the same bits.
 *
 * @returns what went wrong
 */
export function tryGrabs(batch: number, runs: number): readonly Wrong[] {
  const wrong: Wrong[] = [];
  fc.sample(grab, { numRuns: runs, seed: SEED + batch }).forEach((g, n) => {
    try {
      tryOne(g, n % 8 === 0);
    } catch (error) {
      wrong.push({ grab: g, why: error instanceof Error ? error.message : String(error) });
    }
  });
  return wrong;
}
