import { describe, expect, it } from 'vitest';
import {
  balance,
  createRig,
  depthAt,
  depthsWithin,
  type Finding,
  freshState,
  KMH,
  lipHeight,
  meanDepth,
  ownScene,
  readingOf,
  readings,
  readScene,
  rest,
  startState,
  stopAt,
  type WornAlong,
  wheelReadings,
} from '../../sim/index.ts';
import { liningReading } from '../../sim/study/measured.ts';
import { meaningOf } from '../../sim/workshop/index.ts';
import { mustRead, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

const scene = (start: object, more: object = {}) => ({ ...quayScene(), start, ...more });
const findings = (data: unknown): readonly Finding[] => {
  const read = readScene(data);
  return read.ok ? [] : read.findings;
};

describe('a parabola through three depths', () => {
  const worn: WornAlong = { toe: 1.5, middle: 1.2, heel: 0.6 };
  it('goes through them, and is a straight taper with the middle between', () => {
    expect([0, 0.5, 1].map((s) => depthAt(worn, s))).toEqual([1.5, 1.2, 0.6]);
    const taper = { toe: 2, middle: 1.25, heel: 0.5 };
    near(depthAt(taper, 0.3), 2 - 0.3 * 1.5, { abs: 1e-12 });
  });
  it('has mean and extremes of hand sums', () => {
    // Simpson: (1.5 + 4 · 1.2 + 0.6)/6.
    near(meanDepth(worn), 1.15, { abs: 1e-12 });
    expect(depthsWithin(worn)).toEqual({ least: 0.6, greatest: 1.5 });
    // 0.4, 1.0, 0.8: w = 0.4 + 2s − 1.6s², greatest at s = 2/3.2 with 0.4 + 4/6.4 = 1.025.
    const bulge = depthsWithin({ toe: 0.4, middle: 1, heel: 0.8 });
    near(bulge.greatest, 1.025, { abs: 1e-12 });
    expect(bulge.least).toBe(0.4);
  });
});

describe('a brake that starts worn along its arcs', () => {
  const front = { toe: 1.5, middle: 1.2, heel: 0.6 };
  const rear = { toe: 0.4, middle: 1, heel: 0.8 };
  const brake = mustRead(scene({ tooth: 2, drumDiameter: 200.3, wear: { front, rear } }));
  const state = startState(brake);
  it('has them on both linings, each from its own toe', () => {
    // A front shoe's toe is at its first element, a rear one's at its last.
    for (const [side, worn] of [
      ['front', front],
      ['rear', rear],
    ] as const) {
      const read = liningReading(brake, state, side);
      // No end reads thinner than the thinnest element: a hair is lost where the end is that.
      near(read.toe, 4.5 - worn.toe, { abs: 4e-3 }, `${side} toe`);
      near(read.heel, 4.5 - worn.heel, { abs: 1e-9 }, `${side} heel`);
    }
    expect(state.wear.front[0]).toBeGreaterThan(state.wear.front[47] ?? 9);
    expect(state.wear.rear[47]).toBeLessThan(state.wear.rear[0] ?? 0);
  });
  it('reads the thinnest of hand sums', () => {
    const rig = createRig(brake);
    const home = rest(rig, state);
    const list = readings(brake, state, home, home);
    // 1.5 at the very toe: the outermost gauge place, half of 1/48 in, lacks a hair of it.
    near(readingOf(list, 'liningFront').value, 4.5 - 1.5, { abs: 0.01 }, 'front');
    // 1.025 where the parabola turns.
    near(readingOf(list, 'liningRear').value, 4.5 - 1.025, { abs: 1e-3 }, 'rear');
    // Bore 200.3, edge as new at 200: a lip of 0.15 mm.
    near(lipHeight(rig, state), 0.15, { abs: 1e-9 }, 'lip');
    expect(balance(rig, state, { pressure: 4, turning: 1 }).lost).toBe(false);
  });
  it('has lost the volume of hand sums', () => {
    const { lining } = brake.shoes.rear;
    const arc = lining.to - lining.from;
    const volume = (wear: Float64Array): number =>
      wear.reduce((sum, w) => sum + lining.width * (100 * w - (w * w) / 2) * (arc / 48), 0);
    // b·arc·(R·mean − mean of w²/2), with the mean of w² of a parabola through t, m and h:
    // (4t² + 16m² + 4h² + 4tm + 4mh − 2th)/30 = 0.8 for 0.4, 1.0, 0.8.
    const [t, m, h] = [0.4, 1, 0.8];
    const squares = (4 * t * t + 16 * m * m + 4 * h * h + 4 * t * m + 4 * m * h - 2 * t * h) / 30;
    const mean = (t + 4 * m + h) / 6;
    near(volume(state.wear.rear), lining.width * arc * (100 * mean - squares / 2), { rel: 2e-4 });
  });
  it('a taper needs no middle, an even depth is a number', () => {
    const told = mustRead(scene({ wear: { front: { toe: 1, heel: 0.2 }, rear: 0.5 } })).start.wear;
    expect(told.front).toEqual({ toe: 1, middle: 0.6, heel: 0.2 });
    expect(told.rear).toBe(0.5);
  });
});

describe('wheels that start unlike', () => {
  const told = scene(
    { tooth: 2, drumDiameter: 200.3, wear: { front: { toe: 1.5, heel: 0.6 }, rear: 0.4 } },
    { otherWheel: { tooth: 0, wear: { front: 0.1, rear: 0.1 }, temperature: 60 } },
  );
  const brake = mustRead(told);
  const rig = createRig(brake);
  it('each have their own start, by the side that they are on', () => {
    expect(brake.wheel).toBe('left');
    expect(startState(brake)).toEqual(startState(brake, 48, 'left'));
    const right = startState(brake, 48, 'right');
    expect(right).toMatchObject({ tooth: 0, drumRadius: 100, temperature: 60 });
    expect([...right.wear.rear].every((w) => w === 0.1)).toBe(true);
    const alike = mustRead(quayScene());
    expect(startState(alike, 48, 'right')).toEqual(startState(alike));
  });
  it('stop by the mean of both, and the weaker one is told', () => {
    const states = { left: startState(brake), right: startState(brake, 48, 'right') };
    const speed = 50 * KMH;
    const [l, r] = [states.left, states.right].map((s) => stopAt(rig, s, speed, 4).torque);
    const both = stopAt(rig, [states.left, states.right], speed, 4);
    near(both.torque, ((l ?? 0) + (r ?? 0)) / 2, { rel: 1e-12 });
    const list = wheelReadings(rig, states, 4, 1, speed);
    const [less, more] = [Math.min(l ?? 0, r ?? 0), Math.max(l ?? 0, r ?? 0)];
    near(readingOf(list, 'wheelDifference').value, (100 * (more - less)) / more, { rel: 1e-12 });
    expect(less).toBeLessThan(0.95 * more);
    for (const row of list) expect(meaningOf(row)).toMatch(/^[A-Z].*\.$/);
    const alike = wheelReadings(rig, { left: states.left, right: states.left }, 4, 1, speed);
    expect(readingOf(alike, 'wheelDifference').value).toBe(0);
    expect(readingOf(wheelReadings(rig, states, 0, 1, speed), 'wheelDifference').value).toBe(0);
  });
  it('leave nothing behind in a brake of one’s own', () => {
    const words = { name: 'own', title: 'Own', about: 'a', source: 'b' };
    const read = readScene(told);
    if (!read.ok) throw new Error('not read');
    expect('otherWheel' in ownScene(read.scene, {}, words)).toBe(false);
  });
});

describe('what is wrong with a start', () => {
  const wrong = (wear: object): readonly (readonly [string, string])[] =>
    findings(scene({ wear })).map((f) => [f.path, f.allowed] as const);
  it('is told at its key, a strange one with the nearest', () => {
    expect(wrong({ front: { toe: 1, midle: 1, heel: 1 }, rear: 0 })).toEqual([
      ['start.wear.front.midle', 'only the keys of the format; the nearest is middle'],
    ]);
    expect(wrong({ front: { toe: 'much', heel: 1 }, rear: 0 })).toEqual([
      ['start.wear.front.toe', 'a number'],
    ]);
    expect(wrong({ front: { toe: 1 }, rear: 0 })).toEqual([
      ['start.wear.front.heel', 'this key is needed'],
    ]);
    expect(wrong({ front: 'much', rear: 0 })).toEqual([
      ['start.wear.front', 'a depth, or depths by toe, middle and heel'],
    ]);
    expect(wrong({ front: 0, rear: -1 })).toEqual([['start.wear.rear', 'at least 0']]);
  });
  it('is found on the other wheel too', () => {
    const told = findings(scene({}, { otherWheel: { tooth: 21, wear: { front: 0, rear: 4.6 } } }));
    expect(told.map((f) => f.path)).toEqual(
      expect.arrayContaining(['otherWheel.tooth', 'otherWheel.wear.rear']),
    );
  });
  it('a strut that a lining worn at its end alone leaves no room for is refused', () => {
    // Tooth 8 fits linings worn by 2 mm all over; worn so at the toes alone, the heels bear.
    const at = (wear: unknown) =>
      findings(scene({ tooth: 8, wear: { front: wear, rear: wear } })).map((f) => f.path);
    expect(at(2)).toEqual([]);
    expect(at({ toe: 2, heel: 0 })).toEqual(['start.tooth']);
  });
});

it('a start that says nothing is a new brake, as before', () => {
  const brake = mustRead(scene({}));
  expect(startState(brake)).toEqual(freshState(brake));
});
