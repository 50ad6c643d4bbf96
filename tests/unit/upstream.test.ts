import { describe, expect, it } from 'vitest';
import {
  balance,
  footFor,
  lineAt,
  masterAt,
  masterFor,
  partReadings,
  pedalCurve,
  pedalForceAt,
  pedalParts,
  pedalStack,
  pressureAt,
  pressureToSlow,
  readingOf,
  rest,
  stopAt,
  wearOn,
} from '../../sim/index.ts';
import { meaningOf, stopNotes } from '../../sim/workshop/index.ts';
import { mustRead, quay, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/** The quay van with something between foot and wheel: master 20.64 mm, 334.59 mm², pedal 4 : 1. */
const van = (more: object) => quay((s) => Object.assign(s.hydraulics, more));
const AREA = (Math.PI / 4) * 20.64 * 20.64;
const plain = quay();

it('without any of it nothing is otherwise', () => {
  const { hydraulics } = mustRead(quayScene());
  expect(hydraulics).toMatchObject({
    booster: null,
    rearValve: null,
    circuits: null,
    residual: 0,
    rollBack: 0,
  });
  expect([lineAt(plain.brake, 3), masterFor(plain.brake, 3)]).toEqual([3, 3]);
  const stack = pedalStack(
    plain.brake,
    balance(plain.rig, plain.state, { pressure: 4, turning: 1 }),
  );
  expect(stack).toMatchObject({ booster: 0, rollBack: 0, lost: 0, ownLines: 0 });
  expect(stack.total).toBe(stack.freePlay + stack.gaps + stack.circuit + stack.air);
});

describe('a booster', () => {
  const { brake, rig, state } = van({ booster: { gain: 4, knee: 200, play: 0.5 } });
  it('helps by its gain up to its knee, and as much from there on', () => {
    // 100 N by 4 and by 4 : 1 are 1 600 N; 300 N: 200 N boosted to 800 and 100 N more, by 4 : 1 3 600 N.
    near(masterAt(brake, 100), 1600 / AREA, { rel: 1e-12 }, 'below');
    near(masterAt(brake, 300), 3600 / AREA, { rel: 1e-12 }, 'beyond');
    for (const foot of [0, 50, 199, 200, 201, 900])
      near(footFor(brake, masterAt(brake, foot)), foot, { abs: 1e-9 }, 'and back');
    near(pedalForceAt(brake, pressureAt(brake, 300)), 300, { abs: 1e-9 });
  });
  it('takes its play off the pedal, and leaves the rest of it', () => {
    const i = balance(rig, state, { pressure: 4, turning: 1 });
    const [with_, without] = [pedalStack(brake, i), pedalStack(plain.brake, i)];
    near(with_.total - without.total, 4 * 0.5, { abs: 1e-9 });
    // 40 bar are 334.6 N at the foot without, and a quarter with it.
    near(with_.force, without.force / 4, { rel: 1e-12 });
  });
});

describe('a valve at the rear', () => {
  it('holds back above its knee, and the knee goes with the load', () => {
    const { brake } = van({ rearValve: { kind: 'fixed', knee: 30, slope: 0.4 } });
    // 30 bar and 0.4 of the 40 bar above it.
    near(lineAt(brake, 7), 4.6, { abs: 1e-12 });
    expect(lineAt(brake, 2.5)).toBe(2.5);
    for (const line of [0, 1, 3, 4.6, 6])
      near(lineAt(brake, masterFor(brake, line)), line, { abs: 1e-12 });
    const knee = (load: number) =>
      van({ rearValve: { kind: 'load', kneeEmpty: 20, kneeLaden: 60, slope: 0.3, load } }).brake
        .hydraulics.rearValve?.knee ?? 0;
    expect(knee(0)).toBe(2);
    near(knee(0.25), 3, { abs: 1e-12 });
    near(knee(1), 6, { abs: 1e-12 });
  });
  it('leaves the other axle the pedal’s pressure: less of the braking is here', () => {
    const b = van({ rearValve: { kind: 'fixed', knee: 20, slope: 0.3 } });
    const held = stopAt(b.rig, b.state, 10000, 6);
    // 20 bar and 0.3 of 40 bar: 32 bar here; the other axle as 60 bar here would have it, 0.7/0.3 of it.
    const here = stopAt(plain.rig, plain.state, 10000, 3.2);
    const full = stopAt(plain.rig, plain.state, 10000, 6);
    near(held.pressure, 3.2, { abs: 1e-12 });
    near(held.force, here.force, { rel: 1e-9 }, 'here');
    const total = here.force + (0.7 / 0.3) * full.force;
    near(held.deceleration, total / 1.15, { rel: 1e-9 }, 'slows');
    near(held.share, here.force / total, { rel: 1e-9 }, 'share');
    // What all brakes take up is what the vehicle loses: ½ · 1 150 kg · (10 m/s)² = 57 500 J.
    const both = 2 * held.energy + (0.7 / 0.3) * full.force * held.distance;
    near(both / 1000, 57500, { rel: 1e-9 }, 'energy');
    near(stopAt(b.rig, b.state, 1, pressureToSlow(b.rig, b.state, 4000, 1)).deceleration, 4000, {
      rel: 1e-6,
    });
    expect(stopNotes(b.brake, held).join(' ')).toMatch(/valve holds this axle’s pressure back/);
  });
});

describe('a residual valve', () => {
  const b = van({ residualPressure: 0.8 });
  it('keeps its pressure in the line of a brake at rest, and the springs hold it', () => {
    const home = rest(b.rig, b.state);
    near(home.pressure, 0.08, { abs: 1e-12 });
    expect(home.shoes.front.normalSum + home.shoes.rear.normalSum).toBe(0);
    expect(home.shoes.front.pistonTravel).toBeLessThan(1e-3);
    // What the springs keep beyond it is less, by 0.08 MPa on 285.02 mm².
    const without = rest(plain.rig, plain.state).shoes.front.toeForce;
    near(home.shoes.front.toeForce - without, 0.08 * 285.02, { abs: 0.1 });
    const stack = pedalStack(b.brake, home);
    expect(stack).toMatchObject({ circuit: 0, force: 0 });
    near(stack.gaps, 0, { abs: 1e-3 });
  });
  it('changes no press that is harder', () => {
    const press = { pressure: 4, turning: 1 } as const;
    expect(balance(b.rig, b.state, press).torqueOnDrum).toBe(
      balance(plain.rig, plain.state, press).torqueOnDrum,
    );
  });
});

it('seals that draw pistons back cost fluid at the next press, not where pressure stays', () => {
  const b = van({ cupRollBack: 0.1 });
  const at = (built: typeof b, pressure: number) =>
    pedalStack(built.brake, balance(built.rig, built.state, { pressure, turning: 1 }));
  // Four pistons of 285.02 mm² by 0.1 mm: 114.0 mm³, over 334.59 mm² and by 4: 1.363 mm.
  near(at(b, 4).rollBack, 1.363, { abs: 1e-3 });
  near(at(b, 4).total - at(plain, 4).total, 1.363, { abs: 1e-3 });
  expect(at(b, 0).rollBack).toBe(0);
  expect(at(van({ cupRollBack: 0.1, residualPressure: 0.5 }), 4).rollBack).toBe(0);
});

describe('two circuits', () => {
  const circuits = (split: 'axles' | 'diagonal', failed: string) =>
    van({ circuits: { split, give: 40, stroke: 12, failed } });
  const end = (b: typeof plain) => pedalParts(pedalCurve(b.rig, b.state, 4));
  const sound = end(plain);

  it('both sound: the travel is that of one, and the axle’s lines are told apart', () => {
    const p = end(circuits('axles', 'none'));
    near(p.total, sound.total, { abs: 1e-9 });
    // 40 mm³/MPa at 4 MPa of the 120: a third.
    near(p.ownLines, (4 * 160) / AREA, { rel: 1e-9 });
    near(p.rest, (4 * 320) / AREA, { rel: 1e-9 });
  });
  it('the other failed: its stroke is lost, only this axle’s fluid moves', () => {
    const p = end(circuits('axles', 'other'));
    // 32 − 12 = 20 mm, by 4 : 1.
    near(p.lost, 80, { abs: 1e-9 });
    near(p.total, 4 + 80 + sound.toDrum + sound.elastic + (4 * 160) / AREA, { abs: 1e-6 });
    const b = circuits('axles', 'other');
    const s = stopAt(b.rig, b.state, 10000, 4);
    const whole = stopAt(plain.rig, plain.state, 10000, 4);
    near(s.deceleration, 0.3 * whole.deceleration, { rel: 1e-9 });
    expect(s.share).toBe(1);
    // Two brakes take up all of it, and their tyres need as much grip as before.
    near((2 * s.energy) / 1000, 57500, { rel: 1e-9 }, 'energy');
    near(s.grip, whole.grip, { rel: 1e-9 }, 'grip');
    expect(stopNotes(b.brake, s).join(' ')).toMatch(/One of the two circuits has failed/);
  });
  it('this one failed: nothing comes here, whatever is asked', () => {
    const b = circuits('axles', 'this');
    const p = end(b);
    near(p.total, 4 + 4 * 12 + (4 * 320) / AREA, { abs: 1e-9 });
    expect(p.own).toBe(0);
    expect(balance(b.rig, b.state, { pressure: 4, turning: 1 }).torqueOnDrum).toBe(0);
    const s = stopAt(b.rig, b.state, 10000, 4);
    expect([s.force, s.energy]).toEqual([0, 0]);
    near(s.deceleration, 0.7 * stopAt(plain.rig, plain.state, 10000, 4).deceleration, {
      rel: 1e-9,
    });
    // Driven on it wears nothing.
    const { state } = wearOn(b.rig, b.state, { distance: 1e9 });
    expect(Math.max(...state.wear.front)).toBe(0);
  });
  it('split diagonally: half of everything is left', () => {
    const b = circuits('diagonal', 'other');
    const p = end(b);
    near(p.toDrum + p.elastic, (sound.toDrum + sound.elastic) / 2, { rel: 1e-9 });
    near(p.ownLines + p.rest, ((4 * 480) / AREA) * 0.5, { rel: 1e-9 });
    const s = stopAt(b.rig, b.state, 10000, 4);
    const whole = stopAt(plain.rig, plain.state, 10000, 4);
    near(s.deceleration, whole.deceleration / 2, { rel: 1e-9 });
    near(s.energy, 2 * (57500000 * 0.15), { rel: 1e-9 }, 'one brake does what two did');
  });
});

it('the parts of the travel are all of it, and each is said', () => {
  const b = van({
    booster: { gain: 3, knee: 250, play: 0.3 },
    circuits: { split: 'axles', give: 30, stroke: 14, failed: 'other' },
    rearValve: { kind: 'fixed', knee: 15, slope: 0.5 },
    cupRollBack: 0.05,
  });
  const c = pedalCurve(b.rig, b.state, 5);
  const p = pedalParts(c);
  const sum =
    p.freePlay + p.booster + p.lost + p.rollBack + p.toDrum + p.elastic + p.ownLines + p.rest;
  near(sum, p.total, { rel: 1e-12 });
  expect(p.total).toBe(c.points.at(-1)?.total);
  const list = partReadings(c);
  expect(list.map((r) => r.key)).toEqual([
    'partFree',
    'partBooster',
    'partLost',
    'partRollBack',
    'partToDrum',
    'partElastic',
    'partLines',
    'partRest',
    'partOwn',
  ]);
  for (const r of list) expect(meaningOf(r), r.key).toMatch(/^[A-Z].*\.$/);
  near(readingOf(list, 'partOwn').value, 100 * p.own, { rel: 1e-12 });
  // Without them four parts and the share are told.
  expect(partReadings(pedalCurve(plain.rig, plain.state, 4))).toHaveLength(5);
});
