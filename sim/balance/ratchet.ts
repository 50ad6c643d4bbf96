import type { BrakeState } from '../brake/state.ts';
import { strutLength } from '../brake/state.ts';
import type { Brake } from '../brake/types.ts';

/**
 * The ratchet law. While the seats are closer than strut + lost motion nothing happens; beyond it
 * the slot's edge pulls the lever up its tooth, and a whole tooth further it drops into the next.
 *
 * @param separation greatest distance of the strut seats in this application, mm
 * @returns how many teeth drop in
 */
export function teethPassed(brake: Brake, state: BrakeState, separation: number): number {
  const { adjuster } = brake;
  if (state.temperature > adjuster.hotLock || state.condition.adjusterSeized) return 0;
  let passed = 0;
  while (passed < adjuster.perApplication && state.tooth + passed < adjuster.teeth) {
    const here = strutLength(brake, state.tooth + passed);
    const step = strutLength(brake, state.tooth + passed + 1) - here;
    if (separation < here + adjuster.lostMotion + step) break;
    passed++;
  }
  return passed;
}
