import { type Exact, exact, fraction, over, times, type Value } from "../number/exact.ts";

/** International units in one microgram of vitamin D: Institute of Medicine (2011); 21 CFR 101.9. */
export const VITAMIN_D_IU: Exact = /* @__PURE__ */ fraction(40n);

/**
 * Micrograms of vitamin D from international units. Other vitamins have no such function: what an
 * international unit of them weighs depends on the form that is meant. Throws the number codes.
 *
 * @example
 * ```ts
 * console.log(vitaminDFromIu(400).toString()); // => 10
 * ```
 */
export function vitaminDFromIu(iu: Value): Exact {
  return over(exact(iu), VITAMIN_D_IU);
}

/** International units from micrograms of vitamin D. Throws the number codes. */
export function vitaminDToIu(micrograms: Value): Exact {
  return times(exact(micrograms), VITAMIN_D_IU);
}
