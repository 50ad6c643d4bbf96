import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';

/**
 * Rigid and bending shoes wear their linings to different shapes. A shoe that is pressed bends by some
 * hundredths of a millimetre along its arc, as much as it presses its lining in, and worn in at its usual
 * pressure it has taken that off the face; so its lining lies badly under a rigid shoe, and the other way round
 * (a tenth and more of the shoe factor). So a worn state belongs to one of them.
 */
export const wornUnder = (rig: Rig): BrakeState['wornBy'] =>
  rig.options.flexible === true ? 'bending' : undefined;

/** Does a state's wear suit shoes that bend, or rigid ones? New linings suit both, and so do depths that nobody drove. */
export const suitsShoes = (bending: boolean, { wear, wornBy }: BrakeState): boolean =>
  wornBy === 'neither' ||
  (wornBy === 'bending') === bending ||
  !(wear.front.some((w) => w > 0) || wear.rear.some((w) => w > 0));

/** Does a state's wear suit the rig's shoes? */
export const suits = (rig: Rig, state: BrakeState): boolean =>
  suitsShoes(rig.options.flexible === true, state);
