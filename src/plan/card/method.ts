import type { Sheet, SheetLine } from "../../sheet/sheet.ts";
import { type Language, say } from "../../table/language.ts";
import { measured, weighed } from "./amounts.ts";
import type { Piece } from "./card.ts";

/** A dish's method with amounts in place, and the lines that it leaves out. */
export interface Method {
  readonly steps: readonly (readonly Piece[])[];
  readonly unnamed: readonly string[];
}

/**
 * The steps of a recipe, each line's amount where the line is first named; after that its name
 * alone, so that nobody adds it twice.
 */
export function methodOf(s: Sheet, language: Language): Method {
  const lines = new Map(s.lines.map((line) => [line.key, line]));
  const names = shortNames(s.lines, language);
  const named = new Set<string>();
  const piece = (key: string): Piece => {
    const line = lines.get(key);
    const name = names.get(key) ?? key;
    if (!line || named.has(key)) return { name, amount: undefined };
    named.add(key);
    return { name, amount: inPlace(s, line, language) };
  };
  const steps = (s.origin.method ?? []).map((step) =>
    step
      .split(/(\{[^{}]+\})/)
      .filter((stretch) => stretch !== "")
      .map((stretch) => (/^\{[^{}]+\}$/.test(stretch) ? piece(stretch.slice(1, -1)) : { text: stretch })),
  );
  const left = steps.length === 0 ? [] : s.lines.filter((line) => !named.has(line.key));
  return { steps, unnamed: left.map((line) => names.get(line.key) ?? line.name) };
}

/** The name as far as its first comma, where that tells the lines apart: `Oats, rolled` is `Oats`. */
export function shortNames(lines: readonly SheetLine[], language: Language): ReadonlyMap<string, string> {
  const full = lines.map((line) => say(language, line.name));
  const short = full.map((name) => name.split(",")[0]?.trim() || name);
  const count = new Map<string, number>();
  for (const name of short) count.set(name, (count.get(name) ?? 0) + 1);
  return new Map(
    lines.map((line, i) => {
      const [a = line.name, b = line.name] = [short[i], full[i]];
      return [line.key, count.get(a) === 1 ? a : b];
    }),
  );
}

/** Spoons where a scale reads badly, grams otherwise. */
function inPlace(s: Sheet, line: SheetLine, language: Language): string {
  const grams = weighed(line.exactGrams, language);
  const small = line.exactGrams.n < 10n * line.exactGrams.d;
  const spoons = small ? measured(line.amount, s.origin.measures, language) : "";
  return spoons === "" ? grams : spoons;
}
