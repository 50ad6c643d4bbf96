import { lifeRun as words } from '../sim/words/en.ts';
import { spoken } from './language.ts';
import type {
  LifeAlive,
  LifeAsk,
  LifeDriver,
  LifeEar,
  LifeFailure,
  LifeNews,
  LifeOrder,
  LifeStop,
  LifeTrouble,
} from './life-messages.ts';

/**
 * A worker that said nothing for so many looks, so many ms apart, is not heard of any more: within 2 s.
 * Looks are counted, not time: after a computer's sleep the first one finds no silence.
 */
const LOOK = 200;
const LOOKS = 9;

/** The page's end of the worker: one run at a time, its news as they come, and what goes wrong. */
export class LifeRun implements LifeDriver {
  #worker: Worker | null = null;
  /** It has spoken since it was made. */
  #spoke = false;
  #run = 0;
  #ear: LifeEar | null = null;
  #watch: ReturnType<typeof setInterval> | null = null;
  #quiet = 0;

  start(order: LifeOrder, ear: LifeEar): void {
    this.stop();
    const run = ++this.#run;
    this.#ear = ear;
    this.#listen();
    try {
      this.#worker ??= this.#make();
      this.#worker.postMessage({ run, ...order } satisfies LifeAsk);
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      // Told like all else: after this call.
      queueMicrotask(() => {
        if (run === this.#run) this.#fail({ kind: 'no start', message });
      });
    }
  }

  stop(): void {
    if (!this.#ear) return;
    const silent = this.#watch === null;
    this.#over();
    if (silent) this.#end();
    else this.#worker?.postMessage({ stop: true } satisfies LifeStop);
  }

  /** The run is over for whoever listened. */
  #over(): void {
    this.#ear = null;
    this.#unwatch();
  }

  /** The next run gets a new worker. */
  #end(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#spoke = false;
  }

  #fail(trouble: LifeTrouble): void {
    const ear = this.#ear;
    this.#over();
    this.#end();
    ear?.trouble(trouble);
  }

  #listen(): void {
    this.#quiet = 0;
    this.#watch ??= setInterval(this.#look, LOOK);
  }

  #unwatch(): void {
    if (this.#watch !== null) clearInterval(this.#watch);
    this.#watch = null;
  }

  #look = (): void => {
    this.#quiet += 1;
    if (this.#quiet < LOOKS) return;
    // It may only be slow: what it still says is heard, until the next run is asked for.
    this.#unwatch();
    this.#ear?.trouble({ kind: 'silent', message: '' });
  };

  #make(): Worker {
    const worker = new Worker(new URL('./life-worker.ts', import.meta.url), {
      type: 'module',
      name: spoken(),
    });
    const mine = (): boolean => worker === this.#worker;
    worker.onmessage = ({ data }: MessageEvent<LifeNews | LifeFailure | LifeAlive>) => {
      if (!mine()) return;
      this.#spoke = true;
      if (this.#ear) this.#listen();
      if (!('alive' in data)) this.#hear(data);
    };
    worker.onerror = (e) => {
      // Said in the page; a script that is missing gives an event without a message.
      e.preventDefault();
      if (mine())
        this.#fail({ kind: this.#spoke ? 'error' : 'no start', message: e.message ?? '' });
    };
    worker.onmessageerror = () => {
      if (mine()) this.#fail({ kind: 'error', message: words.itsNewsCouldNotBe });
    };
    return worker;
  }

  #hear(data: LifeNews | LifeFailure): void {
    const ear = this.#ear;
    if (data.run !== this.#run || !ear) return;
    if ('failure' in data) {
      this.#fail({ kind: 'error', message: data.failure });
      return;
    }
    if (data.end) this.#over();
    ear.news(data);
  }
}
