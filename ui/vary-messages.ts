import type { Base, MapAsk, SampleAsk, SweepAsk, VaryPoint } from '../sim/index.ts';

/** What the page and its worker say to each other about curves. */

/** One curve, a map, or the samples of what is not known exactly: the brake it is of, and what is asked of it. */
export interface CurveAsk {
  readonly base: Base;
  readonly ask: SweepAsk | SampleAsk | MapAsk;
}

/** The curves of a picture; each is told about by its place in the list. */
export interface VaryOrder {
  /** Number of the run; everything told about it carries it. */
  readonly run: number;
  readonly curves: readonly CurveAsk[];
}

/** The run that is going on is given up; nothing more is told about it. */
export interface VaryStop {
  readonly stop: true;
}

/** New points of one curve. */
export interface NewPoints {
  readonly curve: number;
  readonly points: readonly VaryPoint[];
}

export interface VaryNews {
  readonly run: number;
  readonly fresh: readonly NewPoints[];
  readonly done: boolean;
}

/** The program broke off: its message. */
export interface VaryFailure {
  readonly run: number;
  readonly failure: string;
}
