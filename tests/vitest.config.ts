import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { SLOW } from './browser/slow.ts';
import { atLength, everyday } from './run/everyday.ts';
import { LongestFirst } from './run/longest-first.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Set by npm test: what is run for every change (run/everyday.ts). */
const few = process.env['TAKEUP_EVERYDAY'] === '1';

/** A day of class has a command of its own, test:day. */
const inBrowser = process.env['TAKEUP_HOURS']
  ? ['tests/browser/*.day.ts']
  : few
    ? everyday.map((file) => `tests/browser/${file}.test.ts`)
    : ['tests/browser/**/*.test.ts'];

/**
 * What a test file changes for all modules: the language that is spoken, the module cache, what is global. Such
 * a file has them to itself; the others share what they load, which is half of a run's processor time.
 */
const APART =
  /\bspeak\(|\bmadeIn\(|\bvi\.(?:mock|doMock|stubGlobal|stubEnv|resetModules|useFakeTimers|spyOn)\b|\bglobalThis\b|\bprocess\.(?:env|chdir)\b/;
const apart: string[] = [];
for (const folder of ['unit', 'reference', 'house']) {
  for (const name of readdirSync(join(root, 'tests', folder), {
    recursive: true,
    encoding: 'utf8',
  })) {
    const file = `tests/${folder}/${name.replaceAll('\\', '/')}`;
    if (file.endsWith('.test.ts') && APART.test(readFileSync(join(root, file), 'utf8')))
      apart.push(file);
  }
}
const left = few ? atLength.map((file) => `tests/${file}.test.ts`) : [];
// No time limit: how long a sum takes says nothing of whether it is right.
const node = { testTimeout: 0, hookTimeout: 0 };

export default defineConfig({
  test: {
    // Left alone it would leave one core idle, which on two is half of them.
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        root,
        test: {
          name: 'node',
          include: ['tests/{unit,reference,house}/**/*.test.ts'],
          exclude: [...left, ...apart],
          isolate: false,
          ...node,
        },
      },
      { root, test: { name: 'node-apart', include: apart, exclude: left, ...node } },
      {
        root,
        test: {
          name: 'browser',
          include: inBrowser,
          // Only for what waits for ever: how slow a page is says nothing of whether it is right.
          testTimeout: 1800000 * SLOW,
          hookTimeout: 600000 * SLOW,
          // A busy machine draws a frame or two a second, and WebGL done in software takes its time.
          expect: { poll: { timeout: 30000 * SLOW } },
          // Two at a time: a page waits for its frames about as long as it works. More would starve them.
          maxWorkers: 2,
          // The two projects differ in that, so they run one after the other.
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
