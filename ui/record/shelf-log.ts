import type { Shelf } from './shelf.ts';

/** How many writes of each window stand in what one of them wrote, by the window's id. */
export type Seen = Readonly<Record<string, number>>;

/** As many windows are remembered, and as many writes of one's own. */
const WINDOWS = 16;
const WRITES = 12;

export function readSeen(data: unknown): Seen {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return {};
  const counts = Object.entries(data).filter((e) => Number.isSafeInteger(e[1]) && e[1] >= 0);
  return Object.fromEntries(counts.slice(-WINDOWS));
}

/**
 * What a window has written of the shelf. Browsers hand a window what another one wrote only after a while: one that
 * writes meanwhile writes over what it could not see. So each write says how many of each window's it has seen, and
 * what another wrote is held against the shelf as it stood after the last of one's own that it knew.
 */
export class ShelfLog {
  readonly #me: string;
  #count: number;
  readonly #after = new Map<number, Shelf>();

  constructor(me: string, seen: Seen, shelf: Shelf) {
    this.#me = me;
    this.#count = seen[me] ?? 0;
    this.#after.set(this.#count, shelf);
  }

  /** Of one's own writes, the last that was seen. */
  #known(seen: Seen): number {
    return Math.min(seen[this.#me] ?? 0, this.#count);
  }

  /** Does what was written know of all that was written here? */
  knows(seen: Seen): boolean {
    return this.#known(seen) === this.#count;
  }

  /** The shelf that both set out from. */
  base(seen: Seen): Shelf {
    const at = this.#known(seen);
    const [first] = this.#after.values();
    return this.#after.get(at) ?? (first as Shelf);
  }

  /** The shelf as it last stood in the browser, as far as is known here. */
  get last(): Shelf {
    return this.#after.get(this.#count) as Shelf;
  }

  /** Another window's is taken over: it is what both go on from. */
  heard(seen: Seen, shelf: Shelf): void {
    this.#after.set(this.#known(seen), shelf);
  }

  /** Notes a write; gives what is to be written with it. */
  writes(seen: Seen, shelf: Shelf): Seen {
    this.#count++;
    this.#after.set(this.#count, shelf);
    for (const at of this.#after.keys()) if (at <= this.#count - WRITES) this.#after.delete(at);
    const { [this.#me]: _, ...others } = seen;
    return readSeen({ ...others, [this.#me]: this.#count });
  }
}
