import { balance } from '../balance/balance.ts';
import type { Rig } from '../balance/rig.ts';
import { freshState } from '../brake/state.ts';
import { PRESS } from './bedding.ts';
import { type Fit, fitOf, type NewLining, withNewLinings } from './fit.ts';
import { presetRow } from './preset.ts';

/** New linings as they would be on the brake before anything is bedded in, its adjuster at its shortest. */
export interface NewFit {
  readonly fit: Fit;
  /** At 40 bar rolling forward, N·mm: with these, and with the brake's own in its new drum; NaN where it locks. */
  readonly torque: number;
  readonly right: number;
  /** The drum slides on over lip and linings. */
  readonly slidesOn: boolean;
}

/** @param bore inner radius of the drum, mm */
export function newFit(rig: Rig, lining: NewLining, bore: number): NewFit {
  const state = withNewLinings(rig, lining, bore, 0);
  const torque = Math.abs(balance(rig, state, PRESS).torqueOnDrum);
  const right = Math.abs(balance(rig, freshState(rig.brake), PRESS).torqueOnDrum);
  return {
    fit: fitOf(rig, lining, bore),
    torque,
    right,
    slidesOn: presetRow(rig, state).slidesOn,
  };
}
