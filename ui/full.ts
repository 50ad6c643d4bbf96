/**
 * What whoever sits at this device is used to: it stands in the browser's storage, not in the record, since it is
 * no part of the brake on the bench.
 */
class Habit extends EventTarget {
  readonly #store: Pick<Storage, 'getItem' | 'setItem'> | null;
  readonly #key: string;
  #on: boolean;

  /**
   * @param store null where there is none: then it is remembered until the page is left
   * @param first how it is until something else is chosen
   */
  constructor(store: Pick<Storage, 'getItem' | 'setItem'> | null, key: string, first: boolean) {
    super();
    this.#store = store;
    this.#key = key;
    this.#on = first ? store?.getItem(key) !== 'no' : store?.getItem(key) === 'yes';
  }

  get on(): boolean {
    return this.#on;
  }

  turn(): void {
    this.#on = !this.#on;
    try {
      this.#store?.setItem(this.#key, this.#on ? 'yes' : 'no');
    } catch {
      // A storage that is full or shut: it lasts as long as the page.
    }
    this.dispatchEvent(new Event('change'));
  }
}

/** How much of the page is shown: at first what tells most, or all of it. */
export class Fullness extends Habit {
  constructor(store: Pick<Storage, 'getItem' | 'setItem'> | null) {
    super(store, 'takeup-full', false);
  }

  get full(): boolean {
    return this.on;
  }
}

/**
 * Keys of one sign without Ctrl, such as w for the wall. Whoever speaks to the page, or strikes keys unwillingly,
 * can turn them off (Web Content Accessibility Guidelines 2.2, success criterion 2.1.4).
 */
export class SingleKeys extends Habit {
  constructor(store: Pick<Storage, 'getItem' | 'setItem'> | null) {
    super(store, 'takeup-single-keys', true);
  }

  /** Is this key one of those that are off? The space bar is the pedal's, not a sign. */
  mutes({ key }: Pick<KeyboardEvent, 'key'>): boolean {
    return !this.on && key.length === 1 && key !== ' ';
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
