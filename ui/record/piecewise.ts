/** A piece of work; null where nothing comes of it. */
type Piece<R> = () => R | null;

interface Row<R> {
  readonly results: R[];
  readonly queue: Piece<R>[];
}

/**
 * What takes long to follow from the record is worked off piece by piece, so that the page is not
 * held up; what is done stays done. Only what was asked for last is worked on.
 */
export class Piecewise<K, R> {
  readonly #rows = new Map<K, Row<R>>();
  readonly #tell: () => void;
  #wanted: K | null = null;
  #going = false;

  /** @param tell is called after each piece */
  constructor(tell: () => void) {
    this.#tell = tell;
  }

  /** What there is so far, and whether more is coming. */
  of(
    key: K,
    pieces: () => readonly Piece<R>[],
  ): { readonly results: readonly R[]; readonly working: boolean } {
    let row = this.#rows.get(key);
    if (!row) {
      row = { results: [], queue: [...pieces()] };
      this.#rows.set(key, row);
    }
    this.#wanted = key;
    if (row.queue.length > 0 && !this.#going) {
      this.#going = true;
      setTimeout(this.#next);
    }
    return { results: row.results, working: row.queue.length > 0 };
  }

  #next = (): void => {
    const row = this.#wanted === null ? undefined : this.#rows.get(this.#wanted);
    const piece = row?.queue.shift();
    if (!row || !piece) {
      this.#going = false;
      return;
    }
    const result = piece();
    if (result !== null) row.results.push(result);
    this.#tell();
    setTimeout(this.#next);
  };
}
