/** One value kept for what it was made of: made anew only when one of these is another. */
export class Kept<T> {
  #key: readonly unknown[] | null = null;
  #value: T | undefined;

  of(key: readonly unknown[], make: () => T): T {
    const known = this.#key;
    if (known === null || known.length !== key.length || key.some((k, i) => k !== known[i])) {
      this.#value = make();
      this.#key = key;
    }
    return this.#value as T;
  }
}

/** Values kept for the objects that they were made of, as long as those live. */
export class KeptFor<K extends object, T> {
  readonly #values = new WeakMap<K, T>();

  of(key: K, make: () => T): T {
    const known = this.#values.get(key);
    if (known !== undefined) return known;
    const made = make();
    this.#values.set(key, made);
    return made;
  }
}
