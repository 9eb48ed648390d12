import type { Value } from "../number/exact.ts";

/** Units whose size a set of measures says. */
export type HouseholdUnit =
  | "tsp"
  | "dessertspoon"
  | "tbsp"
  | "fl oz"
  | "gill"
  | "cup"
  | "pint"
  | "quart"
  | "gallon";

/** Small to large, as every set has them. */
export const householdUnits: readonly HouseholdUnit[] = [
  "tsp",
  "dessertspoon",
  "tbsp",
  "fl oz",
  "gill",
  "cup",
  "pint",
  "quart",
  "gallon",
];

/** The sets of spoon and cup sizes that have a published or customary definition. */
export type MeasureSetName = "metric" | "us" | "us-label" | "imperial" | "australian";

/** A set of spoon and cup sizes. A unit that it does not list cannot be read by it. */
export interface MeasureSet {
  readonly name: string;
  /** Millilitres in one of each. */
  readonly ml: { readonly [U in HouseholdUnit]?: Value };
  readonly source?: string;
}

/** A set by name, or one of one's own. */
export type Measures = MeasureSetName | MeasureSet;
