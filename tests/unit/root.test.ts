import { describe, expect, it } from 'vitest';
import { acrossZero, newtonOn, rootBetween, Seeker } from '../../sim/math/root.ts';
import { near } from '../near.ts';

describe('roots', () => {
  const until = { near: 1e-13, apart: (a: number, b: number) => a === b, trials: 60 };
  const cube = (x: number): number => x * x * x - 2;

  it('between two places: the cube root of two', () => {
    for (const halving of [false, true]) {
      const [x, value] = rootBetween(cube, [0, -2], [8, 510], { ...until, halving });
      near(x, Math.cbrt(2), { abs: 1e-12 }, 'root');
      expect(value).toBe(cube(x));
    }
  });
  it('gives the end back where there is none between', () => {
    expect(rootBetween(cube, [2, 6], [3, 25], until)).toEqual([3, 25]);
  });
  it('goes on, twice as far each time, until the sign has changed', () => {
    const asked: number[] = [];
    const f = (x: number): number => {
      asked.push(x);
      return x - 10;
    };
    expect(acrossZero(f, [0, -10], [1, -9], 12)).toEqual([16, 6]);
    expect(asked).toEqual([2, 4, 8, 16]);
    expect(acrossZero(f, [0, -10], [1, -9], 2)).toEqual([4, -6]);
    expect(acrossZero(f, [20, 10], [5, -5], 12)).toEqual([5, -5]);
  });
  it('seeks anew from where it was: one asking while the function hardly changes', () => {
    // What grows by 3 a unit: 12 is had at 4. Then, at 3.1, it would be had at 3.871.
    const seeker = new Seeker(2, { least: 0, most: 20, step: 0.5, close: 0.005, trials: 12 });
    const asked: number[] = [];
    const by = (slope: number) => (x: number) => {
      asked.push(x);
      return slope * x;
    };
    seeker.seek(12, 6, by(3));
    expect(asked).toEqual([2.5, 4]);
    near(seeker.at, 4, { abs: 1e-12 }, 'at');
    seeker.seek(12, 12.04, by(3.01));
    expect(asked.length).toBe(2);
    // Not asked again, but corrected by the slope that is known.
    near(seeker.at, 4 - 0.04 / 3, { abs: 1e-12 }, 'corrected');
    const bound = new Seeker(2, { least: 0, most: 3, step: 0.5, close: 0.005, trials: 12 });
    bound.seek(12, 6, by(3));
    expect(bound.at).toBe(3);
  });
  it('of several unknowns, in place: a circle cut by a parabola', () => {
    // x² + y² = 2 and y = x² meet at (1, 1).
    const y = Float64Array.of(7, 1.3, 9, 0.4);
    const errors = (): readonly number[] => {
      const [a, b] = [y[1] as number, y[3] as number];
      return [a * a + b * b - 2, b - a * a];
    };
    expect(newtonOn(y, [1, 3], errors, 1e-12, 30)).toBe(true);
    near(y[1] as number, 1, { abs: 1e-12 }, 'x');
    near(y[3] as number, 1, { abs: 1e-12 }, 'y');
    expect([y[0], y[2]]).toEqual([7, 9]);
  });
  it('says when it did not come there: no root, no slope', () => {
    const y = Float64Array.of(1);
    expect(newtonOn(y, [0], () => [(y[0] as number) ** 2 + 1], 1e-12, 20)).toBe(false);
    expect(newtonOn(y, [0], () => [3], 1e-12, 20)).toBe(false);
  });
});
