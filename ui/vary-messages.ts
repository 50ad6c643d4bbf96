import type { Base, MapAsk, SampleAsk, SweepAsk, VaryPoint } from '../sim/index.ts';
import type { DesignAsk, SeekFound } from './vary-seek.ts';

/** What the page and its worker say to each other about curves, and about a design question turned round. */

/** One curve, a map, or the samples of what is not known exactly: the brake it is of, and what is asked of it. */
export interface CurveAsk {
  readonly base: Base;
  readonly ask: SweepAsk | SampleAsk | MapAsk;
}

/** The curves of a picture, each told about by its place in the list; or sizes that give what is wished. */
export type VaryAsked = { readonly curves: readonly CurveAsk[] } | { readonly seek: DesignAsk };

/** Number of the run beside it; everything told about it carries it. */
export type VaryOrder = VaryAsked & { readonly run: number };

/** New points of one curve. */
export interface NewPoints {
  readonly curve: number;
  readonly points: readonly VaryPoint[];
}

export interface VaryNews {
  readonly run: number;
  readonly fresh: readonly NewPoints[];
  /** Of sizes that are looked for: all that is known by now. */
  readonly found?: SeekFound;
  readonly done: boolean;
}

/** The program broke off: its message. */
export interface VaryFailure {
  readonly run: number;
  readonly failure: string;
}

/** Work done slice by slice. */
export interface Job {
  readonly done: boolean;
  /** Works on until its time is over, or all is done; gives what is new. */
  slice(over: () => boolean): Omit<VaryNews, 'run'>;
}
