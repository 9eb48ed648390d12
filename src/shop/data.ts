import type { Allergen } from "../food/allergens.ts";
import type { FoodCaution } from "../food/food.ts";
import { toText } from "../number/fraction.ts";
import type { Cost } from "./cost.ts";
import type { CupboardItem, ShoppingLine } from "./line.ts";
import type { ShoppingList } from "./list.ts";
import type { PortionCost } from "./portions.ts";

/** A cost as JSON holds it. */
export interface CostData {
  readonly currency: string;
  readonly value: string;
  readonly bound: Cost["bound"];
  /** Before rounding; of lines and totals. */
  readonly unrounded?: string;
}

/** A line as JSON holds it: grams as exact text. */
export interface ShoppingLineData {
  readonly food: string;
  readonly name: string;
  readonly state?: string;
  readonly aisle: string;
  readonly needed: string;
  readonly fromCupboard: string;
  readonly bought: string;
  readonly leftOver: string;
  readonly packs: readonly { readonly name: string; readonly count: string; readonly edible: string }[];
  readonly proven: boolean;
  readonly asPurchased?: string;
  readonly weighOut?: string;
  readonly pieces?: { readonly name: string; readonly count: string };
  readonly edibleShare?: string;
  readonly cost?: CostData;
  readonly allergens?: readonly Allergen[];
  readonly cautions: readonly FoodCaution[];
}

/** A shopping list as JSON holds it. */
export interface ShoppingData {
  readonly lines: readonly ShoppingLineData[];
  readonly cupboard: readonly {
    readonly food: string;
    readonly name: string;
    readonly state?: string;
    readonly had: string;
    readonly used: string;
    readonly left: string;
  }[];
  readonly totals: readonly CostData[];
  readonly portions: readonly {
    readonly person?: string;
    readonly meal?: string;
    readonly dish?: string;
    readonly portions: string;
    readonly costs: readonly CostData[];
    readonly perPortion: readonly CostData[];
  }[];
}

export function shoppingData(list: ShoppingList): ShoppingData {
  return {
    lines: list.lines.map(lineData),
    cupboard: list.cupboard.map(itemData),
    totals: list.totals.map(costData),
    portions: list.portions.map(portionData),
  };
}

function lineData(line: ShoppingLine): ShoppingLineData {
  return {
    food: line.food,
    name: line.name,
    ...(line.state !== undefined && { state: line.state }),
    aisle: line.aisle,
    needed: toText(line.needed),
    fromCupboard: toText(line.fromCupboard),
    bought: toText(line.bought),
    leftOver: toText(line.leftOver),
    packs: line.packs.map(({ name, count, edible }) => ({
      name,
      count: toText(count),
      edible: toText(edible),
    })),
    proven: line.proven,
    ...(line.asPurchased && { asPurchased: toText(line.asPurchased) }),
    ...(line.weighOut && { weighOut: toText(line.weighOut) }),
    ...(line.pieces && { pieces: { name: line.pieces.name, count: toText(line.pieces.count) } }),
    ...(line.edibleShare && { edibleShare: toText(line.edibleShare) }),
    ...(line.cost && { cost: costData(line.cost) }),
    ...(line.allergens && { allergens: line.allergens }),
    cautions: line.cautions,
  };
}

function itemData({ food, name, state, had, used, left }: CupboardItem): ShoppingData["cupboard"][number] {
  return {
    food,
    name,
    ...(state !== undefined && { state }),
    had: had ? toText(had) : "enough",
    used: toText(used),
    left: left ? toText(left) : "enough",
  };
}

function costData(cost: Cost): CostData {
  return { ...roundedData(cost), unrounded: toText(cost.unrounded) };
}

function roundedData({ currency, value, bound }: Cost): CostData {
  return { currency, value: toText(value), bound };
}

function portionData({
  person,
  meal,
  dish,
  portions,
  costs,
  perPortion,
}: PortionCost): ShoppingData["portions"][number] {
  return {
    ...(person !== undefined && { person }),
    ...(meal !== undefined && { meal }),
    ...(dish !== undefined && { dish }),
    portions: toText(portions),
    costs: costs.map(roundedData),
    perPortion: perPortion.map(roundedData),
  };
}
