// @ts-check
// One press: what a gauge would show at 40 bar, the drum turning forward.
import { BAR, balance, createRig, readings, rest, startState } from 'takeup';
import { sceneOf } from './scene.mjs';

const { brake } = sceneOf('quay-van');
const rig = createRig(brake);
const state = startState(brake);
const instant = balance(rig, state, { pressure: 40 * BAR, turning: 1 });
for (const r of readings(brake, state, instant, rest(rig, state))) {
  if (Number.isFinite(r.value)) console.log(`${r.key}: ${r.value.toFixed(r.digits)} ${r.unit}`);
}
