import { describe, expect, it } from 'vitest';
import {
  application,
  balance,
  createMotion,
  type Instant,
  usualPressure,
} from '../../sim/index.ts';
import { quay, wornBy } from '../brakes.ts';
import { near } from '../near.ts';
import { samples } from '../samples.ts';

const torque = (i: Instant): number => i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum;

describe('motion against balance', () => {
  for (const mu of [0.25, 0.35, 0.45]) {
    it(`settled torque of each shoe within 0.1 % at friction ${mu}`, () => {
      const { rig, state } = quay((s) => {
        s.shoes.front.lining.friction = mu;
        s.shoes.rear.lining.friction = mu;
      });
      const motion = createMotion(rig, state);
      for (const turning of [1, -1] as const) {
        for (const pressure of [1, 4, 8]) {
          for (let n = 0; n < 240; n++) motion.step({ pressure, turning });
          const m = motion.instant();
          const b = balance(rig, state, { pressure, turning });
          for (const side of ['front', 'rear'] as const) {
            near(
              m.shoes[side].torqueOnDrum,
              b.shoes[side].torqueOnDrum,
              { rel: 1e-3 },
              `${side} ${pressure} MPa`,
            );
          }
          near(m.separation, b.separation, { abs: 1e-4 }, 'separation');
        }
      }
    });
  }

  it('a half-second ramp within 0.5 % of the full torque at every instant', () => {
    const { rig, state } = quay();
    const motion = createMotion(rig, state);
    for (let n = 0; n < 48; n++) motion.step({ pressure: 0, turning: 1 });
    const full = Math.abs(torque(balance(rig, state, { pressure: 4, turning: 1 })));
    for (let n = 1; n <= 120; n++) {
      const pressure = (4 * n) / 120;
      motion.step({ pressure, turning: 1 });
      near(
        torque(motion.instant()),
        torque(balance(rig, state, { pressure, turning: 1 })),
        { abs: 0.005 * full },
        `at ${pressure} MPa`,
      );
    }
  });

  it('standing drum: bristles carry what one press from rest gives', () => {
    const { rig, state } = quay();
    const motion = createMotion(rig, state);
    for (let n = 0; n < 480; n++) motion.step({ pressure: 4 * Math.min(1, n / 120), turning: 0 });
    const m = motion.instant();
    const b = balance(rig, state, { pressure: 4, turning: 0 });
    for (const side of ['front', 'rear'] as const) {
      near(m.shoes[side].normalSum, b.shoes[side].normalSum, { rel: 0.01 }, side);
    }
  });

  it('release brings the clearance back, both shoes within 0.01 mm of the middle', () => {
    const { rig, state } = quay();
    const motion = createMotion(rig, state);
    for (let n = 0; n < 240; n++) motion.step({ pressure: 4, turning: 1 });
    for (let n = 0; n < 240; n++) motion.step({ pressure: 0, turning: 1 });
    const m = motion.instant();
    near(m.separation, m.strutLength, { abs: 1e-6 }, 'on the strut');
    const middle = (side: 'front' | 'rear') =>
      ((m.shoes[side].gap[23] as number) + (m.shoes[side].gap[24] as number)) / 2;
    near((middle('front') + middle('rear')) / 2, 0.3, { abs: 0.01 }, 'mean');
    near(middle('front'), middle('rear'), { abs: 0.02 }, 'side by side');
  });
});

describe('ratchet in time', () => {
  const { rig, state } = quay();

  /** 160 wearing applications of 100 km each; the numbers of those in which a tooth dropped in. */
  function clicksAt(dt: number): number[] {
    const motion = createMotion(rig, state, dt);
    const out: number[] = [];
    const steps = (seconds: number): number => Math.round(seconds / dt);
    const pressure = usualPressure(rig.brake);
    for (let a = 0; a < 160; a++) {
      let clicked = 0;
      const press = (p: number) => {
        clicked += motion.step({ pressure: p, turning: 1 }).clicked;
      };
      for (let n = 1; n <= steps(0.15); n++) press((pressure * n) / steps(0.15));
      for (let n = 0; n < steps(0.1); n++) press(pressure);
      for (let n = steps(0.15) - 1; n >= 0; n--) press((pressure * n) / steps(0.15));
      for (let n = 0; n < steps(0.1); n++) press(0);
      if (clicked > 0) out.push(a);
      // Wear is taken after release.
      motion.load(wornBy(rig, motion.state, 100));
    }
    return out;
  }

  /** The same by Balance alone. */
  function clicksByBalance(): number[] {
    const out: number[] = [];
    let s = state;
    for (let a = 0; a < 160; a++) {
      const r = application(rig, s, { pressure: usualPressure(rig.brake), turning: 1 });
      if (r.clicked > 0) out.push(a);
      s = wornBy(rig, r.state, 100);
    }
    return out;
  }

  it('clicks at the same applications at 1/120, 1/240 and 1/480 s, and by Balance', () => {
    const balanceClicks = clicksByBalance();
    expect(balanceClicks.length).toBeGreaterThanOrEqual(3);
    for (const rate of [120, 240, 480].slice(0, samples('rates')))
      expect(clicksAt(1 / rate), `1/${rate} s`).toEqual(balanceClicks);
  });

  it('holds the clamp for a minute without creep, and does not click unworn', () => {
    const motion = createMotion(rig, state);
    const before = motion.instant();
    for (let n = 0; n < 240 * 60; n++)
      expect(motion.step({ pressure: 0, turning: 0 }).clicked).toBe(0);
    const after = motion.instant();
    near(after.shoes.front.pose.phi, before.shoes.front.pose.phi, { abs: 1e-9 }, 'front');
    near(after.strutForce, before.strutForce, { rel: 1e-6 }, 'clamp');
    for (let n = 0; n < 240; n++) expect(motion.step({ pressure: 8, turning: 1 }).clicked).toBe(0);
  });
});
