// @ts-check
// A life from new to the first click of the adjuster, by the scene's first duty.
import { createLife, createRig, freshState, KM } from 'takeup';
import { sceneOf } from './scene.mjs';

const { brake } = sceneOf('quay-van');
const life = createLife(createRig(brake), freshState(brake), brake.duties[0], {
  toNextClick: true,
});
// Piece by piece, so that whoever waits can be told, or can give up; the outcome is the same.
while (!life.done) life.advance(500 * KM);
const click = life.events.find(({ kind }) => kind === 'click');
console.log(`ended by: ${life.end}`);
console.log(`first click: ${((click?.distance ?? Number.NaN) / KM).toFixed(0)} km`);
console.log(`tooth: ${life.state().tooth}`);
