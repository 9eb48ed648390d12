import type { Exact } from "../../number/exact.ts";
import type { Demand, EnergyShareOf, Quantity } from "../demand.ts";
import type { Margin } from "./margin.ts";

/** What a demand is about, told apart by kind. */
export type Subject =
  | {
      readonly kind: "amount";
      readonly of: Quantity;
      /** Of a firm limit, ranged figures count with their high ends: what may be served is what they can hold. */
      readonly by?: "high";
      /** How sure it is to be: each line counts with so many of its standard errors. */
      readonly margin?: Margin;
    }
  | { readonly kind: "share"; readonly of: EnergyShareOf }
  | { readonly kind: "ratio"; readonly of: readonly [Quantity, Quantity] };

/**
 * A demand, read. `least` and `most` are equal where one figure is asked. A least of 0 asks nothing and
 * is left out: every portion brings that much, whatever a line does not tell.
 */
export interface ReadDemand {
  /** As it was handed in. */
  readonly demand: Demand;
  readonly subject: Subject;
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
  readonly firm: boolean;
}
