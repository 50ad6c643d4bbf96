import { expect, it } from 'vitest';
import { press } from '../../../ui/record/bench.ts';
import { show } from '../../../ui/record/guest.ts';
import { begin, type History, undo } from '../../../ui/record/history.ts';
import { toText } from '../../../ui/record/json.ts';
import { historyOf, keptSteps } from '../../../ui/record/kept-steps.ts';
import { EMPTY_SHELF } from '../../../ui/record/shelf.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { turn } from '../../../ui/record/view.ts';
import { chooseFault } from '../../../ui/stations/faults/part.ts';
import { doing } from './doing.ts';

/** As a window keeps it: text, read again. */
const again = (h: History): History =>
  historyOf(h.present, JSON.parse(JSON.stringify(keptSteps(h))), EMPTY_SHELF);
const texts = (h: History): readonly (readonly [string, string])[] =>
  [...h.past, ...h.future].map((s) => [s.said, toText(s.moment)]);

it('the way back and forth is the same after a reload, guests and all', () => {
  let h = begin(plainMoment());
  h = doing(h, turn, -1);
  h = doing(h, show, 'faults');
  h = doing(h, chooseFault, 'hose');
  h = doing(h, press, 12);
  h = undo(h)?.history ?? h;
  const back = again(h);
  expect(texts(back)).toEqual(texts(h));
  expect([back.past.length, back.future.length]).toEqual([3, 1]);
  expect(back.open).toBe('');
});

it('a hundred steps are kept each way, the nearest ones', () => {
  let h = begin(plainMoment());
  for (let n = 0; n < 130; n++) h = doing(h, turn, n % 2 === 0 ? -1 : 1);
  expect(texts(again(h))).toEqual(texts(h).slice(-100));
});

it('what cannot be read any more ends the way back; rubbish is no way at all', () => {
  let h = begin(plainMoment());
  for (let n = 0; n < 5; n++) h = doing(h, turn, n % 2 === 0 ? -1 : 1);
  const kept = JSON.parse(JSON.stringify(keptSteps(h)));
  kept.past[2].moment.station = 'kitchen';
  expect(historyOf(h.present, kept, EMPTY_SHELF).past).toHaveLength(2);
  for (const rubbish of [
    null,
    7,
    'x',
    [],
    { past: 3 },
    { past: [null] },
    { past: [{ said: 1 }] },
  ]) {
    expect(historyOf(h.present, rubbish, EMPTY_SHELF)).toEqual(begin(h.present));
  }
});
