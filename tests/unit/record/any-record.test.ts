import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amend, begin, type History, redo, step, undo } from '../../../ui/record/history.ts';
import type { Intention } from '../../../ui/record/intention.ts';
import { intentions } from '../../../ui/record/intentions.ts';
import { fromText, toText } from '../../../ui/record/json.ts';
import { linkOf, readLink, sendable } from '../../../ui/record/link.ts';
import type { Moment } from '../../../ui/record/moment.ts';
import { readMoment } from '../../../ui/record/record.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { samples } from '../../samples.ts';
import { asked, Chance, ids } from './any-intention.ts';

/** Any sequence of anything that can be wanted leaves a record that is sound, can be kept, sent and undone. */

const wanted = (id: string) => intentions.get(id) as unknown as Intention<readonly unknown[]>;

/** Those that the brake itself tells, which are no steps. */
const BY_ITSELF = ['bench.clicked', 'wear.follow', 'wear.stop'];

function goOn(h: History, id: string, args: readonly unknown[]): History {
  const i = wanted(id);
  const after = i.does(h.present, ...args);
  if (BY_ITSELF.includes(id)) return amend(h, after);
  const said = after === h.present ? '' : i.says(h.present, after, ...args);
  return step(h, after, said, i.joins(...args), i.ends);
}

async function sound(m: Moment): Promise<void> {
  const read = readMoment(m);
  expect(read.ok ? [] : read.wrong).toEqual([]);
  const text = toText(m);
  const back = fromText(text);
  expect(back.ok ? toText(back.moment) : back.wrong).toBe(text);
  const link = await linkOf(m);
  const [search = '', hash = ''] = link.split(/(?=#)/);
  const there = await readLink(
    search.startsWith('#') ? '' : search,
    search.startsWith('#') ? search : hash,
  );
  expect(there.ok ? toText(there.moment) : there.wrong).toBe(toText(sendable(m)));
}

it('each intention has something that is asked of it', () => {
  expect([...intentions.keys()].filter((id) => !(id in asked))).toEqual([]);
  expect(Object.keys(asked).filter((id) => !intentions.has(id))).toEqual([]);
});

describe('any sequence of intentions', () => {
  it('is sound after each, goes through text and link unchanged, back to the start and forth to the end', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(ids.length - 1), fc.nat()), { minLength: 100, maxLength: 100 }),
        async (steps) => {
          let start = plainMoment();
          let h = begin(start);
          for (const [which, seed] of steps) {
            const id = ids[which] as string;
            const args = asked[id]?.(h.present, new Chance(seed)) ?? [];
            h = goOn(h, id, args);
            // What the brake does by itself before the first step belongs to the start.
            if (h.past.length === 0) start = h.present;
            await sound(h.present);
          }
          const end = toText(h.present);
          let back = h;
          for (let u = undo(back); u; u = undo(back)) {
            expect(u.said).not.toBe('');
            back = u.history;
          }
          expect(back.present).toBe(start);
          for (let r = redo(back); r; r = redo(back)) back = r.history;
          expect(toText(back.present)).toBe(end);
          expect(back.past.length).toBe(h.past.length);
        },
      ),
      // Shrinking would go through a hundred intentions again and again.
      { numRuns: samples('records'), seed: 20261128, endOnFailure: true },
    );
  });
});
