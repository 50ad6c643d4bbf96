import { balance } from '../balance/balance.ts';
import type { Instant } from '../balance/instant.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { rootBetween, type Until } from '../math/root.ts';
import { GRAVITY } from '../units/units.ts';
import { hookTravelOf, MOST_CABLE, spend } from './hand-lever.ts';

/**
 * The parked brake: the hand lever's cable turns the parking lever, which pushes the front shoe
 * through the strut (S = ratio × cable) and its own shoe at the pivot (S − cable). Two solves, one
 * each way, friction fully mobilised against the roll.
 */
export interface Parked {
  /** Cable pull at each brake, N. */
  readonly cable: number;
  /** Torque at which the drum slips, N·mm a wheel, against rolling forward and backward. */
  readonly forward: number;
  readonly backward: number;
  readonly strutForce: number;
  /** Push of the lever's pivot on its own shoe, N. */
  readonly pivotForce: number;
  /** Travel of the hook along the cable, mm. */
  readonly hookTravel: number;
  /** Notches of the hand lever: (slack + stretch + hook travel) / cable a notch. */
  readonly notches: number;
  /** Pull at the hand lever's grip, N: both cables over ratio and efficiency. */
  readonly handForce: number;
  /** A shoe that locks: it holds whatever the cable does. */
  readonly locked: Instant['locked'];
  /** A part that gives way under such a pull: no force is told then. */
  readonly yields: Instant['yields'];
}

const torqueOf = (i: Instant): number => Math.abs(i.torqueOnDrum);

/** @param cable constant pull at the hook of each brake, N */
export function parked(rig: Rig, state: BrakeState, cable: number): Parked {
  const forward = balance(rig, state, { pressure: 0, turning: 1, cable });
  const backward = balance(rig, state, { pressure: 0, turning: -1, cable });
  const lever = rig.brake.parkingLever;
  const hookTravel = (hookTravelOf(rig, state, forward) + hookTravelOf(rig, state, backward)) / 2;
  const strutForce = (forward.strutForce + backward.strutForce) / 2;
  return {
    cable,
    forward: torqueOf(forward),
    backward: torqueOf(backward),
    strutForce,
    pivotForce: strutForce - cable,
    hookTravel,
    notches: spend(rig, state, cable, hookTravel).notches,
    handForce: (rig.brake.vehicle.brakes * cable) / (lever.handRatio * lever.handEfficiency),
    locked: forward.locked ?? backward.locked,
    yields: forward.yields ?? backward.yields,
  };
}

/** Torque a wheel that a slope (rise over level distance) asks for, N·mm: m·g·sin(angle)·r / brakes. */
export function slopeTorque(rig: Rig, slope: number): number {
  const v = rig.brake.vehicle;
  const s = slope / Math.sqrt(1 + slope * slope);
  return (v.mass * GRAVITY * s * v.tyreRadius) / v.brakes;
}

/** Steepest slope that a torque a wheel holds; Infinity when it would hold a wall. */
export function slopeHeld(rig: Rig, torque: number): number {
  const v = rig.brake.vehicle;
  const s = (torque * v.brakes) / (v.mass * GRAVITY * v.tyreRadius);
  return s < 1 ? s / Math.sqrt(1 - s * s) : Number.POSITIVE_INFINITY;
}

/** Weakest cable pull that is looked for, N. */
const LEAST_CABLE = 1;

/** Torques, N·mm, and pulls, N, that are alike. Halving, since a pull within the springs' holds nothing. */
const HOLDS_ALIKE: Until = {
  near: 1e-3,
  apart: (a, b) => Math.abs(b - a) <= 1e-3,
  trials: 60,
  halving: true,
};

/**
 * Cable pull that just holds a slope, N. Nose down the vehicle rolls forward. The torque grows with the
 * pull; NaN when 5 kN do not hold it.
 */
export function cableFor(rig: Rig, state: BrakeState, slope: number, nose: 'down' | 'up'): number {
  const need = slopeTorque(rig, slope);
  const over = (cable: number): number => {
    const i = balance(rig, state, { pressure: 0, turning: nose === 'down' ? 1 : -1, cable });
    return torqueOf(i) - need;
  };
  const little = over(LEAST_CABLE);
  if (little >= 0) return LEAST_CABLE;
  const much = over(MOST_CABLE);
  if (much < 0) return Number.NaN;
  return rootBetween(over, [LEAST_CABLE, little], [MOST_CABLE, much], HOLDS_ALIKE)[0];
}

/** Wheelbase, mass centre and grip of the standing vehicle, mm and tyre friction. */
export interface Stance {
  /** Mass centre from the braked axle and from the other, along the road. */
  readonly fromBraked: number;
  readonly fromOther: number;
  readonly height: number;
  readonly grip: number;
}

/**
 * Slope at which the braked axle's tyres slide. Moments about the other axle's contact: the braked
 * axle carries W·(b·cos φ ± h·sin φ)/(a + b), with b from the mass centre to the other axle and the
 * sign + when the braked axle is the lower one. It holds W·sin φ while that is at most grip × load:
 * tan φ = μ·b / (l ∓ μ·h) (balance equations as in Jazar, Vehicle Dynamics, section 2.6; signs
 * derived here).
 */
export function slideSlope(s: Stance, brakedAxle: 'lower' | 'upper'): number {
  const l = s.fromBraked + s.fromOther;
  const sign = brakedAxle === 'lower' ? -1 : 1;
  return (s.grip * s.fromOther) / (l + sign * s.grip * s.height);
}
