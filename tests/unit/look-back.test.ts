import { beforeAll, describe, expect, it, vi } from 'vitest';
import farmTrailer from '../../scenes/farm-trailer.json';
import runabout from '../../scenes/ferry-runabout.json';
import quayVan from '../../scenes/quay-van.json';
import { leverForm, type MotionRecord } from '../../sim/index.ts';
import { bringSlow } from '../../ui/brought.ts';
import type { LookBack } from '../../ui/look-back.ts';
import { stepAt } from '../../ui/pace.ts';
import { putState } from '../../ui/record/bench.ts';
import { KEPT } from '../../ui/reel.ts';
import { Session } from '../../ui/session.ts';
import { loudness } from '../../ui/sound.ts';
import { near } from '../near.ts';

beforeAll(bringSlow);

const FRAME = 1 / 60;
const run = (s: Session, seconds: number, each: () => void = () => {}): void => {
  for (let n = 0; n < Math.round(seconds / FRAME); n++) {
    s.frame(FRAME);
    each();
  }
};
/** The quay van with room for a tooth or two: a press clicks. */
function open(): Session {
  const s = Session.of(quayVan, false);
  s.do(putState, { ...s.state, tooth: 0, drumRadius: s.brake.drum.radiusNew + 0.4 });
  return s;
}
const back = (s: Session): LookBack => {
  const found = s.back.begin();
  if (!found) throw new Error('nothing to look back at');
  return found;
};
const whole = (s: Session): MotionRecord => (s.back.look?.motion ?? s.motion).snapshot();

describe('a look back', () => {
  it('has every moment again to the bit, in any order', () => {
    const s = open();
    s.pressTo(40);
    const seen: { time: number; record: MotionRecord }[] = [];
    run(s, 1.2, () => seen.push({ time: s.motion.time, record: s.motion.snapshot() }));
    s.release();
    run(s, 0.5, () => seen.push({ time: s.motion.time, record: s.motion.snapshot() }));
    expect(s.back.reel.crests.length).toBeGreaterThan(0);
    for (let n = 0; n < seen.length; n += 7) {
      const { time, record } = seen[(n * 31) % seen.length] as (typeof seen)[number];
      s.back.seek(time + 1e-7);
      // What waits for the next picture belongs to the clock of the page.
      expect({ ...whole(s), backlog: 0 }).toEqual({ ...record, backlog: 0 });
    }
  });

  it('leaves the brake of now as it was, and goes on from there', () => {
    const s = open();
    s.pressTo(30);
    run(s, 0.6);
    const now = s.motion.snapshot();
    s.back.seek(s.motion.time - 0.3);
    run(s, 1);
    s.back.play(true);
    run(s, 1);
    expect(s.motion.snapshot()).toEqual(now);
    s.back.end();
    expect(s.back.look).toBeNull();
    run(s, 0.1);
    expect(s.motion.time).toBeGreaterThan(0.6);
  });

  it('plays a marked stretch twice to the same bits, at its own steps and at finer ones', () => {
    for (const pace of [1, 20, 100, 400] as const) {
      const s = open();
      s.pressTo(40);
      run(s, 0.8);
      const at = s.back.reel.crests[0] as number;
      s.goAt(pace);
      const look = back(s);
      look.stretch = { from: at - 2e-3, to: at + 6e-3 };
      const once = (): unknown[] => {
        const seen: unknown[] = [];
        s.back.play(false);
        for (let n = 0; n < 4000 && look.playing; n++) {
          s.frame(FRAME);
          seen.push(look.motion.snapshot(), look.instant().lever);
        }
        return seen;
      };
      const first = once();
      expect(look.playing).toBe(false);
      expect(once()).toEqual(first);
      near(look.time, at + 6e-3, { abs: 1 / 240 + 1e-6 });
      if (pace > 1) {
        expect(look.motion.dt).toBe(stepAt(pace));
        // 8 ms at one picture a step.
        near(first.length / 2, 8e-3 / stepAt(pace), { abs: 1 / 240 / stepAt(pace) + 2 });
      }
    }
  });

  it('loops until it is stopped, and any press leads back to now', () => {
    const s = open();
    s.pressTo(40);
    run(s, 0.8);
    s.back.lastClick();
    expect(s.pace).toBe(100);
    const look = back(s);
    const times: number[] = [];
    run(s, 6, () => times.push(look.time));
    expect(look.playing).toBe(true);
    expect(times.filter((t, n) => n > 0 && t < (times[n - 1] as number)).length).toBeGreaterThan(2);
    // The lever lies in its old tooth, on its crest, in the air, and in the next one.
    s.back.stop();
    s.release();
    expect(s.back.look).toBeNull();
  });

  it('shows the fall of the last click in five pictures at ×1/100, twenty and more at ×1/400', () => {
    const s = open();
    s.pressTo(40);
    run(s, 0.8);
    const h = leverForm(s.brake)?.toothHeight ?? 0;
    const pictures = (pace: 100 | 400): number => {
      s.goAt(pace);
      s.back.lastClick();
      const look = back(s);
      look.loop = false;
      let falling = 0;
      let tooth = look.instant().tooth;
      let before = 0;
      while (look.playing) {
        s.frame(FRAME);
        const i = look.instant();
        const lift = i.lever?.lift ?? 0;
        if (i.tooth > tooth) [tooth, before, falling] = [i.tooth, h, 0];
        if (tooth === s.state.tooth && lift < before && lift > 0.3) falling++;
        before = lift;
      }
      return falling;
    };
    expect(pictures(100)).toBeGreaterThanOrEqual(4);
    expect(pictures(400)).toBeGreaterThanOrEqual(20);
  });

  it('goes by steps of the pace, on and back', () => {
    const s = open();
    s.pressTo(40);
    run(s, 0.8);
    s.goAt(400);
    s.back.seek((s.back.reel.crests[0] as number) + 1e-3);
    const look = back(s);
    const from = look.time;
    s.oneStep();
    s.oneStep();
    near(look.time - from, 2 / 24000, { abs: 1e-9 });
    const there = look.instant();
    s.oneStep();
    s.stepBack();
    near(look.time - from, 2 / 24000, { abs: 1e-9 });
    expect(look.instant().lever).toEqual(there.lever);
    expect(look.instant().separation).toBeCloseTo(there.separation, 9);
  });

  it('keeps ten seconds, whatever the pace, and forgets them with the brake', () => {
    const s = open();
    for (let n = 0; n < 8; n++) {
      s.pressTo(n % 2 ? 0 : 20);
      run(s, 1.7);
    }
    near(s.motion.time - s.back.reel.begin, KEPT, { abs: 0.01 });
    expect(s.back.reel.cells.length).toBeLessThanOrEqual(KEPT * 240 + 2);
    s.goAt(400);
    s.pressTo(30);
    run(s, 4);
    expect(s.back.reel.cells.every(({ done }) => done.length <= 101)).toBe(true);
    s.backToNew();
    expect(s.back.reel.cells.length).toBe(0);
    expect(s.back.begin()).toBeNull();
  });

  it('a step back takes what came after out of the past', () => {
    const s = open();
    s.pressTo(40);
    run(s, 0.2);
    for (let n = 0; n < 9; n++) s.oneStep();
    const long = s.back.reel.cells.reduce((n, c) => n + c.done.length, 0);
    s.stepBack();
    s.stepBack();
    expect(s.back.reel.cells.reduce((n, c) => n + c.done.length, 0)).toBe(long - 2);
    near(back(s).end, s.motion.time, { abs: 1e-12 });
  });
});

describe('the sound', () => {
  it('starts with the hit, as loud as its energy, and not with the law’s step', () => {
    const s = open();
    const play = vi.spyOn(s.sound, 'play');
    s.goAt(400);
    s.pressTo(40);
    let passed = Number.NaN;
    for (let n = 0; n < 60 * 400 && play.mock.calls.length === 0; n++) {
      s.frame(FRAME);
      if (Number.isNaN(passed) && s.back.reel.crests.length > 0)
        passed = s.back.reel.crests[0] as number;
    }
    // The quay van's lever weighs some 19 g: its fall of 1 mm under 15 to 16.5 N lasts 1.5 ms at rest, less on a climbing flank.
    expect(s.motion.time - passed).toBeGreaterThan(0.6e-3);
    expect(s.motion.time - passed).toBeLessThan(1.6e-3);
    const [timbre, energy] = play.mock.calls[0] as [string, number];
    expect(timbre).toBe('plate');
    expect(energy).toBeGreaterThan(5);
    expect(energy).toBeLessThan(26);
  });

  it('0.3 of the spring is 5 dB softer; a wedge makes none, a star wheel its own', () => {
    // 20·log10 √0.3 = −5.2 dB.
    near(20 * Math.log10(loudness(0.3 * 15.75) / loudness(15.75)), -5.2, { abs: 0.05 });
    expect(loudness(0)).toBe(0);
    const heard = (scene: object): unknown[] => {
      const s = Session.of(scene, false);
      const play = vi.spyOn(s.sound, 'play');
      s.pressTo(40);
      run(s, 1.5);
      return play.mock.calls.map(([timbre]) => timbre);
    };
    expect(new Set(heard(farmTrailer))).toEqual(new Set(['pawl']));
    expect(heard(runabout)).toEqual([]);
  });
});
