import { uncloned } from "./uncloned.ts";

/**
 * What is more than its own fields: it refuses a structured clone, and writes its getters into JSON beside
 * its fields. What no reader should be told is behind a method or private.
 */
export abstract class ToldResult {
  /** @internal Refuses a structured clone. */
  readonly cloned: symbol = uncloned;

  /** Gives everything that its fields and getters hold; `JSON.stringify` writes figures as exact text. */
  toJSON(): object {
    const held: { [field: string]: unknown } = {};
    for (let at: object | null = this; at && at !== Object.prototype; at = Object.getPrototypeOf(at)) {
      for (const [name, { get, value }] of Object.entries(Object.getOwnPropertyDescriptors(at))) {
        if (Object.hasOwn(held, name) || (get === undefined && at !== this)) continue;
        held[name] = get === undefined ? value : get.call(this);
      }
    }
    return held;
  }
}

/** Things by id: a map that JSON writes as an object of its entries. */
export class Lookup<V> extends Map<string, V> {
  toJSON(): { readonly [id: string]: V } {
    return Object.fromEntries(this);
  }
}
