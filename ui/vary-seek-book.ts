import { VaryRun } from './vary-run.ts';
import type { DesignAsk, SeekFound } from './vary-seek.ts';

interface Entry {
  readonly key: readonly unknown[];
  found: SeekFound | null;
  trouble: string;
}

/** Answers that are kept, the last asked first: undoing brings them back. */
const KEPT = 8;

const alike = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((x, i) => x === b[i]);

/** Design questions turned round, as far as they have been answered. Nothing is looked for unless it is asked to be. */
export class SeekBook {
  readonly #run = new VaryRun();
  readonly #changed: () => void;
  #entries: readonly Entry[] = [];
  #going: Entry | null = null;

  /** @param changed called when something has come */
  constructor(changed: () => void) {
    this.#changed = changed;
  }

  #entry(key: readonly unknown[]): Entry | undefined {
    // Another question than the one that is being looked for: nobody waits for that any more.
    if (this.#going && !alike(this.#going.key, key)) this.#drop();
    return this.#entries.find((e) => alike(e.key, key));
  }

  #drop(): void {
    this.#run.stop();
    this.#going = null;
  }

  /** What is known by now; null: nothing. @param key what the question follows from */
  found(key: readonly unknown[]): SeekFound | null {
    return this.#entry(key)?.found ?? null;
  }
  /** What the program says where it broke off. */
  trouble(key: readonly unknown[]): string {
    return this.#entry(key)?.trouble ?? '';
  }
  get busy(): boolean {
    return this.#going !== null;
  }

  /** What has come stays; no more is worked out. */
  stop(): void {
    if (!this.#going) return;
    this.#drop();
    this.#changed();
  }

  start(key: readonly unknown[], ask: DesignAsk): void {
    this.#drop();
    const entry: Entry = { key, found: null, trouble: '' };
    this.#entries = [entry, ...this.#entries.filter((e) => !alike(e.key, key))].slice(0, KEPT);
    this.#going = entry;
    this.#run.start(
      { seek: ask },
      {
        news: ({ found, done }) => {
          if (found) entry.found = found;
          if (done) this.#going = null;
          this.#changed();
        },
        failed: (message) => {
          entry.trouble = message;
          this.#going = null;
          this.#changed();
        },
      },
    );
    this.#changed();
  }
}
