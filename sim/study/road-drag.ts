import { balance } from '../balance/balance.ts';
import { isTold } from '../balance/instant.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { slidesAt } from '../brake/stopping.ts';
import { bothWays } from './checks.ts';

/** What a released brake that touches costs on the road. NaN where no force can be told, and of one that is not driven. */
export interface RoadDrag {
  /** It is not driven: its wheel would slide rather than turn. */
  readonly seized: boolean;
  /** Of one brake, N·mm. */
  readonly torque: number;
  /** Held back by one tyre, N: so much more rolling resistance. */
  readonly force: number;
  /** Turned into heat by one brake, N·mm/s. */
  readonly power: number;
}

/**
 * A released brake at a road speed, mm/s, its drum as warm as it is: P = T·ω with ω = v/r (power of a
 * torque; any text on mechanics). The same torque that a hand finds when it turns the wheel.
 */
export function roadDrag(rig: Rig, state: BrakeState, speed: number): RoadDrag {
  const told = isTold(balance(rig, state, { pressure: 0, turning: 1 }));
  const torque = told ? bothWays({ rig, state }, 0).forward : Number.NaN;
  const { vehicle } = rig.brake;
  const seized = torque > slidesAt(vehicle);
  const force = seized ? Number.NaN : torque / vehicle.tyreRadius;
  return { seized, torque, force, power: force * speed };
}
