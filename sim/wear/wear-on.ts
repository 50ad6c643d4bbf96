import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import { thinnestLeft } from '../contact/bed.ts';
import { KM } from '../units/units.ts';
import { createLife } from './life.ts';
import type { LifeEvent, LifeRow } from './life-types.ts';

/** One row of the chart strip. */
export type TracePoint = LifeRow;

/** The brake after it was worn on, and what happened on the way. */
export interface WearResult {
  readonly state: BrakeState;
  readonly events: readonly LifeEvent[];
  readonly trace: readonly LifeRow[];
}

const ROW_EVERY = 50 * KM;

/** Thinnest lining left on a shoe, mm. */
export function thinnest(rig: Rig, state: BrakeState, side: Side): number {
  return thinnestLeft(rig[side].bed, state.wear[side]);
}

/**
 * Wears the brake on by its first duty, drum as warm as it stands, past its limits if need be.
 *
 * @param distance to drive, mm; with `toNextClick` the most to drive
 * @param toNextClick stop right after the next click, or at a limit
 */
export function wearOn(
  rig: Rig,
  start: BrakeState,
  options: { readonly distance: number; readonly toNextClick?: boolean },
): WearResult {
  const toNextClick = options.toNextClick === true;
  const life = createLife(rig, start, rig.brake.duties[0], {
    distance: start.distance + options.distance,
    toNextClick,
    stopAtLimit: toNextClick,
    rowEvery: ROW_EVERY,
    askLocks: false,
  });
  while (!life.done) life.advance(options.distance);
  return { state: life.state(), events: life.events, trace: life.rows };
}
