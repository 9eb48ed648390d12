import { type Language, say } from "../document/language.ts";
import { purchasedGrams } from "../plan/lineAmount.ts";
import { inSentence } from "../sheet/names.ts";
import type { Sheet, SheetLine } from "../sheet/sheet.ts";
import { type Method, methodWith, shortNames } from "./method.ts";
import { type MeasuredLines, measured, settledAmount, weighed } from "./settledAmount.ts";

/** A dish's method with its own amounts in place, and the lines that it leaves out. */
export function methodOf(s: Sheet, settled: MeasuredLines, language: Language): Method {
  const amounts = new Map(
    s.lines.map((line) => [
      line.key,
      settled.includes(line.key) ? asMeasured(s, line, language) : inPlace(s, line, language),
    ]),
  );
  const names = shortNames(s.lines, language);
  const { steps, unnamed } = methodWith(s.origin.method ?? [], names, amounts, language);
  return { steps, unnamed: unnamed.map((key) => inSentence(names.get(key) ?? key, language)) };
}

/** A line that a kitchen measured, as it is. */
export function asMeasured(s: Sheet, line: SheetLine, language: Language): string {
  return bought(s, line, settledAmount(line.amount, s.origin.measures, language), language);
}

/** What to take of a line: spoons where a scale reads badly, grams otherwise. */
export function inPlace(s: Sheet, line: SheetLine, language: Language): string {
  const exact = purchasedGrams(s, s.plan.indexOf(line.key)) ?? line.grams;
  const grams = weighed(exact, language);
  const small = exact.n < 10n * exact.d;
  const spoons = small ? measured(line.amount, s.origin.measures, language) : "";
  return bought(s, line, spoons === "" ? grams : spoons, language);
}

/** Says of an amount that it is to be taken before it is trimmed, where it is. */
function bought(s: Sheet, line: SheetLine, amount: string, language: Language): string {
  const isPurchased = purchasedGrams(s, s.plan.indexOf(line.key)) !== undefined;
  return isPurchased ? say(language, "{amount} (as purchased)", { amount }) : amount;
}
