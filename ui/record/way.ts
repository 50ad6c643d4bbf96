import type { Place } from './walk.ts';

/** What an entry of the browser's history says. */
interface Entry {
  readonly takeup: string;
  readonly place: Place;
  /** How many of the page's entries lie before it; entries of older pages do not say. */
  readonly at?: number;
  /** Stands there for a dialog alone, so that Back has something to close. */
  readonly dialog?: true;
}

export const entryOf = (state: unknown): Entry | null =>
  typeof state === 'object' && state !== null && 'takeup' in state && 'place' in state
    ? (state as Entry)
    : null;

/** What the way is of. */
interface Walker {
  /** Where the page stands now. */
  place(): Place;
  /** Back or Forward came to a place. */
  walk(place: Place): void;
  /** A way of its own is over: what waited for it may go on. */
  arrived(): void;
}

/**
 * The page's entries in the browser's history. A dialog is closed by Back before anything behind it moves:
 * the browser has then gone one entry back already, and is sent forth again, so that no entry is lost.
 * The first entry has none before it; there a dialog gets an entry of its own, which goes with it.
 */
export class Way {
  readonly #window: string;
  readonly #walker: Walker;
  readonly #dialogs = new Set<HTMLDialogElement>();
  #at = 0;
  /** The last entry that is known of. */
  #most = 0;
  #dialog = false;
  #turning = false;

  constructor(window: string, walker: Walker) {
    this.#window = window;
    this.#walker = walker;
  }

  start(): void {
    this.#at = entryOf(history.state)?.at ?? 0;
    this.#most = this.#at;
    this.#dialog = entryOf(history.state)?.dialog === true;
    window.addEventListener('popstate', this.#came);
    window.addEventListener('takeup-modal', this.#opened);
    this.write();
  }

  stop(): void {
    window.removeEventListener('popstate', this.#came);
    window.removeEventListener('takeup-modal', this.#opened);
  }

  /** The browser is on a way that this sent it: entries are not to be touched. */
  get turning(): boolean {
    return this.#turning;
  }

  #entry(): Entry {
    const entry = {
      takeup: this.#window,
      place: this.#walker.place(),
      at: this.#at,
    };
    return this.#dialog ? { ...entry, dialog: true } : entry;
  }

  /** Writes where the page stands, and its address, into the entry that is there. */
  write(address?: string): void {
    history.replaceState(this.#entry(), '', address);
  }

  /** The page went on to another place. */
  push(address: string): void {
    if (this.#dialog) {
      // What was opened for a dialog is taken over by what came of it.
      this.#dialog = false;
      this.write(address);
      return;
    }
    this.#at++;
    this.#most = this.#at;
    history.pushState(this.#entry(), '', address);
  }

  #open(): HTMLDialogElement | undefined {
    return [...this.#dialogs].filter((d) => d.open && d.isConnected).at(-1);
  }

  #opened = (e: Event): void => {
    const dialog = (e as CustomEvent<HTMLDialogElement>).detail;
    this.#dialogs.delete(dialog);
    this.#dialogs.add(dialog);
    dialog.addEventListener('close', this.#closed, { once: true });
    if (this.#at > 0 || this.#most > 0 || this.#turning || this.#dialog) return;
    this.#at++;
    this.#dialog = true;
    history.pushState(this.#entry(), '');
  };

  /** Closed by its own button or a key: its entry goes with it. */
  #closed = (): void => {
    for (const d of this.#dialogs) if (!d.open) this.#dialogs.delete(d);
    // What closed it may go to another place at once, which then takes the entry.
    setTimeout(() => {
      if (!this.#dialog || this.#open() || this.#turning) return;
      this.#turning = true;
      history.back();
    });
  };

  #came = (e: PopStateEvent): void => {
    const entry = entryOf(e.state);
    if (!entry) return;
    const from = this.#at;
    const to = entry.at ?? from;
    if (this.#turning) {
      this.#turning = false;
      this.#at = to;
      this.#dialog = entry.dialog === true;
      this.#walker.arrived();
      return;
    }
    const dialog = this.#open();
    if (!dialog || to === from || this.#dialog) {
      const whole = !this.#dialog;
      this.#at = to;
      this.#dialog = entry.dialog === true;
      dialog?.close();
      if (whole || !dialog) this.#walker.walk(entry.place);
      else this.#walker.arrived();
      return;
    }
    dialog.close();
    this.#turning = true;
    history.go(from - to);
  };
}
