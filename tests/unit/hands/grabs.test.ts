import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Brake,
  createMotion,
  type Hand,
  type Holdable,
  type Instant,
  type MotionPress,
  type Point,
} from '../../../sim/index.ts';
import { flatten } from '../../../ui/stage/flatten.ts';
import { apply, type Frame } from '../../../ui/stage/geometry.ts';
import { webPath } from '../../../ui/stage/parts/web.ts';
import { placesOf } from '../../../ui/stage/place.ts';
import { benchBrake, quay, tablesQuay } from '../../brakes.ts';
import { drawn, toes } from '../../hands.ts';
import { near } from '../../near.ts';
import { samples } from '../../samples.ts';

const brakes = [quay(), benchBrake()] as const;

interface Grab {
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
    expect(webs[a].some((p) => inside(webs[b], p))).toBe(false);
    const least = Math.min(...webs[a].map((p) => Math.hypot(...p)));
    expect(least).toBeGreaterThan(brake.look.hubRadius - 0.01);
    if (drumOff) continue;
    const { lining } = brake.shoes[a];
    i.shoes[a].gap.forEach((gap, n) => {
      const pressed = ((i.shoes[a].pressure[n] as number) * lining.thicknessNew) / lining.modulus;
      expect(gap).toBeGreaterThan(-pressed - 0.01);
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
    expect(solution.residual).toBeLessThan(1e-3);
    expect(solution.settled).toBe(true);
    seen.push(...motion.snapshot().pose);
  };
  for (let n = 1; n <= 96; n++) step(press(g.jumps ? 1 : n / 96, true));
  for (let n = 0; n < 96; n++) step(press(1, true));
  const held = motion.instant();
  for (let n = 0; n < 48; n++) step(press(1, false));
  return { seen, held, brake, motion };
}

describe('a random grab', () => {
  it('is balanced at every step from 5 to 500 N/mm, goes through nothing, and comes out in the same bits', () => {
    let n = 0;
    fc.assert(
      fc.property(grab, (g) => {
        const { seen, held, brake } = takes(g);
        nothingThrough(brake, held, g.drumOff);
        for (const { name, force } of held.forces) {
          if (name.startsWith('stop')) expect(Math.hypot(...force) / 1e5).toBeLessThan(0.01);
        }
        if (n++ % 8 === 0) expect(takes(g).seen).toEqual(seen);
      }),
      { numRuns: samples('grabs'), seed: 5, endOnFailure: true },
    );
  });
});

describe('taking hold and letting go', () => {
  // Measured without a spring of the toothed lever, which helps them home.
  const { rig, state, brake } = tablesQuay();
  const still = { pressure: 0, turning: 0 } as const;

  it('a hand that takes hold where the part stands moves nothing', () => {
    const motion = createMotion(rig, state);
    for (let n = 0; n < 60; n++) motion.step(still);
    const before = motion.snapshot();
    const at = brake.shoes.front.toe;
    const now = motion.instant().shoes.front.toe;
    motion.step({ ...still, hands: [{ on: 'front', at, to: now, rate: 50, limit: 200 }] });
    const after = motion.snapshot();
    after.pose.forEach((v, j) => {
      near(v, before.pose[j] as number, { abs: 1e-9 }, `${j}`);
    });
  });

  /** Both toes pulled apart to the drum, then let go, at a step; seats' distance after each. */
  function letGo(dt: number, seconds: number): { apart: number[]; home: number } {
    const slow = createMotion(rig, state);
    const hands = toes(brake, 200, 'apart');
    for (let n = 1; n <= 144; n++)
      slow.step({ ...still, hands: drawn(hands, Math.min(1, n / 72)) });
    const motion = createMotion(rig, state);
    motion.restore(slow.snapshot());
    motion.setStep(dt);
    const { strutLength: home } = motion.instant();
    const apart = [motion.instant().separation - home];
    for (let t = 0; t < seconds; t += dt) {
      motion.step(still);
      apart.push(motion.instant().separation - home);
    }
    return { apart, home };
  }

  it('let go, toes that were pulled apart start from rest: no jump, way as the square of the time', () => {
    const dt = 1 / 24000;
    const { apart } = letGo(dt, 8 * dt);
    const way = (n: number): number => (apart[0] as number) - (apart[n] as number);
    near(apart[0] as number, 1, { abs: 0.005 }, 'parted');
    // Backward Euler under a constant force goes a·h²·n(n + 1)/2; the lining that bore lets go in the first steps.
    for (const n of [2, 4, 8]) near(way(n) / way(1), (n * (n + 1)) / 2, { rel: 0.15 }, `${n}`);
    expect(way(1)).toBeLessThan(2e-3);
  });

  it('and are home on the strut in 1.6 ms, at slow motion of ×1/100 and finer', () => {
    // Springs of 155 N each on 0.6 kg shoes: measured on prototypes at 1/6000 to 1/24000 s as 1.58 to 1.67 ms.
    for (const dt of [1 / 6000, 1 / 24000]) {
      const { apart } = letGo(dt, 0.004);
      const n = apart.findIndex((d) => d < 1e-6);
      near(n * dt, 1.6e-3, { rel: 0.05 }, `${dt}`);
    }
  });

  it('a pair carried sideways stays there when let go, until the turning drum is pressed', () => {
    const motion = createMotion(rig, state);
    const hands = [
      { on: 'front', at: brake.shoes.front.toe, to: [-600, 78], rate: 5, limit: 60 },
    ] as const;
    for (let n = 1; n <= 144; n++)
      motion.step({ ...still, hands: drawn(hands, Math.min(1, n / 72)) });
    for (let n = 0; n < 240; n++) motion.step(still);
    const rest = createMotion(rig, state).instant().shoes.front.toe[0];
    const off = () => motion.instant().shoes.front.toe[0] - rest;
    expect(off()).toBeLessThan(-0.4);
    for (let n = 0; n < 480; n++) motion.step({ pressure: n < 240 ? 2 : 0, turning: 1 });
    expect(Math.abs(off())).toBeLessThan(0.1);
  });
});
