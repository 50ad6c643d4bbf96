import { describe, expect, it } from 'vitest';
import { radiusTowards, roundDrum, runningDrum } from '../../sim/contact/drum.ts';
import { FOLLOWS, HOLDS, type Sticking, slopes, stickOn } from '../../sim/contact/friction.ts';
import { makeRub, torqueOnDrum } from '../../sim/contact/rub.ts';
import { stickForce } from '../../sim/contact/stick.ts';
import { near } from '../near.ts';

const unit = (degrees: number): readonly [number, number] => [
  Math.cos((degrees * Math.PI) / 180),
  Math.sin((degrees * Math.PI) / 180),
];

describe('a drum out of round', () => {
  // By hand: off centre by 0.2 mm and oval by ±0.12 mm, turned by 30°. Along 30° and 210° it is widest, across
  // narrowest, half way between as new; at 50° it is 100 + 0.12 · cos 40° = 100.0919 mm.
  const drum = runningDrum(100, 0.2, 0.12, ...unit(30));
  it('has its centre aside and its radius by the direction', () => {
    near(drum.x, 0.2 * 0.8660254, { abs: 1e-7 }, 'x');
    near(drum.y, 0.1, { abs: 1e-12 }, 'y');
    for (const [degrees, radius] of [
      [30, 100.12],
      [210, 100.12],
      [120, 99.88],
      [75, 100],
      [-15, 100],
      [50, 100.0919253],
    ] as const)
      near(radiusTowards(drum, ...unit(degrees)), radius, { abs: 1e-6 }, `${degrees}°`);
  });
  it('is round where nothing is wrong with it', () => {
    for (const degrees of [0, 40, 135])
      expect(radiusTowards(roundDrum(100), ...unit(degrees))).toBe(100);
    expect([roundDrum(100).x, roundDrum(100).y]).toEqual([0, 0]);
  });
  it('turns under the friction at each face’s own distance: 3 N at 100 mm less 1 N at 50 mm', () => {
    const rub = makeRub(3, 1);
    rub.friction.set([3, -1, 0]);
    rub.faceX.set([100.5, 0.5, 70]);
    rub.faceY.set([0.2, 50.2, 0]);
    near(torqueOnDrum(rub, { ...roundDrum(100), x: 0.5, y: 0.2 }), -250, { abs: 1e-9 }, 'N·mm');
  });
});

describe('a bristle of the lining', () => {
  // 1 000 N/mm, pressed 0.01 mm into a drum of 100 mm: 10 N, of which friction can be 4 N at 0.4. Its shear
  // stiffness is 0.4 of that: 400 N/mm.
  const stick = (change: Partial<Sticking>, drum = roundDrum(100), y = 0): number => {
    const law: Sticking = {
      kind: 'stick',
      mu: 0.4,
      turn: 0,
      deflection: Float64Array.of(0),
      beforeX: Float64Array.of(100.005 + drum.x),
      beforeY: Float64Array.of(drum.y),
      ...change,
    };
    return stickOn(law, 0, drum, 100.01, y, Math.hypot(100.01, y), 100, 1000);
  };
  const told = (): readonly [number, number] => [
    slopes[FOLLOWS] as number,
    slopes[HOLDS] as number,
  ];

  it('stretches by what the drum runs ahead: 0.001 mm are 0.4 N', () => {
    near(stick({ turn: 1e-5 }), 0.40004, { abs: 1e-9 });
    expect(told()).toEqual([0, -400]);
    near(stick({ turn: -1e-5 }), -0.40004, { abs: 1e-9 });
    // From a deflection of 0.002 mm: 0.8 N more; and the same on a drum whose centre is elsewhere.
    const held = Float64Array.of(0.002);
    near(stick({ turn: 1e-5, deflection: held }), 1.20004, { abs: 1e-9 });
    near(stick({ turn: 1e-5 }, { ...roundDrum(100), x: 0.5, y: -0.3 }), 0.40004, { abs: 1e-9 });
  });
  it('less what its own face went along with it', () => {
    // The drum stands; the face goes 0.001 mm up and 0.005 mm out. Along the drum, where it is then, that is
    // 0.001 − 0.005 · 0.001/100.01 mm: it is held back by 400 times that.
    near(stick({}, roundDrum(100), 0.001), -0.39998, { abs: 1e-8 });
  });
  it('slips at 4 N, either way, and follows the normal force then', () => {
    expect(stick({ turn: 1e-3 })).toBeCloseTo(4, 9);
    near(told()[0], 400, { abs: 1e-9 }, 'follows');
    expect(told()[1]).toBe(0);
    expect(stick({ turn: -1e-3 })).toBeCloseTo(-4, 9);
    near(told()[0], -400, { abs: 1e-9 }, 'follows');
  });
  it('that was clear before the step rubs for the part of it after the touch', () => {
    // 0.01 mm clear before and 0.01 mm deep after: half the way. d/d(depth) of p/(p + c) is c/(p + c)² = 25.
    const before = { beforeX: Float64Array.of(99.99), turn: 1e-5 };
    near(stick(before), 0.20002, { abs: 1e-9 });
    near(told()[0], 400 * 1.0001e-3 * 25, { abs: 1e-6 }, 'follows');
    near(told()[1], -200, { abs: 1e-9 }, 'holds');
  });
});

describe('dry friction at one place', () => {
  const out = { force: 0, slope: 0, anchor: 0 };
  it('pulls back by its stiffness, up to its limit, and drags its anchor along', () => {
    // 2 000 N/mm, at most 30 N: it gives way at 0.015 mm.
    expect({ ...stickForce(1.01, 1, 2000, 30, out) }).toEqual({
      force: expect.closeTo(-20, 9),
      slope: -2000,
      anchor: 1,
    });
    expect({ ...stickForce(1.1, 1, 2000, 30, out) }).toEqual({
      force: -30,
      slope: 0,
      anchor: expect.closeTo(1.085, 12),
    });
    expect({ ...stickForce(0.9, 1, 2000, 30, out) }).toEqual({
      force: 30,
      slope: 0,
      anchor: expect.closeTo(0.915, 12),
    });
  });
  it('without a limit pulls at nothing and goes along', () => {
    expect({ ...stickForce(1.1, 1, 2000, 0, out) }).toEqual({ force: 0, slope: 0, anchor: 1.1 });
    expect({ ...stickForce(1.1, 1, 2000, -1, out) }).toEqual({ force: 0, slope: 0, anchor: 1.1 });
  });
});
