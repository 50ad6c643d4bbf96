import { describe, expect, it } from 'vitest';
import { createRig, KM, standingDistance, standingState, thinnest } from '../../sim/index.ts';
import { quay, type quayScene } from '../brakes.ts';
import { near } from '../near.ts';

type States = ReturnType<typeof quayScene>['states'];

/** The quay van with one state in place of its own. */
function one(recipe: object, change: (scene: ReturnType<typeof quayScene>) => void = () => {}) {
  const { rig } = quay((s) => {
    s.states = [{ name: 'x', ...recipe }] as States;
    change(s);
  });
  return rig;
}
const km = (recipe: object, change?: Parameters<typeof one>[1]): number =>
  standingDistance(one(recipe, change), 'x') / KM;

describe('a standing state', () => {
  it('is what its name says on a brake that wears half as fast again', () => {
    // Archard: depth goes with rate times distance, so the same events come after 1 / 1.5 of the way.
    const harder = (s: ReturnType<typeof quayScene>): void => {
      s.drum.wearRate *= 1.5;
      s.shoes.front.lining.wearRate *= 1.5;
      s.shoes.rear.lining.wearRate *= 1.5;
    };
    const fast = quay(harder).rig;
    const before = standingState(fast, 'Before a click');
    const after = standingState(fast, 'Just clicked');
    expect([before.tooth, after.tooth]).toEqual([9, 10]);
    near(after.distance / KM, 39000 / 1.5, { abs: 100 }, 'just clicked');
    const { thicknessMin } = fast.brake.shoes.front.lining;
    const atLimit = thinnest(fast, standingState(fast, 'At its limit'), 'front');
    expect(atLimit).toBeGreaterThan(thicknessMin);
    near(atLimit, thicknessMin, { abs: 0.06 }, 'at its limit');
    const worn = thinnest(fast, standingState(fast, 'Worn-in'), 'front');
    // A third of the 3 mm that a lining may lose, as near as whole thousands of kilometres come.
    near(4.5 - worn, 0.33 * 3, { abs: 0.08 }, 'worn in');
  });

  it('stops before, beyond and to the nearest whole, by plain sums', () => {
    const click = km({ until: 'click', click: 3 });
    near(km({ until: 'click', click: 3, less: 250 }), click - 250, { abs: 1e-6 });
    near(km({ until: 'click', click: 3, more: 250 }), click + 250, { abs: 1e-6 });
    const round = km({ until: 'click', click: 3, round: 500 });
    expect(round % 500).toBe(0);
    expect(Math.abs(round - click)).toBeLessThanOrEqual(250);
    expect(km({ until: 'distance', distance: 1200, more: 34 })).toBe(1234);
    expect(km({ until: 'distance', distance: 100, less: 250 })).toBe(0);
  });

  it('worn to a share: so much of what the lining may lose is gone', () => {
    for (const share of [0.2, 0.7]) {
      const rig = one({ until: 'worn', share });
      const left = thinnest(rig, standingState(rig, 'x'), 'front');
      near(left, 4.5 - 3 * share, { abs: 2e-4 }, `${share}`);
    }
  });

  it('at the drum’s limit the drum is', () => {
    // A soft drum, so that its limit comes before the lining's.
    const rig = one({ until: 'drum limit' }, (s) => {
      s.drum.wearRate = 3e-8;
    });
    // It is told at the end of the lump that passed it.
    near(2 * standingState(rig, 'x').drumRadius, 201, { abs: 0.02 });
  });

  it('goes as far as it can where what it waits for never comes', () => {
    const rig = one({ until: 'click', click: 1 }, (s) => {
      Object.assign(s.adjuster, { hotLock: 0 });
    });
    const state = standingState(rig, 'x');
    expect(state.tooth).toBe(0);
    expect(state.distance).toBeGreaterThan(60000 * KM);
  });

  it('is measured once for a rig, and anew for another', () => {
    const { brake } = one({ until: 'click', click: 1 });
    const rigid = createRig(brake);
    const first = standingDistance(rigid, 'x');
    expect(standingDistance(rigid, 'x')).toBe(first);
    // Shoes that bend part the seats otherwise, so the click falls elsewhere.
    expect(standingDistance(createRig(brake, { flexible: true }), 'x')).not.toBe(first);
  });
});
