import { expect, it } from 'vitest';
import { chance, normalQuantile } from '../../sim/math/chance.ts';
import { near } from '../near.ts';

// Abramowitz & Stegun, Handbook of Mathematical Functions, table 26.5 (values from memory, to all digits told).
it.each([
  [0.5, 0],
  [0.75, 0.67448975],
  [0.9, 1.281551566],
  [0.95, 1.644853627],
  [0.975, 1.959963985],
  [0.99, 2.326347874],
  [0.995, 2.575829304],
  [0.999, 3.090232306],
  [0.9999, 3.719016485],
])('normal quantile of %d', (p, x) => {
  near(normalQuantile(p), x, { abs: 1e-8 }, 'above');
  near(normalQuantile(1 - p), -x, { abs: 1e-8 }, 'below');
});

it('has no quantile outside of what can be', () => {
  expect([normalQuantile(0), normalQuantile(1), normalQuantile(-1)]).toEqual([
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NaN,
  ]);
});

it('a seed repeats, another does not, and its numbers are alike likely', () => {
  const of = (seed: number, n: number) => Array.from({ length: n }, chance(seed));
  expect(of(7, 5)).toEqual(of(7, 5));
  expect(of(7, 5)).not.toEqual(of(8, 5));
  const many = of(1, 40000);
  expect(many.every((x) => x > 0 && x < 1)).toBe(true);
  // Of 40 000 even numbers the mean is off by 0.0014 (1/√12/200), and each tenth holds 4000 ± 60.
  near(many.reduce((a, b) => a + b, 0) / many.length, 0.5, { abs: 0.006 }, 'mean');
  for (let k = 0; k < 10; k++)
    near(many.filter((x) => Math.floor(10 * x) === k).length, 4000, { abs: 240 }, `tenth ${k}`);
  // One and the next have nothing to do with each other: mean product of what each is off.
  const product = many.slice(1).reduce((s, x, i) => s + (x - 0.5) * ((many[i] as number) - 0.5), 0);
  near(product / many.length, 0, { abs: 0.002 }, 'neighbours');
});
