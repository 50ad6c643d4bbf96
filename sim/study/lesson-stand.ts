import type { Instant } from '../balance/instant.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Turning } from '../brake/types.ts';
import type { LifeEvent, LifeRow } from '../wear/life-types.ts';
import type { Held } from './removal.ts';

/** How a brake stands when it is asked. */
export interface Stand {
  readonly rig: Rig;
  readonly state: BrakeState;
  /** MPa */
  readonly pressure: number;
  readonly turning: Turning;
  /** Pull of the parking cable, N, and its slack beyond the scene's, mm. */
  readonly cable: number;
  readonly moreSlack: number;
  readonly held: Held;
  /** What the last stretch driven gave. */
  readonly rows: readonly LifeRow[];
  readonly events: readonly LifeEvent[];
}

/** A value and how it is told. */
export interface LessonValue {
  readonly key: string;
  readonly name: string;
  /** NaN where there is nothing to tell. */
  readonly value: number;
  readonly unit: string;
  readonly digits: number;
}

/** A value by its key: its name, unit and digits, and what it is of a brake. */
export type ValueRow = readonly [
  name: string,
  unit: string,
  digits: number,
  of: (s: Stand, i: Instant) => number,
];
export type ValueRows = Readonly<Record<string, ValueRow>>;
