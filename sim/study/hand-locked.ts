import { instantOf } from '../balance/build.ts';
import { lockedShoe } from '../balance/lock.ts';
import { solveBalance } from '../balance/press.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { type CableSet, cableAt, hookTravel, spend } from './hand-lever.ts';

/**
 * The parked brake with its hand lever locked in the ratchet, so that length is kept and not force.
 *
 * Slack + F/k + h(F, T, roll) = X, the same before and after. F is the cable pull, k the cable's
 * stiffness, h the hook's travel, which depends on the pull, on the drum's temperature (a hot drum
 * is larger, so the shoes go farther) and on the way the drum tries to roll (its drag turns the shoes
 * a little on). From one standing to another: dF/k + dh = 0, and where h grows by Δh at the same
 * pull, with the brake giving h' = ∂h/∂F, the pull falls by ΔF = Δh / (1/k + h') (linearised; the
 * whole equation is solved here, no small change assumed). (Two springs in line, derived here.)
 *
 * What follows: as the drum's drag takes the hook along, the slip torque is below that at a constant
 * pull. A drum that cools shrinks onto the shoes and pushes the lever back, against a cable that
 * cannot follow: the pull rises. And on a hot drum the same notch gives less pull.
 */
export interface LockedHand {
  /** Cable taken up, mm: what the locked hand lever keeps. */
  readonly taken: number;
  /** Cable pull as the vehicle stands without rolling, N. */
  readonly standing: number;
  /** Cable pull and torque (N·mm a wheel) as the drum slips, rolling forward and backward. */
  readonly forward: { readonly cable: number; readonly torque: number };
  readonly backward: { readonly cable: number; readonly torque: number };
  /** Strut force as it stands, N. */
  readonly strutForce: number;
  /** A shoe locks by itself: it holds whatever the cable does. */
  readonly locked: boolean;
}

/** @param taken cable taken up by the locked hand lever, mm */
export function handLocked(
  rig: Rig,
  state: BrakeState,
  taken: number,
  set: CableSet = {},
): LockedHand {
  const slip = (turning: -1 | 1) => {
    const cable = cableAt(rig, state, taken, set, turning);
    const press = { pressure: 0, turning, cable };
    const i = instantOf(solveBalance(rig, state, press), press);
    const torque = Math.abs(i.torqueOnDrum);
    return { cable, torque };
  };
  const standing = cableAt(rig, state, taken, set);
  const press = { pressure: 0, turning: 0, cable: standing } as const;
  return {
    taken,
    standing,
    forward: slip(1),
    backward: slip(-1),
    strutForce: instantOf(solveBalance(rig, state, press), press).strutForce,
    locked: lockedShoe(rig, state, 1) !== null || lockedShoe(rig, state, -1) !== null,
  };
}

/** Cable taken up when the hand lever is pulled to a pull at each brake (N) with the drum still, mm. */
export function takenUp(rig: Rig, state: BrakeState, cable: number, set: CableSet = {}): number {
  return spend(rig, state, cable, hookTravel(rig, state, cable), set).total;
}

/** The three ways of parking on a hot drum. */
export interface HotParking {
  /** Pulled to the pull on the hot drum, still hot. */
  readonly hot: LockedHand;
  /** The same hand lever, the drum cold again. */
  readonly cooled: LockedHand;
  /** Hot drum, hand lever at the notch that gives the pull on a cold one. */
  readonly usualNotch: LockedHand;
  /** Cold drum, the same pull: what one is used to. */
  readonly cold: LockedHand;
}

/**
 * Hot parked, cooled, and parked hot to the usual notch. The state's drum is taken at 20 °C and at
 * 20 °C + rise; the shoes stay cold, the friction follows the drum's temperature.
 *
 * @param cable pull at each brake to which the hand lever is drawn, N
 * @param rise of the drum's temperature, K
 */
export function hotParking(
  rig: Rig,
  state: BrakeState,
  cable: number,
  rise: number,
  set: CableSet = {},
): HotParking {
  const cold = { ...state, temperature: 20 };
  const hot = { ...state, temperature: 20 + rise };
  const takenHot = takenUp(rig, hot, cable, set);
  const takenCold = takenUp(rig, cold, cable, set);
  return {
    hot: handLocked(rig, hot, takenHot, set),
    cooled: handLocked(rig, cold, takenHot, set),
    usualNotch: handLocked(rig, hot, takenCold, set),
    cold: handLocked(rig, cold, takenCold, set),
  };
}
