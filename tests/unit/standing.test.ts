import { describe, expect, it } from 'vitest';
import { balance, createMotion, parked, standingState } from '../../sim/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

/** Standing still: bristles hold to the slip torque that Balance gives, and no further. */
const { rig, state: fresh } = quay();
const torque = (i: ReturnType<typeof balance>): number =>
  i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum;

function creep(
  share: number,
  slip: number,
  press: { pressure: number; cable?: number },
  state = fresh,
): number {
  const motion = createMotion(rig, state);
  const step = (rise: number, outer: number) =>
    motion.step({
      ...press,
      pressure: press.pressure * rise,
      cable: (press.cable ?? 0) * rise,
      turning: 0,
      torque: outer,
    });
  for (let n = 0; n < 240; n++) step(Math.min(1, n / 120), 0);
  for (let n = 0; n < 240; n++) step(1, share * slip * Math.min(1, n / 200));
  const before = motion.instant().drumAngle;
  for (let n = 0; n < 1200; n++) step(1, share * slip);
  return Math.abs(motion.instant().drumAngle - before);
}

describe('holding', () => {
  const worn = standingState(rig, 'Worn-in');
  const p = parked(rig, worn, 300);
  for (const [name, slip] of [
    ['forward', p.forward],
    ['backward', -p.backward],
  ] as const) {
    it(`parked, rolling ${name}: 0.99 of the slip torque holds without creep, 1.01 slips`, () => {
      expect(creep(0.99, slip, { pressure: 0, cable: 300 }, worn)).toBeLessThan(1e-8);
      expect(creep(1.01, slip, { pressure: 0, cable: 300 }, worn)).toBeGreaterThan(1);
    });
  }
  it('on the pedal: the same', () => {
    const slip = -torque(balance(rig, fresh, { pressure: 4, turning: 1 }));
    expect(creep(0.99, slip, { pressure: 4 })).toBeLessThan(1e-8);
    expect(creep(1.01, slip, { pressure: 4 })).toBeGreaterThan(1);
  });
});

describe('past self-locking', () => {
  const locking = quay((s) => {
    s.shoes.front.lining.friction = 0.9;
    s.shoes.rear.lining.friction = 0.9;
  });
  for (const rate of [120, 240, 480]) {
    it(`a drum with inertia stops and sticks at 1/${rate} s, and comes free again`, () => {
      const motion = createMotion(locking.rig, locking.state, 1 / rate);
      for (let n = 0; n < rate / 2; n++) motion.step({ pressure: 0, turning: 1 });
      expect(motion.drumSpeed).toBeGreaterThan(3);
      for (let n = 0; n < 2 * rate; n++)
        motion.step({ pressure: 4 * Math.min(1, (5 * n) / rate), turning: 1 });
      const i = motion.instant();
      expect(i.locked).toBe('front');
      expect(Math.abs(motion.drumSpeed)).toBeLessThan(1e-6);
      // It stands: what one lining puts on the drum the other takes.
      near(torque(i), 0, { abs: 10 });
      for (let n = 0; n < rate; n++) motion.step({ pressure: 0, turning: 1 });
      near(motion.drumSpeed, 3.14, { abs: 1e-9 });
      expect(motion.instant().locked).toBe(null);
    });
  }
});
