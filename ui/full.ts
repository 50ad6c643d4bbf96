/**
 * How much of the page is shown: at first what tells most, or all of it. It is a habit of whoever sits at this
 * device, not of the brake on the bench: it stands in the browser's storage, not in the record.
 */
const KEY = 'takeup-full';

export class Fullness extends EventTarget {
  readonly #store: Pick<Storage, 'getItem' | 'setItem'> | null;
  #full: boolean;

  /** @param store null where there is none: then it is remembered until the page is left */
  constructor(store: Pick<Storage, 'getItem' | 'setItem'> | null) {
    super();
    this.#store = store;
    this.#full = store?.getItem(KEY) === 'yes';
  }

  get full(): boolean {
    return this.#full;
  }

  turn(): void {
    this.#full = !this.#full;
    try {
      this.#store?.setItem(KEY, this.#full ? 'yes' : 'no');
    } catch {
      // A storage that is full or shut: it lasts as long as the page.
    }
    this.dispatchEvent(new Event('change'));
  }
}

/** The browser's storage; null where a reader has shut it. */
export function storeOf(): Storage | null {
  try {
    return localStorage;
  } catch {
    return null;
  }
}
