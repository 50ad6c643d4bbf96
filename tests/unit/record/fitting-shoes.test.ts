import { describe, expect, it } from 'vitest';
import { fitAdjuster, putState } from '../../../ui/record/bench.ts';
import { brakeOf, rigOf } from '../../../ui/record/derive.ts';
import { opened } from '../../../ui/record/guest.ts';
import { fromText, toText } from '../../../ui/record/json.ts';
import type { Moment } from '../../../ui/record/moment.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { fittingOf, handsOf } from '../../../ui/stations/new-shoes/fitting.ts';
import {
  beddedAt,
  centre,
  fitUpTo,
  goTo,
  leaveTooth,
  measureParts,
  presetByGauge,
  pressShoes,
  setCable,
  setTooth,
  slideOn,
  takeOff,
  takeParts,
} from '../../../ui/stations/new-shoes/part.ts';
import { near } from '../../near.ts';

/** New shoes into the quay van's drum worn to 200.60, lip 200.00: teaching tables, table 10.  */
const plain = plainMoment('apply');
const start = opened(plain, 'new-shoes');
const part = (m: Moment) => m.parts['new-shoes'];
const row = (m: Moment) => fittingOf(rigOf(m)).row(handsOf(brakeOf(m), part(m)));
const done = (m: Moment, step: 1 | 2 | 3 | 4 | 5 | 6) => part(m).done[step];
const read = (m: Moment) => {
  const r = fromText(toText(m));
  return r.ok ? r.moment : r.wrong;
};

/** The six steps as a user takes them, up to the drum that is pressed on. */
const fitted = (): Moment => {
  let m = takeParts.does(start);
  m = setTooth.does(goTo.does(m, 2), 0);
  m = centre.does(goTo.does(m, 3));
  m = presetByGauge.does(goTo.does(m, 4));
  m = slideOn.does(goTo.does(m, 5));
  return pressShoes.does(m, 'silent');
};

describe('new shoes in the record', () => {
  it('begins as the worn shoes left it, and the bench’s own brake waits', () => {
    expect(start.bench).toBe(plain.bench);
    expect(part(start)).toMatchObject({ bore: 200.6, tooth: 15, aside: 0.25, drumOn: false });
    const rows = fittingOf(rigOf(start)).rows(handsOf(brakeOf(start), part(start)));
    near(rows[15]?.lip ?? 0, -1.9, { abs: 0.07 }, 'over the lip');
    // Without a drum nothing is near the linings.
    const { drumRadius } = fittingOf(rigOf(start)).shown(handsOf(brakeOf(start), part(start)));
    expect(drumRadius).toBeGreaterThan(brakeOf(start).drum.radiusMax + 5);
  });

  it('six steps: crown first, set back, even, tooth 2 by the gauge, silent at once', () => {
    const m = fitted();
    expect(done(m, 1)).toEqual({ text: 'crown first', good: true });
    expect(done(m, 2)).toEqual({ text: 'strut from 15 to 0', good: true });
    expect(done(m, 4)?.text).toBe('tooth 2, 0.63 smaller than the bore');
    expect(done(m, 5)).toEqual({ text: 'no click, then silent', good: true });
    near(row(m).centre, 0.31, { abs: 0.006 }, 'clearance');
    const tight = setCable.does(m, 'tight');
    near(row(tight).centre, 0.18, { abs: 0.01 }, 'cable first');
  });

  it('from tooth 0 two teeth drop in at one press', () => {
    const m = pressShoes.does(slideOn.does(centre.does(setTooth.does(start, 0))), 'silent');
    expect(part(m).clicks).toEqual([2, 0]);
    expect(part(m).tooth).toBe(2);
    expect(done(m, 5)?.text).toBe('2 clicks in 1 press, then silent');
  });

  it('left with nothing done, or with the drum off, the bench is as it was', () => {
    const away = opened(start, 'apply');
    expect(away.bench).toBe(start.bench);
    const touched = opened(takeOff.does(fitted()), 'apply');
    expect(touched.bench).toBe(start.bench);
    expect(part(touched).touched).toBe(false);
  });

  it('left with the drum on, the fitted brake stays on the bench, its life new', () => {
    const away = opened(beddedAt.does(fitted(), 3), 'wear');
    expect(away.bench.state.tooth).toBe(2);
    expect(away.bench.state.distance).toBe(0);
    expect(away.bench.life).toMatchObject({ start: away.bench.state, legs: [], at: 0 });
    // The drum wears too, a few thousandths in 1 000 km.
    near(away.bench.state.drumRadius, 100.305, { abs: 0.005 }, 'bore');
    expect(Math.max(...away.bench.state.wear.front)).toBeGreaterThan(0);
    // Once more through the station, nothing done: nothing happens to it.
    const used = putState.does(away, { ...away.bench.state, tooth: 5 });
    expect(opened(opened(used, 'new-shoes'), 'apply').bench.state).toBe(used.bench.state);
  });

  it('a change takes back what came after it', () => {
    const m = setTooth.does(fitted(), 1);
    expect(part(m)).toMatchObject({ drumOn: false, clicks: [], silent: false, cable: 'slack' });
    expect([done(m, 4), done(m, 5), done(m, 6)]).toEqual([null, null, null]);
    expect(done(m, 2)).not.toBe(null);
  });

  it('what changes nothing is the very same record', () => {
    for (const m of [
      setTooth.does(start, 15),
      goTo.does(start, 1),
      measureParts.does(start, { bore: 200.6 }),
      beddedAt.does(start, 2),
    ])
      expect(m).toBe(start);
  });

  it('a thicker lining than the brake’s own goes through text as it is', () => {
    // 4.60 ground for 200.20 stands 0.10 out all along.
    const m = slideOn.does(
      centre.does(setTooth.does(measureParts.does(start, { thickness: 4.6, ground: 200.2 }), 0)),
    );
    const away = opened(m, 'apply');
    for (const w of away.bench.state.wear.front) near(w, -0.1, { abs: 1e-9 }, 'stands out');
    expect(read(away)).toEqual(away);
  });

  it('an adjuster with fewer teeth, or a stranger’s sizes, are held to what the brake takes', () => {
    const other = fitAdjuster.does(start, {
      kind: 'incremental',
      hotLock: false,
      drivenBy: 'application',
    });
    const mad = {
      ...other,
      parts: {
        ...other.parts,
        'new-shoes': { ...part(other), tooth: 99999, bore: 900, ground: 30 },
      },
    };
    const hands = handsOf(brakeOf(mad), part(mad));
    expect(hands.tooth).toBe(brakeOf(mad).adjuster.teeth);
    expect(hands.bore).toBeLessThan(210);
    expect(Number.isFinite(row(mad).across)).toBe(true);
    expect(done(leaveTooth.does(mad), 4)).not.toBe(null);
  });

  it('a question’s steps before the wanted one are done', () => {
    const m = fitUpTo(start, 6, 0);
    expect(part(m)).toMatchObject({ step: 6, tooth: 2, drumOn: true, silent: true });
    expect(fitUpTo(start, 3, 4).parts['new-shoes']).toMatchObject({
      step: 3,
      tooth: 4,
      drumOn: false,
    });
  });
});
