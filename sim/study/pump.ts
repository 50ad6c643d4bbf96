import { balance } from '../balance/balance.ts';
import type { Rig } from '../balance/rig.ts';
import type { PedalStack } from '../brake/pedal.ts';
import type { BrakeState } from '../brake/state.ts';
import { exp } from '../math/exp.ts';
import { pedalStack } from '../readings/pedal.ts';

/**
 * The pump test. After a release the return springs push the fluid back through the line, the master
 * piston is home at once and refills itself past its cup. Pressed again too soon, the next stroke finds
 * the wheel pistons still part of the way out, and the pedal stands higher.
 *
 * A simplification, named as one: the fluid returns as a first-order lag, so after a pause t a share
 * exp(−t/τ) of what closed the gaps is still out. What the circuit and air give comes back at once, so
 * pumping lifts a pedal that is long by its gaps, and not one that is springy (common practice).
 */
export interface Pumped {
  /** The first stroke, and one after a pause, mm at the pedal. */
  readonly first: PedalStack;
  readonly again: PedalStack;
  /** By what the pedal rose, mm. */
  readonly rise: number;
}

/** Share of what closed the gaps that is still out after a pause, s. */
export const stillOut = (pause: number, returnTime = RETURN_TIME): number =>
  exp(-pause / returnTime);

/** Time constant of the fluid's return, s: about half a second on a sound line (from memory). */
export const RETURN_TIME = 0.5;
/** Pause between two quick strokes, s. */
export const QUICK = 0.4;

/**
 * @param pressure of each stroke, MPa; @param pause between release and the next stroke, s
 * @param returnTime time constant, s; @param air in the circuit, mm³
 */
export function pumped(
  rig: Rig,
  state: BrakeState,
  pressure: number,
  pause = QUICK,
  returnTime = RETURN_TIME,
  air = 0,
): Pumped {
  const first = pedalStack(rig.brake, balance(rig, state, { pressure, turning: 0 }), air);
  const out = first.gaps * stillOut(pause, returnTime);
  const again = { ...first, gaps: first.gaps - out, total: first.total - out };
  return { first, again, rise: out };
}
