import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { type Parked, parked } from './parking.ts';

/** What may be wrong with one wheel's parking. */
export type WheelFault = 'none' | 'stiff lever' | 'oil on rear' | 'oil on front' | 'glazed';

/** Share of the cable's pull that a stiff pivot leaves to the lever: half (teaching brake's choice). */
const STIFF = 0.5;

/** A wheel with its fault: state and the pull that reaches its parking lever, N. */
export function wheelWith(
  state: BrakeState,
  cable: number,
  fault: WheelFault,
): { readonly state: BrakeState; readonly cable: number } {
  const on = (front: 'dry' | 'greasy' | 'glazed', rear: 'dry' | 'greasy' | 'glazed') => ({
    state: { ...state, condition: { ...state.condition, surface: { front, rear } } },
    cable,
  });
  switch (fault) {
    case 'none':
      return { state, cable };
    case 'stiff lever':
      return { state, cable: STIFF * cable };
    case 'oil on rear':
      return on('dry', 'greasy');
    case 'oil on front':
      return on('greasy', 'dry');
    case 'glazed':
      return on('glazed', 'glazed');
  }
}

/** Both wheels of an axle, each with its own fault, under one pull of the equaliser (N a cable). */
export function parkedAxle(
  rig: Rig,
  state: BrakeState,
  cable: number,
  faults: readonly WheelFault[],
): Parked[] {
  const sound = parked(rig, state, cable);
  return faults.map((fault) => {
    if (fault === 'none') return sound;
    const wheel = wheelWith(state, cable, fault);
    return parked(rig, wheel.state, wheel.cable);
  });
}
