import type { FoodTable } from "../food/table.ts";
import { toText } from "../number/digits.ts";
import { exact } from "../number/exact.ts";
import type { Line, Recipe } from "../recipe/document.ts";

/** The ingredients of a recipe as lines of text: `150 g Oats, rolled, dry (soaked)`. */
export function ingredientTexts({ lines }: Recipe, foods: FoodTable): readonly string[] {
  return lines.map((line) => {
    const { amount, prep } = line;
    const written = typeof amount === "string" ? amount : `${toText(exact(amount.value))} ${amount.unit}`;
    return `${written} ${nameOf(line, foods)}${prep === undefined ? "" : ` (${prep})`}`.replace(/\s+/g, " ");
  });
}

function nameOf({ food, recipe }: Line, foods: FoodTable): string {
  if (food !== undefined) return foods.has(food) ? foods.get(food).name : food;
  return typeof recipe === "string" ? recipe : (recipe?.name ?? "");
}
