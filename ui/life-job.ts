import { createLife, createRig, KM, type Life } from '../sim/index.ts';
import type { LifeAsk, LifeNews } from './life-messages.ts';

/** Driven at one go within a slice, mm: short, so that a slow machine too is heard of often. */
const PIECE = 10 * KM;

/** A life driven slice by slice, what is new told after each: the worker's work without the worker. */
export class LifeJob {
  readonly #run: number;
  readonly #life: Life;
  #rows = 0;
  #events = 0;

  constructor({ bending, brake, duty, options, run, state }: LifeAsk) {
    this.#run = run;
    this.#life = createLife(createRig(brake, { flexible: bending }), state, duty, options);
  }

  get done(): boolean {
    return this.#life.done;
  }

  /** Drives on until its time is over, or the life; gives what is new. */
  slice(over: () => boolean): LifeNews {
    const life = this.#life;
    while (!life.done && !over()) life.advance(PIECE);
    const { end, events, progress, rows } = life;
    const news: LifeNews = {
      run: this.#run,
      rows: rows.slice(this.#rows),
      events: events.slice(this.#events),
      progress,
      end,
    };
    this.#rows = rows.length;
    this.#events = events.length;
    return news;
  }
}
