import { describe, expect, it } from 'vitest';
import { createLife, createRig, freshState, KM } from '../../../sim/index.ts';
import { bandRows, lifeTable } from '../../../ui/away/data/collect.ts';
import {
  type Cell,
  csvOf,
  harmless,
  htmlOf,
  jsonOf,
  type Table,
  tsvOf,
} from '../../../ui/away/data/table.ts';
import { openOrigin, readOrigin } from '../../../ui/away/origin.ts';
import { toPlain } from '../../../ui/record/json.ts';
import { linkOf, sendable } from '../../../ui/record/link.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { quayVan } from '../stage/bench.ts';

const origin = {
  version: '0.1.0',
  scene: 'quay-van',
  link: 'https://bench.example/?station=wear#x"y',
};

/** Reads comma-separated values by the grammar of RFC 4180, section 2; lines of comments are left out. */
const readCsv = (text: string): string[][] =>
  readRecords(text.replace(/^\ufeff/, '').replace(/^(?:"?#[^\r\n]*\r\n)*/, ''));

function readRecords(body: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  for (let at = 0; at < body.length; ) {
    let cell = '';
    if (body[at] === '"') {
      for (at++; body[at] !== '"' || body[at + 1] === '"'; at++) {
        if (body[at] === '"') at++;
        cell += body[at];
      }
      at++;
    } else while (at < body.length && !',\r'.includes(body[at] as string)) cell += body[at++];
    row.push(cell);
    if (body[at] === ',') at++;
    else {
      expect(body.slice(at, at + 2)).toBe('\r\n');
      at += 2;
      rows.push(row);
      row = [];
    }
  }
  return rows;
}

const cells: readonly (readonly Cell[])[] = [
  ['plain', 0.1 + 0.2, null],
  ['with, comma', -1e-300, Number.NaN],
  ['"quoted"\nand broken', 123456789.12345679, 4.9e-324],
  ['=HYPERLINK("http://evil.example")', -4, 1],
  ['+1', 2, 3],
  ['-2 as text', 2, 3],
  ['@SUM(A1)', 2, 3],
];
const table: Table = {
  id: 'x',
  title: '=a brake, of "mine"',
  columns: [
    { name: 'Name', unit: '' },
    { name: 'Torque', unit: 'N·m' },
    { name: 'Heat', unit: '°C' },
  ],
  rows: cells,
};

describe('CSV', () => {
  it('reads back to the same texts and the same doubles, units in the header', () => {
    const [head, ...rows] = readCsv(csvOf(table, origin));
    expect(head).toEqual(['Name', 'Torque [N·m]', 'Heat [°C]']);
    expect(rows).toHaveLength(cells.length);
    rows.forEach((row, i) => {
      const [name, ...numbers] = cells[i] as readonly Cell[];
      expect(row[0]).toBe(harmless(name as string));
      numbers.forEach((n, k) => {
        const text = row[k + 1] as string;
        if (typeof n !== 'number' || Number.isNaN(n)) expect(text).toBe('');
        else expect(Object.is(Number(text), n)).toBe(true);
      });
    });
  });

  it('holds no cell that a spreadsheet takes for a formula; a negative number stays one', () => {
    const [, ...rows] = readCsv(csvOf(table, origin));
    for (const cell of rows.flat())
      if (/^[=+\-@\t\r]/.test(cell)) expect(Number.isFinite(Number(cell)), cell).toBe(true);
    expect(rows[3]?.[1]).toBe('-4');
    expect(csvOf(table, origin).split('\r\n')[0]).toBe('\ufeff"# \'=a brake, of ""mine"""');
  });

  it('keeps each of its comments in one cell of a spreadsheet', () => {
    const text = csvOf(table, origin).replace(/^\ufeff/, '');
    // By RFC 4180 alone, which has no comments.
    const lines = readRecords(text).slice(0, 2);
    expect(lines.map((cells) => cells.length)).toEqual([1, 1]);
    expect(lines[1]?.[0]).toContain('Takeup origin: {"version":"0.1.0","scene":"quay-van"');
  });
});

it('JSON reads back equal, with what is no number as null', () => {
  const read = JSON.parse(jsonOf(table, origin));
  expect(read.columns).toEqual(table.columns);
  expect(read.rows).toEqual(
    cells.map((row) => row.map((c) => (typeof c === 'number' && Number.isNaN(c) ? null : c))),
  );
});

it('the clipboard’s table has as many cells, as text and with its lines; no mark-up comes in by a name', () => {
  const evil = { ...table, rows: [['<img src=x onerror=alert(1)>\tx', 1, 2]] };
  const lines = tsvOf(evil).trimEnd().split('\n');
  expect(lines.map((l) => l.split('\t').length)).toEqual([3, 3]);
  const page = htmlOf(evil);
  expect(page).not.toContain('<img');
  expect(page.match(/<td>/g)).toHaveLength(3);
});

it('each file says where it comes from, and opens the very moment', async () => {
  const moment = plainMoment('wear', { kind: 'scene', name: 'farm-trailer' }, null);
  const changed = { ...moment, view: { ...moment.view, wheel: 'right' as const } };
  const from = { ...origin, link: `https://bench.example/${await linkOf(changed)}` };
  for (const text of [csvOf(table, from), jsonOf(table, from)]) {
    // In JSON the mark stands inside a text: its quotes are written with a stroke before them.
    expect(readOrigin(text)).toEqual(from);
    const read = await openOrigin(readOrigin(text) as typeof from);
    expect(read.ok && toPlain(read.moment)).toEqual(toPlain(sendable(changed)));
  }
});

it('a life’s table has a row for each of the run’s, in the units that it tells', () => {
  const { brake } = quayVan();
  const life = createLife(createRig(brake), freshState(brake), brake.duties[0], {
    distance: 2000 * KM,
  });
  while (!life.done) life.advance(500 * KM);
  const told = lifeTable('x', life.rows);
  expect(told.rows).toHaveLength(life.rows.length);
  expect(told.rows.length).toBeGreaterThan(2);
  const column = (name: string) => told.columns.findIndex((c) => c.name === name);
  const last = told.rows.at(-1) as readonly Cell[];
  // 2 000 km of duty from new, as it was asked for; 4.5 mm of lining when new, in the scene.
  expect(last[column('Distance')]).toBeCloseTo(2000, 6);
  expect(told.rows[0]?.[column('Lining left, front')]).toBeCloseTo(4.5, 9);
  expect(last[column('Lining left, front')] as number).toBeLessThan(4.5);
  expect(told.columns[column('Drag, released')]?.unit).toBe('N·m');
});

it('rows of a band: its middle in the readings’ columns, its ends after them, and whether all could be told', () => {
  const band = (low: number, middle: number, high: number, told = 1) => ({
    low,
    middle,
    high,
    told,
  });
  const rows = bandRows([
    { x: 0.3, bands: [band(1, 2, 3), band(10, 20, 30)] },
    { x: 0.5, bands: [band(4, 5, 6, 0.5), band(Number.NaN, Number.NaN, Number.NaN, 0)] },
  ]);
  expect(rows).toEqual([
    ['Band, 95 of 100', 0.3, 2, 20, 1, 3, 10, 30, 'sound'],
    ['Band, 95 of 100', 0.5, 5, null, 4, 6, null, null, 'not all of them told'],
  ]);
});
