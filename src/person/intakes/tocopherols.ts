import { checkFields } from "../../document/fields.ts";
import { fault, quote, within } from "../../number/error.ts";
import { exact, type Fraction, fraction, over, sum, times, type Value } from "../../number/fraction.ts";
import { didYouMean } from "../../number/near.ts";

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
): Fraction {
  if (typeof by !== "string" || !Object.hasOwn(tocopherolFactors, by)) {
    const sets = Object.keys(tocopherolFactors);
    const hint = didYouMean(by, sets, `use ${sets.join(" or ")}`);
    throw fault("food-malformed", `${quote(by)} is no set of factors`, hint, ["by"]);
  }
  const factors = tocopherolFactors[by];
  const names = Object.keys(factors) as (keyof Tocopherols)[];
  checkFields(forms, names, "food-malformed");
  if (forms.alpha === undefined) {
    throw fault("food-malformed", "no alpha-tocopherol", "give its milligrams, 0 where there is none", [
      "alpha",
    ]);
  }
  return sum(
    names.map((name) =>
      times(
        within([name], () => exact(forms[name] ?? 0)),
        exact(factors[name]),
      ),
    ),
  );
}

/**
 * The alpha-tocopherol that is reckoned in a mixed diet's equivalents: eight tenths. Institute of
 * Medicine 2000, DRI for Vitamin C, Vitamin E, Selenium and Carotenoids, chapter 6; unverified. An
 * estimate for whole diets, not for one food.
 */
export function alphaTocopherolEstimate(equivalents: Value): Fraction {
  return over(times(exact(equivalents), fraction(8n)), fraction(10n));
}
