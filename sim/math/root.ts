import { solveInPlace } from './solve.ts';

/** A place and what the function gives there. */
export type Found = readonly [at: number, value: number];

export interface Until {
  /** The value counts as nothing. */
  readonly near: number;
  /** The ends of the bracket count as one. */
  readonly apart: (a: number, b: number) => boolean;
  readonly trials: number;
  /** Halve the bracket every third time: for a function that runs flat and then steeply. */
  readonly halving?: boolean;
}

/**
 * Root of a function between two places where it has different signs: secants, with the value of an end
 * that stays halved (regula falsi, Illinois variant; M. Dowell & P. Jarratt 1971). The function was last
 * asked at what is given back.
 */
export function rootBetween(f: (x: number) => number, a: Found, b: Found, until: Until): Found {
  let [p, fp] = a;
  let [q, fq] = b;
  let last = 0;
  for (let n = 0; n < until.trials && Math.abs(fq) >= until.near && fp * fq <= 0; n++) {
    const c = until.halving && n % 3 === 2 ? (p + q) / 2 : q - (fq * (q - p)) / (fq - fp);
    const fc = f(c);
    if (fq * fc < 0) {
      p = q;
      fp = fq;
      last = 0;
    } else if (last++ > 0) fp /= 2;
    q = c;
    fq = fc;
    if (until.apart(p, q)) break;
  }
  return [q, fq];
}

/**
 * Goes on from a second place, by the way from the first and twice as far each time, until the function
 * has another sign than at the first. @returns where it was last asked
 */
export function acrossZero(f: (x: number) => number, a: Found, b: Found, trials: number): Found {
  const [from, first] = a;
  let [at, value] = b;
  for (let n = 0; n < trials && first * value > 0; n++) {
    at += at - from;
    value = f(at);
  }
  return [at, value];
}

/** Bounds of a place that is sought again and again, and how. */
export interface Seeking {
  readonly least: number;
  readonly most: number;
  /** First step, while no slope is known. */
  readonly step: number;
  /** A value this near to the wanted one is taken, of it. */
  readonly close: number;
  readonly trials: number;
}

/**
 * Seeks, again and again, where a function that grows, and changes little from one time to the next, has
 * the value that is wanted. The slope is kept: mostly one asking is enough, and the next place is corrected
 * by it (a secant that goes on from where the last one ended).
 */
export class Seeker {
  at: number;
  readonly #seeking: Seeking;
  #slope = 0;

  constructor(first: number, seeking: Seeking) {
    this.at = first;
    this.#seeking = seeking;
  }

  /**
   * @param value what the function has just given at `at`
   * @param f asks it at another place
   */
  seek(wanted: number, value: number, f: (at: number) => number): void {
    const { least, most, step, close, trials } = this.#seeking;
    let found = value;
    for (let i = 0; i < trials; i++) {
      const off = wanted - found;
      // Next time: corrected by the slope that is known. Now: only when it is far off.
      if (this.#slope > 0 && Math.abs(off) < close * wanted) {
        this.at += off / this.#slope;
        return;
      }
      const next = Math.min(
        most,
        Math.max(least, this.at + (this.#slope > 0 ? off / this.#slope : step)),
      );
      const by = next - this.at;
      if (by === 0) return;
      this.at = next;
      const before = found;
      found = f(next);
      const slope = (found - before) / by;
      if (slope > 0) this.#slope = slope;
      else if (this.#slope > 0) this.#slope *= 0.5;
    }
  }
}

/** Change of an unknown for a difference quotient: an error of 1e-8 in the step, none in the answer. */
const SLIGHT = 1e-6;

/**
 * Newton in several unknowns with difference quotients, in place. As many errors as unknowns.
 *
 * @param y values; @param unknowns their places in it; @param errors at the present values
 * @param near errors below this count as nothing
 * @returns whether all came below it
 */
export function newtonOn(
  y: Float64Array,
  unknowns: readonly number[],
  errors: () => readonly number[],
  near: number,
  trials: number,
): boolean {
  const n = unknowns.length;
  const slopes = new Float64Array(n * n);
  const step = new Float64Array(n);
  for (let i = 0; i < trials; i++) {
    const now = errors();
    if (now.every((e) => Math.abs(e) < near)) return true;
    unknowns.forEach((at, column) => {
      const kept = y[at] as number;
      y[at] = kept + SLIGHT;
      errors().forEach((e, row) => {
        slopes[row * n + column] = (e - (now[row] as number)) / SLIGHT;
      });
      y[at] = kept;
    });
    now.forEach((e, row) => {
      step[row] = -e;
    });
    if (!solveInPlace(slopes, step, n)) return false;
    unknowns.forEach((at, k) => {
      y[at] = (y[at] as number) + (step[k] as number);
    });
  }
  return false;
}
