import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What a table says of each file of browser tests: it passes, why it is Chromium's alone, or that nobody has seen. */
const saidOf = (text: string): Map<string, string> =>
  new Map(
    [
      ...text.matchAll(/^\| ([\w-]+) \| (passes|Chromium alone: .+|not seen through yet) \|$/gm),
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

it('knows a row from a line', () => {
  expect([...saidOf('| a | passes |\n| b | so so |\ntext')]).toEqual([['a', 'passes']]);
});
