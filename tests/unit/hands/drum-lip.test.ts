import { expect, it } from 'vitest';
import {
  aroundTurn,
  createMotion,
  type DrumInHand,
  drumInHand,
  freshState,
  removal,
  standingState,
  UNHELD,
} from '../../../sim/index.ts';
import { quay } from '../../brakes.ts';
import { near } from '../../near.ts';

const { rig, brake } = quay();
/** A worn drum with its lip, its adjuster out: the lip catches both linings. */
const caught = removal(rig, standingState(rig, 'Second set'));
const free = removal(rig, freshState(brake));
const hand = { rate: 5, limit: 200 };
const pull = (way: number, at: 'front' | 'rear' | null = null, now = caught): DrumInHand =>
  drumInHand(brake, now, { ...hand, way, at });
const { lipGap } = brake.across;

it('pulled straight it slides to its lip, then lifts both shoes off their pads: the hand’s force by hand', () => {
  expect(caught.signs.slides).toBe('a little');
  near(caught.rub, 0, { abs: 1e-6 }, 'nothing rubs');
  // Free until the lip is there: nothing is felt.
  expect(pull(lipGap / 2)).toMatchObject({ slid: lipGap / 2, pull: 0, lip: 0, give: 0 });
  // Hold-downs: 12 N of friction on both sides of the web at 0.15 are 40 N of preload each, then 10 N/mm.
  const at = pull(lipGap + 10);
  expect(at.give).toBe(0);
  near(at.slid, lipGap, { abs: 1e-12 }, 'at the lip');
  near(at.pull, 50, { abs: 1e-9 }, '10 mm beyond it at 5 N/mm, under 2 × 40 N');
  // 5·(30 − g) = 2·(40 + 10 g): g = 2.8 mm, 136 N.
  const lifted = pull(lipGap + 30);
  near(lifted.give, 2.8, { abs: 1e-9 }, 'off their pads');
  near(lifted.pull, 136, { abs: 1e-9 }, 'hand');
  near(lifted.lip, 136, { abs: 1e-9 }, 'lip');
  // At its strongest as far as `removal` has it under both hands: coils solid at 5.2 mm.
  const most = pull(200);
  near(most.slid, caught.signs.slide, { abs: 1e-9 }, 'as drum off tells');
  expect(most.pull).toBe(200);
});

it('rocked at one side the shoe of that side has the whole pull', () => {
  // 5·(20 − g) = 40 + 10 g: 4 mm at 80 N, which pulled straight lifts nothing.
  const rocked = pull(lipGap + 20, 'front');
  near(rocked.give, 4, { abs: 1e-9 }, 'front shoe off its pads');
  near(rocked.pull, 80, { abs: 1e-9 }, 'hand');
  expect(pull(lipGap + 16).give).toBe(0);
  expect(pull(lipGap + 16).pull).toBe(80);
});

it('a drum that nothing catches comes off without a force; one that rubs or is rusted holds as it should', () => {
  expect(free.heldBy).toBeNull();
  expect(pull(brake.shoes.front.lining.width + 1, null, free)).toMatchObject({
    pull: 0,
    off: true,
  });
  const rusted = removal(rig, freshState(brake), { ...UNHELD, hubRust: true });
  expect(pull(30, null, rusted)).toMatchObject({ slid: 0, pull: 150, lip: 0, off: false });
  // 120 N of rub: 30 mm of the hand are 6 of the drum, still before its lip or at it.
  const rubbing = pull(24.5, null, { ...free, rub: 120 });
  near(rubbing.slid, 0.5, { abs: 1e-9 }, 'slides behind the hand');
  near(rubbing.pull, 120, { abs: 1e-9 }, 'its rub');
});

it('force grows with the hand’s way and never jumps, along its whole way', () => {
  for (const at of [null, 'front', 'rear'] as const) {
    let before = pull(0, at);
    for (let way = 0.05; way < 60; way += 0.05) {
      const now = pull(way, at);
      expect(now.pull).toBeGreaterThanOrEqual(before.pull - 1e-9);
      expect(now.slid).toBeGreaterThanOrEqual(before.slid - 1e-9);
      expect(now.pull - before.pull).toBeLessThan(hand.rate * 0.05 + 1e-9);
      before = now;
    }
  }
});

it('an oval drum turned by hand drags twice a turn, as Balance has it place by place', () => {
  const state = freshState(brake);
  const oval = { ...state, condition: { ...state.condition, oval: 0.05 } };
  const press = { pressure: 0.75, turning: 1 } as const;
  const places = 24;
  const told = aroundTurn(rig, oval, press, places).map((p) => p.torque);
  const [least, most] = [Math.min(...told), Math.max(...told)];
  expect(most - least).toBeGreaterThan(0.1 * most);
  const motion = createMotion(rig, oval);
  const radius = brake.drum.radiusNew;
  const speed = 0.5;
  const steps = Math.round((2 * Math.PI) / speed / motion.dt);
  const felt: { angle: number; torque: number }[] = [];
  // A hand as stiff as both arms: on a softer one the drum runs on where its drag falls, and gives back as it slows.
  // Half a turn to begin with, then a whole one.
  for (let n = 1; n <= 1.5 * steps; n++) {
    const rim = { radius, angle: n * motion.dt * speed, speed, rate: 50, limit: 1e6, damped: true };
    motion.step({ pressure: press.pressure * Math.min(1, n / 120), turning: 0, rim });
    if (n > steps / 2) {
      felt.push({ angle: motion.instant().drumAngle, torque: motion.rimForce * radius });
    }
  }
  const by = (place: number): number => {
    const angle = (2 * Math.PI * place) / places;
    const off = (a: number): number =>
      Math.abs(Math.atan2(Math.sin(a - angle), Math.cos(a - angle)));
    return felt.reduce((a, b) => (off(b.angle) < off(a.angle) ? b : a)).torque;
  };
  for (let n = 0; n < places; n++) near(by(n), told[n] as number, { abs: 0.01 * most }, `${n}`);
  // Twice a turn: half a turn on it is the same again, a quarter is the other.
  near(by(places / 2), by(0), { abs: 0.01 * most }, 'half a turn on');
});
