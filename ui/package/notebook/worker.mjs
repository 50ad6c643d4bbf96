// @ts-check
import { BAR, curveOf, readScene, startState, Vary } from 'takeup';

self.onmessage = ({ data: { scene, from, to } }) => {
  const read = readScene(scene);
  if (!read.ok) throw new Error('no brake');
  const vary = new Vary({
    scene: read.scene,
    state: startState(read.brake),
    press: { pressure: 40 * BAR, turning: 1, cable: 0 },
    bending: false,
    steps: false,
  });
  const id = 'shoes.lining.friction';
  self.postMessage(curveOf(vary, { id, from, to, whole: false, keys: ['torque'], most: 60 }));
};
