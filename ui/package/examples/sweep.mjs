// @ts-check
// Torque against lining friction at 40 bar, worked out in a worker; where a shoe locks, no force is told.
import { Worker } from 'node:worker_threads';

const ask = {
  scene: 'quay-van',
  id: 'shoes.lining.friction',
  keys: ['torque'],
  from: 0.3,
  to: 0.8,
  first: 51,
};
const worker = new Worker(new URL('sweep-worker.mjs', import.meta.url), { workerData: ask });
worker.on('message', (/** @type {import('takeup').VaryPoint[]} */ points) => {
  for (const { at, values, why } of points) {
    const friction = at[0]?.toFixed(3);
    console.log(`${friction}: ${why === 'sound' ? `${values[0]?.toFixed(1)} N·m` : why}`);
  }
});
