import { describe, expect, it } from 'vitest';
import { scenes, tryBatch } from '../changed-scenes.ts';
import { samples } from '../samples.ts';

/**
 * Scenes with sizes changed, swapped, left out and repeated: what is accepted can be built and gives numbers.
 * 50 000 of each, timed, are `npm run test:scenes`.
 */
const runs = samples('changedScenes');

describe('scenes with their sizes changed', () => {
  for (const name of Object.keys(scenes)) {
    it(`${name}: what is accepted is sound, and numbers`, () => {
      const { accepted } = tryBatch(name, 0, runs, false);
      // Some are accepted and some are not, else nothing was asked.
      expect(accepted).toBeGreaterThan(0.1 * runs);
      expect(accepted).toBeLessThan(0.9 * runs);
    });
  }
});
