import type { LifeAsk, LifeFailure, LifeNews, LifeStop } from './life-messages.ts';

/** The page's end of the worker: one run at a time, its news as they come. */
export class LifeRun {
  #worker: Worker | null = null;
  #run = 0;
  #onNews: ((news: LifeNews) => void) | null = null;

  get busy(): boolean {
    return this.#onNews !== null;
  }

  /**
   * Starts a run; one that is going on is stopped.
   *
   * @param onNews called with each piece; the last one carries the end
   */
  start(ask: Omit<LifeAsk, 'run'>, onNews: (news: LifeNews) => void): void {
    this.stop();
    this.#worker ??= this.#make();
    this.#run += 1;
    this.#onNews = onNews;
    this.#worker.postMessage({ run: this.#run, ...ask } satisfies LifeAsk);
  }

  /** Stops the run that is going on; no news of it come any more. */
  stop(): void {
    if (!this.#onNews) return;
    this.#onNews = null;
    this.#worker?.postMessage({ stop: true } satisfies LifeStop);
  }

  #make(): Worker {
    const worker = new Worker(new URL('./life-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<LifeNews | LifeFailure>) => {
      const hear = this.#onNews;
      if (data.run !== this.#run || !hear) return;
      if ('failure' in data) {
        this.#onNews = null;
        throw new Error(data.failure);
      }
      if (data.end) this.#onNews = null;
      hear(data);
    };
    return worker;
  }
}
