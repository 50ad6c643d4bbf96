import { describe, expect, it } from 'vitest';
import runabout from '../../scenes/ferry-runabout.json';
import {
  type BrakeState,
  balance,
  type Condition,
  createRig,
  freshState,
  KMH,
  type Rig,
  rest,
  startState,
} from '../../sim/index.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { askedCounter } from '../asked-counter.ts';
import { mustRead, quay } from '../brakes.ts';
import { near } from '../near.ts';

/** A brake that wears in place: it presses as Balance does, and loses what Archard's law says. */

const { brake, rig, state: fresh } = quay();
const filled = (depth: number) => new Float64Array(48).fill(depth);
const SIDES = ['front', 'rear'] as const;
const ill = (change: Partial<Condition>, s: BrakeState = fresh): BrakeState => ({
  ...s,
  condition: { ...s.condition, ...change },
});

/** One press from cold, and the same by Balance. */
function same(
  of: Rig,
  state: BrakeState,
  pressure: number,
  turning: 1 | -1,
  what: string,
  speed?: number,
): Wearing {
  const w = new Wearing(of, state);
  if (speed !== undefined) w.speed = speed;
  w.press(w.makeWarm(), pressure, turning, null, state.temperature);
  const i = balance(of, state, {
    pressure,
    turning,
    cable: state.condition.keptCable,
    ...(speed === undefined ? {} : { speed }),
  });
  near(w.torque, -turning * i.torqueOnDrum, { rel: 1e-6, abs: 1e-3 }, `${what}, torque`);
  near(w.separation, i.separation, { abs: 1e-6 }, `${what}, seats`);
  near(w.strutForce, i.strutForce, { rel: 1e-5, abs: 1e-3 }, `${what}, strut`);
  const [front, rear] = w.pistons;
  near(front.travel, i.shoes.front.pistonTravel, { abs: 1e-6 }, `${what}, front piston`);
  near(rear.travel, i.shoes.rear.pistonTravel, { abs: 1e-6 }, `${what}, rear piston`);
  expect(w.balanced, what).toBe(true);
  return w;
}

describe('a press', () => {
  const states: readonly (readonly [string, BrakeState])[] = [
    ['new', fresh],
    ['worn', { ...fresh, wear: { front: filled(0.1), rear: filled(0.05) }, tooth: 1 }],
    ['climbing up its tooth', { ...fresh, drumRadius: 100.15, tooth: 0 }],
    ['at its last tooth', { ...fresh, drumRadius: 103.4, tooth: 20 }],
    ['hot', { ...fresh, temperature: 250 }],
    ['lever off its stop', { ...fresh, leverOffStop: 4 }],
    ['off centre', ill({ offCentre: 0.08 })],
    ['oval', ill({ oval: 0.06 })],
    ['a drum that rises', ill({ drumRise: 0.1 })],
    ['tired springs', ill({ springFactor: 0.5 })],
    ['a weak lever spring', ill({ leverSpring: 0.4 }, { ...fresh, drumRadius: 100.15 })],
    ['pressure left in the line', ill({ keptPressure: 1 })],
    ['a cable that is kept taut', ill({ keptCable: 150 })],
    ['a stuck piston', ill({ pistonStuck: { front: true, rear: false } })],
    ['a push on a toe', ill({ lean: { front: 0, rear: 100 } })],
    ['wet in front, greasy behind', ill({ surface: { front: 'wet', rear: 'greasy' } })],
  ];
  for (const [name, state] of states) {
    it(`stands as Balance has it: ${name}`, () => {
      for (const turning of [1, -1] as const)
        for (const pressure of [0, 0.5, 4]) same(rig, state, pressure, turning, `${pressure} MPa`);
    });
  }

  it('of shoes that slide goes by the same steps, however often', () => {
    // A heel that rubs on its flat stands where it stands by how it came there.
    const { front, rear } = runabout.shoes;
    const rubs = { ...front, anchor: { ...front.anchor, friction: 0.15 } };
    const read = mustRead({ ...runabout, shoes: { front: rubs, rear } });
    const of = createRig(read);
    const state = startState(read);
    for (const turning of [1, -1] as const) {
      const w = same(of, state, 3, turning, 'sliding');
      const { torque, separation } = w;
      const warm = w.makeWarm();
      for (let n = 0; n < 3; n++) w.press(warm, 3, turning, null, 20);
      near(w.torque, torque, { rel: 1e-6 }, 'torque again');
      near(w.separation, separation, { abs: 1e-6 }, 'seats again');
    }
    same(of, ill({ groove: 60 }, state), 3, 1, 'grooved');
    same(of, ill({ keptCable: 120 }, state), 0, 1, 'cable alone');
  });

  it('hangs on speed where friction does', () => {
    const { rig: of, state } = quay((s) => {
      Object.assign(s, {
        frictionAgainstPressureAndSpeed: {
          ...{ pressureExponent: 0.9, speedExponent: -0.1, atPressure: 0.5, atSpeed: 40 },
          source: 'test',
        },
      });
    });
    const [slow, fast] = [20, 120].map((kmh) => same(of, state, 3, 1, `${kmh}`, kmh * KMH));
    expect(fast?.torque).toBeLessThan(0.9 * (slow?.torque ?? 0));
  });

  it('from warm is that from cold: one after the other, harder and softer, forward and backward', () => {
    const w = new Wearing(rig, fresh);
    const warm = w.makeWarm();
    expect(warm).toMatchObject({ known: false, strutOn: true, leverFree: false });
    expect(warm.shaken).toBe('off the strut');
    expect(w.makeWarm('all along').shaken).toBe('all along');
    for (const pressure of [4, 1, 1, 6, 0.2, 3]) {
      for (const turning of [1, -1] as const) {
        w.press(warm, pressure, turning, null, 20);
        const i = balance(rig, fresh, { pressure, turning });
        near(w.torque, -turning * i.torqueOnDrum, { rel: 1e-6, abs: 1e-3 }, `${pressure}`);
        near(w.separation, i.separation, { abs: 1e-6 }, `${pressure}, seats`);
      }
    }
    expect(warm.known).toBe(true);
  });

  it('from warm goes on as it went before: presses that grow evenly are nearly foreseen', () => {
    const { counter, counting } = askedCounter();
    const of = createRig(brake, { more: [counting] });
    const count = (each: (warm: ReturnType<Wearing['makeWarm']>) => void): number => {
      const w = new Wearing(of, fresh);
      const warm = w.makeWarm();
      let sum = 0;
      for (let n = 0; n < 20; n++) {
        each(warm);
        counter.asked = 0;
        w.press(warm, 3 + 0.05 * n, 1, null, 20);
        if (n > 2) sum += counter.asked;
      }
      return sum;
    };
    const foreseen = count(() => {});
    const asBefore = count((warm) => {
      warm.drift.fill(0);
    });
    const cold = count((warm) => {
      warm.known = false;
    });
    expect(foreseen).toBeLessThan(asBefore);
    expect(asBefore).toBeLessThan(cold);
  });

  it('meets a surface, a film or a wider bore in place of its own', () => {
    const w = new Wearing(rig, fresh);
    const press = (...args: [surface: 'wet' | null, softening?: number, ahead?: number]) => {
      const [surface, softening, ahead] = args;
      w.press(w.makeWarm(), 3, 1, surface, 20, softening, ahead);
      return { torque: w.torque, apart: w.separation };
    };
    const own = press(null);
    const wet = balance(rig, ill({ surface: { front: 'wet', rear: 'wet' } }), {
      pressure: 3,
      turning: 1,
    });
    near(press('wet').torque, -wet.torqueOnDrum, { rel: 1e-6 }, 'wet');
    w.shares = { water: 1, rust: 0, glaze: { front: 0, rear: 0 } };
    near(press(null).torque, -wet.torqueOnDrum, { rel: 1e-6 }, 'a film of water');
    w.shares = undefined;
    const wide = balance(rig, { ...fresh, drumRadius: 100.07 }, { pressure: 3, turning: 1 });
    near(press(null, 0, 0.07).apart, wide.separation, { abs: 1e-6 }, 'ahead');
    near(press(null, 0, 0.07).torque, -wide.torqueOnDrum, { rel: 1e-6 }, 'ahead');
    // t/E + k·s: 4.5/400 mm/MPa, and as much again by 1.2e-8 · 937 500 mm, is a lining half as stiff.
    const soft = quay((s) => {
      for (const side of SIDES) s.shoes[side].lining.modulus = 200;
    });
    const half = balance(soft.rig, soft.state, { pressure: 3, turning: 1 });
    const softened = press(null, 937500);
    near(softened.torque, -half.torqueOnDrum, { rel: 1e-6 }, 'softened');
    near(softened.apart, half.separation, { abs: 1e-6 }, 'softened seats');
    near(press(null).torque, own.torque, { rel: 1e-6 }, 'and no more after it');
  });

  it('after wear and teeth is that of the state it has come to', () => {
    const w = new Wearing(rig, fresh);
    const warm = w.makeWarm();
    for (let n = 0; n < 12; n++) {
      w.press(warm, 3, 1, null, 20);
      w.wearOff(1.5e6);
    }
    expect(w.lost).toBeGreaterThan(0.1);
    w.tooth = 1;
    w.leverOffStop = 1;
    w.rest();
    w.press(warm, 3, 1, null, 20);
    const i = balance(rig, w.state(), { pressure: 3, turning: 1 });
    near(w.torque, -i.torqueOnDrum, { rel: 1e-6 }, 'torque');
    near(w.separation, i.separation, { abs: 1e-6 }, 'seats');
    near(w.strutForce, i.strutForce, { rel: 1e-5 }, 'strut');
  });

  it('says once and for all when nothing balanced', () => {
    const steep = quay((s) => {
      for (const side of SIDES) s.shoes[side].lining.friction = 0.6;
      Object.assign(s, {
        frictionOfSurfaces: { damp: { factorAgainstTemperature: [[20, 1]], source: 'test' } },
        frictionAgainstPressureAndSpeed: {
          ...{ pressureExponent: 1.25, speedExponent: 0, atPressure: 0.5, atSpeed: 40 },
          source: 'test',
        },
      });
    });
    const w = new Wearing(steep.rig, steep.state);
    expect(w.balanced).toBe(true);
    w.press(w.makeWarm(), 8, 1, null, 20);
    expect(w.balanced).toBe(false);
    w.press(w.makeWarm(), 0, 1, null, 20);
    expect(w.balanced).toBe(false);
  });
});

describe('what is worn off', () => {
  it('is k·s·N/area of each element, and evenly around the bore k_d·s·ΣN/(b·2πR)', () => {
    const w = new Wearing(rig, fresh);
    w.press(w.makeWarm(), 3, 1, null, 20);
    const normal = { front: new Float64Array(48), rear: new Float64Array(48) };
    w.pressed(normal);
    const sliding = 2e5;
    const drum = w.wearOff(sliding);
    const { wear, drumRadius } = w.state();
    let deepest = 0;
    let sum = 0;
    for (const side of SIDES) {
      const step = (110 * Math.PI) / 180 / 48;
      normal[side].forEach((n, i) => {
        // 32 mm · 100 mm · 110°/48.
        const depth = (1.2e-8 * sliding * n) / (3200 * step);
        near(wear[side][i] ?? 0, depth, { rel: 1e-9, abs: 1e-15 }, `${side} ${i}`);
        deepest = Math.max(deepest, depth);
        sum += n;
      });
      expect(Math.max(...normal[side])).toBeGreaterThan(0);
    }
    near(drum, (3e-9 * sliding * sum) / (32 * 2 * Math.PI * 100), { rel: 1e-9 }, 'drum');
    near(drumRadius - 100, drum, { rel: 1e-6 }, 'radius');
    near(w.lost, deepest, { rel: 1e-9 }, 'deepest');
    // Twice is twice: each by its own pressures; another's are by its.
    w.wearOff(sliding, { front: filled(0), rear: filled(2) });
    const after = w.state().wear;
    expect(after.front).toEqual(wear.front);
    const more = (1.2e-8 * sliding * 2) / (3200 * ((110 * Math.PI) / 180 / 48));
    near((after.rear[7] ?? 0) - (wear.rear[7] ?? 0), more, { rel: 1e-6 }, 'by another');
    near(w.lost, deepest + more, { rel: 1e-9 }, 'and both');
    expect(wear.front).not.toBe(fresh.wear.front);
    expect(fresh.wear.front.every((d) => d === 0)).toBe(true);
  });

  it('takes an element of what is worn already for as small as it is', () => {
    // At 96 of 100 mm its face is 0.96 as large.
    const w = new Wearing(rig, { ...fresh, wear: { front: filled(4), rear: filled(0) } });
    w.wearOff(1e5, { front: filled(5), rear: filled(5) });
    const { wear } = w.state();
    near(((wear.front[9] ?? 0) - 4) / (wear.rear[9] ?? 0), 1 / 0.96, { rel: 1e-9 });
    near(w.lost, (wear.front[9] ?? 0) - 4, { rel: 1e-9 });
    near(w.thinnest('front'), 4.5 - (wear.front[9] ?? 0), { rel: 1e-9 });
    near(w.thinnest('rear'), 4.5 - (wear.rear[9] ?? 0), { rel: 1e-9 });
  });
});

describe('a state', () => {
  const film = { water: 0.01, rust: 0.002, glaze: { front: 0.1, rear: 0.2 } };
  it('comes out as it went in, a copy', () => {
    const plain = { ...ill({ oval: 0.03 }), temperature: 70, distance: 5, applications: 3 };
    const full: BrakeState = { ...plain, tooth: 2, leverOffStop: 1, film, wornBy: 'neither' };
    for (const state of [plain, full]) {
      const w = new Wearing(rig, state);
      expect(w.state()).toEqual(state);
      expect(Object.keys(w.state()).sort()).toEqual(Object.keys(state).sort());
      expect(w.state().wear.front).not.toBe(state.wear.front);
      expect(w.shoes.brake).toBe(brake);
      w.press(w.makeWarm(), 3, 1, null, 20);
      expect(w.work.strut.length).toBe(w.separation);
      expect(w.shoes.front.rub.normal.some((n) => n > 0)).toBe(true);
      expect(w.condition).toBe(state.condition);
    }
  });

  it('says under which shoes it wore, once it has', () => {
    const bending = createRig(brake, { flexible: true });
    const w = new Wearing(bending, fresh);
    expect(w.state().wornBy).toBeUndefined();
    w.wearOff(1, { front: filled(1), rear: filled(1) });
    expect(w.state().wornBy).toBe('bending');
    const rigid = new Wearing(rig, { ...fresh, wornBy: 'neither' });
    rigid.wearOff(1, { front: filled(1), rear: filled(1) });
    expect('wornBy' in rigid.state()).toBe(false);
  });

  it('has at rest the gaps that Balance has: of the middles, and the least of all', () => {
    for (const state of [
      fresh,
      { ...fresh, tooth: 2, temperature: 90 },
      { ...fresh, wear: { front: filled(0.3), rear: filled(0.1) }, leverOffStop: 2 },
    ]) {
      const w = new Wearing(rig, state);
      const { front, rear } = rest(rig, state).shoes;
      const middle = (g: ArrayLike<number>) => ((g[23] ?? 0) + (g[24] ?? 0)) / 2;
      const gap = w.restGap(state.temperature);
      near(gap, (middle(front.gap) + middle(rear.gap)) / 2, { abs: 1e-4 }, 'middle');
      const least = Math.min(...front.gap, ...rear.gap);
      near(w.leastGap(state.temperature), least, { abs: 1e-5 }, 'least');
      // 100 mm · 11e-6: each kelvin 1.1 µm more.
      near(w.restGap(state.temperature + 100) - gap, 0.11, { rel: 1e-9 }, 'warmer');
      near(w.radiusAt(120), 100.11, { rel: 1e-12 }, 'bore');
    }
  });

  it('finds its rest anew once two thousandths are lost, and when it is told to', () => {
    const w = new Wearing(rig, fresh);
    const warm = w.makeWarm();
    const restAt = () => w.record().restAt;
    w.press(warm, 3, 1, null, 20);
    expect(restAt()).toBe(0);
    const lose = (depth: number) => {
      // All of it on one element of the rear lining.
      const spot = filled(0);
      spot[3] = (depth * 3200 * ((110 * Math.PI) / 180 / 48)) / 1.2e-8;
      w.wearOff(1, { front: filled(0), rear: spot });
    };
    lose(0.0019);
    w.press(warm, 3, 1, null, 20);
    expect(restAt()).toBe(0);
    lose(0.0002);
    w.press(warm, 3, 1, null, 20);
    near(restAt(), 0.0021, { rel: 1e-3 }, 'anew');
    lose(0.0001);
    w.rest();
    near(restAt(), w.lost, { rel: 1e-12 }, 'told to');
    expect(freshState(brake).wear.rear[3]).toBe(0);
  });
});
