import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import {
  BAR,
  KMH,
  lineAt,
  parked,
  readingOf,
  slopeHeld,
  startState,
  wheelReadings,
} from '../../../sim/index.ts';
import { moreReadings } from '../../../ui/app/more-readings.ts';
import { bothOf, standApart } from '../../../ui/record/across.ts';
import { putState } from '../../../ui/record/bench.ts';
import { fromText, toText } from '../../../ui/record/json.ts';
import { linkOf, readLink } from '../../../ui/record/link.ts';
import { lookAt } from '../../../ui/record/view.ts';
import { Session } from '../../../ui/session.ts';
import { ParkDesk } from '../../../ui/stations/park/desk.ts';
import { near } from '../../near.ts';

/** The van with a right-hand wheel whose linings are worn further, its drum and strut as they are. */
const unlike = {
  ...quayVan,
  otherWheel: { wear: { front: 1.5, rear: 0.6 }, drumDiameter: 200.6, tooth: 9 },
};

describe('two unlike wheels of one axle', () => {
  it('a scene that starts them unlike puts its own on the bench, and the other one aside', () => {
    const s = Session.of(unlike, true);
    const both = bothOf(s.moment);
    expect(s.wheel).toBe(s.brake.wheel);
    expect(both?.left).toBe(s.state);
    expect(both?.right).toEqual(startState(s.brake, undefined, 'right'));
    expect(both?.right.wear.front[0]).toBe(1.5);
    expect(bothOf(Session.of(quayVan, true).moment)).toBe(null);
  });

  it('choosing a wheel puts it on the bench with its own life; nothing of the other is lost', () => {
    const s = Session.of(unlike, true);
    const left = s.state;
    s.press(30);
    s.do(lookAt, 'right');
    expect([s.wheel, s.pedal, s.state.tooth]).toEqual(['right', 0, 9]);
    expect(s.motion.state).toBe(s.state);
    expect(bothOf(s.moment)?.left).toBe(left);
    // What is done is done to the wheel on the bench alone.
    s.do(putState, { ...s.state, tooth: 11 });
    s.do(lookAt, 'left');
    expect([s.state, bothOf(s.moment)?.right.tooth]).toEqual([left, 11]);
    s.undo();
    expect([s.wheel, s.state.tooth]).toEqual(['right', 11]);
  });

  it('wheels that are alike go each its own way from where they are told to, and are alike again', () => {
    const s = Session.of(quayVan, true);
    const { state } = s;
    // Alike, the other wheel is the mirror image.
    s.do(lookAt, 'right');
    expect(s.state).toBe(state);
    s.do(standApart, true);
    expect([s.wheel, bothOf(s.moment)]).toEqual(['right', { left: state, right: state }]);
    s.do(putState, { ...state, tooth: 3 });
    expect([bothOf(s.moment)?.left.tooth, bothOf(s.moment)?.right.tooth]).toEqual([0, 3]);
    s.do(standApart, false);
    s.do(lookAt, 'left');
    expect([s.wheel, s.state.tooth]).toEqual(['left', 3]);
  });

  it('goes through a link and what is kept for a reload', async () => {
    const s = Session.of(unlike, true);
    s.do(lookAt, 'right');
    const text = fromText(toText(s.moment));
    expect(text.ok ? toText(text.moment) : text.wrong).toBe(toText(s.moment));
    const link = await linkOf(s.moment);
    const at = link.indexOf('#');
    const there = await readLink(link.slice(0, at), link.slice(at));
    expect(there.ok ? toText(there.moment) : there.wrong).toBe(toText(s.moment));
    // A state that is none of this brake is refused there too.
    const across = { ...s.moment.bench.across, state: { ...s.state, tooth: 99 } };
    const bad = fromText(toText({ ...s.moment, bench: { ...s.moment.bench, across } as never }));
    expect(bad.ok ? '' : bad.wrong[0]?.path).toBe('bench.across.state.tooth');
  });

  it('Park holds by both: the vehicle’s slope is that of their mean torque', () => {
    const s = Session.of(unlike, true);
    const desk = new ParkDesk(s);
    const { left, right } = bothOf(s.moment) ?? { left: s.state, right: s.state };
    const [l, r] = [parked(s.rig, left, 300), parked(s.rig, right, 300)];
    expect(Math.abs(l.forward - r.forward)).toBeGreaterThan(1000);
    expect(desk.wheels.map((w) => w.forward)).toEqual([l.forward, r.forward]);
    near(desk.hill('down').can, (l.forward + r.forward) / 2, { rel: 1e-12 }, 'mean');
    near(desk.hill('down').slope, slopeHeld(s.rig, (l.forward + r.forward) / 2), { rel: 1e-12 });
    // The stage shows the wheel that stands on the bench.
    expect(desk.wheel.forward).toBe(l.forward);
    s.do(lookAt, 'right');
    expect(desk.wheel.forward).toBe(r.forward);
    expect(desk.wheels.map((w) => w.forward)).toEqual([l.forward, r.forward]);
  });

  it('a stop is by both, and how much the weaker one lacks is told', () => {
    const s = Session.of(unlike, true);
    const i = { ...s.instant(), pressure: 40 * BAR, turning: 1 as const };
    const groups = moreReadings(s, i);
    const told = groups.find((g) => g.title === 'Both wheels at that press');
    const both = bothOf(s.moment);
    if (!told || !both) throw new Error('both are told');
    const own = wheelReadings(s.rig, both, lineAt(s.brake, 40 * BAR), 1, 50 * KMH);
    expect(told.list.map((r) => r.value)).toEqual(own.map((r) => r.value));
    const [left, right] = own.map((r) => r.value) as [number, number];
    near(
      readingOf(told.list, 'wheelDifference').value,
      (100 * Math.abs(left - right)) / Math.max(left, right),
      { rel: 1e-9 },
    );
    const alike = moreReadings(Session.of(quayVan, true), i);
    expect(alike.some((g) => g.title === 'Both wheels at that press')).toBe(false);
  });
});
