import { describe, expect, it } from 'vitest';
import { pressureFactor, type Rubbing, speedFactor } from '../../sim/brake/rubbing.ts';
import { balance, createMotion, createRig, KMH, solveBalance } from '../../sim/index.ts';
import { ln, pow } from '../../sim/math/pow.ts';
import { kindsOf, waySpeed } from '../../sim/wear/schedule.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { pinnedPair, tablesQuay } from '../brakes.ts';
import { near } from '../near.ts';

const SIDES = ['front', 'rear'] as const;

/** The law that drag tables of friction are checked by: a .95, b −.05. */
const law: Rubbing = {
  pressureExponent: 0.95,
  speedExponent: -0.05,
  atPressure: 0.5,
  atSpeed: 40 * KMH,
  source: 'test',
};

const vanWith = (given: object) =>
  tablesQuay((s) => {
    Object.assign(s, {
      frictionAgainstPressureAndSpeed: {
        pressureExponent: 0.95,
        speedExponent: -0.05,
        atPressure: 0.5,
        atSpeed: 40,
        source: 'test',
        ...given,
      },
    });
  });

it('logarithm and power agree with the engine’s to the last digits', () => {
  for (let x = 1e-6; x < 1e6; x *= 1.7) {
    near(ln(x), Math.log(x), { rel: 4e-16, abs: 4e-16 }, `ln ${x}`);
    for (const y of [-2.5, -0.05, 0.3, 1]) near(pow(x, y), x ** y, { rel: 2e-14 }, `${x}^${y}`);
  }
  expect([ln(1), pow(7, 0), pow(1, 0.3)]).toEqual([0, 1, 1]);
});

it('Rhee’s law: by hand at four times the pressure and twice the speed', () => {
  // 4^−0.05 = 2^−0.1 = 0.93303, 2^−0.05 = 0.96594, together 2^−0.15 = 0.90125.
  near(pressureFactor(law, 2), 0.933, { abs: 5e-5 }, 'P×4');
  near(speedFactor(law, 80 * KMH), 0.9659, { abs: 5e-5 }, 'V×2');
  near(pressureFactor(law, 2) * speedFactor(law, 80 * KMH), 0.9013, { abs: 5e-5 }, 'both');
  expect(pressureFactor(law, 0.5)).toBe(1);
  // Level past a tenth and ten times: 10^±0.05.
  near(pressureFactor(law, 0), 10 ** 0.05, { rel: 1e-12 }, 'no pressure');
  near(pressureFactor(law, 100), 10 ** -0.05, { rel: 1e-12 }, 'very much');
});

describe('friction found together with the balance', () => {
  it('is that of the handbook’s shoes at their mean pressure', () => {
    // 280 mm drum, 30 mm shoes, 90 mm to the pins, lining 0 to 120°, arm 155.88 (Shigley's Mechanical
    // Engineering Design, a problem of chapter 16, from memory). By the handbook's sums, with θ from the pin:
    // p = p_a·sin θ, M_N = p_a·b·r·a·∫ sin², M_F = mu·p_a·b·r·∫ sin·(r − a·cos), F·c = M_N ∓ M_F; mean
    // pressure p_a·∫ sin/(2π/3). Friction by bisection.
    const [b, r, a, c] = [30, 140, 90, 155.88];
    const end = (2 * Math.PI) / 3;
    const sin = 1 - Math.cos(end);
    const sin2 = end / 2 - Math.sin(2 * end) / 4;
    const sincos = Math.sin(end) ** 2 / 2;
    const peak = (mu: number, force: number, sense: 1 | -1): number =>
      (force * c) / (b * r * (a * sin2 - sense * mu * (r * sin - a * sincos)));
    const mu = (force: number, sense: 1 | -1): number => {
      let [low, high] = [0, 0.6];
      for (let i = 0; i < 60; i++) {
        const m = (low + high) / 2;
        const mean = (peak(m, force, sense) * sin) / end;
        if (m < 0.3 * (mean / law.atPressure) ** (0.8 - 1)) low = m;
        else high = m;
      }
      return low;
    };
    const pair = pinnedPair({
      ...{ mu: 0.3, width: b, radius: r, pin: a, arm: c, from: 0, to: 120, forceAngle: 30 },
      elements: 480,
    });
    const steep = { ...law, pressureExponent: 0.8 };
    const rig = createRig({ ...pair.brake, rubbing: steep }, { elements: 480 });
    for (const force of [500, 1000, 3000]) {
      const i = balance(rig, pair.state, { pressure: force / pair.area, turning: 1 });
      for (const [side, sense] of [
        ['front', 1],
        ['rear', -1],
      ] as const) {
        const found = mu(force, sense);
        const torque = found * peak(found, force, sense) * b * r * r * sin;
        near(-i.shoes[side].torqueOnDrum, torque, { rel: 0.003 }, `${side} at ${force} N`);
      }
    }
  });

  for (const [a, b] of [
    [0.95, -0.05],
    [0.8, 0],
    [1.25, 0],
    [1.1, 0.1],
  ] as const) {
    it(`is the friction that each lining’s pressure asks for, a ${a}, b ${b}`, () => {
      const { brake, rig, state } = vanWith({ pressureExponent: a, speedExponent: b });
      const { rubbing } = brake;
      if (!rubbing) throw new Error('no law');
      for (const turning of [1, -1] as const) {
        for (const pressure of [1, 4, 8]) {
          const i = balance(rig, state, { pressure, turning, speed: 80 * KMH });
          expect(i.lost || i.locked !== null, `${pressure} MPa`).toBe(false);
          for (const side of SIDES) {
            const { normalSum, torqueOnDrum } = i.shoes[side];
            // 32 × 100 mm over 110°.
            const mean = normalSum / (3200 * ((110 * Math.PI) / 180));
            const asked = 0.38 * Math.min(10, Math.max(0.1, mean / 0.5)) ** (a - 1) * 2 ** b;
            near(Math.abs(torqueOnDrum) / (normalSum * i.drumRadius), asked, { rel: 1e-3 }, side);
          }
        }
      }
    });
  }

  it('is the same in balance, in time and in a press that wears', () => {
    const { brake, rig, state } = vanWith({});
    const motion = createMotion(rig, state);
    const w = new Wearing(rig, state);
    for (const turning of [1, -1] as const) {
      for (const pressure of [1, 4]) {
        const speed = 20 * KMH;
        for (let n = 0; n < 240; n++) motion.step({ pressure, turning, speed });
        const m = motion.instant();
        const b = balance(rig, state, { pressure, turning, speed });
        for (const side of SIDES)
          near(m.shoes[side].torqueOnDrum, b.shoes[side].torqueOnDrum, { rel: 1e-3 }, side);
        w.speed = speed;
        w.press(w.makeWarm(), pressure, turning, null, 20);
        near(w.torque, -turning * b.torqueOnDrum, { rel: 1e-7 }, 'wearing');
      }
    }
    // A stop's way has two thirds of its first speed, a descent its own.
    const [stop] = kindsOf(brake, brake.duties[0]);
    if (!stop) throw new Error('no stop');
    near(waySpeed(stop), (2 / 3) * 40 * KMH, { rel: 1e-12 });
    near(waySpeed({ ...stop, length: 1e6 }), 40 * KMH, { rel: 1e-12 });
  });

  it('a record of a moving brake goes on bit for bit, and shows again what it showed', () => {
    const { rig, state } = vanWith({ pressureExponent: 0.8 });
    const press = { pressure: 3, turning: 1, speed: 60 * KMH } as const;
    const one = createMotion(rig, state);
    for (let n = 0; n < 100; n++) one.step(press);
    const [record, shown] = [one.snapshot(), one.instant()];
    for (let n = 0; n < 30; n++) one.step(press);
    const other = createMotion(rig, state);
    other.restore(record);
    near(other.instant().torqueOnDrum, shown.torqueOnDrum, { rel: 1e-8 });
    for (let n = 0; n < 30; n++) other.step(press);
    expect(other.snapshot()).toEqual(one.snapshot());
  });

  it('does not hang on speed while the drum stands, nor where none is named', () => {
    const { rig, state } = vanWith({ pressureExponent: 1, speedExponent: 0.25 });
    const plain = tablesQuay();
    for (const turning of [0, 1] as const) {
      const of = (built: typeof plain, speed?: number): number =>
        balance(built.rig, built.state, {
          pressure: 4,
          turning,
          ...(speed === undefined ? {} : { speed }),
        }).torqueOnDrum;
      expect(of({ ...plain, rig, state })).toBe(of(plain));
      if (turning === 0) expect(of({ ...plain, rig, state }, 1e5)).toBe(of(plain));
    }
  });

  it('says that nothing balances where pressure and friction drive each other up', () => {
    // At 0.6 the leading shoe carries three times its push already; a 1.25: more pressure, more friction, more pressure.
    const { rig, state } = tablesQuay((s) => {
      for (const side of SIDES) s.shoes[side].lining.friction = 0.6;
      Object.assign(s, {
        frictionOfSurfaces: {
          damp: { factorAgainstTemperature: [[20, 1]], source: 'test' },
        },
        frictionAgainstPressureAndSpeed: {
          ...{ pressureExponent: 1.25, speedExponent: 0, atPressure: 0.5, atSpeed: 40 },
          source: 'test',
        },
      });
    });
    const solved = solveBalance(rig, state, { pressure: 8, turning: 1 });
    expect(solved.solution.settled).toBe(false);
    expect(balance(rig, state, { pressure: 8, turning: 1 }).lost).toBe(true);
  });
});

it('a shoe locks at the speed at which its friction is enough', () => {
  // The quay van's leading shoe locks between 0.75 and 0.8 by this solver without the law; 0.5 told at 300 km/h
  // with b −0.25 is 0.5·(300/60)^0.25 = 0.748 at 60 and 0.803 at 45.
  const { rig, state } = tablesQuay((s) => {
    for (const side of SIDES) s.shoes[side].lining.friction = 0.5;
    Object.assign(s, {
      frictionOfSurfaces: { damp: { factorAgainstTemperature: [[20, 1]], source: 'test' } },
      frictionAgainstPressureAndSpeed: {
        ...{ pressureExponent: 1, speedExponent: -0.25, atPressure: 0.5, atSpeed: 300 },
        source: 'test',
      },
    });
  });
  const locked = (kmh: number) =>
    balance(rig, state, { pressure: 4, turning: 1, speed: kmh * KMH }).locked;
  expect([locked(300), locked(60), locked(45)]).toEqual([null, null, 'front']);
  const motion = createMotion(rig, state);
  for (let n = 0; n < 60; n++) motion.step({ pressure: 4, turning: 1, speed: 45 * KMH });
  expect(motion.instant().locked).toBe('front');
});

it('a scene’s law is read in its units, and one outside what is published is refused', () => {
  const { rubbing } = vanWith({}).brake;
  near(rubbing?.atSpeed ?? 0, 40 * KMH, { rel: 1e-12 });
  expect(tablesQuay().brake.rubbing).toBeNull();
  expect(() => vanWith({ pressureExponent: 0.7 })).toThrow('pressureExponent');
  expect(() => vanWith({ speedExponent: 0.3 })).toThrow('speedExponent');
});
