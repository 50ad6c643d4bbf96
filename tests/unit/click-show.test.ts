import { beforeAll, describe, expect, it } from 'vitest';
import benchBrake from '../../scenes/bench-brake.json';
import farmTrailer from '../../scenes/farm-trailer.json';
import runabout from '../../scenes/ferry-runabout.json';
import quayVan from '../../scenes/quay-van.json';
import { type BrakeState, leverForm, leverMass, strutLength } from '../../sim/index.ts';
import { bringSlow } from '../../ui/brought.ts';
import { ClickShow, type Phase } from '../../ui/click-show.ts';
import { putStanding, putState } from '../../ui/record/bench.ts';
import { toggleLayer } from '../../ui/record/view.ts';
import { Session } from '../../ui/session.ts';
import { near } from '../near.ts';

beforeAll(bringSlow);

const FRAME = 1 / 60;
const at = (name: string): Session => {
  const s = Session.of(quayVan, false);
  s.do(putStanding, name);
  return s;
};
/** The pictures of a press, one after the other. */
function pictures(show: ClickShow): { phase: Phase; there: number; hit: boolean }[] {
  const out: ReturnType<typeof pictures> = [];
  for (let n = 0; n < 600; n++) {
    const on = show.advance(FRAME);
    out.push({ phase: show.part.phase, there: show.there, hit: show.hit });
    if (!on) return out;
  }
  throw new Error('it never ends');
}
const unclicked = (s: Session): BrakeState => ({ ...s.state, tooth: s.state.tooth - 1 });

describe('a press that is shown', () => {
  it('of the quay van goes out, climbs, drops and is let go in about 1.2 s, ×1/100 from first movement to hit', () => {
    // One tooth's room and more, as after a hard use: from first movement to count there are 7.7 ms, of which
    // the climb takes 1.5 (a press of the van stepped at 1/4800 s, 40 bar in 0.35 s, told beside the plate of it).
    const s = at('Just clicked');
    const show = ClickShow.of(s.rig, { ...s.state, tooth: s.state.tooth - 2 });
    expect(show.clicks).toBe(true);
    const ends = Object.fromEntries(show.stages.map(({ phase, to }) => [phase, to]));
    const [out, climb, drop] = [ends['out'], ends['climb'], ends['drop']] as [
      number,
      number,
      number,
    ];
    const first = show.stages[0]?.to ?? 0;
    near(climb - first, 7.7e-3, { rel: 0.15 }, 'first movement to count');
    near(climb - out, 1.5e-3, { rel: 0.25 }, 'climb');
    near(show.lasts(first, drop), 100 * (drop - first), { rel: 1e-9 });
    expect(show.lasts()).toBeGreaterThan(1);
    expect(show.lasts()).toBeLessThan(1.4);
    const seen = pictures(show);
    expect([...new Set(seen.map((p) => p.phase))]).toEqual([
      'rest',
      'out',
      'climb',
      'drop',
      'ring',
      'release',
    ]);
    near(seen.length * FRAME, show.lasts(), { abs: 2 * FRAME });
  });

  it('hits when the lever has fallen, and counts the tooth only then', () => {
    const s = at('Just clicked');
    const show = ClickShow.of(s.rig, unclicked(s));
    const { length } = pictures(ClickShow.of(s.rig, unclicked(s)));
    let crest = Number.NaN;
    for (let n = 0; n < length && !show.hit; n++) {
      expect(show.state.tooth).toBe(9);
      show.advance(FRAME);
      if (show.part.phase === 'drop' && !(crest > 0)) crest = show.time;
    }
    expect(show.state.tooth).toBe(10);
    // m·s″ = −(F0 + k·s) from s = h at rest (any textbook of mechanics): t = arccos(x0/(x0 + h))·√(m/k), x0 = F0/k.
    const form = leverForm(s.brake);
    if (!form) throw new Error('no lever');
    const { rate, fitted } = form.spring;
    const x0 = fitted / rate;
    const falls = Math.acos(x0 / (x0 + form.toothHeight)) * Math.sqrt(leverMass(form).mass / rate);
    near(show.hitAt - crest, falls, { abs: FRAME / 100 });
  });

  it('tells a press that does not click how far it climbed: of the van before a click, some 79 %', () => {
    const s = at('Before a click');
    const show = ClickShow.of(s.rig, s.state);
    expect(show.clicks).toBe(false);
    const seen = pictures(show);
    // Separation 1.30 there, 1.40 needed, 0.90 of play: told with the teaching brakes.
    near(show.needed, 1.4, { abs: 0.005 });
    near(show.most, 1.3, { abs: 0.01 });
    near((show.most - show.slot) / (show.needed - show.slot), 0.79, { abs: 0.02 });
    near(seen.at(-1)?.there ?? 1, 0, { abs: 0.01 });
    expect(show.state.tooth).toBe(9);
    expect(seen.map((p) => p.phase)).toContain('held');
    expect(show.lasts()).toBeLessThan(1.5);
  });

  it('of every kind with a click ends on the tooth that the press takes, the seats back on the strut', () => {
    for (const scene of [quayVan, benchBrake, farmTrailer]) {
      const s = Session.of(scene, false);
      s.do(putState, { ...s.state, drumRadius: s.brake.drum.radiusNew + 0.6 });
      const show = ClickShow.of(s.rig, s.state);
      expect(show.clicks).toBe(true);
      expect(show.lasts()).toBeLessThan(1.5);
      pictures(show);
      expect(show.state.tooth).toBeGreaterThan(0);
      const i = show.instant();
      near(i.separation, strutLength(s.brake, show.state.tooth), { abs: 0.02 });
    }
  });
});

describe('in the session', () => {
  it('a click that is shown is told with its hit; skipped, it is told at once', () => {
    for (const skip of [false, true]) {
      const s = at('Just clicked');
      let [clicks, heard] = [0, Number.NaN];
      s.addEventListener('click', () => {
        clicks += 1;
        heard = s.climb.tooth;
      });
      s.showClick();
      expect(s.showing).toBe(true);
      expect(s.layers.loupe).toBe(true);
      for (let n = 0; n < 20; n++) s.frame(FRAME);
      expect([clicks, s.shown.tooth]).toEqual([0, 9]);
      if (skip) s.skipShow();
      else for (let n = 0; n < 100; n++) s.frame(FRAME);
      expect(clicks).toBe(1);
      expect(heard).toBe(10);
      expect(s.showing).toBe(false);
      expect(s.layers.loupe).toBe(false);
    }
  });

  it('nothing is played for reduced motion or of a wedge, and the click is told all the same', () => {
    for (const s of [Session.of(quayVan, true), Session.of(runabout, false)]) {
      s.do(putState, { ...s.state, tooth: 4 });
      let clicks = 0;
      s.addEventListener('click', () => {
        clicks += 1;
      });
      s.showClick();
      expect([s.showing, clicks]).toEqual([false, 1]);
      expect(s.show.begin(s.state, false)).toBe(false);
    }
  });
});

describe('a press that is watched', () => {
  /** Presses to 40 bar and lets go; how long the shoes are on their way, s of the page, and where it ended. */
  function press(watched: boolean, loupe: boolean) {
    const s = at('Before a click');
    s.watches = () => watched;
    if (loupe) s.do(toggleLayer, 'loupe');
    const onTheWay = { out: 0, back: 0 };
    const paces = new Set<number>();
    const go = (bar: number, key: 'out' | 'back') => {
      s.pressTo(bar);
      for (let n = 0; n < 200; n++) {
        s.frame(FRAME);
        const { there } = s.climb;
        paces.add(s.paceNow);
        if (there > 0.01 && there < 1.28) onTheWay[key] += FRAME;
      }
    };
    go(40, 'out');
    const top = s.climb.most;
    go(0, 'back');
    return { s, onTheWay, paces, top };
  }

  it('is seen going out and coming back, at its own pace: both ways take pictures, not one', () => {
    const plain = press(false, false);
    const brake = press(true, false);
    const tooth = press(true, true);
    expect([...plain.paces]).toEqual([1]);
    expect(plain.onTheWay.out).toBeLessThan(0.04);
    expect([...brake.paces].sort((a, b) => a - b)).toEqual([1, 50]);
    expect([...tooth.paces].sort((a, b) => a - b)).toEqual([1, 100]);
    expect(brake.onTheWay.out).toBeGreaterThan(0.25);
    expect(brake.onTheWay.out).toBeLessThan(0.8);
    expect(brake.onTheWay.back).toBeGreaterThan(0.05);
    expect(tooth.onTheWay.out).toBeGreaterThan(0.5);
    // What it comes to is the same: it is only looked at longer.
    near(brake.top, plain.top, { rel: 1e-4 });
    near(tooth.top, plain.top, { rel: 1e-4 });
    expect([brake.s.state.tooth, tooth.s.state.tooth]).toEqual([9, 9]);
  });

  it('clicks as it would unwatched; without a loupe the press is shown once more', () => {
    for (const loupe of [false, true]) {
      const s = at('Just clicked');
      s.do(putState, unclicked(s));
      s.watches = () => true;
      if (loupe) s.do(toggleLayer, 'loupe');
      let [clicks, shown] = [0, false];
      s.addEventListener('click', () => {
        clicks += 1;
      });
      s.pressTo(40);
      for (let n = 0; n < 240; n++) {
        s.frame(FRAME);
        shown ||= s.showing;
      }
      expect(s.state.tooth).toBe(10);
      expect([clicks, shown]).toEqual([1, !loupe]);
    }
  });

  it('a key is enough: the rest runs at the clock’s pace', () => {
    const s = at('Before a click');
    s.watches = () => true;
    s.pressTo(40);
    let n = 0;
    while (s.paceNow === 1 && n++ < 60) s.frame(FRAME);
    expect(s.paceNow).toBe(50);
    s.skipShow();
    s.frame(FRAME);
    s.frame(FRAME);
    expect(s.paceNow).toBe(1);
    near(s.climb.there, 1.29, { abs: 0.02 });
  });
});
