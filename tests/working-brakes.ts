import runaboutScene from '../scenes/ferry-runabout.json';
import { createRig, freshState } from '../sim/index.ts';
import { type Built, mustRead, quay } from './brakes.ts';

/** The quay van with shoes that bend, and the runabout with shoes that slide: where a closed form ends. */

export function bendingQuay(): Built {
  const built = quay();
  return { ...built, rig: createRig(built.brake, { flexible: true }) };
}

export function slidingRunabout(): Built {
  const brake = mustRead(runaboutScene);
  return { brake, rig: createRig(brake), state: freshState(brake), area: brake.cylinder.area };
}
