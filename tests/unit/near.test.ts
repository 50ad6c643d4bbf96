import { expect, it } from 'vitest';
import { near } from '../near.ts';

it('passes within a share, an amount, or both', () => {
  near(101, 100, { rel: 0.01 });
  near(100.5, 100, { abs: 0.5 });
  near(101.5, 100, { rel: 0.01, abs: 0.5 });
});

it('fails outside, and on what is no number, with the residual', () => {
  expect(() => near(101.1, 100, { rel: 0.01 }, 'torque')).toThrow(
    /torque: 101.1 against 100, off by 1.10e\+0, allowed 1.00e\+0/,
  );
  expect(() => near(0.1, 0, { rel: 0.5 })).toThrow(/off by/);
  expect(() => near(Number.NaN, 1, { abs: 1 })).toThrow(/off by/);
});
