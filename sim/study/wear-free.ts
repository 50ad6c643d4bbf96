import { dress } from '../balance/dress.ts';
import { createRig, type Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { KM } from '../units/units.ts';
import { Drag } from '../wear/drag.ts';
import { DragShoes } from '../wear/drag-shoes.ts';
import { AIR } from '../wear/heat.ts';
import { Wearing } from '../wear/wearing.ts';

/**
 * Will a brake that was set too tight wear free, how far, how hot? It is driven on released, its linings
 * standing inside the drum by so much, each trip begun cold, by the law of `sim/wear/drag.ts`: heat of
 * the drum, its growth away from its shoes, Archard's wear.
 */

/** A released brake counts as free under this when cold, N·mm: 10 N·m, some 35 N at the tyre (our own choice). */
export const FREE_COLD = 10_000;
/** Each trip begins cold, mm. */
const TRIP = 50 * KM;

export interface FreeRow {
  /** Driven, mm. */
  readonly distance: number;
  /** Torque that turns the cold wheel, N·mm. */
  readonly cold: number;
  /** Of the drum, °C: the hottest in this trip, and where it settled. */
  readonly hottest: number;
  readonly settled: number;
  /** Torque at the end of the trip, N·mm. */
  readonly running: number;
  /** Most that either lining has lost, mm. */
  readonly lost: number;
}

/** The strut is found to this, mm, and sought up to so much longer. */
const FOUND = 1e-5;
const MOST_LONGER = 4;

/** The brake with its strut so much too long that both linings' middles stand inside the drum by `tight`, mm. */
export function setTight(rig: Rig, state: BrakeState, tight: number): Rig {
  const { brake, options } = rig;
  const longer = (by: number): Rig =>
    createRig(
      { ...brake, adjuster: { ...brake.adjuster, lengthAtZero: brake.adjuster.lengthAtZero + by } },
      options,
    );
  const inside = (by: number): number => -dress(longer(by), state).restGap;
  let [low, high] = [0, MOST_LONGER];
  while (high - low > FOUND) {
    const middle = (low + high) / 2;
    if (inside(middle) < tight) low = middle;
    else high = middle;
  }
  return longer(high);
}

/**
 * Trip by trip, the first row before anything is driven; it ends when the cold brake is free, or by
 * whoever asks no more.
 *
 * @param speed mm/s
 */
export function* wearsFree(
  rig: Rig,
  state: BrakeState,
  tight: number,
  speed: number,
): Generator<FreeRow> {
  const at = { ...state, temperature: AIR };
  const w = new Wearing(setTight(rig, at, tight), at);
  const shoes = new DragShoes(w.rig.brake, AIR);
  const drag = new Drag(w, AIR, shoes);
  const before = w.state();
  const lostOf = (): number => {
    const now = w.state();
    let most = 0;
    for (const side of ['front', 'rear'] as const)
      now.wear[side].forEach((x, i) => {
        most = Math.max(most, x - (before.wear[side][i] as number));
      });
    return most;
  };
  let cold = drag.torqueAt(AIR);
  yield { distance: 0, cold, hottest: AIR, settled: AIR, running: cold, lost: 0 };
  for (let distance = TRIP; cold > FREE_COLD; distance += TRIP) {
    w.temperature = AIR;
    shoes.temperature = AIR;
    const { hottest, torque } = drag.drive(TRIP, speed, AIR);
    const settled = w.temperature;
    cold = drag.torqueAt(AIR);
    yield { distance, cold, hottest, settled, running: torque, lost: lostOf() };
  }
}
