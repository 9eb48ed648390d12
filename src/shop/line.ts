import type { Allergen } from "../food/allergens.ts";
import type { FoodCaution, State } from "../food/food.ts";
import { kitchenNameOf } from "../food/kitchenName.ts";
import { type Exact, fraction, least, minus, ONE, over, sum, times, ZERO } from "../number/exact.ts";
import { pouredOut } from "./byVolume.ts";
import type { Cost } from "./cost.ts";
import type { Stock } from "./cupboard.ts";
import type { Goods } from "./goods.ts";
import { choosePacks } from "./packs.ts";
import { weighedOut } from "./weighOut.ts";

/** Packs of one kind. */
export interface BoughtPack {
  readonly name: string;
  readonly count: Exact;
  /** Grams of one pack that are used. */
  readonly edible: Exact;
}

/**
 * One food on the list. Masses are grams of what is eaten of it, and
 * `fromCupboard + bought - leftOver = needed`, exactly.
 */
export interface ShoppingLine {
  readonly food: string;
  readonly name: string;
  readonly state: State | undefined;
  /** `other` where the food says none. */
  readonly aisle: string;
  readonly needed: Exact;
  readonly fromCupboard: Exact;
  readonly bought: Exact;
  /** What packs hold, and what is weighed out, beyond the need. */
  readonly leftOver: Exact;
  /** Empty where it is bought by weight, or not at all. */
  readonly packs: readonly BoughtPack[];
  /** Whether no other choice of packs is better; not known where there were too many to look through. */
  readonly proven: boolean;
  /** What is needed of what is bought by weight: grams with peel, bone and what else is not eaten. */
  readonly asPurchased: Exact | undefined;
  /**
   * What to have weighed out in the shop: `asPurchased` rounded up, to 1 g below 20 g, 5 g below 100 g,
   * 10 g below 1 kg, 50 g below 10 kg, and 100 g from there on. It is what is paid for.
   */
  readonly weighOut: Exact | undefined;
  /** The same in millilitres, where a shop sells it by volume: rounded up to 5 ml below 100 ml, 10 ml below 1 l, else 100 ml. */
  readonly pourOut: Exact | undefined;
  /** About how many pieces that is, where it is bought by weight and the food has a measure for one. */
  readonly pieces: { readonly name: string; readonly count: Exact } | undefined;
  /** Nothing where no refuse is known of: it is then bought as eaten. */
  readonly edibleShare: Exact | undefined;
  /** Nothing where there is no price. */
  readonly cost: Cost | undefined;
  /** Nothing where the food does not say, which is not the same as none. */
  readonly allergens: readonly Allergen[] | undefined;
  readonly cautions: readonly FoodCaution[];
  /** Whether it comes out of the tap: nobody buys it. */
  readonly isFromTheTap: boolean;
  /** Days that it keeps as it is bought; undefined where the food does not say. */
  readonly keepsDays: Exact | undefined;
  /** Days on which it is used later than it keeps, where the list is of one shop day. */
  readonly usedLate: readonly string[];
}

/** A food in the store cupboard, in grams of what is eaten of it: `had - used = left`. */
export interface CupboardItem {
  readonly food: string;
  readonly name: string;
  readonly state: State | undefined;
  /** Nothing where there is enough. */
  readonly had: Exact | undefined;
  readonly used: Exact;
  readonly left: Exact | undefined;
}

/** What is bought of a food, and what it costs before costs are rounded. */
interface Purchase extends Pick<ShoppingLine, "packs" | "proven"> {
  readonly bought: Exact;
  readonly asPurchased: Exact | undefined;
  readonly weighOut: Exact | undefined;
  readonly price: Exact | undefined;
}

const NOT_BOUGHT: Purchase = {
  packs: [],
  proven: true,
  bought: ZERO,
  asPurchased: undefined,
  weighOut: undefined,
  price: undefined,
};

/** A line whose cost is still to be rounded along with the others'. */
export interface Priced {
  readonly line: Omit<ShoppingLine, "cost">;
  readonly currency: string | undefined;
  readonly price: Exact | undefined;
}

/** What to buy of a food, after what the cupboard gives; `pieces` counts what is bought by weight. */
export function pricedLine(
  goods: Goods,
  needed: Exact,
  had: Stock["had"] | undefined,
  pieces: (grams: Exact) => ShoppingLine["pieces"],
): Priced {
  const fromCupboard =
    goods.isFromTheTap && had === undefined
      ? needed
      : had === undefined
        ? ZERO
        : had === "enough"
          ? needed
          : least(had, needed);
  const toBuy = minus(needed, fromCupboard);
  const bill = toBuy.n === 0n ? NOT_BOUGHT : purchase(goods, toBuy);
  const { bought, asPurchased, weighOut, price, packs, proven } = bill;
  const leftOver = minus(bought, toBuy);
  const { edibleShare } = goods;
  const line = {
    food: goods.id,
    name: goods.name,
    state: goods.state,
    aisle: goods.aisle,
    needed,
    fromCupboard,
    bought,
    leftOver,
    packs,
    proven,
    asPurchased,
    weighOut,
    pourOut: weighOut && goods.mlPerGram && pouredOut(times(toBuy, goods.mlPerGram)),
    pieces: weighOut && pieces(toBuy),
    edibleShare,
    allergens: goods.allergens,
    cautions: goods.cautions,
    isFromTheTap: goods.isFromTheTap,
    keepsDays: goods.keepsDays,
    usedLate: [],
  };
  return { line, currency: goods.currency, price };
}

function purchase(goods: Goods, toBuy: Exact): Purchase {
  return goods.packs.length === 0 ? byWeight(goods, toBuy) : inPacks(goods, toBuy);
}

function byWeight({ edibleShare, perGram }: Goods, toBuy: Exact): Purchase {
  const asPurchased = over(toBuy, edibleShare ?? ONE);
  const weighOut = weighedOut(asPurchased);
  return {
    packs: [],
    proven: true,
    bought: times(weighOut, edibleShare ?? ONE),
    asPurchased,
    weighOut,
    price: perGram && times(weighOut, perGram),
  };
}

function inPacks({ packs }: Goods, toBuy: Exact): Purchase {
  const { counts, proven } = choosePacks(toBuy, packs);
  const chosen = packs.flatMap((pack, i) => {
    const count = fraction(counts[i] ?? 0n);
    return count.n === 0n ? [] : [{ pack, count }];
  });
  const prices = chosen.flatMap(({ pack, count }) => (pack.price ? [times(pack.price, count)] : []));
  return {
    packs: chosen.map(({ pack, count }) => ({
      name: pack.name,
      count,
      edible: pack.edible,
    })),
    proven,
    bought: sum(chosen.map(({ pack, count }) => times(pack.edible, count))),
    asPurchased: undefined,
    weighOut: undefined,
    price: prices.length === chosen.length ? sum(prices) : undefined,
  };
}

/** What is used of a food in the cupboard, and what stays there. */
export function cupboardItem({ food, had }: Stock, used: Exact): CupboardItem {
  const there = had === "enough" ? undefined : had;
  const left = there && minus(there, used);
  return {
    food: food.id,
    name: kitchenNameOf(food),
    state: food.state,
    had: there,
    used,
    left,
  };
}
