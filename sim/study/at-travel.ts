import { balance } from '../balance/balance.ts';
import type { Instant } from '../balance/instant.ts';
import type { Rig } from '../balance/rig.ts';
import { pedalFrom } from '../brake/pedal.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Turning } from '../brake/types.ts';
import { lineAt } from '../brake/upstream.ts';
import { BAR } from '../units/units.ts';

/** A brake whose pedal stands at a travel. */
export interface AtTravel {
  /** Of the master cylinder, MPa. */
  readonly pressure: number;
  /** Travel that was reached, mm: less than was asked for where the pressure ends first. */
  readonly travel: number;
  readonly instant: Instant;
}

/** A pressure is found this near, MPa: a hundredth of a bar. */
const NEAR = 0.01 * BAR;

/** A brake pressed slowly to a pressure of the master cylinder, MPa, and its pedal's travel, mm. */
export function pressedTo(
  rig: Rig,
  state: BrakeState,
  pressure: number,
  turning: Turning,
): AtTravel {
  const { brake } = rig;
  const instant = balance(rig, state, {
    pressure: lineAt(brake, pressure),
    turning,
  });
  const { front, rear } = instant.shoes;
  const { total } = pedalFrom(
    brake,
    front.pistonTravel,
    rear.pistonTravel,
    instant.pressure,
    0,
    pressure,
  );
  return { pressure, travel: total, instant };
}

/**
 * The same pedal pushed to a travel, mm. Travel grows with pressure: fluid goes where pistons move, and
 * what is between gives the more the higher the pressure is (volume balance of the master cylinder;
 * R. Limpert, Brake Design and Safety, ch. 5, from memory). So the pressure is found by halving. A travel
 * shorter than that of a released brake with its free play taken up presses nothing.
 *
 * @param most pressure of the master cylinder at which the foot gives up, MPa
 */
export function atTravel(
  rig: Rig,
  state: BrakeState,
  travel: number,
  turning: Turning,
  most: number,
): AtTravel {
  const at = (pressure: number): AtTravel => pressedTo(rig, state, pressure, turning);
  let low = at(0);
  let high = at(most);
  if (low.travel >= travel || high.travel <= travel) return low.travel >= travel ? low : high;
  while (high.pressure - low.pressure > NEAR) {
    const middle = at((low.pressure + high.pressure) / 2);
    if (middle.travel < travel) low = middle;
    else high = middle;
  }
  return high;
}
