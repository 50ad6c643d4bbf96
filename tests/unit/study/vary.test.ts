import { describe, expect, it } from 'vitest';
import runaboutScene from '../../../scenes/ferry-runabout.json';
import quayVan from '../../../scenes/quay-van.json';
import {
  balance,
  createRig,
  curveOf,
  quantitiesOf,
  readingOf,
  readings,
  readScene,
  rest,
  startState,
  sweep,
  Vary,
  type VaryPoint,
} from '../../../sim/index.ts';
import { near } from '../../near.ts';
import { samples } from '../../samples.ts';
import { baseOf } from '../../vary-base.ts';

const quay = new Vary(baseOf(quayVan));
const curve = (vary: Vary, id: string, from: number, to: number, keys: readonly string[]) => {
  const whole = quantitiesOf(vary.base, vary.brake).find((q) => q.id === id)?.whole ?? false;
  return curveOf(vary, { id, from, to, whole, keys });
};
const at = (p: VaryPoint): number => p.at[0] as number;

/**
 * Closed form of a rigid shoe on a pin, pressure as the sine of the angle from the pin (the derivation
 * and its source stand in tests/reference/closed-form.test.ts), of the quay van's own sizes: pin at
 * (16, −78), piston line at 78, lining of 110° whose far end is 23.4° from the pin, bore 200.
 */
const X_Y = (() => {
  const rad = Math.PI / 180;
  const a = Math.hypot(16, 78) / 100;
  const pin = Math.atan2(78, 16) / rad;
  // From the pin at −pin to the lining's ends at −55 and 55.
  const [from, to] = [(pin - 55) * rad, (pin + 55) * rad];
  const arc = to - from;
  const a3 = to + from;
  const x = (a * (arc - Math.sin(arc) * Math.cos(a3))) / (4 * Math.sin(arc / 2) * Math.sin(a3 / 2));
  return { x, y: 1 - a * Math.cos(arc / 2) * Math.cos(a3 / 2) };
})();
const closed = (mu: number, sign: 1 | -1): number => (mu * 1.56) / (X_Y.x - sign * mu * X_Y.y);

describe('curves against closed forms', () => {
  const factor = curve(quay, 'shoes.lining.friction', 0.15, 0.85, [
    'shoeFactorLeading',
    'shoeFactorTrailing',
    'brakeFactor',
  ]);

  it('factor against friction, each shoe: hinged shoe, within 0.2 %', () => {
    const told = factor.filter((p) => p.why === 'sound' && at(p) < 0.65);
    expect(told.length).toBeGreaterThan(15);
    for (const p of told) {
      near(p.values[0] as number, closed(at(p), 1), { rel: 2e-3 }, `leading at ${at(p)}`);
      near(p.values[1] as number, closed(at(p), -1), { rel: 2e-3 }, `trailing at ${at(p)}`);
    }
  });

  it('the friction at which it locks: X/Y, within 0.2 %, told by its neighbours', () => {
    const first = factor.findIndex((p) => p.why === 'locks');
    const [before, after] = [factor[first - 1], factor[first]] as [VaryPoint, VaryPoint];
    expect(after.locked).toBe('front');
    expect(after.values.every(Number.isNaN)).toBe(true);
    // Between a part that yields and a shoe that locks, or right at it.
    near(at(after), X_Y.x / X_Y.y, { rel: 2e-3 }, 'locks');
    expect(at(after) - at(before)).toBeLessThan(2e-4 * 0.7);
  });

  it('torque against bore: straight in the piston’s area, with the factor’s slope', () => {
    // T = C·R·(p·A − what the springs take): between two bores R·p·C·ΔA.
    const [small, large] = [17, 21].map((bore) =>
      quay.point([['cylinder.bore', bore]], ['torque', 'brakeFactor']),
    );
    const more = (Math.PI / 4) * (21 * 21 - 17 * 17);
    const slope = 100 * 4 * (small?.values[1] as number) * more;
    near(
      1000 * ((large?.values[0] as number) - (small?.values[0] as number)),
      slope,
      { rel: 2e-3 },
      'ΔT',
    );
  });

  it('slope held against cable: sin φ = n·T/(m·g·r)', () => {
    const keys = ['slipForward', 'slopeDown'];
    for (const cable of [150, 250, 400]) {
      const { values } = quay.point([['cable', cable]], keys);
      const [torque, slope] = values as [number, number];
      // Two wheels, 1 150 kg, tyre of 270 mm; standard gravity.
      const sine = (2 * torque) / (1150 * 9.80665 * 0.27);
      near(slope, (100 * sine) / Math.sqrt(1 - sine * sine), { rel: 2e-3 }, `${cable} N`);
    }
  });

  it('pedal against pressure: the circuit’s share is its give over the master’s area, times the ratio', () => {
    const [low, high] = [40, 80].map(
      (bar) => quay.point([['pressure', bar]], ['pedalCircuit']).values[0],
    );
    // 120 mm³/MPa, 4 MPa more, a master of 20.64 mm, pedal ratio 4.
    const more = ((120 * 4) / ((Math.PI / 4) * 20.64 * 20.64)) * 4;
    near((high as number) - (low as number), more, { rel: 2e-3 }, 'mm');
  });
});

describe('points', () => {
  it('are single presses of such a brake, bit for bit', () => {
    // Seeded: x(n+1) = 16807·x mod (2^31 − 1), Park and Miller, Comm. ACM 31 (1988), 1192.
    let seed = 20261128;
    const random = (low: number, high: number): number => {
      seed = (seed * 16807) % 2147483647;
      return low + ((high - low) * seed) / 2147483647;
    };
    const keys = ['torque', 'pedalTravel', 'restClearanceMean', 'toNextTooth'];
    for (let n = 0; n < 8; n++) {
      const mu = random(0.2, 0.55);
      const bore = random(16, 22);
      const bar = random(10, 60);
      const p = quay.point(
        [
          ['shoes.lining.friction', mu],
          ['cylinder.bore', bore],
          ['pressure', bar],
        ],
        keys,
      );
      const scene = structuredClone(quayVan);
      scene.shoes.front.lining.friction = mu;
      scene.shoes.rear.lining.friction = mu;
      scene.cylinder.bore = bore;
      const read = readScene(scene);
      if (!read.ok) throw new Error('it is a brake');
      const rig = createRig(read.brake);
      const state = startState(read.brake);
      const i = balance(rig, state, { pressure: bar * 0.1, turning: 1 });
      const list = readings(read.brake, state, i, rest(rig, state));
      keys.forEach((key, k) => {
        expect(p.values[k], `${key} at ${mu}, ${bore}, ${bar}`).toBe(readingOf(list, key).value);
      });
    }
  });

  it.each([
    ['quay van', quayVan],
    ['runabout', runaboutScene],
  ])(
    'each quantity of the %s set to what it is changes nothing; beside it there is another brake, or why not',
    (_name, scene) => {
      const vary = new Vary(baseOf(scene));
      const keys = ['torque', 'pedalTravel', 'restClearanceMean'];
      const plain = vary.point([], keys);
      const all = quantitiesOf(vary.base, vary.brake);
      expect(all.length).toBeGreaterThan(150);
      expect(new Set(all.map((q) => q.id)).size).toBe(all.length);
      let moved = 0;
      const every = samples('quantitiesInOne');
      for (const q of all.filter((_, i) => i % every === 0)) {
        expect(q.value, q.id).toBeGreaterThanOrEqual(q.range[0]);
        expect(q.value, q.id).toBeLessThanOrEqual(q.range[1]);
        expect(q.name, q.id).not.toBe('');
        const same = vary.point([[q.id, q.value]], keys);
        expect(same.finding, q.id).toBeNull();
        plain.values.forEach((value, k) => {
          near(same.values[k] as number, value, { rel: 1e-12, abs: 1e-12 }, `${q.id}, ${keys[k]}`);
        });
        const other = vary.point([[q.id, q.whole ? q.value + 1 : q.usual[1]]], keys);
        if (other.why === 'cannot be') expect(other.finding?.path, q.id).not.toBe('');
        else if (other.values.some((x, k) => x !== plain.values[k])) moved++;
      }
      // Not all of them touch a press: rims, holes for tools, the hand lever's notches do not.
      expect(moved).toBeGreaterThan(60 / every);
    },
  );

  it('a brake that cannot be says where and why; the edge is found', () => {
    const bores = curve(quay, 'cylinder.bore', 18, 28, ['torque']);
    const first = bores.find((p) => p.why === 'cannot be');
    expect(first?.finding?.path).toBe('cylinder.bore');
    // A wall of 1 mm is left in a cylinder of 25.4: sim/scene/findings.ts.
    near(at(first as VaryPoint), 23.4, { abs: 2e-3 }, 'bore');
  });

  it('whole numbers stay whole, and parts that yield are told instead of a number', () => {
    const teeth = curve(quay, 'tooth', 0, 20, ['torque']);
    expect(teeth.map(at)).toEqual(Array.from({ length: 21 }, (_, n) => n));
    expect(teeth.at(-1)?.why).toBe('yields');
    expect(teeth.at(-1)?.values[0]).toBeNaN();
  });

  it('with the adjuster at work a press steps as the ratchet law says', () => {
    const worn = new Vary(baseOf(quayVan, { steps: true }));
    const held = new Vary(baseOf(quayVan));
    const set = [['wear', 1]] as const;
    expect(worn.point(set, []).clicked).toBeGreaterThan(0);
    expect(held.point(set, []).clicked).toBe(0);
  });
});

describe('a curve', () => {
  it('comes coarse first and finer where it bends', () => {
    const ask = {
      id: 'shoes.lining.friction',
      from: 0.15,
      to: 0.7,
      whole: false,
      keys: ['brakeFactor'],
    };
    const points = [...sweep(quay, ask)];
    const first = points.slice(0, 25).map(at);
    expect(first).toEqual([...first].sort((a, b) => a - b));
    expect(points.length).toBeGreaterThan(25);
    const added = points.slice(25).map(at);
    const upper = added.filter((x) => x > 0.5).length;
    expect(upper).toBeGreaterThan(added.length / 2);
  });

  it('of a straight line needs no more', () => {
    const ask = { id: 'pressure', from: 20, to: 60, whole: false, keys: ['pistonForce'] };
    expect([...sweep(quay, ask)]).toHaveLength(25);
  });
});

it('tells a quantity as it is at a point, of a size and of a state', () => {
  const vary = new Vary(baseOf(quayVan));
  const keys = ['set cylinder.bore', 'set shoes.lining.friction', 'set tooth', 'set nothing'];
  const at = vary.point([['cylinder.bore', 20.5]], keys);
  expect(at.values).toEqual([20.5, 0.38, 0, Number.NaN]);
});
