import type { MeasureSet } from "../measureSet.ts";

/**
 * Household measures as US nutrition labels mean them. The same paragraph takes an ounce as 28 g on
 * a label; here an ounce is always the avoirdupois ounce.
 *
 * Source: 21 CFR 101.9(b)(5)(viii) (read as quoted at ucum.org, ticket 120).
 */
export const usLabel: MeasureSet = {
  name: "us-label",
  source: "21 CFR 101.9(b)(5)(viii)",
  ml: { tsp: "5", tbsp: "15", "fl oz": "30", cup: "240" },
};
