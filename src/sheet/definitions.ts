/** How many definitions are kept apart from the rest before they are put together with them. */
const NEWER = 64;

/**
 * Definitions by name that are never changed. One more is made without copying those there are, so that
 * thousands of columns, each defined on the sheet of the one before, take no longer than their number.
 */
export class Definitions<T> implements Iterable<[string, T]> {
  readonly #older: ReadonlyMap<string, T>;
  readonly #newer: ReadonlyMap<string, T>;

  constructor(older: ReadonlyMap<string, T> = new Map(), newer: ReadonlyMap<string, T> = new Map()) {
    this.#older = older;
    this.#newer = newer;
  }

  /** These and one more, or one of them defined anew, in its old place. */
  with(name: string, value: T): Definitions<T> {
    if (this.#older.has(name)) return new Definitions(new Map([...this]).set(name, value));
    const newer = new Map(this.#newer).set(name, value);
    return newer.size < NEWER
      ? new Definitions(this.#older, newer)
      : new Definitions(new Map([...this.#older, ...newer]));
  }

  get(name: string): T | undefined {
    return this.#newer.get(name) ?? this.#older.get(name);
  }

  has(name: string): boolean {
    return this.#newer.has(name) || this.#older.has(name);
  }

  get size(): number {
    return this.#older.size + this.#newer.size;
  }

  *keys(): Generator<string> {
    yield* this.#older.keys();
    yield* this.#newer.keys();
  }

  *[Symbol.iterator](): Generator<[string, T]> {
    yield* this.#older;
    yield* this.#newer;
  }
}
