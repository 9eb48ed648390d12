import type { Sheet, SheetLine } from "../../sheet/sheet.ts";
import type { Language } from "../../table/language.ts";
import { type Method, methodWith, shortNames } from "../method.ts";
import { type MeasuredLines, measured, settledAmount, weighed } from "./amounts.ts";

/** A dish's method with its own amounts in place, and the lines that it leaves out. */
export function methodOf(s: Sheet, settled: MeasuredLines, language: Language): Method {
  const amounts = new Map(
    s.lines.map((line) => [
      line.key,
      settled.has(line.key)
        ? settledAmount(line.amount, s.origin.measures, language)
        : inPlace(s, line, language),
    ]),
  );
  const names = shortNames(s.lines, language);
  const { steps, unnamed } = methodWith(s.origin.method ?? [], names, amounts);
  return { steps, unnamed: unnamed.map((key) => names.get(key) ?? key) };
}

/** What to take of a line: spoons where a scale reads badly, grams otherwise. */
export function inPlace(s: Sheet, line: SheetLine, language: Language): string {
  const grams = weighed(line.exactGrams, language);
  const small = line.exactGrams.n < 10n * line.exactGrams.d;
  const spoons = small ? measured(line.amount, s.origin.measures, language) : "";
  return spoons === "" ? grams : spoons;
}
