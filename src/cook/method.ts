import { type Language, say } from "../document/language.ts";
import { namesAny } from "../recipe/stepLines.ts";
import { inSentence, shortName } from "../sheet/names.ts";
import type { SheetLine } from "../sheet/sheet.ts";
import { inReaderUnits } from "./readerUnits.ts";

/** A stretch of a step: words as they were written, or a line's name with the amount to take of it. */
export type Piece =
  | { readonly text: string }
  | { readonly name: string; readonly amount: string | undefined };

/** A dish's method with amounts in place, and the lines that it leaves out. */
export interface Method {
  readonly steps: readonly (readonly Piece[])[];
  /** Keys of lines that have an amount and are not named; empty where there are no steps. */
  readonly unnamed: readonly string[];
}

/**
 * The steps of a recipe, each line's amount where the line is first named; after that its name
 * alone, so that nobody adds it twice. Lines without an amount are named and no more. A step of nothing
 * but lines that are left out goes; beside others they say that they are. Temperatures and times are in the
 * reader's units.
 */
export function methodWith(
  method: readonly string[],
  names: ReadonlyMap<string, string>,
  amounts: ReadonlyMap<string, string>,
  language: Language,
  has: (key: string) => boolean = (key) => names.has(key),
): Method {
  const named = new Set<string>();
  const piece = (key: string, before: string): Piece => {
    if (!has(key)) {
      const name = inSentence(names.get(key) ?? key, language);
      return { text: say(language, "{name} (left out)", { name }) };
    }
    const amount = named.has(key) ? undefined : amounts.get(key);
    named.add(key);
    const name = names.get(key) ?? key;
    const isFirst = amount === undefined && /(^|[.!?])\s*$/.test(before);
    return { name: isFirst ? name : inSentence(name, language), amount };
  };
  const steps = method.filter(namesAny(has)).map((step) =>
    inReaderUnits(step, language)
      .split(/(\{[^{}]+\})/)
      .filter((stretch) => stretch !== "")
      .map((stretch, i, all) =>
        /^\{[^{}]+\}$/.test(stretch) ? piece(stretch.slice(1, -1), all[i - 1] ?? "") : { text: stretch },
      ),
  );
  return { steps, unnamed: steps.length === 0 ? [] : [...amounts.keys()].filter((key) => !named.has(key)) };
}

/** The name as far as its first comma, where that tells the lines apart: `Oats, rolled` is `Oats`. */
export function shortNames(lines: readonly SheetLine[], language: Language): ReadonlyMap<string, string> {
  const full = lines.map((line) => say(language, line.name));
  const short = full.map(shortName);
  const count = new Map<string, number>();
  for (const name of short) count.set(name, (count.get(name) ?? 0) + 1);
  return new Map(
    lines.map((line, i) => {
      const [a = line.name, b = line.name] = [short[i], full[i]];
      return [line.key, count.get(a) === 1 ? a : b];
    }),
  );
}
