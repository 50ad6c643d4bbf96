import fc from 'fast-check';
import bench from '../scenes/bench-brake.json';
import trailer from '../scenes/farm-trailer.json';
import runabout from '../scenes/ferry-runabout.json';
import quay from '../scenes/quay-van.json';
import { edits, type Json, mutated } from './mutate.ts';
import { trial } from './scene-trial.ts';

/** As many under one seed. */
export const BATCH = 1000;
const SEED = 20261128;
/** Most processor time of one press and of 3 000 km, ms. */
export const PRESS = 1000;
export const ROAD = 5000;

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
export const scenes = { quay, bench, trailer, runabout, upstream } as unknown as Readonly<
  Record<string, Json>
>;

/** What came of the changed scenes of a batch: how many were accepted, and the slowest, ms of a processor. */
export interface Batch {
  readonly accepted: number;
  readonly press: number;
  readonly road: number;
}

/**
 * Tries a batch of a scene with its sizes changed, swapped, left out and repeated. Throws where one that is
 * accepted is unsound or gives what is no number; with `timed` also where one takes too long.
 */
export function tryBatch(name: string, batch: number, numRuns: number, timed: boolean): Batch {
  const scene = scenes[name];
  if (!scene) throw new Error(`scene: found ${name}; allowed: ${Object.keys(scenes).join(', ')}`);
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
    if (tried.wrong.length > 0) throw new Error(tried.wrong.join('\n'));
    if (timed && tried.press > PRESS) throw new Error(`one press took ${tried.press} ms`);
    if (timed && tried.road > ROAD) throw new Error(`3 000 km took ${tried.road} ms`);
  });
  // Told as it was found: a smaller one would be looked for through thousands of tries.
  const how = { seed: SEED + batch, numRuns, endOnFailure: true, plugins: [fc.unbiased()] };
  fc.assert(property, how);
  return { accepted, press, road };
}
