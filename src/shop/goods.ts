import type { Allergen } from "../food/allergens.ts";
import type { FoodCaution, FoodInput, State } from "../food/food.ts";
import { kitchenNameOf } from "../food/kitchenName.ts";
import { exactText } from "../number/digits.ts";
import { type Exact, exact, fraction, ONE, over, times } from "../number/exact.ts";
import { volumeOfGram } from "./byVolume.ts";
import type { PackSize } from "./packs.ts";

/** What a shop needs to know of a food, read exactly. */
export interface Goods {
  readonly id: string;
  readonly name: string;
  readonly state: State | undefined;
  readonly aisle: string;
  /** What of it is eaten; nothing where the food does not say. */
  readonly edibleShare: Exact | undefined;
  readonly packs: readonly PackSize[];
  /** Millilitres of a gram, where a shop sells it by volume. */
  readonly mlPerGram: Exact | undefined;
  /** Whether it comes out of the tap: nobody buys it. */
  readonly isFromTheTap: boolean;
  readonly currency: string | undefined;
  /** Of one gram as purchased. */
  readonly perGram: Exact | undefined;
  /** Days that it keeps as it is bought; undefined where the food does not say. */
  readonly keepsDays: Exact | undefined;
  readonly allergens: readonly Allergen[] | undefined;
  readonly cautions: readonly FoodCaution[];
}

/** Where foods stand that do not say. */
export const OTHER_AISLE = "other";

/** A pack without a price of its own costs its mass as purchased, where 100 g of the food have a price. */
export function goodsOf(food: FoodInput): Goods {
  const edibleShare = food.edibleShare === undefined ? undefined : exact(food.edibleShare);
  const { price } = food;
  const perGram = price?.per100g === undefined ? undefined : over(exact(price.per100g), fraction(100n));
  const packs = (food.packs ?? []).map((pack): PackSize => {
    const edible = exact(pack.edible);
    const byMass = perGram && times(perGram, over(edible, edibleShare ?? ONE));
    return { name: pack.name, edible, price: pack.price === undefined ? byMass : exact(pack.price) };
  });
  return {
    id: food.id,
    name: kitchenNameOf(food),
    state: food.state,
    aisle: food.aisle?.trim() ?? OTHER_AISLE,
    edibleShare,
    packs,
    mlPerGram: volumeOfGram(food),
    isFromTheTap: /^water, tap\b/i.test(food.name),
    currency: price?.currency,
    perGram,
    keepsDays: food.keepsDays === undefined ? undefined : exact(food.keepsDays),
    allergens: food.allergens,
    cautions: food.cautions ?? [],
  };
}

/** Whether a shop would take two foods for the same. */
export function sameGoods(a: Goods, b: Goods): boolean {
  return asText(a) === asText(b);
}

function asText(goods: Goods): string {
  return JSON.stringify(goods, (_, value: unknown) => (isFraction(value) ? exactText(value) : value));
}

function isFraction(value: unknown): value is Exact {
  return typeof value === "object" && value !== null && "n" in value && typeof value.n === "bigint";
}
