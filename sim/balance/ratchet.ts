import { kindLaws } from '../brake/kinds.ts';
import { type BrakeState, type Condition, strutLength } from '../brake/state.ts';
import type { Adjuster, Brake } from '../brake/types.ts';

/** What the ratchet asks of a state. */
export type AtTooth = Pick<BrakeState, 'tooth' | 'temperature' | 'condition'>;

/** What holds the strut where it is. */
export type StrutHeld = Pick<Condition, 'strutLoose'>;

/**
 * Lost motion as it is, mm. Without the strut's spring (`strutSpring` of kinds.ts) a lever is never pulled up its
 * tooth, which is a lost motion without end, and a wedge has none.
 */
export function playNow({ adjuster }: Brake, { strutLoose }: StrutHeld): number {
  const { strutSpring } = kindLaws[adjuster.kind];
  if (!strutLoose || strutSpring === null) return adjuster.lostMotion;
  return strutSpring === 'holds it back' ? Number.POSITIVE_INFINITY : 0;
}

/**
 * How far the strut has left its rear seat by the front web's doing, mm; only where its spring is off is it asked:
 * drawn by a lever that cannot climb, or, on a wedge, left behind, and so not at all.
 */
export function strutTaken(brake: Brake, strut: number, apart: number): number {
  const { strutSpring } = kindLaws[brake.adjuster.kind];
  return strutSpring === 'holds it back'
    ? Math.max(0, apart - strut - brake.adjuster.lostMotion)
    : 0;
}

/**
 * Seats apart at which the lever drops into the tooth after a given one, mm: the strut as it is, the
 * lost motion, a whole tooth, and by how much a weak spring is late. Infinity past the last tooth, and where the
 * strut goes along with the lever.
 */
export function seatsToStep(
  brake: Brake,
  condition: Pick<Condition, 'leverSpring'> & StrutHeld,
  tooth: number,
): number {
  if (tooth >= brake.adjuster.teeth) return Number.POSITIVE_INFINITY;
  const here = strutLength(brake, tooth);
  const step = strutLength(brake, tooth + 1) - here;
  const late = (1 - condition.leverSpring) * step;
  return here + playNow(brake, condition) + step + late;
}

/** How far the lever is up its tooth, mm, by strut and seats apart; below zero it has play. */
export const climbedBy = (brake: Brake, held: StrutHeld, strut: number, apart: number): number =>
  apart - strut - playNow(brake, held);

/** Play of the strut at which the lever drops into its next tooth, mm; NaN when it never does. */
export function playToStep(brake: Brake, { tooth, condition }: AtTooth): number {
  if (tooth >= brake.adjuster.teeth || condition.leverSpring <= 0) return Number.NaN;
  const play = seatsToStep(brake, condition, tooth) - strutLength(brake, tooth);
  return Number.isFinite(play) ? play : Number.NaN;
}

/**
 * The ratchet law. While the seats are closer than strut + lost motion nothing happens; beyond it
 * the slot's edge pulls the lever up its tooth, and a whole tooth further it drops into the next.
 *
 * A weak spring pulls the lever in only when the tooth is passed by more, in proportion to what the
 * spring lacks, and a broken one never (from memory). Fitted on the wrong side, a passed step does
 * nothing or winds the strut back, one step an application.
 *
 * @param separation greatest distance of the strut seats in this application, mm
 * @param taken steps that this application has taken already, without regard to their sense
 * @param by what moved the seats: some adjusters step on the parking pull alone
 * @returns how many teeth drop in; negative when it winds back
 */
export function teethPassed(
  brake: Brake,
  state: AtTooth,
  separation: number,
  taken = 0,
  by: Adjuster['drivenBy'] = 'application',
): number {
  const { adjuster } = brake;
  const { condition, tooth } = state;
  if (by !== adjuster.drivenBy || state.temperature > adjuster.hotLock) return 0;
  if (condition.adjusterSeized || condition.leverSpring <= 0) return 0;
  const back = condition.adjusterStep < 0;
  if (condition.adjusterStep === 0 || (back && (taken > 0 || tooth === 0))) return 0;
  const most = adjuster.perApplication - taken;
  let passed = 0;
  while (passed < most && separation >= seatsToStep(brake, condition, tooth + passed)) {
    if (back) return -1;
    passed++;
  }
  return passed;
}
