import { describe, expect, it, vi } from 'vitest';
import farmTrailer from '../../scenes/farm-trailer.json';
import runabout from '../../scenes/ferry-runabout.json';
import quayVan from '../../scenes/quay-van.json';
import type { MotionRecord } from '../../sim/index.ts';
import { putState } from '../../ui/record/bench.ts';
import { begin } from '../../ui/record/history.ts';
import { Session } from '../../ui/session.ts';
import { near } from '../near.ts';

const open = (): Session => Session.of(quayVan, false);
const FRAME = 1 / 60;
const bits = (s: Session): MotionRecord => s.motion.snapshot();
/** Lets a session run for seconds of the page, frame by frame. */
const run = (s: Session, seconds: number): void => {
  for (let n = 0; n < Math.round(seconds / FRAME); n++) s.frame(FRAME);
};

describe('freeze and single steps', () => {
  it('one step holds the moment: frames pass and nothing moves, until it goes on', () => {
    const s = open();
    run(s, 0.2);
    s.oneStep();
    const held = bits(s);
    run(s, 0.5);
    expect(bits(s)).toEqual(held);
    s.go();
    run(s, 0.2);
    expect(bits(s)).not.toEqual(held);
  });

  it('one step goes on by the step of the engine', () => {
    const s = open();
    run(s, 0.2);
    const before = s.instant().drumAngle;
    s.oneStep();
    const once = s.instant().drumAngle - before;
    s.oneStep();
    // A drum that turns freely at one speed passes the same angle in every step.
    near(s.instant().drumAngle - before, 2 * once, { rel: 1e-6 });
    expect(once).toBeGreaterThan(0);
  });

  it('as many steps back as forward lead to the same bits', () => {
    const s = open();
    s.press(25);
    run(s, 0.1);
    expect(s.canStepBack).toBe(false);
    const begin = bits(s);
    const on: MotionRecord[] = [];
    for (let n = 0; n < 12; n++) {
      s.oneStep();
      on.push(bits(s));
    }
    for (let n = 10; n >= 0; n--) {
      s.stepBack();
      expect(bits(s)).toEqual(on[n]);
    }
    s.stepBack();
    expect(bits(s)).toEqual(begin);
    expect(s.canStepBack).toBe(false);
    s.stepBack();
    expect(bits(s)).toEqual(begin);
  });

  it('a tooth that dropped in is lifted out again by stepping back', () => {
    const s = open();
    // Backed off by hand: no tooth is in, and the clearance asks for some.
    s.do(putState, { ...s.state, tooth: 0, drumRadius: s.brake.drum.radiusNew + 0.4 });
    s.press(40);
    let steps = 0;
    while (s.instant().tooth === 0 && steps < 200) {
      s.oneStep();
      steps++;
    }
    expect(s.instant().tooth).toBeGreaterThan(0);
    expect(s.state.tooth).toBe(s.instant().tooth);
    s.stepBack();
    expect(s.instant().tooth).toBe(0);
    expect(s.state.tooth).toBe(0);
  });
});

it.each([20, 100, 400] as const)('at ×1/%i the drum turns by that part of the angle', (pace) => {
  const angle = (slow: boolean): number => {
    const s = open();
    run(s, 1);
    if (slow) s.goAt(pace);
    const before = s.instant().drumAngle;
    run(s, 2);
    return s.instant().drumAngle - before;
  };
  const full = angle(false);
  expect(full).toBeGreaterThan(0.5);
  // Half a step of the engine is left over or owed at either end.
  near(angle(true), full / pace, { rel: 0.02 });
});

it('reduced motion: a released drum is not seen turning', () => {
  const s = Session.of(quayVan, true);
  run(s, 1);
  expect(s.instant().turning).toBe(0);
  expect(s.instant().drumAngle).toBe(0);
});

it('a tooth that drops in is heard, a wedge that slides is not', () => {
  const plays = (scene: object): number => {
    const s = Session.of(scene, false);
    const play = vi.spyOn(s.sound, 'play');
    s.tellClick();
    return play.mock.calls.length;
  };
  expect(plays(quayVan)).toBe(1);
  expect(plays(runabout)).toBe(0);
});

it('a press that stands is put on without stepping the adjuster once more', () => {
  const s = Session.of(farmTrailer, false);
  s.pressTo(40);
  run(s, 2);
  // Its star wheel takes one tooth a press.
  expect(s.state.tooth).toBe(1);
  const again = new Session(begin(s.moment), false);
  expect(again.state.tooth).toBe(1);
  near(again.instant().torqueOnDrum, s.instant().torqueOnDrum, { rel: 1e-6 });
  run(again, 2);
  expect(again.state.tooth).toBe(1);
  near(again.instant().torqueOnDrum, s.instant().torqueOnDrum, { rel: 1e-6 });
});
