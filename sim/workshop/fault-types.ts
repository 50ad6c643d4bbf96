import type { FaultChange, FaultId } from '../index.ts';

/** What a workshop says of a fault. */
export interface FaultWords {
  /** Under the name: what it does, in a few words. */
  readonly short: string;
  /** Which parameter is changed, and by how much. */
  readonly change: string;
  readonly mechanism: string;
  /** The one sign that parts it from its look-alikes, in words; the figures come from the readings. */
  readonly tells: string;
  readonly lookAlikes: readonly FaultId[];
  readonly remedy: string;
  readonly caution: FaultCaution;
}

/** A fault: the change that makes it, and its words. */
export interface Fault extends FaultWords, FaultChange {
  readonly id: FaultId;
  readonly name: string;
  readonly group: FaultGroup;
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

/** A fault that this view cannot show, and why. */
export interface NotShown {
  readonly id: string;
  readonly name: string;
  readonly because: string;
}
