import { expect, it } from 'vitest';
import {
  balance,
  dragOf,
  parkedReadings,
  readingOf,
  readings,
  rest,
  roleOf,
  slopeReadings,
  turnReadings,
} from '../../sim/index.ts';
import { meaningOf } from '../../sim/workshop/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const van = quay();
const list = (pressure: number, turning: -1 | 0 | 1, built = van) => {
  const i = balance(built.rig, built.state, { pressure, turning });
  return {
    i,
    of: (key: string) =>
      readingOf(readings(built.brake, built.state, i, rest(built.rig, built.state)), key),
  };
};

it('factors are drag over push, and their parts add up', () => {
  const { i, of } = list(4, 1);
  near(of('brakeFactor').value, of('shoeFactorLeading').value + of('shoeFactorTrailing').value, {
    rel: 1e-12,
  });
  near(of('shoeFactorLeading').value, dragOf(i, 'front') / i.drumRadius / i.shoes.front.toeForce, {
    rel: 1e-12,
  });
  near(
    of('brakeFactorFull').value,
    (dragOf(i, 'front') + dragOf(i, 'rear')) / i.drumRadius / (4 * van.area),
    { rel: 1e-9 },
  );
  near(of('torque').value * 1000, dragOf(i, 'front') + dragOf(i, 'rear'), { rel: 1e-12 });
});

it('roles belong to the turning', () => {
  expect(roleOf('front', 1)).toBe('leading');
  expect(roleOf('front', -1)).toBe('trailing');
  expect(roleOf('rear', -1)).toBe('leading');
  const forward = list(4, 1).of('shoeFactorLeading').value;
  near(list(4, -1).of('shoeFactorLeading').value, forward, { rel: 1e-6 });
});

it('tells nothing where there is nothing to read', () => {
  expect(list(0.3, 1).of('brakeFactor').value).toBeNaN();
  expect(list(4, 0).of('brakeFactor').value).toBeNaN();
  expect(list(4, 0).of('torque').value).toBe(0);
});

it('standing, both linings are held back as the trailing one is in turning: they stick', () => {
  const standing = list(4, 0).of;
  const trailing = list(4, 1).of('peakRear').value;
  // The table of the first teaching brake: 0.87 and 0.29 MPa at 40 bar.
  near(trailing, 0.29, { abs: 0.005 });
  near(standing('peakFront').value, trailing, { rel: 0.02 }, 'front');
  near(standing('peakRear').value, trailing, { rel: 0.02 }, 'rear');
});

it('a brake that locks has no torque and no factor', () => {
  const locking = quay((s) => {
    s.shoes.front.lining.friction = 0.9;
    s.shoes.rear.lining.friction = 0.9;
  });
  const { i, of } = list(4, 1, locking);
  expect(i.locked).toBe('front');
  for (const key of ['brakeFactor', 'brakeFactorFull', 'torque', 'peakFront', 'anchorForceFront'])
    expect(of(key).value, key).toBeNaN();
});

it('every reading has a name, a unit or none, one sentence and a formula; keys are one of a kind', () => {
  const i = balance(van.rig, van.state, { pressure: 4, turning: 1 });
  const press = { pressure: 4, turning: 1 } as const;
  const all = [
    ...readings(van.brake, van.state, i, rest(van.rig, van.state)),
    ...slopeReadings(van.rig, van.state, 0.2, 300),
    ...parkedReadings(van.rig, van.state, 300),
    ...turnReadings(van.rig, van.state, press),
  ];
  expect(new Set(all.map((r) => r.key)).size).toBe(all.length);
  for (const r of all) {
    expect(r.name.length).toBeGreaterThan(1);
    expect(meaningOf(r)).toMatch(/[.]$/);
    expect(r.formula.length).toBeGreaterThan(0);
  }
  expect(() => readingOf(all, 'no such')).toThrow(/no such/);
});

it('lining left is what a gauge finds: the ground shape counts, a sloped end does not', () => {
  const of = (
    change: (l: { groundRadius: number; chamferArc?: number; chamferDepth?: number }) => void,
  ) => {
    const built = quay((s) => change(s.shoes.front.lining));
    return list(0, 0, built).of('liningFront').value;
  };
  near(
    of(() => {}),
    4.5,
    { abs: 1e-9 },
    'as new',
  );
  // Ground to 99 mm its ends lie lower: a ray at angle d from the middle meets the smaller circle at
  // cos d + sqrt(99² − sin² d) instead of 100 (plane trigonometry); the last element stands half a step in.
  const d = ((55 - 55 / 48) * Math.PI) / 180;
  const lower = 100 - (Math.cos(d) + Math.sqrt(99 ** 2 - Math.sin(d) ** 2));
  near(
    of((l) => {
      l.groundRadius = 99;
    }),
    4.5 - lower,
    { abs: 1e-9 },
    'ground smaller',
  );
  near(
    of((l) => {
      l.chamferArc = 8;
      l.chamferDepth = 2;
    }),
    4.5,
    { abs: 1e-9 },
    'sloped ends',
  );
});
