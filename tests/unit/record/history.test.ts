import { expect, it } from 'vitest';
import { press, release } from '../../../ui/record/bench.ts';
import { show } from '../../../ui/record/guest.ts';
import { begin, type History, redo, STEPS, step, undo } from '../../../ui/record/history.ts';
import { toText } from '../../../ui/record/json.ts';
import type { Moment } from '../../../ui/record/moment.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { magnify, turn } from '../../../ui/record/view.ts';
import { placeOf, wayBack } from '../../../ui/record/walk.ts';
import { chooseFault } from '../../../ui/stations/faults/part.ts';
import { doing } from './doing.ts';

it('a joined wish that changes nothing leaves the step its words', () => {
  const start = plainMoment();
  const down = press.does(start, 40);
  const once = step(begin(start), down, 'pedal at 40 bar', 'pedal');
  // The finger stays where it is: nothing changes, and nothing is said of it.
  const still = step(once, press.does(down, 40), '', 'pedal');
  expect(undo(still)?.said).toBe('pedal at 40 bar');
});

it('a held pedal is one step, and none when nothing came of it', () => {
  const start = turn.does(plainMoment(), -1);
  const h = step(begin(plainMoment()), start, 'drum backward');
  const pressed = [10, 20, 40].reduce(
    (held, bar) => step(held, press.does(held.present, bar), `pedal at ${bar} bar`, 'pedal'),
    h,
  );
  expect(pressed.past).toHaveLength(2);
  const after = step(pressed, release.does(pressed.present), 'pedal let go', 'pedal', true);
  expect(after.past).toHaveLength(1);
  expect(after.present).toBe(start);
});

it('five hundred steps: the last four hundred go back, each with its words, and forth again', () => {
  const turned = (h: History, n: number): History =>
    n % 2 === 0 ? doing(h, turn, n % 4 === 0 ? -1 : 1) : doing(h, magnify, n % 4 === 1 ? 20 : 40);
  const stood: Moment[] = [plainMoment()];
  let h = begin(stood[0] as Moment);
  for (let n = 0; n < 500; n++) {
    h = turned(h, n);
    stood.push(h.present);
  }
  expect(STEPS).toBeGreaterThanOrEqual(200);
  for (let n = 499; n >= 500 - STEPS; n--) {
    const u = undo(h);
    expect(u?.said).toMatch(n % 2 === 0 ? /^drum / : /^gap drawn ×/);
    h = u?.history as History;
    expect(h.present).toBe(stood[n]);
  }
  expect(undo(h)).toBeNull();
  for (let r = redo(h); r; r = redo(h)) h = r.history;
  expect(h.present).toBe(stood[500]);
});

it('Back takes back the step that led here, and Forward does it again; nothing else is undone by them', () => {
  const start = begin(plainMoment());
  const faults = doing(start, show, 'faults');
  const one = doing(faults, chooseFault, 'hose');
  const two = doing(one, chooseFault, 'stuck piston');
  expect(wayBack(two, placeOf(one.present))).toBe('undo');
  const back = undo(two)?.history as History;
  expect(toText(back.present)).toBe(toText(one.present));
  expect(wayBack(back, placeOf(two.present))).toBe('redo');
  // Two places back is no single step, and where one is leads nowhere.
  expect(wayBack(two, placeOf(start.present))).toBeNull();
  expect(wayBack(two, placeOf(two.present))).toBeNull();
  // A press since one came here is not undone by Back, nor is what was changed elsewhere.
  const pressed = doing(one, press, 40);
  expect(wayBack(pressed, placeOf(faults.present))).toBeNull();
  const worn = step(faults, { ...start.present, bench: { ...start.present.bench } }, 'loaded');
  expect(wayBack(worn, placeOf(faults.present))).toBeNull();
});
