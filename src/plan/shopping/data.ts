import type { Allergen } from "../../food/allergens.ts";
import type { FoodCaution } from "../../food/food.ts";
import { toText } from "../../number/fraction.ts";
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
  readonly exact?: string;
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

function lineData({ exact, ...line }: ShoppingLine): ShoppingLineData {
  return {
    food: line.food,
    name: line.name,
    ...(line.state !== undefined && { state: line.state }),
    aisle: line.aisle,
    needed: toText(exact.needed),
    fromCupboard: toText(exact.fromCupboard),
    bought: toText(exact.bought),
    leftOver: toText(exact.leftOver),
    packs: line.packs.map(({ name, count, edible }) => ({
      name,
      count: count.toFixed(),
      edible: edible.toFixed(),
    })),
    proven: line.proven,
    ...(exact.asPurchased && { asPurchased: toText(exact.asPurchased) }),
    ...(exact.weighOut && { weighOut: toText(exact.weighOut) }),
    ...(line.pieces && { pieces: { name: line.pieces.name, count: line.pieces.count.toFixed() } }),
    ...(exact.edibleShare && { edibleShare: toText(exact.edibleShare) }),
    ...(line.cost && { cost: costData(line.cost) }),
    ...(line.allergens && { allergens: line.allergens }),
    cautions: line.cautions,
  };
}

function itemData({ food, name, state, exact }: CupboardItem): ShoppingData["cupboard"][number] {
  return {
    food,
    name,
    ...(state !== undefined && { state }),
    had: exact.had ? toText(exact.had) : "enough",
    used: toText(exact.used),
    left: exact.left ? toText(exact.left) : "enough",
  };
}

function costData(cost: Cost): CostData {
  return { ...roundedData(cost), exact: toText(cost.exact) };
}

function roundedData({ currency, value, bound }: Cost): CostData {
  return { currency, value: value.toFixed(), bound };
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
    portions: portions.toFixed(),
    costs: costs.map(roundedData),
    perPortion: perPortion.map(roundedData),
  };
}
