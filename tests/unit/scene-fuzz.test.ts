import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import bench from '../../scenes/bench-brake.json';
import trailer from '../../scenes/farm-trailer.json';
import runabout from '../../scenes/ferry-runabout.json';
import quay from '../../scenes/quay-van.json';
import { edits, type Json, mutated } from '../mutate.ts';
import { long, samples } from '../samples.ts';
import { trial } from '../scene-trial.ts';

/**
 * Scenes with sizes changed, swapped, left out and repeated: what is accepted can be built, gives numbers,
 * and, on the long run, is worked out while somebody waits.
 */
const runs = samples('changedScenes');
/** As many under one seed. */
const BATCH = 1000;
const seed = 20261128;
/** Most processor time, ms. */
const PRESS = 1000;
const ROAD = 5000;

/** The quay van with all that may stand between foot and wheel, and wheels that start worn and unlike. */
const upstream = {
  ...quay,
  start: { tooth: 1, wear: { front: { toe: 1.5, middle: 1.2, heel: 0.6 }, rear: 0.4 } },
  otherWheel: {
    tooth: 2,
    drumDiameter: 200.2,
    wear: { front: 0.8, rear: { toe: 0.9, heel: 0.5 } },
  },
  hydraulics: {
    ...quay.hydraulics,
    masterStroke: 34,
    booster: { gain: 4, knee: 250, play: 0.5 },
    rearValve: { kind: 'load', kneeEmpty: 20, kneeLaden: 50, load: 0.3, slope: 0.3 },
    circuits: { split: 'axles', give: 30, stroke: 14, failed: 'other' },
    residualPressure: 0.8,
    cupRollBack: 0.05,
  },
};
const scenes = { quay, bench, trailer, runabout, upstream } as unknown as Readonly<
  Record<string, Json>
>;

describe('scenes with their sizes changed', () => {
  for (const [name, scene] of Object.entries(scenes)) {
    it(`${name}: what is accepted is sound, and numbers`, () => {
      const others = Object.values(scenes);
      let accepted = 0;
      let press = 0;
      let road = 0;
      const property = fc.property(edits, (changes) => {
        const tried = trial(mutated(scene, others, changes));
        if (!tried) return;
        accepted++;
        press = Math.max(press, tried.press);
        road = Math.max(road, tried.road);
        expect(tried.wrong).toEqual([]);
        if (!long) return;
        expect(tried.press).toBeLessThan(PRESS);
        expect(tried.road).toBeLessThan(ROAD);
      });
      for (let done = 0; done < runs; done += BATCH) {
        const numRuns = Math.min(BATCH, runs - done);
        fc.assert(property, {
          seed: seed + done / BATCH,
          numRuns,
          plugins: [fc.unbiased()],
        });
      }
      if (long) {
        console.log(
          `${name}: ${accepted} of ${runs} accepted; slowest press ${press.toFixed(0)} ms, 3 000 km ${road.toFixed(0)} ms`,
        );
      }
      // Some are accepted and some are not, else nothing was asked.
      expect(accepted).toBeGreaterThan(0.1 * runs);
      expect(accepted).toBeLessThan(0.9 * runs);
    });
  }
});
