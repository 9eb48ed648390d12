import type { Recipe } from "../recipe/document.ts";
import { checkSheet } from "./given.ts";
import { recipeNow } from "./recipeNow.ts";
import type { Sheet } from "./sheet.ts";

/**
 * The recipe that a sheet stands for: amounts as they are now, exact, so that a sheet of it is the
 * same sheet. Lines that did not move keep the text they were written with.
 * Throws `sheet-malformed` for what is no sheet.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "90 g" }] },
 *   starterFoods,
 * );
 * console.log(toRecipe(scale(porridge, { factor: "1/3" }).sheet).lines[0].amount); // => 30 g
 * ```
 */
export function toRecipe(s: Sheet): Recipe {
  checkSheet(s);
  return recipeNow(s);
}
