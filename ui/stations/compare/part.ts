import * as v from 'valibot';
import type { Turning } from '../../../sim/index.ts';
import { type Bench, benchSchema, MOST_BAR } from '../../record/bench.ts';
import type { Part } from '../../record/part.ts';

/** A moment that is kept: a brake in its state, and how it is pressed. */
export interface KeptMoment {
  readonly bench: Bench;
  readonly turning: Turning;
  readonly bending: boolean;
  /** Line pressure, bar, and pull of the cable, N. */
  readonly pedal: number;
  readonly cable: number;
}

export interface ComparePart {
  /** The one that is kept; null: nothing is. */
  readonly kept: KeptMoment | null;
  /** What stands beside it; null: the bench as it is now. */
  readonly other: KeptMoment | null;
  /** The kept one is drawn as a ghost in the other stations. */
  readonly ghost: boolean;
  /** The one pedal stands at one travel, mm, or brings one pressure, bar. */
  readonly by: 'travel' | 'pressure';
  readonly at: number;
}

/** Farthest that the one pedal goes, mm. */
export const MOST_TRAVEL = 150;
const MOST_PULL = 5000;

const within = (most: number) => v.pipe(v.number(), v.minValue(0), v.maxValue(most));
// Bench, parts and this one are read in any order: the bench's schema is asked for when something is read.
const kept: v.GenericSchema<unknown, KeptMoment> = v.strictObject({
  bench: v.lazy(() => benchSchema),
  turning: v.picklist([1, 0, -1] as const),
  bending: v.boolean(),
  pedal: v.lazy(() => within(MOST_BAR)),
  cable: within(MOST_PULL),
});

/** Nothing is kept: so too in records from before anything could be. */
export const NOT_KEPT: ComparePart = {
  kept: null,
  other: null,
  ghost: true,
  by: 'travel',
  at: 0,
};

export const comparePart: Part<ComparePart> = {
  anew: false,
  layers: { fan: true, comb: true },
  initial: () => NOT_KEPT,
  schema: v.strictObject({
    kept: v.nullable(kept),
    other: v.nullable(kept),
    ghost: v.boolean(),
    by: v.picklist(['travel', 'pressure']),
    at: within(MOST_TRAVEL),
  }),
};
