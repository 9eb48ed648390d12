import { type Exact, equals, ONE, over, plus, sum, ZERO } from "../number/exact.ts";
import type { Ratio } from "../number/ratio.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type Cost, costOfPieces, costParts } from "./cost.ts";
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
  /** Portions in all: of a schedule, on all its days. */
  readonly portions: Exact;
  readonly costs: readonly Cost[];
  /** Each rounded by itself. */
  readonly perPortion: readonly Cost[];
}

/** Who eats of what is bought. */
export interface ShopEater extends Pick<PortionCost, "person" | "meal" | "dish"> {
  readonly portions: Exact;
  readonly sheets: readonly Sheet[];
}

/** Shares the costs of lines out among those who eat of them. */
export function portionCosts(
  eaters: readonly ShopEater[],
  lines: readonly ShoppingLine[],
  opener: Opener,
): readonly PortionCost[] {
  const grams = eaters.map(({ sheets }) => opener.gramsOf(sheets));
  const eaten = new Map<string, Exact>();
  for (const own of grams)
    for (const [food, each] of own) eaten.set(food, plus(eaten.get(food) ?? ZERO, each));
  const byCurrency = currenciesOf(lines, eaten).map(({ currency, perGram, whole }) =>
    costParts(
      currency,
      whole,
      grams.map((own) => ({ raw: costOfGrams(own, perGram), bound: boundOf(own, lines) })),
    ),
  );
  return eaters.map(({ person, meal, dish, portions }, i) => {
    const costs = byCurrency.flatMap((each) => each[i] ?? []);
    const perPortion = equals(portions, ONE)
      ? costs
      : costs.map(({ currency, unrounded, bound }) =>
          costOfPieces(currency, over(unrounded, portions), bound),
        );
    return { person, meal, dish, portions, costs, perPortion };
  });
}

/** What is paid in one currency: all of it, and for each gram of a food that is eaten, left-overs and all. */
interface Paid {
  readonly currency: string;
  readonly whole: Exact;
  readonly perGram: ReadonlyMap<string, Exact>;
}

/** What is left of a batch that was made ahead is paid for by those who eat of it. */
function currenciesOf(lines: readonly ShoppingLine[], eaten: Grams): readonly Paid[] {
  const codes = new Set(lines.flatMap(({ cost }) => cost?.currency ?? []));
  return [...codes].sort().map((currency) => {
    const own = lines.flatMap(({ food, cost, needed }) =>
      cost?.currency === currency ? [{ food, paid: cost.unrounded, of: eaten.get(food) ?? needed }] : [],
    );
    return {
      currency,
      whole: sum(own.map(({ paid }) => paid)),
      perGram: new Map(own.map(({ food, paid, of }) => [food, over(paid, of)])),
    };
  });
}

/** Not in lowest terms: with many foods that takes far longer than all the rest. */
function costOfGrams(own: Grams, perGram: ReadonlyMap<string, Exact>): Ratio {
  let [n, d] = [0n, 1n];
  for (const [food, grams] of own) {
    const price = perGram.get(food);
    if (!price) continue;
    const [top, bottom] = [grams.n * price.n, grams.d * price.d];
    [n, d] = bottom === d ? [n + top, d] : [n * bottom + top * d, d * bottom];
  }
  return { n, d };
}

function boundOf(own: Grams, lines: readonly ShoppingLine[]): Cost["bound"] {
  const unpriced = lines.some(({ food, cost, bought }) => !cost && bought.n !== 0n && own.has(food));
  return unpriced ? "at-least" : "point";
}
