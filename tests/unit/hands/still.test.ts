import { describe, expect, it } from 'vitest';
import { createMotion, type MotionPress } from '../../../sim/index.ts';
import { benchBrake, quay } from '../../brakes.ts';
import { pulling } from '../../hands.ts';
import { near } from '../../near.ts';

describe('a brake that lies still', () => {
  for (const make of [quay, benchBrake]) {
    const { rig, state, brake } = make();
    const hands = [pulling('front', brake.shoes.front.toe, 60, -1)];
    const presses: readonly MotionPress[] = [
      { pressure: 0, turning: 0 },
      { pressure: 0, turning: 0, hands },
      { pressure: 1, turning: 0 },
      { pressure: 0, turning: 0, hands, drumOff: true },
    ];

    it(`is where its steps would have left it, press after press (${brake.name})`, () => {
      const counted = createMotion(rig, state);
      const stepped = createMotion(rig, state);
      for (const press of presses) {
        // Frames of a page; the other does every step.
        for (let n = 0; n < 150; n++) counted.advance(1 / 60, press);
        while (stepped.time < counted.time) stepped.step(press);
        const [a, b] = [counted.snapshot(), stepped.snapshot()];
        expect(a.quiet).toBeGreaterThan(23);
        expect(a.steps).toBe(b.steps);
        for (let j = 0; j < a.pose.length; j++) {
          near(a.pose[j] as number, b.pose[j] as number, { abs: 1e-10 }, `${j}`);
        }
      }
    });

    it(`goes on from its record in the same bits, lying still or stirred (${brake.name})`, () => {
      const motion = createMotion(rig, state);
      const press = presses[0] as MotionPress;
      for (const frames of [3, 10, 60]) {
        for (let n = 0; n < frames; n++) motion.advance(1 / 60, press);
        const other = createMotion(rig, state);
        other.restore(motion.snapshot());
        for (const next of presses) {
          for (let n = 0; n < 20; n++) {
            motion.advance(1 / 60, next);
            other.advance(1 / 60, next);
          }
          expect(other.snapshot()).toEqual(motion.snapshot());
        }
      }
    });

    it(`costs next to nothing (${brake.name})`, () => {
      const motion = createMotion(rig, state);
      /** Ten seconds of frames, ms. */
      const time = (press: (n: number) => MotionPress): number => {
        const from = performance.now();
        for (let n = 0; n < 600; n++) motion.advance(1 / 60, press(n));
        return performance.now() - from;
      };
      const still = () => presses[0] as MotionPress;
      const moving = (n: number): MotionPress => ({ pressure: 1 + n * 1e-3, turning: 1 });
      time(moving);
      const moves = time(moving);
      time(still);
      // Both in the same run, so that a busy machine slows both.
      expect(time(still)).toBeLessThan(0.1 * moves);
    });
  }
});
