import type { Rig } from '../balance/rig.ts';
import { type BrakeState, type Condition, SOUND } from '../brake/state.ts';
import type { Brake } from '../brake/types.ts';
import type { Wheel } from './checks.ts';

/** A brake with a fault in it: what is built otherwise, and its state. */
export interface Faulty {
  readonly brake?: Brake;
  readonly state: BrakeState;
  readonly held?: Wheel['held'];
  readonly wet?: Wheel['wet'];
}

/** A fault as a named change of parameters. */
export interface Fault {
  readonly id: string;
  /** Row of the fault table; null where the table has none. */
  readonly row: number | null;
  readonly name: string;
  /** Under the name: what it does, in a few words. */
  readonly short: string;
  readonly group: FaultGroup;
  /** Which parameter is changed, and by how much. */
  readonly change: string;
  readonly mechanism: string;
  /** The one sign that parts it from its look-alikes, in words; the figures come from the readings. */
  readonly tells: string;
  readonly lookAlikes: readonly string[];
  readonly remedy: string;
  readonly caution: FaultCaution;
  /** On one wheel of the axle, or on both. */
  readonly wheels: 'one' | 'both';
  /** Told by the story alone: other wheels of the vehicle suffer too. */
  readonly allWheels?: boolean;
  /** Pure: the sound brake and its state to the faulty one. */
  apply(rig: Rig, state: BrakeState): Faulty;
}

export type FaultGroup =
  | 'Adjuster'
  | 'Cable and lever'
  | 'Springs and pistons'
  | 'Friction'
  | 'Drum';

/** Which of the page's cautions stands beside it. */
export type FaultCaution =
  | 'wear'
  | 'drumOff'
  | 'park'
  | 'fault'
  | 'piston'
  | 'strut'
  | 'springs'
  | 'fitting'
  | 'hot'
  | 'fluid'
  | 'hubRust'
  | 'stands';

/** A row of the table that this view cannot show, and why. */
export interface NotShown {
  readonly row: number;
  readonly name: string;
  readonly because: string;
}

/** The state with something out of order. */
export const ailing = (state: BrakeState, change: Partial<Condition>): BrakeState => ({
  ...state,
  condition: { ...state.condition, ...change },
});

/** The state as new shoes give it on a drum of this radius, mm. */
export const newShoes = (rig: Rig, state: BrakeState, drumRadius: number): BrakeState => ({
  ...state,
  tooth: 0,
  drumRadius,
  wear: {
    front: new Float64Array(rig.front.bed.count),
    rear: new Float64Array(rig.rear.bed.count),
  },
  condition: SOUND,
});
