import { number, word } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import { fields, once, optional, type Schema } from "../../document/schema.ts";
import { together } from "../../number/error.ts";
import { type Exact, exact, fraction, over, sum, times, type Value, ZERO } from "../../number/exact.ts";

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

/** Alpha-tocopherol equivalents in mg, from the forms of vitamin E. Never less than the alpha-tocopherol. Throws `food-malformed` and the number codes. */
export function alphaTocopherolEquivalents(
  forms: Tocopherols,
  by: keyof typeof tocopherolFactors = "mccance-widdowson",
): Exact {
  const { set, amounts } = together({
    set: () => read(word(Object.keys(tocopherolFactors) as (typeof by)[]), by, "food-malformed", ["by"]),
    amounts: () => read(formsSchema(), forms, "food-malformed"),
  });
  const factors = Object.entries(tocopherolFactors[set]) as [keyof Tocopherols, string][];
  return sum(factors.map(([name, factor]) => times(amounts[name] ?? ZERO, exact(factor))));
}

const formsSchema: () => Schema<{ readonly [F in keyof Tocopherols]: Exact }> = /* @__PURE__ */ once(() => {
  const milligrams = number({ from: 0 });
  const some = optional(milligrams);
  return fields<{ readonly [F in keyof Tocopherols]: Exact }>({
    alpha: milligrams,
    beta: some,
    gamma: some,
    delta: some,
    alphaTocotrienol: some,
    betaTocotrienol: some,
    gammaTocotrienol: some,
  });
});

/**
 * The alpha-tocopherol that is reckoned in a mixed diet's equivalents: eight tenths. Institute of
 * Medicine 2000, DRI for Vitamin C, Vitamin E, Selenium and Carotenoids, chapter 6; unverified. An
 * estimate for whole diets, not for one food.
 */
export function alphaTocopherolEstimate(equivalents: Value): Exact {
  return over(times(exact(equivalents), fraction(8n)), fraction(10n));
}
