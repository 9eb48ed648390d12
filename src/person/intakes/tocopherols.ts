import type { Decimal } from "decimal.js";
import { within } from "../../number/error.ts";
import { exact, fraction, over, sum, times, toDecimal, type Value } from "../../number/fraction.ts";

/** Milligrams of each form of vitamin E. */
export interface Tocopherols {
  readonly alpha: Value;
  readonly beta?: Value;
  readonly gamma?: Value;
  readonly delta?: Value;
  readonly alphaTocotrienol?: Value;
  readonly betaTocotrienol?: Value;
  readonly gammaTocotrienol?: Value;
}

/**
 * What each form counts for in alpha-tocopherol equivalents, by two food tables that differ. INFOODS,
 * sources to the tagnames, part 4: VITE keywords USDA and MW (McCance and Widdowson).
 */
export const tocopherolFactors: {
  readonly [Set in "usda" | "mccance-widdowson"]: { readonly [T in keyof Tocopherols]-?: string };
} = {
  usda: {
    alpha: "1",
    beta: "0.4",
    gamma: "0.1",
    delta: "0.01",
    alphaTocotrienol: "0.3",
    betaTocotrienol: "0.05",
    gammaTocotrienol: "0.01",
  },
  "mccance-widdowson": {
    alpha: "1",
    beta: "0.3",
    gamma: "0.15",
    delta: "0",
    alphaTocotrienol: "0.3",
    betaTocotrienol: "0",
    gammaTocotrienol: "0",
  },
};

/** Alpha-tocopherol equivalents in mg, from the forms of vitamin E. Never less than the alpha-tocopherol. */
export function alphaTocopherolEquivalents(
  forms: Tocopherols,
  by: keyof typeof tocopherolFactors = "mccance-widdowson",
): Decimal {
  const factors = tocopherolFactors[by];
  const names = Object.keys(factors) as (keyof Tocopherols)[];
  return toDecimal(
    sum(
      names.map((name) =>
        times(
          within([name], () => exact(forms[name] ?? 0)),
          exact(factors[name]),
        ),
      ),
    ),
  );
}

/**
 * The alpha-tocopherol that is reckoned in a mixed diet's equivalents: eight tenths. Institute of
 * Medicine 2000, DRI for Vitamin C, Vitamin E, Selenium and Carotenoids, chapter 6; from memory. An
 * estimate for whole diets, not for one food.
 */
export function alphaTocopherolEstimate(equivalents: Value): Decimal {
  return toDecimal(over(times(exact(equivalents), fraction(8n)), fraction(10n)));
}
