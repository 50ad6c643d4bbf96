import type { Side, ToothGives, ToothLift, Unhooking } from '../../../sim/index.ts';
import type { Bedding } from './bedding.ts';
import type { Off } from './plan.ts';
import type { Setting } from './setting.ts';

/** What the words may ask of the brake as it stands at the step. Forces in N, ways in mm. */
export interface Facts {
  /** What a hand does with the adjuster. */
  readonly byHand: 'lift' | 'wheel' | 'wedge';
  /** Heels on flats, not on pins. */
  readonly onFlats: boolean;
  readonly off: ReadonlySet<Off>;
  readonly strutForce: number;
  readonly toeForce: number;
  readonly lift: ToothLift | null;
  spring(end: 'upper' | 'lower'): Unhooking | null;
  /** What the springs of an end pull with when the brake is together; null where it has none there. */
  fitted(end: 'upper' | 'lower'): number | null;
  pressing(side: Side): number;
  readonly leverOff: number;
  /** Room at the lip as the bench's brake stands; negative: over it. */
  readonly lipRoom: number;
  /** What a piston has left before it leaves its bore, pressed as usual. */
  readonly runOut: number;
  readonly gives: ToothGives | null;
  /** Steps still to be backed off until the drum passes; null: all are not enough. */
  readonly need: number | null;
  readonly needText: string;
  readonly lipForce: AtLip | null;
  readonly set: Setting;
  readonly bedding: Bedding;
}

/** What a puller does where the lip holds. */
export interface AtLip {
  readonly pull: number;
  readonly onShoe: number;
  readonly givesAt: number;
  readonly givesFirst: string;
}

/** Tools that are drawn beside a step. */
export type Tool =
  | 'puller'
  | 'cup'
  | 'clamp'
  | 'hook'
  | 'pliers'
  | 'hands'
  | 'wash'
  | 'camera'
  | 'gauge'
  | 'pedal'
  | 'stands';

type Text = string | ((desk: Facts) => string);

/** A force or a way that the model knows of this step. */
export interface Holds {
  readonly name: string;
  readonly value: string;
  readonly unit: string;
}

/** One step of the work, in words. */
export interface Step {
  readonly name: string;
  /** What to do. */
  readonly does: Text;
  readonly tool: readonly [Tool, string];
  /** What may fly or drop, and where to. */
  readonly flies?: string;
  /** Which way round it is, so that it goes back so. */
  readonly back?: Text;
  /** What to look at; each is ticked. */
  readonly checks: readonly string[];
  readonly care: string;
  /** What the model says of it. */
  readonly holds?: (desk: Facts) => readonly Holds[];
  /** The next button's words where "Done" does not fit. */
  readonly done?: string;
}

export const textOf = (text: Text, desk: Facts): string =>
  typeof text === 'string' ? text : text(desk);
