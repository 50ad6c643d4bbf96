// @ts-check
import { parentPort, workerData } from 'node:worker_threads';
import { BAR, curveOf, startState, Vary } from 'takeup';
import { sceneOf } from './scene.mjs';

const { scene, id, keys, from, to, first } = workerData;
const read = sceneOf(scene);
const vary = new Vary({
  scene: read.scene,
  state: startState(read.brake),
  press: { pressure: 40 * BAR, turning: 1, cable: 0 },
  bending: false,
  steps: false,
});
// Evenly spaced, without the finer points that a curve to be looked at gets besides.
const points = curveOf(vary, { id, keys, from, to, first, whole: false, most: first });
parentPort?.postMessage(points);
