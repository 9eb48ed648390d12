import { andThen, type Schema } from "../document/schema.ts";
import { type Exact, fraction, ONE } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { share } from "./share.ts";

/** How far off a target may be unless told, as a share of it: of a kitchen's amounts nobody can ask more. */
export const TWO_PER_CENT: Exact = /* @__PURE__ */ fraction(1n, 50n);

/** @internal The schema of how far off something may be, as a share of it: 0 to below 1. */
export function tolerance(): Schema<Exact> {
  return andThen(share(), (share, refuse) => {
    if (compareRatios(share, ONE) >= 0)
      refuse("a tolerance of the whole", 'give a share from 0 to below 1, or text such as "2 %"');
    return share;
  });
}
