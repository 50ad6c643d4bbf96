import { balance } from '../balance/balance.ts';
import { placePoint } from '../balance/place.ts';
import { teethPassed } from '../balance/ratchet.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Point } from '../brake/types.ts';
import { cos, sin } from '../math/trig.ts';

/** What one pull of the parking cable does to the adjuster. */
export interface PullResult {
  readonly state: BrakeState;
  /** Teeth that let go under the load. */
  readonly lost: number;
  /** Teeth that a strut driven by the parking lever took up. */
  readonly clicked: number;
  /** N */
  readonly strutForce: number;
}

/**
 * Pulls the parking brake of a standing vehicle and lets it off. Worn teeth let one go at each pull
 * that loads the strut above what they hold (a rule of the teaching brakes). A strut that the lever
 * drives senses how far the seats stood apart on the webs, lever on its stop: what the lever's own
 * turn took up is not there (derived; its wheel turns on the way back).
 *
 * @param cable pull at the hook, N
 */
export function parkingPull(rig: Rig, state: BrakeState, cable: number): PullResult {
  const i = balance(rig, state, { pressure: 0, turning: 0, cable });
  const { teethHold } = state.condition;
  const lost = teethHold !== null && i.strutForce > teethHold && state.tooth > 0 ? 1 : 0;
  const held = lost > 0 ? { ...state, tooth: state.tooth - lost } : state;
  const { front, rear } = rig.brake.shoes;
  const { pivot } = rig.brake.parkingLever;
  const turn = rig.hookArm > 0 ? (rig.leverSense * state.leverOffStop) / rig.hookArm : 0;
  const x = rear.strutSeat[0] - pivot[0];
  const y = rear.strutSeat[1] - pivot[1];
  const onStop: Point = [
    pivot[0] + cos(turn) * x - sin(turn) * y,
    pivot[1] + sin(turn) * x + cos(turn) * y,
  ];
  const a = placePoint(front, i.shoes.front.pose, front.strutSeat);
  const b = placePoint(rear, i.shoes.rear.pose, onStop);
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const apart = Math.sqrt(dx * dx + dy * dy);
  const clicked = teethPassed(rig.brake, held, apart, 0, 'parking pull');
  return {
    state: clicked !== 0 ? { ...held, tooth: held.tooth + clicked } : held,
    lost,
    clicked,
    strutForce: i.strutForce,
  };
}
