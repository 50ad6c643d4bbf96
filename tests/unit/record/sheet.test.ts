import { describe, expect, it } from 'vitest';
import { begin, type History, undo } from '../../../ui/record/history.ts';
import type { Moment } from '../../../ui/record/moment.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import {
  ask,
  bringBack,
  chooseLimits,
  clear,
  fill,
  load,
  measuredWheel,
  select,
  tell,
  write,
  writeLimit,
} from '../../../ui/stations/inspect/part.ts';
import { doing } from './doing.ts';

const start = begin(plainMoment('inspect'));

const said = (h: History): readonly string[] => h.past.map((s) => s.said);
const sheet = (m: Moment) => m.parts.inspect;
const back = (h: History): History => {
  const u = undo(h);
  if (!u) throw new Error('nothing to undo');
  return u.history;
};

/** A text typed letter by letter. */
const typed = (h: History, key: 'leadToe' | 'leadThin', text: string): History =>
  Array.from(text).reduce((now, _, i) => doing(now, write, 'left', key, text.slice(0, i + 1)), h);

describe('the sheet in the record', () => {
  it('a typed text is one step, told by its place', () => {
    const h = typed(typed(start, 'leadToe', '3.8 mm'), 'leadThin', '2');
    expect(said(h)).toEqual([
      'leading lining, toe, left wheel',
      'leading lining, thinnest, left wheel',
    ]);
    expect(sheet(back(h).present).paper.wheels.left).toEqual({ leadToe: '3.8 mm' });
    expect(back(back(h)).present).toBe(start.present);
  });

  it('what is typed beyond the longest text is cut off', () => {
    const h = doing(start, write, 'right', 'lip', '9'.repeat(300));
    expect(sheet(h.present).paper.wheels.right.lip).toHaveLength(200);
  });

  it('clearing and its question are one step; the sheet can also be brought back, to and fro', () => {
    const full = typed(start, 'leadToe', '3');
    const cleared = doing(doing(full, ask, true), clear);
    expect(sheet(cleared.present)).toMatchObject({ asking: false, said: 'The sheet is clear.' });
    expect(sheet(cleared.present).paper.wheels.left).toEqual({});
    expect(back(cleared).present).toBe(full.present);
    const once = doing(cleared, bringBack);
    expect(sheet(once.present).paper).toEqual(sheet(full.present).paper);
    expect(sheet(once.present).before).toBe(null);
    const over = doing(typed(cleared, 'leadThin', '2'), bringBack);
    expect(sheet(over.present).before?.wheels.left).toEqual({ leadThin: '2' });
    expect(doing(start, bringBack)).toBe(start);
  });

  it('another set of limits takes what was typed over with it, and it can be brought back', () => {
    const over = doing(start, writeLimit, 'liningMin', '3 mm');
    const other = doing(over, chooseLimits, 'regulation');
    expect(sheet(other.present).paper).toMatchObject({ limitsFrom: 'regulation', limits: {} });
    expect(sheet(doing(other, bringBack).present).paper.limits).toEqual({ liningMin: '3 mm' });
    expect(doing(over, chooseLimits, 'maker').present).not.toBe(over.present);
    expect(doing(start, chooseLimits, 'maker').present).toBe(start.present);
  });

  it('filling one wheel leaves the other, and what stood there can be brought back', () => {
    const typedIn = doing(typed(start, 'leadToe', '3'), write, 'right', 'lip', '0.2');
    const m = fill.does(typedIn.present, 'left', { leadThin: '2.00' }, { distance: '50000' });
    expect(sheet(m).paper.wheels).toEqual({ left: { leadThin: '2.00' }, right: { lip: '0.2' } });
    expect(sheet(m).paper.axle).toEqual({ distance: '50000' });
    expect(sheet(bringBack.does(m)).paper).toEqual(sheet(typedIn.present).paper);
  });

  it('the stage turns with the sheet’s wheel, and stays turned where that wheel was loaded', () => {
    const right = select.does(start.present, 'right', 99);
    expect(measuredWheel(right)).toBe('right');
    // The last of the sheet's 23 lines.
    expect(sheet(right).line).toBe(22);
    expect(right.view.wheel).toBe(null);
    const state = { ...right.bench.state, tooth: 4 };
    const loaded = load.does(right, 'right', state, 'as measured');
    expect(loaded.bench.state).toBe(state);
    expect(loaded.view.wheel).toBe('right');
    expect(sheet(loaded).said).toBe('as measured');
  });

  it('answers are held to what a record takes', () => {
    const m = tell.does(start.present, 'x'.repeat(900), Array(99).fill('y'.repeat(900)));
    expect(sheet(m).said).toHaveLength(500);
    expect(sheet(m).findings).toHaveLength(60);
  });
});
