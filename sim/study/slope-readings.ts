import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Reading } from '../readings/reading.ts';
import { studyNames as names, studySlopeReadings as words } from '../words/en.ts';
import { cableFor, parked, slopeTorque } from './parking.ts';

/** N·mm to N·m. */
const NM = 1e-3;

/**
 * Readings of the vehicle parked on a slope: what is asked for, and what the cable leaves over.
 *
 * @param slope rise over level distance
 * @param cable constant pull at the hook of each brake, N; 0: not pulled, no margin is told
 */
export function slopeReadings(
  rig: Rig,
  state: BrakeState,
  slope: number,
  cable: number,
): Reading[] {
  const need = slopeTorque(rig, slope);
  const p = parked(rig, state, cable);
  const { brakes } = rig.brake.vehicle;
  const { handRatio, handEfficiency } = rig.brake.parkingLever;
  const out: Reading[] = [
    {
      key: 'slopeTorque',
      name: names.torqueOfSlope,
      symbol: 'T_slope',
      value: need * NM,
      unit: 'N·m',
      digits: 1,
      formula: 'T = m g sin φ r / n',
    },
  ];
  for (const nose of ['down', 'up'] as const) {
    const Nose = nose === 'down' ? 'Down' : 'Up';
    const pull = p.locked ? Number.NaN : cableFor(rig, state, slope, nose);
    out.push(
      {
        key: `cableNose${Nose}`,
        name: words.cableThatHolds(nose),
        symbol: 'F_cable',
        value: pull,
        unit: 'N',
        digits: 0,
        formula: 'T(F_cable) = T_slope',
      },
      {
        key: `handNose${Nose}`,
        name: words.handForIt(nose),
        symbol: 'F_hand',
        value: (brakes * pull) / (handRatio * handEfficiency),
        unit: 'N',
        digits: 0,
        formula: 'F_hand = n F_cable / (i η)',
      },
    );
    if (cable > 0) {
      const can = nose === 'down' ? p.forward : p.backward;
      out.push({
        key: `marginNose${Nose}`,
        name: words.marginOfCable(nose),
        symbol: '',
        value: p.locked ? Number.NaN : 100 * (can / need - 1),
        unit: '%',
        digits: 0,
        formula: 'T_slip / T_slope − 1',
      });
    }
  }
  return out;
}
