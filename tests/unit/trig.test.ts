import { expect, it } from 'vitest';
import { atan2, cos, sin } from '../../sim/index.ts';
import { near } from '../near.ts';

it('own sine and cosine stay within the last bits of the platform’s', () => {
  for (let k = -20000; k <= 20000; k++) {
    const x = k * 0.00731;
    near(sin(x), Math.sin(x), { abs: 3e-16 }, `sin ${x}`);
    near(cos(x), Math.cos(x), { abs: 3e-16 }, `cos ${x}`);
  }
  expect(sin(0)).toBe(0);
  expect(cos(0)).toBe(1);
});

it('own arc tangent, in all quadrants and on the axes', () => {
  for (let k = 0; k < 3600; k++) {
    const a = (k * Math.PI) / 1800 - 3.1;
    for (const r of [1e-3, 1, 250]) {
      const [x, y] = [r * Math.cos(a), r * Math.sin(a)];
      near(atan2(y, x), Math.atan2(y, x), { abs: 1e-15 }, `${x}, ${y}`);
    }
  }
  expect(atan2(0, 1)).toBe(0);
  expect(atan2(0, 0)).toBe(0);
  near(atan2(1, 0), Math.PI / 2, { abs: 1e-15 });
});
