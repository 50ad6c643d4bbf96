import { part as words } from '../sim/words/en.ts';

/** Until what could not be had is asked for again, ms: a network that was gone may be back, and a stage asks at every picture. */
export const AGAIN = 5000;

/** That a part of the page cannot be had, in a sentence: what browsers say of it is in their own words, with an address. */
export const notLoaded = (): string => words.notLoaded;

/** What somebody asked for, where a part of the page brings it; null where that cannot be had, which is told. */
export async function wanted<T>(
  home: { tell(trouble: string): void },
  part: Promise<T>,
): Promise<T | null> {
  try {
    return await part;
  } catch {
    home.tell(notLoaded());
    return null;
  }
}

/** A part of the page that is loaded when it is first needed, and stays. */
export class Part<T> {
  readonly #load: () => Promise<T>;
  readonly #came: (there: T) => void;
  #there: T | null = null;
  #trouble = '';
  #told = false;
  #coming: Promise<T> | null = null;

  /**
   * @param load brings it
   * @param came called once, when it is there
   */
  constructor(load: () => Promise<T>, came: (there: T) => void) {
    this.#load = load;
    this.#came = came;
  }

  /** The part, or null until it is there. */
  get there(): T | null {
    return this.#there;
  }

  /** Why it cannot be had, in a sentence; empty where it is there or comes. */
  get trouble(): string {
    return this.#trouble;
  }

  /**
   * Loads it once; what fails is asked for again when it is next needed, but not at once.
   *
   * @returns rejects where it cannot be had
   */
  bring(): Promise<T> {
    this.#coming ??= this.#load().then(
      (there) => {
        this.#there = there;
        this.#trouble = '';
        this.#came(there);
        return there;
      },
      (error: unknown) => {
        this.#trouble = notLoaded();
        setTimeout(() => {
          this.#coming = null;
        }, AGAIN);
        throw error;
      },
    );
    return this.#coming;
  }

  /**
   * Brings it for what stands on the page now, unless it is there or comes.
   *
   * @param fails told once that it cannot be had
   */
  need(fails: (trouble: string) => void): void {
    if (this.#there || this.#coming) return;
    this.bring().catch(() => {
      if (!this.#told) fails(this.#trouble);
      this.#told = true;
    });
  }
}
