import { describe, expect, it } from 'vitest';
import {
  balance,
  type Condition,
  createMotion,
  gapsOf,
  parked,
  rest,
  SOUND,
} from '../../sim/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const { rig, state, brake } = quay();
const out = (change: Partial<Condition>) => ({ ...state, condition: { ...SOUND, ...change } });
const torque = (i: ReturnType<typeof balance>): number =>
  i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum;

describe('what is out of order', () => {
  it('pressure kept in the line acts like the pedal, and a harder press over it', () => {
    const kept = out({ keptPressure: 0.8 });
    const pressed = balance(rig, state, { pressure: 0.8, turning: 1 });
    const left = balance(rig, kept, { pressure: 0, turning: 1 });
    near(torque(left), torque(pressed), { rel: 1e-9 });
    expect(left.pressure).toBe(0.8);
    const hard = balance(rig, kept, { pressure: 4, turning: 1 });
    near(torque(hard), torque(balance(rig, state, { pressure: 4, turning: 1 })), { rel: 1e-9 });
    const motion = createMotion(rig, kept);
    for (let n = 0; n < 480; n++) motion.step({ pressure: 0, turning: 1 });
    near(torque(motion.instant()), torque(left), { rel: 2e-3 });
  });
  it('a surface follows its table in the scene, and a hot drum dries a wet lining', () => {
    const own = quay((s) => {
      s.frictionOfSurfaces.greasy = {
        factorAgainstTemperature: [
          [20, 0.6],
          [120, 0.4],
        ],
        source: 'a trial',
      };
    });
    const at = (surface: 'dry' | 'wet' | 'greasy', temperature: number) => ({
      ...own.state,
      temperature,
      condition: { ...SOUND, surface: { front: surface, rear: surface } },
    });
    // The drum away: a table's factor alone, read off the torque of a lining that barely moves.
    const mu = (surface: 'dry' | 'wet' | 'greasy', temperature: number): number => {
      const i = balance(own.rig, at(surface, temperature), { pressure: 4, turning: 1 });
      const force = i.shoes.front.frictionForce;
      const normal = i.shoes.front.normalForce;
      return Math.hypot(...force) / Math.hypot(...normal);
    };
    near(mu('dry', 20), 0.38, { rel: 1e-9 });
    near(mu('greasy', 20), 0.6 * 0.38, { rel: 1e-9 });
    near(mu('greasy', 70), 0.5 * 0.38, { rel: 1e-9 });
    near(mu('greasy', 180), 0.4 * 0.38, { rel: 1e-9 });
    near(mu('wet', 100), 0.4 * 0.38, { rel: 1e-9 });
    near(mu('wet', 115), 0.7 * 0.38, { rel: 1e-9 });
    near(mu('wet', 130), 0.38, { rel: 1e-9 });
  });
  it('pull kept in the cable acts like the hand lever', () => {
    const left = balance(rig, out({ keptCable: 40 }), { pressure: 0, turning: 1 });
    near(torque(left), torque(balance(rig, state, { pressure: 0, turning: 1, cable: 40 })), {
      rel: 1e-9,
    });
  });
  it('a pivot that loses half the pull leaves half at the hook, and asks no less of the hand', () => {
    const half = parked(rig, out({ leverLoss: 0.5 }), 300);
    near(half.forward, parked(rig, state, 150).forward, { rel: 1e-9 });
    near(half.handForce, parked(rig, state, 300).handForce, { rel: 1e-12 });
  });
  it('a drum that rises takes rise × sin of the arc from the heel ends', () => {
    // A circle moved by e comes nearer by e·cos(angle to the move): at −55° by 0.10·sin 55°.
    const low = gapsOf(brake.shoes.rear, rest(rig, out({ drumRise: 0.1 })).shoes.rear);
    const home = gapsOf(brake.shoes.rear, rest(rig, state).shoes.rear);
    near(home.heel - low.heel, 0.1 * Math.sin((55 * Math.PI) / 180), { abs: 1e-3 });
    near(low.toe - home.toe, 0.1 * Math.sin((55 * Math.PI) / 180), { abs: 1e-3 });
    near(low.centre, home.centre, { abs: 2e-3 });
  });
  it('a part that leans on one toe: the shoe leads one way and trails the other', () => {
    // Springs hang between the shoes, so the pair goes over and the whole push reaches the drum
    // less the hold-downs: 12 N at 99.9 mm from the pin on each shoe, over 156 mm to the toe.
    const leant = out({ lean: { front: 100, rear: 0 } });
    const left = 100 - (2 * 12 * Math.hypot(66.5, 74.5)) / 156;
    const forward = balance(rig, leant, { pressure: 0, turning: 1 });
    const backward = balance(rig, leant, { pressure: 0, turning: -1 });
    near(Math.abs(torque(forward)), 1.72 * left * 100, { rel: 0.02 });
    near(Math.abs(torque(backward)), 0.57 * left * 100, { rel: 0.04 });
  });
});
