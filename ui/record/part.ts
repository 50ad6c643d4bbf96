import type { GenericSchema } from 'valibot';
import type { Brake, BrakeState } from '../../sim/index.ts';
import type { Moment } from './moment.ts';
import type { LayerName } from './view.ts';

/** A station's part of the record: what it remembers, and how it begins. */
export interface Part<T> {
  /** Refuses what the station could not have come to; links and files are a stranger's data. */
  readonly schema: GenericSchema<unknown, T>;
  /** As the station begins with a brake. */
  initial(brake: Brake): T;
  /** Begins anew with another brake on the bench; false: it speaks of no brake. */
  readonly anew: boolean;
  /** Layers on when the station is first opened; each station keeps its own from then on. */
  readonly layers: Readonly<Partial<Record<LayerName, boolean>>>;
  /** State of the brake that the stage shows while it is open, where it is not the bench's: one that is being fitted. */
  shown?(m: Moment): BrakeState;
  /** What is a person's own and stays when a link is opened, with what the link brings. */
  keeps?(here: T, linked: T): T;
  /** What follows from leaving the station. */
  left?(m: Moment): Moment;
}
