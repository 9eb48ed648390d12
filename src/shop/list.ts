import { fault, quote } from "../number/error.ts";
import { type Exact, isZero, plus, sum, ZERO } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { Result } from "../number/result.ts";
import { type Cost, costOfPieces } from "./cost.ts";
import type { CupboardItem, ShoppingLine } from "./line.ts";
import type { PortionCost } from "./portions.ts";
import type { ShopNames } from "./shopped.ts";

/** The day on which a list is shopped for, and the days that it is bought for. */
export interface ShopDay {
  readonly day: string;
  readonly name: string;
  /** Days from this shop day until the next, on which something of it is cooked, made or added. */
  readonly for: readonly { readonly day: string; readonly name: string }[];
}

/** What is left of a food, as a cupboard takes it. */
export type LeftInCupboard = "enough" | { readonly value: Exact; readonly unit: "g" };

/** What to buy, for everyone and every dish together. */
export class ShoppingList extends Result {
  readonly is = "steelyard/shopping@1";
  /** By aisle, `other` last, then by name. Foods that the cupboard has enough of are among them. */
  readonly lines: readonly ShoppingLine[];
  /** Everything in the cupboard, used or not, by name. */
  readonly cupboard: readonly CupboardItem[];
  /** One for each currency, by its code; `at-least` where something that is bought has no price. */
  readonly totals: readonly Cost[];
  /** Undefined where the list is for all days at once. */
  readonly shopDay: ShopDay | undefined;
  readonly #names: ShopNames;
  readonly #makePortions: () => readonly PortionCost[];
  #portions: readonly PortionCost[] | undefined;

  /** @internal Use {@link shoppingList}. */
  constructor(
    lines: readonly ShoppingLine[],
    cupboard: readonly CupboardItem[],
    names: ShopNames,
    makePortions: () => readonly PortionCost[],
    shopDay?: ShopDay,
  ) {
    super();
    this.lines = lines;
    this.cupboard = cupboard;
    this.totals = totalsOf(lines);
    this.shopDay = shopDay;
    this.#names = names;
    this.#makePortions = makePortions;
  }

  override toString(): string {
    return `to buy: ${this.lines.map(({ name }) => name).join(", ")}`;
  }

  /** @internal What people and meals are called. */
  names(): ShopNames {
    return this.#names;
  }

  /** What is bought and has no price. */
  get unpriced(): readonly ShoppingLine[] {
    return unpricedIn(this.lines);
  }

  /** What each person's portion costs, or each dish, worked out when first asked for. */
  get portions(): readonly PortionCost[] {
    this.#portions ??= this.#makePortions();
    return this.#portions;
  }

  /**
   * What is in the cupboard when all of this is used, by the food's id: what stood there and is not used, and
   * what packs hold beyond the need. It is what next week's list takes as its `cupboard`. What was in
   * stock and bought is what is used and left, exactly.
   */
  get left(): { readonly [food: string]: LeftInCupboard } {
    const grams = new Map<string, Exact | undefined>(this.cupboard.map(({ food, left }) => [food, left]));
    for (const { food, leftOver } of this.lines) {
      const before = grams.has(food) ? grams.get(food) : ZERO;
      grams.set(food, before && plus(before, leftOver));
    }
    return Object.fromEntries(
      [...grams].flatMap(([food, left]): (readonly [string, LeftInCupboard])[] => {
        if (left === undefined) return [[food, "enough"]];
        return isZero(left) ? [] : [[food, { value: left, unit: "g" }]];
      }),
    );
  }

  /** One food's line. Throws `shopping-malformed` where nothing on the list is that food. */
  line(food: string): ShoppingLine {
    const found = this.lines.find((each) => each.food === food);
    if (found) return found;
    const ids = this.lines.map((each) => each.food);
    throw fault(
      "shopping-malformed",
      `the list has no food ${quote(food)}`,
      didYouMean(food, ids, "use the id of a food that dishes are cooked from"),
    );
  }

  /**
   * The one total, or that in one currency. Throws `shopping-malformed` where there is none, or where
   * prices are in several currencies and none is named.
   */
  total(currency?: string): Cost {
    const [only, ...others] = this.totals.filter(
      (each) => currency === undefined || each.currency === currency,
    );
    if (only && others.length === 0) return only;
    const codes = this.totals.map((each) => each.currency).join(", ");
    if (!only) {
      const hint = codes === "" ? "give foods a price, or packs prices" : `prices are in ${codes}`;
      throw fault(
        "shopping-malformed",
        `nothing has a price${currency === undefined ? "" : ` in ${quote(currency)}`}`,
        hint,
      );
    }
    const hint = 'ask for one, total("GBP"), or price all foods in one currency; .totals has each';
    throw fault("shopping-malformed", `prices in ${codes} do not add up to one total`, hint);
  }
}

function unpricedIn(lines: readonly ShoppingLine[]): readonly ShoppingLine[] {
  return lines.filter(({ cost, bought }) => !cost && bought.n !== 0n);
}

function totalsOf(lines: readonly ShoppingLine[]): readonly Cost[] {
  const costs = lines.flatMap(({ cost }) => cost ?? []);
  const bound = unpricedIn(lines).length === 0 ? "point" : "at-least";
  return [...new Set(costs.map(({ currency }) => currency))].sort().map((currency) => {
    const own = costs.filter((each) => each.currency === currency);
    return costOfPieces(currency, sum(own.map(({ unrounded }) => unrounded)), bound);
  });
}
