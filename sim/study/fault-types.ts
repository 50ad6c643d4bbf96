import type { Rig } from '../balance/rig.ts';
import { type BrakeState, type Condition, SOUND } from '../brake/state.ts';
import type { Brake } from '../brake/types.ts';
import type { WheelBrake } from './checks.ts';

/** A brake with a fault in it: what is built otherwise, and its state. */
export interface Faulty {
  readonly brake?: Brake;
  readonly state: BrakeState;
  readonly held?: WheelBrake['held'];
  readonly wet?: WheelBrake['wet'];
}

/** A fault as a change of parameters. What it is called and what it means, the workshop says. */
export interface FaultChange {
  /** On one wheel of the axle, or on both. */
  readonly wheels: 'one' | 'both';
  /** Other wheels of the vehicle suffer too. */
  readonly allWheels?: boolean;
  /** Pure: the sound brake and its state to the faulty one. */
  apply(rig: Rig, state: BrakeState): Faulty;
}

/** The state with something out of order. */
export const ailing = (state: BrakeState, change: Partial<Condition>): BrakeState => ({
  ...state,
  condition: { ...state.condition, ...change },
});

/** The state as new shoes give it on a drum of this radius, mm, its faces bare. */
export const newShoes = (
  rig: Rig,
  { film: _, ...state }: BrakeState,
  drumRadius: number,
): BrakeState => ({
  ...state,
  tooth: 0,
  drumRadius,
  wear: {
    front: new Float64Array(rig.front.bed.count),
    rear: new Float64Array(rig.rear.bed.count),
  },
  condition: SOUND,
});
