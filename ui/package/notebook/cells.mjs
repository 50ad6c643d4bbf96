// @ts-check
// The cells, in their order: each is shown as it stands here, and what it gives is shown below it.
import {
  BAR,
  balance,
  createLife,
  createRig,
  freshState,
  KM,
  readings,
  readScene,
  rest,
  startState,
  tellFinding,
} from 'takeup';
import { curve, table } from './show.mjs';

/**
 * What cells hand on to those after them.
 *
 * @typedef {object} Bench
 * @property {import('takeup').Scene} scene
 * @property {import('takeup').Brake} brake
 * @property {import('takeup').Rig} rig
 */

/** @typedef {(name: string) => number} Field a number typed in the cell */

/** @param {Bench} bench */
async function scene(bench) {
  const file = await (await fetch('../scenes/quay-van.json')).json();
  const read = readScene(file);
  if (!read.ok) throw new Error(read.findings.map(tellFinding).join('\n'));
  bench.scene = read.scene;
  bench.brake = read.brake;
  bench.rig = createRig(read.brake);
  return table([
    ['Brake', bench.brake.title],
    ['Drum', `${(2 * bench.brake.drum.radiusNew).toFixed(0)} mm`],
    ['Adjuster', bench.brake.adjuster.kind],
  ]);
}

/** @param {Bench} bench @param {Field} field */
async function press({ brake, rig }, field) {
  const state = startState(brake);
  const instant = balance(rig, state, { pressure: field('bar') * BAR, turning: 1 });
  const list = readings(brake, state, instant, rest(rig, state));
  const shown = ['brakeFactor', 'shoeFactorLeading', 'shoeFactorTrailing', 'torque', 'peakFront'];
  return table(
    list
      .filter((r) => shown.includes(r.key))
      .map((r) => [r.name, `${r.value.toFixed(r.digits)} ${r.unit}`]),
  );
}

/** @param {Bench} bench */
async function life({ brake, rig }) {
  const run = createLife(rig, freshState(brake), brake.duties[0], { toNextClick: true });
  while (!run.done) run.advance(500 * KM);
  return table([
    ['Driven', `${(run.distance / KM).toFixed(0)} km`],
    ['Presses', run.state().applications.toFixed(0)],
    ['Tooth', String(run.state().tooth)],
  ]);
}

/** @param {Bench} bench @param {Field} field */
async function sweep({ scene }, field) {
  const worker = new Worker('worker.mjs', { type: 'module' });
  /** @type {import('takeup').VaryPoint[]} */
  const points = await new Promise((done, failed) => {
    worker.onmessage = ({ data }) => done(data);
    worker.onerror = ({ message }) => failed(new Error(message));
    worker.postMessage({ scene, from: field('from'), to: field('to') });
  });
  worker.terminate();
  const told = points.flatMap(({ at: [x = 0], values: [y = 0], why }) =>
    why === 'sound' ? [/** @type {[number, number]} */ ([x, y])] : [],
  );
  return curve(told, 'Lining friction', 'Torque, N·m');
}

export const cells = { scene, press, life, sweep };
