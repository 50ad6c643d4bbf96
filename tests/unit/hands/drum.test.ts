import { describe, expect, it } from 'vitest';
import {
  balance,
  createMotion,
  createRig,
  freshState,
  type MotionPress,
  type RimHand,
  slopeTorque,
  turningMass,
} from '../../../sim/index.ts';
import { benchBrake, quay, tablesQuay } from '../../brakes.ts';
import { near } from '../../near.ts';

const G = 9806.65;
const hand = (radius: number, change: Partial<RimHand> = {}): RimHand => ({
  ...{ radius, angle: 0, rate: 5, limit: 1e6, damped: true },
  ...change,
});

describe('a hand on the drum', () => {
  for (const [name, make] of [
    ['van', quay],
    ['bench brake', benchBrake],
  ] as const) {
    it(`a free drum swings on its spring as a pendulum does: 2π√(I/kR²), ${name}`, () => {
      const { rig, state, brake } = make();
      const dt = 1 / 6000;
      const radius = brake.drum.radiusNew;
      for (const rate of [0.5, 5]) {
        const motion = createMotion(rig, state, dt);
        const rim = hand(radius, { angle: 0.1, rate, damped: false });
        const period = 2 * Math.PI * Math.sqrt(brake.drum.inertia / (rate * radius * radius));
        let [crossed, before] = [0, -0.1];
        let at = 0;
        // From one passing of the middle to the next but one: a whole swing.
        let first = 0;
        while (crossed < 3) {
          motion.step({ pressure: 0, turning: 0, rim });
          at += dt;
          const now = motion.instant().drumAngle - 0.1;
          if (before < 0 !== now < 0) {
            crossed++;
            const time = at - (dt * now) / (now - before);
            if (crossed === 1) first = time;
            else if (crossed === 3) near(time - first, period, { rel: 1e-3 }, `${rate} N/mm`);
          }
          before = now;
        }
      }
    });
  }

  it('turned round against rubbing linings it feels the drag that Balance tells, within 0.1 %', () => {
    const { rig, state, brake } = tablesQuay();
    for (const pressure of [0.6, 0.7, 0.8]) {
      const told = Math.abs(balance(rig, state, { pressure, turning: 1 }).torqueOnDrum);
      expect(told).toBeGreaterThan(3000);
      const motion = createMotion(rig, state);
      const radius = brake.drum.radiusNew;
      let sum = 0;
      for (let n = 1; n <= 720; n++) {
        const rim = hand(radius, { angle: n / 240, speed: 1 });
        motion.step({ pressure: pressure * Math.min(1, n / 120), turning: 0, rim });
        if (n > 480) sum += motion.rimForce * radius;
      }
      near(sum / 240, told, { rel: 1e-3 }, `${pressure} MPa`);
    }
  });

  it('is no stronger than its limit: a drum held by its linings stays, and the force is what is felt', () => {
    const { rig, state, brake } = quay();
    const motion = createMotion(rig, state);
    const radius = brake.drum.radiusNew;
    for (let n = 0; n < 120; n++) motion.step({ pressure: Math.min(2, n / 60), turning: 0 });
    for (let n = 0; n < 480; n++) {
      const rim = hand(radius, { angle: n / 240, limit: 200 });
      motion.step({ pressure: 2, turning: 0, rim });
    }
    near(motion.rimForce, 200, { abs: 1e-9 }, 'limit');
    expect(Math.abs(motion.drumSpeed)).toBeLessThan(1e-6);
  });
});

describe('the vehicle let go on a slope', () => {
  for (const [name, make] of [
    ['van', quay],
    ['bench brake', benchBrake],
  ] as const) {
    const { rig, state, brake } = make();
    const { vehicle } = brake;
    const r = vehicle.tyreRadius;
    const rolling = (
      slope: number,
      nose: 1 | -1,
      change: Partial<MotionPress> = {},
    ): MotionPress => ({
      ...{ pressure: 0, turning: 0, rolling: true, torque: nose * slopeTorque(rig, slope) },
      ...change,
    });

    it(`rolls with its mass: m a = m g sin φ, the drum's own inertia beside it (${name})`, () => {
      // The whole: m + brakes·I/r² rolls under m·g·sin φ (Newton, a disc that rolls).
      const all = vehicle.mass + (vehicle.brakes * brake.drum.inertia) / (r * r);
      near(turningMass(brake, true) * (vehicle.brakes / (r * r)), all, { rel: 1e-12 }, 'mass');
      for (const slope of [0.05, 0.12, 0.2]) {
        for (const nose of [1, -1] as const) {
          const motion = createMotion(rig, state);
          for (let n = 0; n < 240; n++) motion.step(rolling(slope, nose));
          const sin = slope / Math.sqrt(1 + slope * slope);
          const a = (vehicle.mass * G * sin) / all;
          near(motion.drumSpeed * r, nose * a, { rel: 5e-4 }, `${slope} ${nose}`);
        }
      }
    });

    it(`up to half of the holding pull it rolls slower by just what the brake holds (${name})`, () => {
      for (const nose of [1, -1] as const) {
        const slope = 0.12;
        const need = slopeTorque(rig, slope);
        const torqueAt = (cable: number) =>
          Math.abs(balance(rig, state, { pressure: 0, turning: nose, cable }).torqueOnDrum);
        let [low, high] = [1, 2000];
        for (let i = 0; i < 40; i++) {
          const middle = (low + high) / 2;
          if (torqueAt(middle) < need) low = middle;
          else high = middle;
        }
        const cable = low / 2;
        const motion = createMotion(rig, state);
        // Drawn up slowly on the standing wheel, then let go.
        for (let n = 1; n <= 240; n++) {
          const pull = cable * Math.min(1, n / 120);
          motion.step({ pressure: 0, turning: 0, cable: pull });
        }
        for (let n = 0; n < 120; n++) motion.step(rolling(slope, nose, { cable }));
        const before = motion.drumSpeed;
        for (let n = 0; n < 240; n++) motion.step(rolling(slope, nose, { cable }));
        const a = (need - torqueAt(cable)) / turningMass(brake, true);
        near(motion.drumSpeed - before, nose * a, { rel: 5e-4 }, `nose ${nose}`);

        for (const over of [1.02, 1.5]) {
          const held = createMotion(rig, state);
          for (let n = 0; n < 960; n++) held.step(rolling(slope, nose, { cable: over * low }));
          const settled = held.instant().drumAngle * r;
          expect(Math.abs(held.drumSpeed * r)).toBeLessThan(1e-5);
          for (let n = 0; n < 240; n++) held.step(rolling(slope, nose, { cable: over * low }));
          near(held.instant().drumAngle * r, settled, { abs: 1e-5 }, 'stands');
          expect(Math.abs(settled)).toBeLessThan(3);
        }
      }
    });
  }

  it('hand brake on while it rolls: slows by what Balance tells and stands', () => {
    const { rig, state, brake } = quay();
    const r = brake.vehicle.tyreRadius;
    const slope = 0.05;
    const torque = slopeTorque(rig, slope);
    const cable = 250;
    const motion = createMotion(rig, state);
    const roll = (pull: number) =>
      motion.step({ pressure: 0, turning: 0, rolling: true, torque, cable: pull });
    for (let n = 0; n < 480; n++) roll(0);
    const rolled = motion.drumSpeed * r;
    for (let n = 1; n <= 72; n++) roll((cable * n) / 72);
    for (let n = 0; n < 24; n++) roll(cable);
    const from = motion.drumSpeed * r;
    expect(from).toBeGreaterThan(0.3 * rolled);
    for (let n = 0; n < 60; n++) roll(cable);
    const told = Math.abs(balance(rig, state, { pressure: 0, turning: 1, cable }).torqueOnDrum);
    const a = ((torque - told) / turningMass(brake, true)) * r;
    expect(a).toBeLessThan(0);
    near((motion.drumSpeed * r - from) * 4, a, { rel: 1e-3 }, 'slowing');
    for (let n = 0; n < 2400; n++) roll(cable);
    expect(Math.abs(motion.drumSpeed * r)).toBeLessThan(1e-5);
  });

  it('an unpressed brake on the level stays where it is', () => {
    const { brake } = quay();
    const motion = createMotion(createRig(brake), freshState(brake));
    for (let n = 0; n < 60; n++) {
      motion.step({ pressure: 0, turning: 0, rolling: true, torque: 0 });
    }
    expect(motion.instant().drumAngle).toBe(0);
  });
});
