import type { MeasureSet } from "../measureSet.ts";

/**
 * US customary liquid measures. The gallon is 231 in³ and the inch 2.54 cm, so the gallon is
 * 3785.411784 ml exactly; the rest are exact divisions of it: quart 1/4, pint 1/8, cup 1/16,
 * gill 1/32, fluid ounce 1/128, tablespoon 1/2 fl oz, teaspoon 1/6 fl oz.
 *
 * Source: NIST Handbook 44, Appendix C, General Tables of Units of Measurement (read in a copy).
 * Dry pints and quarts are other sizes and are not in this set.
 */
export const usCustomary: MeasureSet = {
  name: "us",
  source: "NIST Handbook 44, Appendix C",
  ml: {
    tsp: "4.92892159375",
    tbsp: "14.78676478125",
    "fl oz": "29.5735295625",
    gill: "118.29411825",
    cup: "236.5882365",
    pint: "473.176473",
    quart: "946.352946",
    gallon: "3785.411784",
  },
};
