import { fault, quote } from "../number/error.ts";
import { exact, type Fraction, type Value } from "../number/fraction.ts";
import type { ComponentId } from "./components.ts";

/** Retention as written: shares left after cooking by component, or a code of the retention table. */
export type RetentionInput = string | { readonly [C in ComponentId]?: Value };

/** The share of each component that cooking leaves, 0 to 1. Throws `recipe-malformed` for a code not in the table. */
export function retentionShares(retention: RetentionInput): ReadonlyMap<ComponentId, Fraction> {
  if (typeof retention === "string") {
    throw fault(
      "recipe-malformed",
      `no retention code ${quote(retention)}`,
      "give shares from 0 to 1 by component",
    );
  }
  return new Map(Object.entries(retention).map(([id, share]) => [id as ComponentId, exact(share)]));
}
