import {
  type BrakeState,
  createRig,
  type Rig,
  readScene,
  standingState,
} from '../../../sim/index.ts';
import { brakes } from '../../scenes.ts';

/** The van as it is called in the list of brakes. */
export const VAN_TITLE = brakes[0].title;

/** The van that faults are shown on, and the states that it starts from: made once, when first asked for. */
let rig: Rig | null = null;
const states = new Map<string, BrakeState>();

export function vanRig(): Rig {
  if (!rig) {
    const read = readScene(brakes[0]);
    if (!read.ok) throw new Error('The first brake cannot be read');
    rig = createRig(read.brake);
  }
  return rig;
}

export function vanState(name: string): BrakeState {
  const known = states.get(name);
  if (known) return known;
  const made = standingState(vanRig(), name);
  states.set(name, made);
  return made;
}
