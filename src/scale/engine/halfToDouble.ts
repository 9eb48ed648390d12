import { type Exact, fraction, ZERO } from "../../number/exact.ts";

/** Ends of what a factor over another may be. */
export interface FactorRange {
  readonly least: Exact;
  /** Open where only a line's own `most` holds it. */
  readonly most: Exact | undefined;
}

/** Half to double: what a ratio may become unless told. */
const HALF_TO_DOUBLE: FactorRange = {
  least: /* @__PURE__ */ fraction(1n, 2n),
  most: /* @__PURE__ */ fraction(2n),
};
/** A line's own least or most is grams of one portion, a row of its own, and replaces that end. */
const OWN_LEAST: FactorRange = { least: ZERO, most: HALF_TO_DOUBLE.most };
const OWN_MOST: FactorRange = { least: HALF_TO_DOUBLE.least, most: undefined };

/** No ends but nothing. */
export const ANY: FactorRange = { least: ZERO, most: undefined };

/** Returns what a part's ratio to its dish may be: half to double, but for the ends that are told. */
export function partRange(told: Partial<FactorRange> | undefined): FactorRange {
  return told ? { ...HALF_TO_DOUBLE, ...told } : HALF_TO_DOUBLE;
}

/** Returns what a line's ratio to its dish may be: half to double, but for the ends that it has in grams. */
export function lineRange(
  own: { readonly least?: unknown; readonly most?: unknown } | undefined,
): FactorRange {
  if (own?.least === undefined) return own?.most === undefined ? HALF_TO_DOUBLE : OWN_MOST;
  return own.most === undefined ? OWN_LEAST : ANY;
}
