import { VaryJob } from './vary-job.ts';
import type { CurveAsk, VaryFailure, VaryNews, VaryOrder, VaryStop } from './vary-messages.ts';

/** Slice on the page itself, ms: where there is no worker the page still answers. */
const SLICE = 8;

/** Listens to one run. */
export interface VaryEar {
  news(news: VaryNews): void;
  /** Nothing more comes. */
  failed(message: string): void;
}

/** The page's end: one run at a time in a worker, or on the page in slices where a worker cannot be had. */
export class VaryRun {
  #worker: Worker | null = null;
  #none = typeof Worker === 'undefined';
  #run = 0;
  #ear: VaryEar | null = null;
  #order: VaryOrder | null = null;

  start(curves: readonly CurveAsk[], ear: VaryEar): void {
    this.stop();
    const order: VaryOrder = { run: ++this.#run, curves };
    this.#ear = ear;
    this.#order = order;
    if (!this.#none) {
      try {
        this.#worker ??= this.#make();
        this.#worker.postMessage(order);
        return;
      } catch {
        this.#none = true;
      }
    }
    this.#here(order);
  }

  stop(): void {
    if (!this.#ear) return;
    this.#ear = null;
    this.#order = null;
    this.#worker?.postMessage({ stop: true } satisfies VaryStop);
  }

  /** The worker goes when nobody looks at curves any more. */
  end(): void {
    this.stop();
    this.#worker?.terminate();
    this.#worker = null;
  }

  #hear(data: VaryNews | VaryFailure): void {
    const ear = this.#ear;
    if (data.run !== this.#run || !ear) return;
    if ('failure' in data) {
      this.#ear = null;
      ear.failed(data.failure);
      return;
    }
    if (data.done) this.#ear = null;
    ear.news(data);
  }

  /** In slices of the page's own time. */
  #here(order: VaryOrder): void {
    let job: VaryJob;
    const step = (): void => {
      if (this.#order !== order || !this.#ear) return;
      try {
        job ??= new VaryJob(order);
        const until = performance.now() + SLICE;
        this.#hear(job.slice(() => performance.now() >= until));
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
    const worker = new Worker(new URL('./vary-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<VaryNews | VaryFailure>) => {
      if (worker === this.#worker) this.#hear(data);
    };
    worker.onerror = (e) => {
      e.preventDefault();
      if (worker !== this.#worker) return;
      worker.terminate();
      this.#worker = null;
      this.#none = true;
      // What was asked of it is worked out here instead: slower, and all the same.
      if (this.#order) this.#here(this.#order);
    };
    return worker;
  }
}
