import type { CookingSchedule } from "../cook/schedule.ts";
import type { Measures } from "../measure/measures.ts";
import type { Plan } from "../plan/planned.ts";
import type { WrittenAmount } from "../recipe/document.ts";
import type { Sheet } from "../sheet/sheet.ts";

/**
 * One thing that is shopped for: everything that a plan cooks, once; everything that a schedule cooks
 * and serves, on all its days; a recipe's whole batch.
 */
export type Shoppable = Plan | CookingSchedule | Sheet;

/** What is shopped for, all of it together. */
export type Shopped = Shoppable | readonly Shoppable[];

/**
 * What the store cupboard holds of a food: an amount of what is eaten of it, in any unit that the food
 * can be measured in, or as purchased, peel and bone and all; `"enough"` is as much as anyone needs.
 */
export type InCupboard =
  | WrittenAmount
  | { readonly amount: WrittenAmount; readonly weighed?: "edible" | "as-purchased" };

/** Options of {@link shoppingList}. */
export interface ShoppingOptions {
  /** By the food's id. */
  readonly cupboard?: Readonly<Record<string, InCupboard>>;
  /** The spoons and cups the cupboard is measured with. */
  readonly measures?: Measures;
}
