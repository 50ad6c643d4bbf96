import { readFileSync } from 'node:fs';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { readOld, type SizesOf } from '../../../ui/record/old.ts';
import { shelfSchema } from '../../../ui/record/shelf.ts';
import { inspectPart } from '../../../ui/stations/inspect/part.ts';

/** What the page kept in its first format, as it wrote it. */
const file = (key: string): string =>
  readFileSync(new URL(`old/takeup-${key}.json`, import.meta.url), 'utf8');
const keys = ['own-brakes-1', 'own-removed-1', 'sheet-1', 'sheet-before-1'];
const kept: Readonly<Record<string, string>> = Object.fromEntries(keys.map((k) => [k, file(k)]));

/** By hand: 8 in = 203.2 mm, 13/16 in = 20.6375 mm. */
const read: Readonly<Record<string, number>> = {
  '8"': 203.2,
  '13/16 in': 20.6375,
  '22,2 mm': 22.2,
  '190': 190,
};
const sizesOf: SizesOf = (_own, texts) =>
  Object.fromEntries(Object.entries(texts).map(([k, text]) => [k, read[text] ?? Number.NaN]));

const from = (over: Readonly<Record<string, string | null>> = {}, sizes = sizesOf) =>
  readOld((key) => (key in over ? (over[key] ?? null) : (kept[key] ?? null)), sizes);

/** The kept list with one of its brakes changed. */
function changed(index: number, change: (brake: Record<string, unknown>) => unknown): string {
  const list = JSON.parse(kept['own-brakes-1'] ?? '') as Record<string, unknown>[];
  return JSON.stringify(list.map((b, i) => (i === index ? change(b) : b)));
}

describe('what was kept before there was a record', () => {
  it('brakes of one’s own: what was typed, and the sizes of what was sound', async () => {
    const { shelf, unread } = await from();
    expect(unread).toEqual([]);
    expect(shelf?.brakes.map((b) => [b.title, b.base.title, b.texts, b.sizes])).toEqual([
      [
        'Old trailer',
        'Quay van',
        { drumNew: '8"', bore: '13/16 in' },
        { drumNew: 203.2, bore: 20.6375 },
      ],
      // A largest drum in kilometres was no sound size: it is there still, but not on the bench.
      ['My brake 2', 'Bench brake', { bore: '22,2 mm', drumMax: '199 km' }, { bore: 22.2 }],
    ]);
    expect(shelf?.removed?.title).toBe('My brake 3');
    expect(v.parse(shelfSchema, shelf)).toEqual(shelf);
  });

  it('their names were numbers: each has one of its own now, the same whenever it is read', async () => {
    const names = async () => {
      const { shelf } = await from();
      return [...(shelf?.brakes ?? []), shelf?.removed].map((b) => b?.name);
    };
    const first = await names();
    expect(new Set(first).size).toBe(3);
    expect(await names()).toEqual(first);
  });

  it('the sheet, and the one before it', async () => {
    const { inspect } = await from();
    expect(inspect?.paper).toEqual({
      id: '',
      parts: { left: {}, right: {} },
      wheels: { left: { drumA: 'Ø 200.42 mm', leverOff: 'yes' }, right: {} },
      axle: {},
      head: { vehicle: 'Grey van' },
      limitsFrom: 'teaching',
      limits: { liningMin: '3 mm' },
      plain: 'in',
    });
    expect(inspect?.before?.wheels.right).toEqual({ leadToe: 'thick', boots: 'bad' });
    expect(inspect?.before?.axle).toEqual({ distance: '50 000' });
    expect(v.parse(inspectPart.schema, inspect)).toEqual(inspect);
  });

  it('nothing kept is nothing found, and nothing wrong', async () => {
    const none = Object.fromEntries(keys.map((k) => [k, null]));
    expect(await from(none)).toEqual({ shelf: null, inspect: null, unread: [] });
    // What is kept once a deleted brake was brought back, and a sheet before a blank one.
    const { shelf, inspect, unread } = await from({
      'own-removed-1': 'null',
      'sheet-before-1': 'null',
    });
    expect(unread).toEqual([]);
    expect(shelf?.removed).toBe(null);
    expect(inspect?.before).toBe(null);
  });

  it('a brake that cannot be read takes no other with it, and is told by its place', async () => {
    const text = changed(0, (b) => {
      const base = structuredClone(b['base']) as { cylinder: { bore: number } };
      base.cylinder.bore = -3;
      return { ...b, base };
    });
    const { shelf, unread } = await from({ 'own-brakes-1': text });
    expect(shelf?.brakes.map((b) => b.title)).toEqual(['My brake 2']);
    expect(unread).toEqual([
      {
        key: 'own-brakes-1',
        text,
        why: expect.stringMatching(
          /^brake 1\.base\.cylinder\.bore: found -3, allowed: more than 0/,
        ),
      },
    ]);
  });

  it.each([
    ['own-brakes-1', '{broken', /no JSON/],
    ['own-brakes-1', '{"a":1}', /found an object, allowed: a list of brakes/],
    ['own-brakes-1', changed(1, () => 7), /^brake 2: found a number, allowed: a brake$/],
    [
      'own-brakes-1',
      changed(0, (b) => ({ ...b, texts: { bore: 22, reach: '3', teeth: 'x'.repeat(201) } })),
      /brake 1\.texts\.bore: found a number.*brake 1\.texts\.reach: no such place.*brake 1\.texts\.teeth: found 201 characters, allowed: 200/,
    ],
    ['own-removed-1', '[]', /^the deleted brake: found a list/],
    ['sheet-1', '{broken', /no JSON/],
    ['sheet-1', '"sheet"', /^found a string, allowed: a sheet$/],
    ['sheet-1', '{"wheels":[]}', /^wheels: found a list/],
    [
      'sheet-1',
      '{"wheels":{"left":{"hub":"9","lip":"0.2"}},"plain":"ell","limitsFrom":"mine"}',
      /limitsFrom: found a string.*plain: found a string.*wheels\.left\.hub: no such place/,
    ],
    ['sheet-before-1', '3', /^found a number, allowed: a sheet$/],
  ])('%s, as it cannot be read, is told under its key (%#)', async (key, text, why) => {
    const { unread, shelf, inspect } = await from({ [key]: text });
    expect(unread).toEqual([{ key, text, why: expect.stringMatching(why) }]);
    // All else is there.
    expect(v.is(shelfSchema, shelf)).toBe(true);
    expect(v.is(inspectPart.schema, inspect)).toBe(true);
  });

  it('what can be read of a sheet is taken beside what cannot', async () => {
    const text = '{"wheels":{"left":{"hub":"9","lip":"0.2"}},"plain":"in"}';
    const { inspect } = await from({ 'sheet-1': text });
    expect(inspect?.paper.wheels.left).toEqual({ lip: '0.2' });
    expect(inspect?.paper.plain).toBe('in');
  });

  it('sizes that make no sound brake any more: the texts stay, and it is told', async () => {
    const { shelf, unread } = await from({}, () => null);
    expect(shelf?.brakes[0]?.texts).toEqual({ drumNew: '8"', bore: '13/16 in' });
    expect(shelf?.brakes[0]?.sizes).toEqual({});
    expect(unread.map((u) => u.key)).toEqual(['own-brakes-1', 'own-removed-1']);
  });
});
