import { expect, it } from 'vitest';
import type { Shelf } from '../../../ui/record/shelf.ts';
import { readSeen, type Seen, ShelfLog } from '../../../ui/record/shelf-log.ts';

/** Shelves are told apart by what they are, here. */
const shelf = (): Shelf => ({ brakes: [], removed: null });

it('what was written over unseen is held against the shelf that both set out from', () => {
  const [start, mine, theirs] = [shelf(), shelf(), shelf()];
  const here = new ShelfLog('here', {}, start);
  const there = new ShelfLog('there', {}, start);
  const first = here.writes({}, mine);
  // The other window has not been told of it, and writes over it.
  const second = there.writes({}, theirs);
  expect(here.knows(second)).toBe(false);
  expect(here.base(second)).toBe(start);
  expect(there.base(first)).toBe(start);
  // Taken over, it is what both go on from: its next write without mine is held against that.
  here.heard(second, theirs);
  expect(here.base(there.writes({}, shelf()))).toBe(theirs);
  expect(here.last).toBe(mine);
});

it('what knows of all that was written is held against the last', () => {
  const [start, mine] = [shelf(), shelf()];
  const here = new ShelfLog('here', {}, start);
  const seen = here.writes({ there: 4 }, mine);
  expect(seen).toEqual({ there: 4, here: 1 });
  expect(here.knows({ ...seen, there: 5 })).toBe(true);
  expect(here.base({ ...seen, there: 5 })).toBe(mine);
});

it('goes on counting after a reload, and forgets old writes and windows, never its own last', () => {
  const start = shelf();
  const again = new ShelfLog('here', { here: 7 }, start);
  expect(again.knows({ here: 7 })).toBe(true);
  expect(again.last).toBe(start);
  let seen: Seen = Object.fromEntries(Array.from({ length: 40 }, (_, n) => [`w${n}`, n]));
  let last = start;
  for (let n = 0; n < 40; n++) {
    last = shelf();
    seen = again.writes(seen, last);
  }
  expect(Object.keys(seen)).toHaveLength(16);
  expect(seen['here']).toBe(47);
  expect(again.last).toBe(last);
  // Of a write so old that it is forgotten: the oldest that is left.
  expect(again.knows({ here: 1 })).toBe(false);
  expect(again.base({ here: 1 })).not.toBe(last);
});

it('counts that are none are left out', () => {
  expect(readSeen({ a: 1, b: -1, c: 'x', d: 1.5, e: 0 })).toEqual({ a: 1, e: 0 });
  for (const none of [null, undefined, 3, 'a', [1]]) expect(readSeen(none)).toEqual({});
});
