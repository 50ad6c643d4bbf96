import type {
  Brake,
  BrakeState,
  Duty,
  LifeEnd,
  LifeEvent,
  LifeOptions,
  LifeRow,
} from '../sim/index.ts';

/** What the page and its worker say to each other about a life run. */

export interface LifeAsk {
  /** Number of the run; everything told about it carries it. */
  readonly run: number;
  readonly brake: Brake;
  readonly state: BrakeState;
  readonly duty: Duty;
  readonly options: LifeOptions;
  /** Drives from new to this standing state of the brake, in place of a distance. */
  readonly standing?: string;
}

/** Stops the run that is going on; nothing more is told about it. */
export interface LifeStop {
  readonly stop: true;
}

export interface LifeNews {
  readonly run: number;
  /** New since the last news. */
  readonly rows: readonly LifeRow[];
  readonly events: readonly LifeEvent[];
  /** Share of the way, 0..1. */
  readonly progress: number;
  /** Why it is over; null while it goes on. */
  readonly end: LifeEnd | null;
  /** The brake as it stands, when it is over. */
  readonly state: BrakeState | null;
}

/** The run broke off with an error of the program: its message. */
export interface LifeFailure {
  readonly run: number;
  readonly failure: string;
}
