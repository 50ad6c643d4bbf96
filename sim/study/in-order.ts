import { balance } from '../balance/balance.ts';
import type { Instant } from '../balance/instant.ts';
import type { Rig } from '../balance/rig.ts';
import { usualPressure } from '../brake/duty.ts';
import { leverForm } from '../brake/lever-form.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Brake } from '../brake/types.ts';
import { pedalStack } from '../readings/pedal.ts';
import { leverInHand } from './by-hand.ts';
import { HAND } from './checks.ts';
import { parked } from './parking.ts';
import { presetRow } from './preset.ts';
import { FELT, STIFF } from './removal.ts';

/** What a hand meets that takes this brake apart, backs its adjuster off and turns its wheel. */

/** Friction of the teeth on each other, dry steel with what has settled on it; from memory. */
const TOOTH_FRICTION = 0.15;

/** What lifts the toothed lever off its teeth, N at the tooth. */
export interface ToothLift {
  /** Its spring's share, and what the loaded tooth's friction adds. */
  readonly spring: number;
  readonly friction: number;
  readonly total: number;
}

/**
 * The spring presses the lever into its tooth with F₀, and the strut's force stands on the row of teeth as
 * `leverInHand` has it: sliding out of the tooth takes μ times that (Coulomb).
 *
 * @param strength of the spring: 1 sound, 0 broken
 * @returns null for adjusters without a toothed lever
 */
export function toothLift(
  brake: Brake,
  tooth: number,
  strutForce: number,
  strength = 1,
): ToothLift | null {
  const form = leverForm(brake);
  const hand = leverInHand(
    brake,
    { strutForce: Math.max(0, strutForce), tooth },
    strength,
    1,
    0,
    0,
  );
  if (!form || !hand) return null;
  const spring = strength * form.spring.fitted;
  const friction = TOOTH_FRICTION * hand.holds;
  return { spring, friction, total: spring + friction };
}

/** What so many teeth back give. */
export interface ToothGives {
  /** Clearance of each lining at its middle, mm. */
  readonly clearance: number;
  /** At the lip's tightest place, mm a side. */
  readonly lip: number;
  /** Travel of the pedal at the usual pressure, mm. */
  readonly pedal: number;
  /** Of the hand lever at a firm pull. */
  readonly notches: number;
}

/** A brake with its adjuster here, against the same so many teeth back. Null where it has none left. */
export function toothGives(rig: Rig, state: BrakeState, back = 1): ToothGives | null {
  if (back < 1 || state.tooth < back) return null;
  const press = { pressure: usualPressure(rig.brake), turning: 1 } as const;
  const at = (tooth: number) => {
    const s = { ...state, tooth };
    return {
      row: presetRow(rig, s),
      pedal: pedalStack(rig.brake, balance(rig, s, press)).total,
      notches: parked(rig, s, HAND).notches,
    };
  };
  const here = at(state.tooth);
  const there = at(state.tooth - back);
  return {
    clearance: there.row.centre - here.row.centre,
    lip: there.row.lip - here.row.lip,
    pedal: there.pedal - here.pedal,
    notches: there.notches - here.notches,
  };
}

/**
 * What eases one toe off the strut, N at the toe, the other held: moments of a shoe about its heel, strut
 * force times its arm over the toe's (statics of a lever). The hold-downs' friction, some newtons, comes on top.
 */
export function partToe(brake: Brake, strutForce: number): number {
  const { front } = brake.shoes;
  const { anchor, strutSeat, toe } = front;
  return (strutForce * (strutSeat[1] - anchor.at[1])) / (toe[1] - anchor.at[1]);
}

/** How stiff a wheel may be, N at the tyre. */
export interface TurnLimits {
  /** Under it nothing is felt, and from the second on something is wrong. */
  readonly felt: number;
  readonly stiff: number;
}

/** The torques by which a drum is judged, over the radius of the tyre that the hand is at. */
export const turnLimits = ({ vehicle }: Brake): TurnLimits => ({
  felt: FELT / vehicle.tyreRadius,
  stiff: STIFF / vehicle.tyreRadius,
});

/** The brake with its drum off, nothing pressed, as far as it is still together. */
export const openBrake = (rig: Rig, state: BrakeState): Instant =>
  balance(rig, state, { pressure: 0, turning: 0, drumOff: true });
