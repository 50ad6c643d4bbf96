import { awayClipWorkerRun as words } from '../../../sim/words/en.ts';
import { spoken } from '../../language.ts';
import type { FromWorker, Made, Order, Picture, Sound, ToWorker } from './picture.ts';

/** A worker that has spoken and then says nothing for so many looks, so many ms apart, is not heard of any more: 10 s. */
const LOOK = 500;
const LOOKS = 20;

/** The page's end of the worker that paints a film: it is given pictures no faster than it paints them. */
export class FilmRun {
  readonly #worker: Worker;
  readonly #quit: AbortSignal;
  #painted = 0;
  #given = 0;
  #begun = false;
  #made: Made | null = null;
  #failed: Error | null = null;
  #wake: (() => void) | null = null;
  #watch: ReturnType<typeof setInterval> | undefined;
  #quiet = 0;

  constructor(quit: AbortSignal) {
    this.#quit = quit;
    this.#worker = new Worker(new URL('./film-worker.ts', import.meta.url), {
      type: 'module',
      name: spoken(),
    });
    this.#worker.onmessage = ({ data }: MessageEvent<FromWorker>) => this.#hear(data);
    this.#worker.onerror = (e) => {
      e.preventDefault();
      this.#fail(e.message || words.whatMakesFilmsCouldNot);
    };
    quit.addEventListener('abort', this.#stopped);
  }

  /** Pictures that are in the file. */
  get painted(): number {
    return this.#painted;
  }

  #stopped = (): void => {
    this.end();
    this.#fail(words.stopped);
  };

  #fail(why: string): void {
    this.#failed ??= new Error(why);
    this.#wake?.();
  }

  /** Looks are counted, not time: after a computer's sleep the first one finds no silence. */
  #look = (): void => {
    this.#quiet += 1;
    if (this.#quiet < LOOKS) return;
    clearInterval(this.#watch);
    this.#fail(words.whatMakesFilmsHasEnded);
  };

  #hear(data: FromWorker): void {
    this.#quiet = 0;
    this.#watch ??= setInterval(this.#look, LOOK);
    if ('failed' in data) {
      this.#fail(data.failed);
      return;
    }
    if ('alive' in data) return;
    if ('made' in data) this.#made = data.made;
    else {
      this.#begun = true;
      this.#painted = data.painted;
    }
    this.#wake?.();
  }

  #send(message: ToWorker): void {
    this.#worker.postMessage(message);
  }

  /** Waits for news until something holds. */
  async #until(holds: () => boolean): Promise<void> {
    for (;;) {
      this.#quit.throwIfAborted();
      if (this.#failed) throw this.#failed;
      if (holds()) return;
      await new Promise<void>((resolve) => {
        this.#wake = resolve;
      });
      this.#wake = null;
    }
  }

  async begin(order: Order): Promise<void> {
    this.#send({ order });
    await this.#until(() => this.#begun);
  }

  /** Gives a picture once fewer than so many wait. The page has its turn between two. */
  async add(picture: Picture | null, ahead: number): Promise<void> {
    await this.#until(() => this.#given - this.#painted < ahead);
    this.#send({ picture });
    this.#given += 1;
  }

  async finish(sounds: readonly Sound[], captions: string): Promise<Made> {
    this.#send({ end: { sounds, captions } });
    await this.#until(() => this.#made !== null);
    return this.#made as Made;
  }

  /** The worker and all it holds are given up. */
  end(): void {
    this.#quit.removeEventListener('abort', this.#stopped);
    clearInterval(this.#watch);
    this.#worker.terminate();
  }
}
