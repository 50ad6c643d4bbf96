import { describe, expect, it } from 'vitest';
import ferryRunabout from '../../scenes/ferry-runabout.json';
import { balance, createMotion, createRig, SOUND, startState } from '../../sim/index.ts';
import { mustRead, quay } from '../brakes.ts';
import { near } from '../near.ts';

const van = quay();
const oval = { ...van.state, condition: { ...SOUND, oval: 0.1 } };

describe('an instant', () => {
  it('stands where its drum was asked to stand, and the oval lies there', () => {
    const at = (drumAngle: number) =>
      balance(van.rig, oval, { pressure: 0, turning: 1, drumAngle });
    expect(balance(van.rig, oval, { pressure: 2, turning: 1 }).drumAngle).toBe(0);
    expect(at(0.7).drumAngle).toBe(0.7);
    // r = R + e·cos 2(θ − φ): at each lining's element the gap has grown by that since the round drum.
    const round = balance(van.rig, van.state, { pressure: 0, turning: 1 });
    for (const turned of [0, 0.7, 2.1]) {
      const i = at(turned);
      for (const side of ['front', 'rear'] as const) {
        const { gap, angle } = i.shoes[side];
        gap.forEach((g, k) => {
          const grown = g - (round.shoes[side].gap[k] as number);
          const law = 0.1 * Math.cos(2 * ((angle[k] as number) - turned));
          // The shoes stand turned by up to 0.4 mm at the drum, so elements lie 0.004 rad elsewhere.
          near(grown, law, { abs: 0.1 * 2 * 0.006 }, `${side} ${k} at ${turned}`);
        });
      }
    }
  });

  it('tells the torque of both shoes as one, in Balance and in Motion', () => {
    const b = balance(van.rig, van.state, { pressure: 4, turning: 1 });
    expect(b.torqueOnDrum).toBe(b.shoes.front.torqueOnDrum + b.shoes.rear.torqueOnDrum);
    expect(b.torqueOnDrum).toBeLessThan(-1e5);
    const motion = createMotion(van.rig, van.state);
    for (let n = 0; n < 240; n++) motion.step({ pressure: 4, turning: 1 });
    near(motion.instant().torqueOnDrum, b.torqueOnDrum, { rel: 1e-3 }, 'torque');
    near(
      motion.instant().drumAngle,
      3.14 * (1 - 0.05),
      { abs: 0.02 },
      'a second at π rad/s, less the start',
    );
  });

  it('right after a click tells its own forces, not those of the question whether a shoe locks', () => {
    const brake = mustRead(ferryRunabout);
    const motion = createMotion(createRig(brake), startState(brake));
    let before = 0;
    for (let n = 0; n < 100; n++) {
      const { clicked } = motion.step({ pressure: n / 25, turning: 1 });
      const now = motion.instant().torqueOnDrum;
      // The pressure rises by 0.04 MPa a step: 15 N on a piston, a few N·m at the drum.
      if (clicked > 0 && n > 10) near(now, before, { abs: 2e4 }, `step ${n}`);
      before = now;
    }
    expect(motion.tooth).toBeGreaterThan(0);
  });
});
