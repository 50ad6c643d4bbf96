import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Reading } from '../readings/reading.ts';
import { studyNames as names, studyParkedReadings as words } from '../words/en.ts';
import { parked, slopeHeld } from './parking.ts';

/** N·mm to N·m. */
const NM = 1e-3;

/** Readings of the brake parked by its cable. A shoe that locks holds any torque, and parts that give way none that can be told. */
export function parkedReadings(rig: Rig, state: BrakeState, cable: number): Reading[] {
  const p = parked(rig, state, cable);
  const told = (value: number): number => (p.locked || p.yields ? Number.NaN : value);
  return [
    {
      key: 'slipForward',
      name: names.slipForward,
      symbol: 'T_fwd',
      value: told(p.forward * NM),
      unit: 'N·m',
      digits: 1,
      formula: 'T = Σ μ N r',
    },
    {
      key: 'slipBackward',
      name: names.slipBackward,
      symbol: 'T_back',
      value: told(p.backward * NM),
      unit: 'N·m',
      digits: 1,
      formula: 'T = Σ μ N r',
    },
    {
      key: 'slopeDown',
      name: names.slopeDown,
      symbol: 'tan φ_down',
      value: told(100 * slopeHeld(rig, p.forward)),
      unit: '%',
      digits: 1,
      formula: 'sin φ = n T / (m g r)',
    },
    {
      key: 'slopeUp',
      name: names.slopeUp,
      symbol: 'tan φ_up',
      value: told(100 * slopeHeld(rig, p.backward)),
      unit: '%',
      digits: 1,
      formula: 'sin φ = n T / (m g r)',
    },
    {
      key: 'pivotForce',
      name: names.pivotOnShoe,
      symbol: 'P',
      value: p.pivotForce,
      unit: 'N',
      digits: 0,
      formula: 'P = S − F_cable',
    },
    {
      key: 'notches',
      name: names.handNotches,
      symbol: 'z',
      value: p.notches,
      unit: '',
      digits: 1,
      formula: words.notches,
    },
    {
      key: 'handForce',
      name: names.pullAtHand,
      symbol: 'F_hand',
      value: p.handForce,
      unit: 'N',
      digits: 0,
      formula: 'F_hand = n F_cable / (i η)',
    },
  ];
}
