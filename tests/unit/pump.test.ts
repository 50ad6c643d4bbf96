import { describe, expect, it } from 'vitest';
import { pumped, standingState } from '../../sim/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const { rig } = quay();
const worn = standingState(rig, 'Worn-in');

describe('the pump test', () => {
  it('after one time constant e⁻¹ of the gaps’ travel is still out (first-order lag)', () => {
    const p = pumped(rig, worn, 4, 0.5, 0.5);
    near(p.rise, p.first.gaps / Math.E, { rel: 1e-12 });
    near(p.again.total, p.first.total - p.rise, { rel: 1e-12 }, 'total');
  });
  it('waits long enough and nothing rises', () => {
    near(pumped(rig, worn, 4, 60).rise, 0, { abs: 1e-9 });
  });
  it('a gap too wide rises much, a springy circuit no more than a sound one', () => {
    const sound = pumped(rig, worn, 4);
    // Teaching tables: 38.3 mm at 40 bar with the tooth at 0, 18.4 with a working adjuster.
    const wide = pumped(rig, { ...worn, tooth: 0 }, 4);
    near(wide.first.total, 38.3, { abs: 0.3 }, 'seized');
    near(sound.first.total, 18.4, { abs: 0.3 }, 'sound');
    const soft = quay((s) => {
      s.hydraulics.circuit = 600;
    });
    const springy = pumped(soft.rig, worn, 4);
    near(springy.first.total, 41.4, { abs: 0.3 }, 'springy');
    near(springy.rise, sound.rise, { rel: 1e-9 }, 'springy rises as a sound one');
    expect(wide.rise).toBeGreaterThan(3 * sound.rise);
  });
});
