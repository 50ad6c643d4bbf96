import { chance, normalQuantile } from '../../math/chance.ts';
import { exp } from '../../math/exp.ts';
import { ln } from '../../math/pow.ts';
import { type Quantity, quantitiesOf } from './quantities.ts';
import type { Setting, Vary, VaryPoint } from './vary.ts';

/**
 * What is not known exactly, carried through the model by many brakes that each have it a little otherwise
 * (Monte Carlo propagation of distributions: JCGM 101:2008). Samples are spread evenly over each tolerance (Latin
 * hypercube; M. D. McKay, R. J. Beckman & W. J. Conover, Technometrics 21, 1979, from memory), by a seed, so the
 * same question has the same answer to the bit.
 */

/** How well a quantity is known. */
export interface Tolerance {
  readonly id: string;
  /**
   * `percent`: anything within ± so many per cent, alike likely. `gauge`: read by a gauge that is right within
   * ± so much in 95 of 100 readings: normal, half of it the standard deviation. `times`: between the value over
   * so much and so many times it, its logarithm alike likely.
   */
  readonly kind: 'percent' | 'gauge' | 'times';
  readonly amount: number;
}

/** A value of it. @param u share of all values that are below, between 0 and 1 */
export function valueAt({ kind, amount }: Tolerance, value: number, u: number): number {
  if (kind === 'percent') return value * (1 + (amount / 100) * (2 * u - 1));
  if (kind === 'gauge') return value + (amount / 2) * normalQuantile(u);
  return value * exp((2 * u - 1) * ln(amount));
}

/** What is asked of a sampling: tolerances, a seed, how many brakes, what is read of each. */
export interface SampleAsk {
  readonly tolerances: readonly Tolerance[];
  readonly seed: number;
  /** Brakes at each place. */
  readonly samples: number;
  readonly keys: readonly string[];
  /** Places that a quantity is put to; left out: the brake as it is. Its own tolerance is about each of them. */
  readonly over?: { readonly id: string; readonly values: readonly number[] };
  /** Instead each tolerance alone, at both ends of its band. */
  readonly alone?: boolean;
}

/** Ends of a band that holds 95 of 100. */
export const BAND_ENDS = [0.025, 0.975] as const;

/** Places from 0 to 1 of one tolerance, one in each of n equal parts, in a mixed order (Fisher–Yates). */
function spread(n: number, random: () => number): number[] {
  const order = Array.from({ length: n }, (_, k) => k);
  for (let k = n - 1; k > 0; k--) {
    const j = Math.floor(random() * (k + 1));
    [order[k], order[j]] = [order[j] as number, order[k] as number];
  }
  return order.map((k) => (k + random()) / n);
}

interface Known {
  readonly tolerance: Tolerance;
  readonly quantity: Quantity;
}

/** @param value about which it lies; its own where left out */
function set({ tolerance, quantity }: Known, u: number, value = quantity.value): Setting {
  const x = valueAt(tolerance, value, u);
  return [quantity.id, quantity.whole ? Math.round(x) : x];
}

/**
 * Points of a sampling, each a brake worked out: in front of `at` the place, if one was asked for; of tolerances
 * alone which of them, and 0 or 1 for its lower or upper end.
 */
export function* sampling(vary: Vary, ask: SampleAsk): Generator<VaryPoint, void> {
  const { over, samples, keys } = ask;
  const all = new Map(quantitiesOf(vary.base, vary.brake).map((q) => [q.id, q]));
  const known = ask.tolerances.flatMap((tolerance): Known[] => {
    const quantity = all.get(tolerance.id);
    return quantity ? [{ tolerance, quantity }] : [];
  });
  if (ask.alone) {
    for (const [which, one] of known.entries()) {
      for (const end of [0, 1] as const) {
        const point = vary.point([set(one, BAND_ENDS[end])], keys);
        yield { ...point, at: [which, end] };
      }
    }
    return;
  }
  const random = chance(ask.seed);
  const places = known.map(() => spread(samples, random));
  // The same brakes at every place: a band then bends as its curve does.
  for (let k = 0; k < samples; k++) {
    const drawn = (at?: number): Setting[] =>
      known.map((one, i) => {
        const u = (places[i] as number[])[k] as number;
        return one.quantity.id === over?.id ? set(one, u, at) : set(one, u);
      });
    if (!over) {
      yield vary.point(drawn(), keys);
      continue;
    }
    for (const x of over.values) {
      const some = drawn(x);
      const own = some.some(([id]) => id === over.id);
      const point = vary.point(own ? some : [[over.id, x], ...some], keys);
      const others = some.filter(([id]) => id !== over.id).map(([, value]) => value);
      yield { ...point, at: [x, ...others] };
    }
  }
}

/** What samples come to: their band and middle, and how many of them could be told. */
export interface Band {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** Share that could be told, 0 to 1. */
  readonly told: number;
}

/** A quantile of sorted values, between two of them by a line (type 7; R. J. Hyndman & Y. Fan, 1996, from memory). */
function quantile(sorted: readonly number[], p: number): number {
  const at = (sorted.length - 1) * p;
  const [i, share] = [Math.floor(at), at - Math.floor(at)];
  const low = sorted[i] ?? Number.NaN;
  return share > 0 ? low + share * ((sorted[i + 1] as number) - low) : low;
}

/** The middle of sampled values and the band around it; what could not be told (NaN) is left out. */
export function bandOf(values: readonly number[]): Band {
  const told = values.filter(Number.isFinite).sort((a, b) => a - b);
  return {
    low: quantile(told, BAND_ENDS[0]),
    middle: quantile(told, 0.5),
    high: quantile(told, BAND_ENDS[1]),
    told: values.length > 0 ? told.length / values.length : 0,
  };
}
