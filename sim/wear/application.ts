import { type Guess, type Press, type Solved, solveBalance } from '../balance/press.ts';
import { teethPassed } from '../balance/ratchet.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';

/** What a press leaves, and the press itself. */
export interface ApplicationResult {
  readonly state: BrakeState;
  /** Teeth that dropped in. */
  readonly clicked: number;
  readonly solved: Solved;
}

/** One press and release: the ratchet is judged at the press; nothing wears here. */
export function application(
  rig: Rig,
  state: BrakeState,
  press: Press,
  guess?: Guess,
): ApplicationResult {
  const solved = solveBalance(rig, state, press, guess);
  const clicked = teethPassed(rig.brake, state, solved.work.strut.length);
  return {
    state: clicked !== 0 ? { ...state, tooth: state.tooth + clicked } : state,
    clicked,
    solved,
  };
}
