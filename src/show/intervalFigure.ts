import { type Language, say } from "../document/language.ts";
import { showRange } from "../measure/showFigure.ts";
import type { PortionInterval } from "../sheet/portionInterval.ts";
import type { Tally } from "../sheet/tally.ts";
import type { TableFigure } from "./table.ts";
import { tallyFigure } from "./tallyFigure.ts";

/**
 * A figure with how sure it is: `about 12 mg, 10 to 14`. A bound, a range and what is unknown stay as they are:
 * of those more is unsure than how far analyses lie apart.
 */
export function intervalFigure(
  tally: Tally,
  interval: PortionInterval | undefined,
  { unit, language }: { readonly unit?: string; readonly language: Language },
): TableFigure {
  const plain = tallyFigure(tally, { ...(unit !== undefined && { unit }), language });
  if (!interval || ["at-least", "at-most", "between", "unknown"].includes(plain.tone)) return plain;
  const range = showRange(interval.low, interval.high, { language });
  return { ...plain, text: say(language, "about {figure}, {range}", { figure: plain.text, range }) };
}

/** What the ranges are, and which foods count as if they were sure. */
export function intervalNotes(
  intervals: readonly (PortionInterval | undefined)[],
  language: Language,
): readonly string[] {
  const told = intervals.filter((each) => each !== undefined);
  if (told.length === 0) return [];
  const unsaid = [...new Set(told.flatMap((each) => each.unsaid.map((name) => say(language, name))))].sort();
  return [
    say(language, "ranges hold about 95 times in 100, by how far analyses of foods and of cooking lie apart"),
    ...(unsaid.length === 0
      ? []
      : [
          say(
            language,
            "nobody says how sure these foods' figures are, and they count as they stand: {foods}",
            {
              foods: unsaid.join("; "),
            },
          ),
        ]),
  ];
}
