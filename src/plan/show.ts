import type { Sheet } from "../sheet/sheet.ts";
import { shownAmount } from "../sheet/show.ts";
import { figure } from "../table/figure.ts";
import type { Language } from "../table/language.ts";

/** The amount as written, with grams beside it where it was not written in them. */
export function lineAmount(s: Sheet | undefined, i: number, language: Language): string {
  const line = s?.lines[i];
  if (!s || !line) return "";
  const grams = figure(line.exactGrams, { unit: "g", language }).text;
  if (line.amount.unit === "g") return grams;
  return `${shownAmount(line.amount, s.origin.measures, language)} (${grams})`;
}
