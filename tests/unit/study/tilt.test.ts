import { describe, expect, it } from 'vitest';
import benchScene from '../../../scenes/bench-brake.json';
import trailerScene from '../../../scenes/farm-trailer.json';
import runaboutScene from '../../../scenes/ferry-runabout.json';
import {
  balance,
  createRig,
  type Duty,
  driveLife,
  freshState,
  rest,
  SOUND,
  tiltOf,
} from '../../../sim/index.ts';
import { mustRead, quay, quayScene } from '../../brakes.ts';
import { near } from '../../near.ts';

/** Tilt about the long axis, against sums done by hand on the first teaching brake. */

const van = quay();
const still = rest(van.rig, van.state);
/** Level distances: middle of the table, the lining's ends at 55°, the hold-down. */
const MIDDLE = 94.5;
const ENDS = MIDDLE * Math.cos((55 * Math.PI) / 180);
const ARM = 82.5 - ENDS;

describe('a shoe on its pads', () => {
  it('is tipped by its springs times what they pull beside the web', () => {
    const t = tiltOf(van.brake, still, 'front');
    // Two level springs, hooked into a 4.0 mm web: their pull leaves it at the hole's edge, 2.0 mm off.
    near(
      t.pull,
      still.springs.reduce((sum, s) => sum + s.force, 0),
      { rel: 1e-3 },
      'pull',
    );
    near(t.beside, 2, { abs: 1e-9 }, 'beside');
    // Drawn where the wire of 2.8 mm lies.
    near(t.wire, 3.4, { abs: 1e-9 }, 'wire');
    near(t.moment, t.pull * 2, { rel: 1e-12 }, 'moment');
    near(t.arm, ARM, { abs: 1e-6 }, 'arm');
  });

  it('sound, it stands on all three: 310 N · 2.0 mm is less than 40 N · 28.3 mm', () => {
    const t = tiltOf(van.brake, still, 'front');
    expect(t.moment).toBeLessThan(t.righting);
    expect(t.angle).toBe(0);
    expect(t.stop).toBe('pads');
  });

  it('sound, no teaching brake leans, new or worn to its limit, released or pressed', () => {
    for (const scene of [quayScene(), benchScene, trailerScene, runaboutScene]) {
      const brake = mustRead(scene);
      const rig = createRig(brake);
      const fresh = freshState(brake);
      const worn = driveLife(rig, fresh, brake.duties[0] as Duty, { lump: 0.05 }).state();
      for (const state of [fresh, worn]) {
        for (const i of [rest(rig, state), balance(rig, state, { pressure: 4, turning: 1 })]) {
          for (const side of ['front', 'rear'] as const) {
            const t = tiltOf(brake, i, side);
            expect([t.stop, t.angle], `${brake.name} ${side}`).toEqual(['pads', 0]);
          }
        }
      }
    }
  });

  it('under springs too strong it leans until the hold-down answers: θ = (F·e/a − H₀)/(k·a)', () => {
    const i = rest(van.rig, { ...van.state, condition: { ...SOUND, springFactor: 2.2 } });
    const t = tiltOf(van.brake, i, 'front');
    // H₀ = 12 N / (2 · 0.15) = 40 N, 10 N/mm.
    const by = (t.pull * 2) / ARM - 40;
    expect(by).toBeGreaterThan(2);
    near(t.angle, by / (10 * ARM), { rel: 1e-9 }, 'angle');
    near(t.holdDown * t.arm, t.moment, { rel: 1e-9 }, 'balance of moments');
    near(t.acrossLining, t.angle * 32, { rel: 1e-12 }, 'across the lining');
    expect(t.stop).toBe('hold-down spring');
  });

  it('without springs nothing tips it, whether or not the hold-down is there', () => {
    const none = rest(van.rig, { ...van.state, condition: { ...SOUND, springFactor: 0 } });
    expect(tiltOf(van.brake, none, 'front').angle).toBe(0);
    expect(tiltOf(van.brake, none, 'front', { holdDown: 'lost', groove: 0 }).angle).toBe(0);
  });

  it('a lost hold-down leaves it to the guides, hollow pads let its ends sink in', () => {
    const lost = tiltOf(van.brake, still, 'front', { holdDown: 'lost', groove: 0 });
    expect(lost.stop).toBe('guides');
    // 0.8 mm of play, over the level distance from end pads to toe (27.5) and heel (16).
    near(lost.angle, 0.8 / (ENDS - (27.5 + 16) / 2), { rel: 1e-9 }, 'guides');
    // Workshop texts give 1 to 3 degrees for it (from memory).
    expect((lost.angle * 180) / Math.PI).toBeGreaterThan(1);
    expect((lost.angle * 180) / Math.PI).toBeLessThan(3);
    const before = tiltOf(van.brake, still, 'front').angle;
    const hollow = tiltOf(van.brake, still, 'front', { holdDown: 'fitted', groove: 0.3 });
    near(hollow.angle - before, 0.3 / (MIDDLE - ENDS), { rel: 1e-9 }, 'hollow');
  });

  it('both shoes lean alike: the brake is a mirror', () => {
    near(
      tiltOf(van.brake, still, 'rear').angle,
      tiltOf(van.brake, still, 'front').angle,
      { abs: 1e-6 },
      'mirror',
    );
  });
});
