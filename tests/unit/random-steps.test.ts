import { expect, it } from 'vitest';
import { createMotion } from '../../sim/index.ts';
import { WALK, walkOf } from '../any-walk.ts';
import { tablesQuay } from '../brakes.ts';
import { EnergyBook } from '../energy-book.ts';
import { walk } from '../random-steps.ts';
import { samples } from '../samples.ts';

// A million steps by `npm run test:steps`.
it('driven at random, every step is balanced, the energy books close, no tooth is lost, and a snapshot goes on to the same bits', () => {
  let clicks = 0;
  for (let seed = 0; seed < samples('walks'); seed++) {
    const { wrong, clicks: told } = walkOf(seed);
    expect(wrong, `walk ${seed}`).toEqual([]);
    clicks += told;
  }
  expect(clicks).toBeGreaterThan(0);
});

it('a worn van whose cable keeps its pull: the lever leaves the strut behind and hangs on its cable', () => {
  // Found by the walk: lever on its stop and strut on by turns, without end.
  expect(walk(26, WALK).wrong).toEqual([]);
});

it('a hook that flies to its cable’s guide is pulled no farther: there the pull has no direction', () => {
  expect(walkOf(695).wrong).toEqual([]);
});

it('a slack cable’s lever, between a strut that holds the shoes and shoes shaken off: it leans behind its stop', () => {
  expect(walkOf(1905).wrong).toEqual([]);
});

it('the energy books are open where some work is left out', () => {
  const { rig, state } = tablesQuay();
  const motion = createMotion(rig, state);
  const press = { pressure: 1, turning: 0, torque: 2e4 } as const;
  const [whole, without] = [new EnergyBook(motion), new EnergyBook(motion)];
  for (let n = 0; n < 60; n++) {
    const { clicked } = motion.step(press);
    whole.enter(press, clicked);
    without.enter({ ...press, torque: 0 }, clicked);
  }
  expect(whole.drum.open).toBeLessThan(1e-6);
  expect(whole.shoes.open).toBeLessThan(1e-6);
  expect(without.drum.open).toBeGreaterThan(0.1);
});

it('the same seed goes the same way', () => {
  expect(walk(5, WALK)).toEqual(walk(5, WALK));
  expect(walk(5, WALK).hash).not.toBe(walk(6, WALK).hash);
});
