import { spoken } from './language.ts';
import { VaryJob } from './vary-job.ts';
import type { VaryAsked, VaryFailure, VaryNews, VaryOrder } from './vary-messages.ts';

/** Slice on the page itself, ms: where there is no worker the page still answers. */
const SLICE = 8;

/**
 * A worker that said nothing for so many looks, so many ms apart, is not heard of any more, as when the system ended
 * it: after 5 s the page works on. Looks are counted, not time: after a computer's sleep the first one finds no silence.
 */
const LOOK = 200;
const LOOKS = 25;
/** Who looks for sizes says nothing while one place is divided, which may be sixty brakes with a life each: after a minute. */
const SEEK_LOOKS = 300;

/** Listens to one run. */
export interface VaryEar {
  news(news: VaryNews): void;
  /** Nothing more comes. */
  failed(message: string): void;
}

/**
 * The page's end: one run at a time in a worker, or on the page in slices where a worker cannot be had. What is
 * stopped is over: the worker is ended, whatever it was in the middle of, and the next run gets a new one.
 */
export class VaryRun {
  #worker: Worker | null = null;
  #none = typeof Worker === 'undefined';
  #run = 0;
  #ear: VaryEar | null = null;
  #order: VaryOrder | null = null;
  /** Points of each curve that were told: who works out the rest does not tell them again. */
  #told: number[] = [];
  #watch: ReturnType<typeof setInterval> | undefined;
  #quiet = 0;

  /** Takes the place of a run that is going on. */
  start(asked: VaryAsked, ear: VaryEar): void {
    const order: VaryOrder = { run: ++this.#run, ...asked };
    this.#ear = ear;
    this.#order = order;
    this.#told = 'curves' in asked ? asked.curves.map(() => 0) : [];
    if (!this.#none) {
      try {
        this.#worker ??= this.#make();
        this.#worker.postMessage(order);
        this.#listen();
        return;
      } catch {
        this.#none = true;
      }
    }
    this.#here(order);
  }

  /** Nothing more comes, and nothing more is worked out. */
  stop(): void {
    if (!this.#ear) return;
    this.#over();
    this.#order = null;
    this.#worker?.terminate();
    this.#worker = null;
  }

  /** The run is over for whoever listened. */
  #over(): void {
    this.#ear = null;
    clearInterval(this.#watch);
  }

  #listen(): void {
    this.#quiet = 0;
    clearInterval(this.#watch);
    const most = this.#order && 'seek' in this.#order ? SEEK_LOOKS : LOOKS;
    this.#watch = setInterval(() => {
      this.#quiet += 1;
      if (this.#quiet >= most) this.#without();
    }, LOOK);
  }

  /** What was asked of the worker is worked out here instead: slower, and all the same. The next run gets a new one. */
  #without(): void {
    clearInterval(this.#watch);
    this.#worker?.terminate();
    this.#worker = null;
    if (this.#order) this.#here(this.#order);
  }

  #hear(data: VaryNews | VaryFailure): void {
    const ear = this.#ear;
    if (data.run !== this.#run || !ear) return;
    this.#quiet = 0;
    if ('failure' in data) {
      this.#over();
      ear.failed(data.failure);
      return;
    }
    if (data.done) this.#over();
    for (const { curve, points } of data.fresh)
      this.#told[curve] = (this.#told[curve] ?? 0) + points.length;
    ear.news(data);
  }

  /** The news of a job that begins anew, without what was told before: its points come in the same order. */
  #unheard(news: VaryNews, skip: number[]): VaryNews {
    const fresh = news.fresh.map(({ curve, points }) => {
      const known = Math.min(skip[curve] ?? 0, points.length);
      skip[curve] = (skip[curve] ?? 0) - known;
      return { curve, points: points.slice(known) };
    });
    return { ...news, fresh };
  }

  /** In slices of the page's own time. */
  #here(order: VaryOrder): void {
    let job: VaryJob;
    const skip = [...this.#told];
    const step = (): void => {
      if (this.#order !== order || !this.#ear) return;
      try {
        job ??= new VaryJob(order);
        const until = performance.now() + SLICE;
        this.#hear(
          this.#unheard(
            job.slice(() => performance.now() >= until),
            skip,
          ),
        );
      } catch (error) {
        this.#hear({
          run: order.run,
          failure: error instanceof Error ? error.message : String(error),
        });
        return;
      }
      if (!job.done) setTimeout(step);
    };
    setTimeout(step);
  }

  #make(): Worker {
    const worker = new Worker(new URL('./vary-worker.ts', import.meta.url), {
      type: 'module',
      name: spoken(),
    });
    worker.onmessage = ({ data }: MessageEvent<VaryNews | VaryFailure>) => {
      if (worker === this.#worker) this.#hear(data);
    };
    worker.onerror = (e) => {
      e.preventDefault();
      if (worker !== this.#worker) return;
      this.#none = true;
      this.#without();
    };
    return worker;
  }
}
