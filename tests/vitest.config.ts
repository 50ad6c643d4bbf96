import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { SLOW } from './browser/slow.ts';
import { LongestFirst } from './run/longest-first.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

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
          // None: how long a sum takes says nothing of whether it is right.
          testTimeout: 0,
          hookTimeout: 0,
        },
      },
      {
        root,
        test: {
          name: 'browser',
          // A day of class has a command of its own, test:day.
          include: [
            process.env['TAKEUP_HOURS'] ? 'tests/browser/*.day.ts' : 'tests/browser/**/*.test.ts',
          ],
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
