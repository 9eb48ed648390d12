import type { Allergen } from "../../food/allergens.ts";
import type { ComponentId } from "../../food/components.ts";
import type { Quantity } from "../demand.ts";

/** Options of {@link substitutes}. */
export interface SubstitutesOptions {
  /**
   * What a substitute brings just as much of as the line: a component, or `mass`. Unless told: `protein`
   * of a line that has much of it (5 g and more in 100 g, a fifth of the energy or more), `energy` of
   * others; but of one that brings under 20 kcal a portion `sodium`, where it is salty (1 g and more in
   * 100 g), or `mass`.
   */
  readonly match?: Quantity;
  /**
   * What of a portion is to stay close beside: energy, protein, fat, carbohydrate by difference and
   * fibre, unless told. It decides which come first.
   */
  readonly components?: readonly ComponentId[];
  /** Allergens that a substitute may not hold. Foods of which nothing is said are left out and listed. */
  readonly avoid?: readonly Allergen[];
  /** Ids of the foods to choose among: those of the same group and state, unless told. */
  readonly among?: readonly string[];
  /** How many at most: 5 unless told. */
  readonly most?: number;
}
