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

/** What a run is driven by. */
export interface LifeOrder {
  readonly brake: Brake;
  /** Its shoes bend. */
  readonly bending: boolean;
  readonly state: BrakeState;
  readonly duty: Duty;
  readonly options: LifeOptions;
  /** Drives from new to this standing state of the brake, in place of a distance. */
  readonly standing?: string;
}

export interface LifeAsk extends LifeOrder {
  /** Number of the run; everything told about it carries it. */
  readonly run: number;
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
}

/** The run broke off with an error of the program: its message. */
export interface LifeFailure {
  readonly run: number;
  readonly failure: string;
}

/** The worker is there: said when it has loaded, and before what takes long. */
export interface LifeAlive {
  readonly alive: true;
}

/** Why a run does not go on. */
export interface LifeTrouble {
  /** The worker did not load; it says nothing, though it may only be slow; the program broke off. */
  readonly kind: 'no start' | 'silent' | 'error';
  /** What the browser or the program says of it; may be empty. */
  readonly message: string;
}

/** Listens to one run. */
export interface LifeEar {
  news(news: LifeNews): void;
  /** Nothing more comes, unless what was silent speaks after all. */
  trouble(trouble: LifeTrouble): void;
}

/** What drives lives, one at a time. */
export interface LifeDriver {
  /** Starts a run; one that is going on is stopped. */
  start(order: LifeOrder, ear: LifeEar): void;
  /** Stops the run that is going on; nothing of it is told any more. */
  stop(): void;
}
