import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import {
  atTravel,
  BAR,
  createRig,
  pedalCurve,
  pressedTo,
  standingState,
} from '../../../sim/index.ts';
import { mustRead } from '../../brakes.ts';
import { near } from '../../near.ts';

const rig = createRig(mustRead(quayVan));
const worn = standingState(rig, 'Worn-in');
const seized = { ...worn, tooth: 0 };

describe('one pedal at a travel', () => {
  it('finds the pressure back from which the travel was told', () => {
    // The way there and back: pedal-curve.test.ts holds the travel itself against hand sums.
    for (const bar of [2, 8, 40, 75]) {
      const there = pressedTo(rig, worn, bar * BAR, 1);
      near(atTravel(rig, worn, there.travel, 1, 80 * BAR).pressure / BAR, bar, { abs: 0.02 });
    }
    const last = pedalCurve(rig, worn, 40 * BAR).points.at(-1);
    expect(pressedTo(rig, worn, 40 * BAR, 1).travel).toBe(last?.total);
  });

  it('a foot that brakes the sound van is still closing the gap of the seized one', () => {
    // Worked out apart from the simulator (see scenes/lessons/13: 18.4 mm sound, 38.2 mm seized, at 40 bar).
    near(pressedTo(rig, worn, 40 * BAR, 1).travel, 18.4, { abs: 0.2 });
    near(pressedTo(rig, seized, 40 * BAR, 1).travel, 38.2, { abs: 0.4 });
    const there = atTravel(rig, seized, 18.4, 1, 80 * BAR);
    expect(there.pressure / BAR).toBeLessThan(8);
    expect(Math.abs(there.instant.torqueOnDrum)).toBeLessThan(1);
  });

  it('stops where the foot gives up, and presses nothing within the free play', () => {
    const most = atTravel(rig, worn, 500, 1, 80 * BAR);
    expect(most.pressure).toBe(80 * BAR);
    expect(most.travel).toBeLessThan(500);
    const none = atTravel(rig, worn, 0, 1, 80 * BAR);
    expect(none.pressure).toBe(0);
  });
});
