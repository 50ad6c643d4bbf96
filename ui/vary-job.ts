import { mapping, sampling, sweep, Vary, type VaryPoint } from '../sim/index.ts';
import type { CurveAsk, Job, NewPoints, VaryNews, VaryOrder } from './vary-messages.ts';
import { SeekJob } from './vary-seek-job.ts';

/** Curves worked out by turns. */
class CurvesJob implements Job {
  readonly #curves: (Generator<VaryPoint, void> | null)[];
  /** Whose turn it is: coarse points of all curves come before fine ones of any. */
  #next = 0;

  constructor(curves: readonly CurveAsk[]) {
    // Curves of one brake that differ in what is set besides are swept on one.
    const made = new Map<object, Vary>();
    this.#curves = curves.map(({ base, ask }) => {
      const vary = made.get(base) ?? new Vary(base);
      made.set(base, vary);
      if ('across' in ask) return mapping(vary, ask);
      return 'tolerances' in ask ? sampling(vary, ask) : sweep(vary, ask);
    });
  }

  get done(): boolean {
    return this.#curves.every((c) => c === null);
  }

  slice(over: () => boolean): Omit<VaryNews, 'run'> {
    const fresh = new Map<number, VaryPoint[]>();
    do {
      const curve = this.#next;
      this.#next = (curve + 1) % this.#curves.length;
      const point = this.#curves[curve]?.next();
      if (!point) continue;
      if (point.done) this.#curves[curve] = null;
      else fresh.set(curve, [...(fresh.get(curve) ?? []), point.value]);
    } while (!this.done && !over());
    const told: NewPoints[] = [...fresh].map(([curve, points]) => ({ curve, points }));
    return { fresh: told, done: this.done };
  }
}

/** An order’s work, slice by slice: the worker’s without the worker. */
export class VaryJob {
  readonly #run: number;
  readonly #job: Job;

  constructor(order: VaryOrder) {
    this.#run = order.run;
    this.#job = 'seek' in order ? new SeekJob(order.seek) : new CurvesJob(order.curves);
  }

  get done(): boolean {
    return this.#job.done;
  }

  /** Works on until its time is over, or all is done; gives what is new. */
  slice(over: () => boolean): VaryNews {
    return { run: this.#run, ...this.#job.slice(over) };
  }
}
