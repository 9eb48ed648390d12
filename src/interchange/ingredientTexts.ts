import type { Recipe, WrittenAmount } from "../recipe/document.ts";
import { recipeNow } from "../sheet/recipeNow.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { shownAmount } from "../sheet/stated.ts";

/** The ingredients of a sheet as lines of text: `150 g Oats, rolled, dry (soaked)`. */
export function ingredientTexts(s: Sheet, recipe: Recipe = recipeNow(s)): readonly string[] {
  return s.lines.map(({ amount, key }, i) => {
    const { amount: written = "", prep } = recipe.lines[i] ?? {};
    const text = isShort(written) ? written : shownAmount(amount, recipe.measures);
    return `${text} ${tableName(s, key)}${prep === undefined ? "" : ` (${prep})`}`.replace(/\s+/g, " ");
  });
}

/** The name that a line's food has in its table, by which it is found again, or that of a nested recipe. */
export function tableName({ plan }: Sheet, key: string): string {
  const { source } = plan.lines[plan.indexOf(key)] ?? {};
  return source?.food?.input.name ?? source?.name ?? key;
}

/** Whether an amount reads as a cook would write it: no fraction of hundredths, no long decimal. */
function isShort(written: WrittenAmount): written is string {
  return typeof written === "string" && written.length <= 40 && !/\/ ?\d{3}|\.\d{4}/.test(written);
}
