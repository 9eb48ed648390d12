import { text } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { checkFoodTable, type FoodTable } from "../food/table.ts";
import { LONGEST_TEXT } from "./linesFromText.ts";
import { readLineOf } from "./readLineOf.ts";
import { type RecipeRead, type RecipeReadOptions, readOptions, recipeFromLines } from "./recipeOf.ts";
import { physicalLines } from "./text/physicalLines.ts";
import { isItem, plainLine } from "./text/plainLine.ts";
import { portionsInTitle, portionsOf, saysPortions } from "./text/portionsOf.ts";
import { INGREDIENTS, METHOD, titleOf } from "./text/titleOf.ts";

/**
 * Reads a whole recipe as people write it: a title, how many it serves, ingredients as
 * {@link linesFromText} reads them, and the steps below a heading such as "Method". The `recipe` holds what is
 * clear; all that is not is told in `unclear`, and `means` settles which food is meant.
 *
 * Throws `food-malformed` for what is no table of foods, and `format-malformed` for other options or what is
 * no text.
 *
 * @example
 * ```ts
 * const pasted = "Lentil pot\nServes 4\n\n- 300 g red lentils\n- 2 onions, chopped\n- salt\n\nMethod\nSimmer all.";
 * const { recipe: pot, unclear } = recipeFromText(pasted, starterFoods);
 * console.log(pot?.name, pot?.portions, pot?.lines.map((line) => line.food)); // => Lentil pot 4 [ 'lentils-red-dry', 'onions-raw' ]
 * console.log(unclear.map(({ message }) => message)); // => [ '"salt" has no amount' ]
 * ```
 */
export function recipeFromText(given: string, foods: FoodTable, options: RecipeReadOptions = {}): RecipeRead {
  checkFoodTable(foods);
  const how = read(readOptions(), options, "format-malformed");
  const whole = read(text(LONGEST_TEXT), given, "format-malformed");
  const all = physicalLines(whole);
  const title = titleOf(whole, all);
  const below = title === undefined ? all : all.slice(1);
  const at = below.findIndex((line) => METHOD.test(plainLine(line)));
  const above = at < 0 ? below : below.slice(0, at);
  const method =
    at < 0
      ? []
      : below
          .slice(at + 1)
          .map(stepOf)
          .filter((step) => step !== "");
  const serves = above.findIndex((line) => !isItem(line) && saysPortions(plainLine(line)));
  const written = above.filter((line, i) => i !== serves && !INGREDIENTS.test(plainLine(line)));
  const portions = serves < 0 ? portionsInTitle(title ?? "") : portionsOf(plainLine(above[serves] ?? ""));
  const lines = written.map((line) => readLineOf(line, foods, how));
  return recipeFromLines({ name: title, portions, method }, lines, how);
}

function stepOf(line: string): string {
  return plainLine(line)
    .replace(/^(?:step )?\d{1,2}[.):]\s+/i, "")
    .slice(0, 10_000);
}
