import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { atLength, everyday } from '../run/everyday.ts';

const tests = fileURLToPath(new URL('..', import.meta.url));

it('what runs for every change is there, and is a part of all', () => {
  const files = [
    ...everyday.map((file) => `browser/${file}.test.ts`),
    ...atLength.map((file) => `${file}.test.ts`),
  ];
  expect(files.filter((file) => !existsSync(join(tests, file)))).toEqual([]);
  expect(new Set(files).size).toBe(files.length);
  const inBrowser = readdirSync(join(tests, 'browser')).filter((f) => f.endsWith('.test.ts'));
  expect(everyday.length).toBeGreaterThan(9);
  expect(everyday.length).toBeLessThan(inBrowser.length);
});
