import { britishEnglish, type Language, say } from "../document/language.ts";
import { type Amount, amount, withExact } from "../measure/amount.ts";
import { type FormatOptions, formatAmount } from "../measure/format.ts";
import type { Measures } from "../measure/measures.ts";
import { type FigureOptions, showBound, showFigure, showRange } from "../measure/showFigure.ts";
import type { Tally } from "./tally.ts";

/**
 * A food's name with its state, said once: taking dry for cooked is the commonest threefold error. That it is as
 * it was sold goes without saying.
 */
export function stated(name: string, state: string | undefined, language: Language = britishEnglish): string {
  const words = name.toLowerCase().split(/[^\p{L}]+/u);
  const said =
    state === undefined ||
    state === "as sold" ||
    words.includes(state) ||
    (state === "cooked" && words.some((word) => COOKED.includes(word)));
  const own = say(language, name);
  return said ? own : `${own}, ${say(language, state)}`;
}

/** Words that say that a food is cooked. */
const COOKED: readonly string[] = ["boiled", "roasted", "baked", "grilled", "steamed", "browned"];

/** How amounts are written in a language. */
export function amountHow(language: Language): FormatOptions {
  const decimal = language.decimal === "," ? "comma" : "point";
  return { decimal, ...(language.words && { words: language.words }) };
}

/** An amount as its recipe writes it, to 3 significant digits, a bare spoon being the recipe's own. */
export function shownAmount(
  a: Amount,
  measures: Measures | undefined,
  language: Language = britishEnglish,
): string {
  const how = { ...amountHow(language), significant: 3, ...(measures !== undefined && { measures }) };
  if (!a.range) return formatAmount(a, how);
  const [least, most] = [withExact(a, a.range.least), withExact(a, a.range.most)];
  return say(language, "{least} to {most}", {
    least: formatAmount(least, how),
    most: formatAmount(most, how),
  });
}

/** Says how large the spoons and cups are that amounts are written in, where any is. */
export function measuresNote(amounts: readonly Amount[], language: Language = britishEnglish): string[] {
  const sizes = new Map<string, string>();
  for (const { measures, unit, size } of amounts.flatMap((a) => a.parts ?? [a])) {
    if (measures === undefined || size === undefined) continue;
    const set = typeof measures === "string" ? measures : measures.name;
    const one = formatAmount(amount({ value: 1, unit }, { measures }), amountHow(language));
    const figure = showFigure(size, { significant: 4, unit: "ml", language });
    sizes.set(`${set} ${unit}`, say(language, "{spoon} is {figure}", { spoon: one, figure }));
  }
  return sizes.size === 0 ? [] : [[...sizes.values()].join("; ")];
}

/** What a tally lies between, whatever its bound: those of its ends that there are; `?` where there is none. */
export function endsText({ ends: { low, high } }: Pick<Tally, "ends">, how: FigureOptions = {}): string {
  if (low && high) return showRange(low, high, how);
  if (low) return showBound(low, "at-least", how);
  return high ? showBound(high, "at-most", how) : say(how.language ?? britishEnglish, "?");
}
