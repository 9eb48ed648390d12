import { type Language, say } from "../document/language.ts";
import { amount } from "../measure/amount.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, over } from "../number/exact.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { shownAmount } from "../sheet/stated.ts";

/**
 * The amount as written, with grams beside it where it was not written in them. What was written as
 * purchased is weighed before it is trimmed, and says so: `200 g as purchased (144 g edible)`.
 */
export function lineAmount(s: Sheet | undefined, i: number, language: Language): string {
  const line = s?.lines[i];
  if (!s || !line) return "";
  const grams = showFigure(line.grams, { unit: "g", language });
  const isGrams = line.amount.unit === "g";
  if (purchasedGrams(s, i)) {
    const written = isGrams
      ? showFigure(line.amount.value, { unit: "g", language })
      : shownAmount(line.amount, s.origin.measures, language);
    return say(language, "{amount} as purchased ({grams} edible)", { amount: written, grams });
  }
  if (isGrams) return grams;
  return `${shownAmount(line.amount, s.origin.measures, language)} (${grams})`;
}

/** What a line weighs before it is trimmed, where it was written as purchased. */
export function purchasedGrams(s: Sheet, i: number): Exact | undefined {
  const own = s.plan.lines[i];
  const grams = s.values.grams[i];
  if (!grams || own?.line.weighed !== "as-purchased") return undefined;
  // Of a gram as purchased this much is eaten.
  return over(grams, own.reader.toGrams(amount({ value: 1, unit: "g" })).grams);
}
