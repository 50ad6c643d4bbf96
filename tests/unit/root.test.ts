import { describe, expect, it } from 'vitest';
import { acrossZero, newtonOn, rootBetween } from '../../sim/math/root.ts';
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
