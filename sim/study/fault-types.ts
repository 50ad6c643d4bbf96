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
  readonly caution: string;
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

/** Cautions that come back. */
export const CAUTION = {
  fluid:
    'Brake fluid harms eyes, skin and paint. Use only the grade the maker names, from a sealed container.',
  dust: 'Brake dust is harmful to breathe, whatever the lining. Wet it or collect it with a fine-filter vacuum; never blow or dry-brush.',
  roll: 'A vehicle on a slope rolls when the brake lets go. Chock it before testing or slackening a cable.',
  springs: 'Springs store force; use the proper tool and eye protection.',
  hot: 'A drum can burn skin and set fluid alight long after the stop. Let it cool; do not quench it.',
  off: 'Chock the wheels and set the vehicle on stands on firm ground before the parking brake is let off. Never strike the rim; if it stays, look for another lock.',
  piston: 'With the drum off, do not press the pedal: a piston can leave its bore.',
  strut:
    'Unload the strut before lifting the lever; a loaded tooth lets go suddenly. Keep fingers clear and wear eye protection.',
  pairs: 'Fit both wheels of the axle alike. Test at walking pace on level ground before any road.',
  drive: 'Test only a vehicle that is safe to move. If it may not stop, it does not leave.',
} as const;
