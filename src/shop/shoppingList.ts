import type { Shopped, ShoppingOptions } from "./input.ts";
import type { ShoppingList } from "./list.ts";
import { makeList } from "./makeList.ts";
import { readShopped } from "./shopped.ts";

export type { Cost } from "./cost.ts";
export type { InCupboard, Shoppable, Shopped, ShoppingOptions } from "./input.ts";
export type { BoughtPack, CupboardItem, ShoppingLine } from "./line.ts";
export { type LeftInCupboard, type ShopDay, ShoppingList } from "./list.ts";
export type { PortionCost } from "./portions.ts";
export { type ShopDaysOptions, shoppingLists } from "./shopDays.ts";
export { type ShoppingChange, ShoppingDifference, shoppingDifference } from "./shoppingDifference.ts";

/**
 * What to buy for a plan, for all the days of a schedule, for the whole batch of a recipe, or for
 * several of them: each food once, whoever eats it and in whatever dish, nested recipes opened to their
 * foods. A schedule is bought as it is cooked and served: its pots, and what is added to each portion.
 * What the cupboard has is taken off. What is needed is exact. Costs are rounded to the currency's minor
 * unit, so that lines add up to the total.
 *
 * A food that is sold in packs is bought in whole packs, at the least cost where all its packs have a
 * price, else with the least left over, then in the fewest. Any other is bought by weight: what is
 * eaten over its edible share, so a line that was weighed as purchased comes back as it was written
 * (`asPurchased`); that is rounded up to what a shop weighs out (`weighOut`), and told in pieces, too,
 * where the food has a measure for one. A food that says nothing of its edible share is bought as eaten,
 * and the list says so.
 *
 * Prices are of what is bought, left-overs included. Currencies are never added up. Where something
 * has no price, totals are at least what they say.
 *
 * Throws one error with every fault: `shopping-malformed` (not a plan, schedule or sheet; options or
 * foods in the cupboard that are not known; one food id that means two foods), and the codes of amounts for the
 * cupboard.
 *
 * Method: purchased ÷ yield, and purchase units rounded up, as in the USDA Food Buying Guide for Child
 * Nutrition Programs; minor units of currencies by ISO 4217.
 *
 * @example
 * ```ts
 * const foods = starterFoods.with([
 *   {
 *     ...starterFoods.get("oats-rolled-dry"),
 *     aisle: "dry goods",
 *     packs: [{ name: "500 g bag", edible: 500, price: "0.90" }, { name: "1 kg bag", edible: 1000, price: "1.50" }],
 *     price: { currency: "GBP" },
 *   },
 * ]);
 * const porridge = sheet(
 *   { name: "Porridge", portions: 20, lines: [{ food: "oats-rolled-dry", amount: "1.2 kg" }] },
 *   foods,
 * );
 * const list = shoppingList(porridge, { cupboard: { "oats-rolled-dry": "150 g" } });
 * const [oats] = list.lines;
 * console.log(oats.packs.map(({ name, count }) => `${count} × ${name}`)); // => [ '1 × 500 g bag', '1 × 1 kg bag' ]
 * console.log(oats.leftOver.toString(), list.total().value.toString()); // => 450 2.4
 * ```
 */
export function shoppingList(x: Shopped, how: ShoppingOptions = {}): ShoppingList {
  return makeList(readShopped(x), how);
}
