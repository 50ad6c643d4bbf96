import { balance } from '../balance/balance.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { pedalStack } from '../readings/pedal.ts';
import { PRESS, pressUntilSilent } from './bedding.ts';
import { handTurn } from './checks.ts';
import { parked } from './parking.ts';
import { presetRow } from './preset.ts';

/**
 * New shoes set in several orders, each worked through by the same mechanics: what is done first decides
 * what the adjuster sees when it is pressed. Which orders are usual mistakes: common practice.
 */

export type SettingOrder = 'right' | 'cable first' | 'let off' | 'no presses' | 'hot';

/** What comes of one order. */
export interface OrderOutcome {
  readonly order: SettingOrder;
  /** Teeth that dropped in by pressing. */
  readonly teeth: number;
  /** Gap of each lining at its middle, mm; negative: it drags. */
  readonly gap: number;
  /** Pedal at a usual press, mm. */
  readonly pedal: number;
  /** Hand lever at a firm pull. */
  readonly notches: number;
  /** What keeps the wheel turning by hand, the stiffer way, N at the tyre. */
  readonly turns: number;
  /** How far the cable holds the lever off its stop, mm at the hook. */
  readonly off: number;
}

/** Farthest that a cable is drawn up at rest, mm at the hook (own choice: no lever takes more). */
const MOST_OFF = 20;
/** Halvings of it: 20 mm to a hundredth. */
const HALVINGS = 11;

/** A drum after some hard stops, °C: what a hand takes for far too hot to touch (common practice). */
export const HOT_DRUM = 200;

/**
 * @param gauge new shoes as the gauge set them, drum on, lever home, cold
 * @param back the same with the strut right back, as the shoes go in
 * @param pull at which notches are counted, N a cable
 */
export function setOrders(
  rig: Rig,
  gauge: BrakeState,
  back: BrakeState,
  pull: number,
): readonly OrderOutcome[] {
  const notchesOf = (state: BrakeState): number => parked(rig, state, pull).notches;
  const outcome = (order: SettingOrder, teeth: number, state: BrakeState): OrderOutcome => {
    const { forward, backward } = handTurn({ rig, state });
    return {
      order,
      teeth,
      gap: presetRow(rig, state).centre,
      pedal: pedalStack(rig.brake, balance(rig, state, PRESS)).total,
      notches: notchesOf(state),
      turns: Math.max(forward, backward) / rig.brake.vehicle.tyreRadius,
      off: state.leverOffStop,
    };
  };
  const pressed = (state: BrakeState) => {
    const { state: now } = pressUntilSilent(rig, state, PRESS);
    return { now, teeth: now.tooth - state.tooth };
  };

  const right = pressed({ ...gauge, leverOffStop: 0 });
  // Drawn up until the lever takes as many notches as it should: more cable, fewer notches.
  const wanted = notchesOf(right.now);
  let [low, high] = [0, MOST_OFF];
  for (let i = 0; i < HALVINGS; i++) {
    const off = (low + high) / 2;
    if (notchesOf({ ...back, leverOffStop: off }) > wanted) low = off;
    else high = off;
  }
  const first = pressed({ ...back, leverOffStop: low });
  const hot = pressed({ ...gauge, leverOffStop: 0, temperature: HOT_DRUM });
  return [
    outcome('right', right.teeth, right.now),
    outcome('cable first', first.teeth, first.now),
    outcome('let off', first.teeth, { ...first.now, leverOffStop: 0 }),
    outcome('no presses', 0, { ...back, leverOffStop: 0 }),
    outcome('hot', hot.teeth, { ...hot.now, temperature: gauge.temperature }),
  ];
}
