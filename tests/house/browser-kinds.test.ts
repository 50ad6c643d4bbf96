import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * What a table says of each file of browser tests: it passes, all of it or but for what is Chromium's alone and why, all
 * of it is Chromium's alone, it wants what a machine may lack, it does not pass yet and where, or nobody has seen.
 */
const saidOf = (text: string): Map<string, string> =>
  new Map(
    [
      ...text.matchAll(
        /^\| ([\w-]+) \| (passes|passes but for .+, Chromium alone: .+|Chromium alone: .+|not without .+: .+|not yet: .+|not seen through yet) \|$/gm,
      ),
    ].map((m) => [m[1] as string, m[2] as string]),
  );

const files = readdirSync(join(root, 'tests/browser'))
  .filter((name) => name.endsWith('.test.ts'))
  .map((name) => name.replace('.test.ts', ''));

it('every file of browser tests stands in the table of other browsers, and no other', () => {
  const said = saidOf(readFileSync(join(root, 'tests/browser-kinds.md'), 'utf8'));
  expect([...said.keys()].sort()).toEqual(files.sort());
  expect([...said.values()].filter((s) => s === 'passes').length).toBeGreaterThan(2);
});

it('the table names each file that leaves tests to Chromium, and no other', () => {
  const said = saidOf(readFileSync(join(root, 'tests/browser-kinds.md'), 'utf8'));
  for (const file of files) {
    const text = readFileSync(join(root, 'tests/browser', `${file}.test.ts`), 'utf8');
    const leaves = text.includes('inChromiumAlone(') || text.includes('inChromiumAlone.');
    const row = said.get(file) ?? '';
    // Of a file that nobody has seen to its end, or that does not pass yet, nothing else is claimed.
    if (!/^not (seen through )?yet/.test(row))
      expect([file, row.startsWith('passes but for ')]).toEqual([file, leaves]);
  }
});

it('knows a row from a line', () => {
  expect([...saidOf('| a | passes |\n| b | so so |\ntext')]).toEqual([['a', 'passes']]);
});
