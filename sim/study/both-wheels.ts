import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Wheel } from '../brake/types.ts';
import type { Reading } from '../readings/reading.ts';
import { studyBothWheels as words } from '../words/en.ts';
import { brakingTorque } from './stop.ts';

/** The brakes of both wheels of an axle, each as it stands. */
export type BothStates = Readonly<Record<Wheel, BrakeState>>;

/**
 * Torque of each wheel at a pressure in the line, MPa, and how much the weaker one lacks to the stronger, as
 * a brake tester judges an axle (common practice).
 *
 * @param speed of the vehicle before the stop, mm/s
 */
export function wheelReadings(
  rig: Rig,
  states: BothStates,
  line: number,
  way: 1 | -1,
  speed: number,
): Reading[] {
  const torque = (wheel: Wheel): number => brakingTorque(rig, states[wheel], line, way, speed);
  const [left, right] = [torque('left'), torque('right')];
  const most = Math.max(left, right);
  const row = (
    key: 'wheelLeft' | 'wheelRight' | 'wheelDifference',
    name: string,
    symbol: string,
    value: number,
    unit: 'N·m' | '%',
    formula: string,
  ): Reading => ({ key, name, symbol, value, unit, digits: 1, formula });
  return [
    row('wheelLeft', words.leftWheel, 'T_left', left * 1e-3, 'N·m', 'T = R · Σ μ N'),
    row('wheelRight', words.rightWheel, 'T_right', right * 1e-3, 'N·m', 'T = R · Σ μ N'),
    row(
      'wheelDifference',
      words.weakerLacks,
      '',
      most > 0 ? (100 * Math.abs(left - right)) / most : 0 * most,
      '%',
      '(T_more − T_less) / T_more',
    ),
  ];
}
