import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const FOLDER = 'tests/browser';

interface Row {
  readonly fault: string;
  readonly sees: string;
  readonly file: string;
  readonly test: string;
}

/** The rows of a table of faults: three cells, the last one `file: name of its test`. */
function rowsOf(text: string): Row[] {
  const lines = text.split('\n').filter((line) => line.startsWith('| '));
  return lines.slice(1).map((line) => {
    const [fault = '', sees = '', where = ''] = line
      .slice(1, -1)
      .split(' | ')
      .map((cell) => cell.trim());
    const [, file = '', test = ''] = /^([\w-]+): (.*)$/.exec(where) ?? [];
    return { fault, sees, file, test };
  });
}

/** Names of the tests in a file's text: the first string that `it`, also of many cases or in Chromium alone, is called with. */
const testsIn = (text: string): string[] =>
  [
    ...text.matchAll(
      /^\s*(?:(?:it|inChromiumAlone)(?:\.each\([\s\S]*?\n?\))?)\(\s*'((?:[^'\\]|\\.)*)'/gm,
    ),
  ].map((m) => (m[1] as string).replaceAll("\\'", "'"));

const files = new Map(
  readdirSync(join(root, FOLDER))
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => [
      name.replace('.test.ts', ''),
      testsIn(readFileSync(join(root, FOLDER, name), 'utf8')),
    ]),
);

const missing = (rows: readonly Row[]): string[] =>
  rows
    .filter((r) => r.fault === '' || r.sees === '' || !files.get(r.file)?.includes(r.test))
    .map((r) => `${r.fault}: ${r.file}: ${r.test}`);

const table = readFileSync(join(root, 'tests/faults-put-in.md'), 'utf8');

it('each fault of the table is put in by a test that is there', () => {
  const rows = rowsOf(table);
  expect(rows.length).toBeGreaterThan(25);
  expect(missing(rows)).toEqual([]);
});

it('each test of a fault stands in the table', () => {
  const named = rowsOf(table).filter((r) => r.file === 'faults-put-in');
  expect(named.map((r) => r.test).sort()).toEqual([...(files.get('faults-put-in') ?? [])].sort());
});

it('finds a row whose test is not there', () => {
  const planted = '| fault | sees | test |\n|---|---|---|\n| x | y | drawing: no such test |';
  expect(missing(rowsOf(planted))).toEqual(['x: drawing: no such test']);
  expect(testsIn("it('a', () => {});\nit.each([1])(\n  'b %s',\n  () => {});")).toEqual([
    'a',
    'b %s',
  ]);
});
