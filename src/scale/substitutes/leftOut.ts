import type { Allergen } from "../../food/allergens.ts";
import type { Exact } from "../../number/exact.ts";

/** A food of which a cook would not serve what it would take, in grams of the batch. */
export interface OutsideServing {
  readonly food: string;
  /** What brings as much as the line did. */
  readonly grams: Exact;
  /** What a cook would serve. */
  readonly least: Exact;
  readonly most: Exact;
}

/** Foods that were left out, by what stood against them. */
export interface FoodsLeftOut {
  readonly avoided: { readonly food: string; readonly holds: readonly Allergen[] }[];
  readonly unknown: string[];
  readonly without: string[];
  readonly outside: OutsideServing[];
}

/** Why nothing was found, and what would open it. */
export interface Opening {
  readonly why: string;
  readonly opens: readonly string[];
}
