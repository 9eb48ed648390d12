import type { FoodTable } from "../food/table.ts";
import { throwIfAny } from "../number/error.ts";
import { type Exact, sum, ZERO } from "../number/exact.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { costParts } from "./cost.ts";
import { readCupboard } from "./cupboard.ts";
import type { ShoppingOptions } from "./input.ts";
import { cupboardItem, type Priced, pricedLine, type ShoppingLine } from "./line.ts";
import { type ShopDay, ShoppingList } from "./list.ts";
import { Opener } from "./need.ts";
import { byAisle, byItsName } from "./order.ts";
import { portionCosts } from "./portions.ts";
import type { ReadShopped } from "./shopped.ts";

/** A list that is one of several, each for its own days. */
export interface OneOfSeveral {
  readonly shopDay: ShopDay;
  /** All that is shopped for on any day: foods in the cupboard may be of another. */
  readonly foods: readonly Sheet[];
  /** Days on which a food is used later than it keeps. */
  readonly usedLate: (food: string, keepsDays: Exact | undefined) => readonly string[];
}

/** Makes the list of what is shopped for, after what the cupboard has. */
export function makeList(
  { sheets, eaters, names }: ReadShopped,
  how: ShoppingOptions,
  one?: OneOfSeveral,
): ShoppingList {
  const opener = new Opener();
  const needed = opener.gramsOf(sheets);
  throwIfAny(opener.faults);
  const tables = new Set<FoodTable>([...sheets, ...(one?.foods ?? [])].map((s) => s.plan.foods));
  const stock = readCupboard(how, tables);
  const had = new Map(stock.map((each) => [each.food.id, each.had]));
  const priced = [...needed].flatMap(([id, grams]): Priced[] => {
    const goods = opener.goods.get(id);
    return goods ? [pricedLine(goods, grams, had.get(id), (own) => opener.pieces(id, own))] : [];
  });
  const lines = withCosts(priced.sort((a, b) => byAisle(a.line, b.line))).map((line): ShoppingLine => {
    const usedLate = line.bought.n === 0n ? [] : (one?.usedLate(line.food, line.keepsDays) ?? []);
    return usedLate.length === 0 ? line : { ...line, usedLate };
  });
  const used = new Map(lines.map(({ food, fromCupboard }) => [food, fromCupboard]));
  const cupboard = stock.map((each) => cupboardItem(each, used.get(each.food.id) ?? ZERO)).sort(byItsName);
  return new ShoppingList(lines, cupboard, names, () => portionCosts(eaters(), lines, opener), one?.shopDay);
}

/** Lines with their costs, rounded together in each currency. */
function withCosts(priced: readonly Priced[]): readonly ShoppingLine[] {
  const costs = new Map<Priced, ShoppingLine["cost"]>();
  for (const currency of new Set(priced.map((each) => each.currency))) {
    const own = priced.filter((each) => each.currency === currency && each.price !== undefined);
    if (currency === undefined) continue;
    const raw = own.map(({ price }) => price ?? ZERO);
    const parts = costParts(
      currency,
      sum(raw),
      raw.map((each) => ({ raw: each, bound: "point" as const })),
    );
    own.forEach((each, i) => {
      costs.set(each, parts[i]);
    });
  }
  return priced.map((each) => ({ ...each.line, cost: costs.get(each) }));
}
