import { describe, expect, it } from 'vitest';
import type { Keeper } from '../../../ui/record/store.ts';
import {
  dateOf,
  dayOf,
  type KeptSheet,
  readDay,
  SheetBook,
  sameVehicle,
} from '../../../ui/stations/inspect/book.ts';
import { BLANK } from '../../../ui/stations/inspect/paper.ts';

function store(start: string | null = null, full = false): Keeper & { text: string | null } {
  const at = {
    text: start,
    get: () => at.text,
    set: (_key: string, text: string) => {
      if (full) throw new Error('full');
      at.text = text;
    },
  };
  return at;
}
const sheet = (id: string, km: number, over: Partial<KeptSheet> = {}): KeptSheet => ({
  id,
  vehicle: 'Van 1',
  date: '2026-11-28',
  km,
  paper: {
    ...BLANK,
    id,
    head: { vehicle: 'Van 1' },
    wheels: { left: { leadThin: '3,1' }, right: {} },
  },
  ...over,
});
const ids = (b: SheetBook) => b.book.sheets.map((s) => s.id);

describe('kept sheets', () => {
  it('are kept word for word, and the same one over its earlier version', () => {
    const book = new SheetBook(store());
    expect(book.put(sheet('a', 61200))).toBe('');
    expect(book.put(sheet('b', 84600))).toBe('');
    expect(book.put(sheet('a', 61300))).toBe('');
    expect(book.book.sheets).toEqual([sheet('a', 61300), sheet('b', 84600)]);
  });

  it('two windows lose nothing of each other', () => {
    const at = store();
    const [here, there] = [new SheetBook(at), new SheetBook(at)];
    expect(here.book.sheets).toEqual([]);
    there.put(sheet('a', 1));
    here.put(sheet('b', 2));
    expect(ids(there)).toEqual(['a', 'b']);
  });

  it('one taken out can be put back', () => {
    const book = new SheetBook(store());
    book.put(sheet('a', 1));
    book.put(sheet('b', 2));
    book.takeOut('a');
    expect(ids(book)).toEqual(['b']);
    expect(book.book.removed?.id).toBe('a');
    book.putBack();
    expect(ids(book)).toEqual(['b', 'a']);
    expect(book.takeOut('none')).toBe('');
  });

  it('what cannot be read stays in the store and in the file, and is counted', () => {
    const bad = { id: 'x', km: 'far' };
    const at = store(JSON.stringify({ sheets: [sheet('a', 1), bad], removed: null }));
    const book = new SheetBook(at);
    expect(ids(book)).toEqual(['a']);
    expect(book.book.unread).toEqual([bad]);
    book.put(sheet('b', 2));
    expect(new SheetBook(at).book.unread).toEqual([bad]);
    expect(JSON.parse(book.file).sheets).toContainEqual(bad);
    const torn = new SheetBook(store('{ "sheets": ['));
    expect(torn.book.unread).toHaveLength(1);
    torn.put(sheet('a', 1));
    expect(torn.book.unread).toEqual(['{ "sheets": [']);
  });

  it('a browser without room says so, and nothing is lost', () => {
    const book = new SheetBook(store(null, true));
    expect(book.put(sheet('a', 1))).toMatch(/no room/);
    expect(book.take('f.json', new SheetBook(store()).file).said).toMatch(/0 sheets/);
  });
});

describe('a file of sheets', () => {
  const full = new SheetBook(store());
  full.put(sheet('a', 61200));
  full.put(sheet('b', 84600));

  it('comes into an empty browser whole, and a second time changes nothing', () => {
    const book = new SheetBook(store());
    expect(book.take('f.json', full.file).said).toBe('f.json: 2 sheets taken in.');
    expect(book.book.sheets).toEqual(full.book.sheets);
    expect(book.take('f.json', full.file).said).toBe('f.json: 0 sheets taken in, 2 here already.');
    expect(ids(book)).toEqual(['a', 'b']);
  });

  it('one that was changed since comes beside the one that is here', () => {
    const book = new SheetBook(store());
    book.put(sheet('a', 61999));
    book.take('f.json', full.file);
    expect(book.book.sheets.map((s) => [s.id, s.km])).toEqual([
      ['a', 61999],
      ['a-2', 61200],
      ['b', 84600],
    ]);
  });

  it('a bad one is told place by place, and the others come', () => {
    const data = JSON.parse(full.file);
    data.sheets[0].km = 'far';
    data.sheets[0].paper.plain = 'furlong';
    const book = new SheetBook(store());
    const { said, findings } = book.take('f.json', JSON.stringify(data));
    expect(said).toMatch(/1 sheet taken in.*told below/);
    expect(findings.join('\n')).toMatch(/sheets\.0\.km: found .*far.*allowed/);
    expect(findings.join('\n')).toMatch(/sheets\.0\.paper\.plain: found .*furlong.*mm/);
    expect(ids(book)).toEqual(['b']);
  });

  it('another kind of file, version or shape is told and changes nothing', () => {
    const book = new SheetBook(store());
    expect(book.take('f', '{"format":"takeup-scene"}').said).toMatch(/It is a brake/);
    expect(book.take('f', 'hello').said).toMatch(/no file of sheets/);
    expect(book.take('f', '{"format":"takeup-sheets","version":9,"sheets":[]}').findings).toEqual([
      'version: found 9; allowed: 1',
    ]);
    expect(book.take('f', '{"format":"takeup-sheets","version":1}').findings[0]).toMatch(/a list/);
    expect(ids(book)).toEqual([]);
  });
});

describe('days and vehicles as people write them', () => {
  it('a day that can be read in one way', () => {
    expect(readDay('2026-11-28')).toBe('2026-11-28');
    expect(readDay(' 28.11.2026 ')).toBe('2026-11-28');
    expect(readDay('1. 2. 2026')).toBe('2026-02-01');
    expect(readDay('2024-02-29')).toBe('2024-02-29');
    for (const bad of ['03/04/2026', '30.2.2026', '2026-13-01', 'today', '']) {
      expect(readDay(bad)).toBeNull();
    }
  });
  it('days count from 1970', () => {
    // 2000-01-01 is day 10 957: thirty years with seven leap days.
    expect(dayOf('2000-01-01')).toBe(30 * 365 + 7);
    expect(dateOf(10957)).toBe('2000-01-01');
  });
  it('a plate with or without spaces', () => {
    expect(sameVehicle('AB 12 cde', 'ab12CDE')).toBe(true);
    expect(sameVehicle('Van 1', 'Van 2')).toBe(false);
  });
});
