import type { Decimal } from "decimal.js";
import { type Fraction, isZero, over, plus, times, toDecimal, ZERO } from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { type Cost, costOf, costParts } from "./cost.ts";
import type { ShoppingLine } from "./line.ts";
import type { Grams, Opener } from "./need.ts";

/**
 * What a portion, or a dish's portions, cost of what is bought: each food's cost is shared out by the
 * grams that each takes, so packs that are left over are paid for too, and all of them together cost
 * what the list does. One cost for each currency.
 */
export interface PortionCost {
  /** Ids of the plan; nothing where sheets are shopped for. */
  readonly person: string | undefined;
  readonly meal: string | undefined;
  /** The sheet's name; nothing where a plan is shopped for. */
  readonly dish: string | undefined;
  readonly portions: Decimal;
  readonly costs: readonly Cost[];
  /** Each rounded by itself. */
  readonly perPortion: readonly Cost[];
}

/** Who eats of what is bought. */
export interface Eater extends Pick<PortionCost, "person" | "meal" | "dish"> {
  readonly portions: Fraction;
  readonly sheets: readonly Sheet[];
}

/** Shares the costs of lines out among those who eat of them. */
export function portionCosts(
  eaters: readonly Eater[],
  lines: readonly ShoppingLine[],
  opener: Opener,
): readonly PortionCost[] {
  const grams = eaters.map(({ sheets }) => opener.gramsOf(sheets));
  const prices = pricesPerGram(lines, grams);
  const unpriced = new Set(
    lines.filter(({ cost, bought }) => !cost && !bought.isZero()).map(({ food }) => food),
  );
  const currencies = [...new Set([...prices.values()].map(({ currency }) => currency))].sort();
  const byCurrency = currencies.map((currency) =>
    costParts(
      currency,
      grams.map((own) => ({
        exact: costOfGrams(own, prices, currency),
        bound: [...own.keys()].some((food) => unpriced.has(food))
          ? ("at-least" as const)
          : ("exact" as const),
      })),
    ),
  );
  return eaters.map(({ person, meal, dish, portions }, i) => {
    const costs = byCurrency.flatMap((each) => each[i] ?? []);
    const perPortion = costs.map(({ currency, exact, bound }) =>
      costOf(currency, over(exact, portions), bound),
    );
    return { person, meal, dish, portions: toDecimal(portions), costs, perPortion };
  });
}

interface GramPrice {
  readonly currency: string;
  readonly perGram: Fraction;
}

/** What a gram that is eaten costs, left-over packs and all. */
function pricesPerGram(
  lines: readonly ShoppingLine[],
  grams: readonly Grams[],
): ReadonlyMap<string, GramPrice> {
  const eaten = new Map<string, Fraction>();
  for (const own of grams) for (const [food, g] of own) eaten.set(food, plus(eaten.get(food) ?? ZERO, g));
  return new Map(
    lines.flatMap(({ food, cost }): [string, GramPrice][] => {
      const total = eaten.get(food);
      if (!cost || !total || isZero(total)) return [];
      return [[food, { currency: cost.currency, perGram: over(cost.exact, total) }]];
    }),
  );
}

function costOfGrams(own: Grams, prices: ReadonlyMap<string, GramPrice>, currency: string): Fraction {
  let total = ZERO;
  for (const [food, grams] of own) {
    const price = prices.get(food);
    if (price?.currency === currency) total = plus(total, times(grams, price.perGram));
  }
  return total;
}
