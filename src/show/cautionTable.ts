import { type Language, say } from "../document/language.ts";
import { type ComponentId, components } from "../food/components.ts";
import { sourceText } from "../person/check.ts";
import type { PortionCaution } from "../person/portion/cautions.ts";
import { pathWords } from "../sheet/names.ts";
import type { Tally } from "../sheet/tally.ts";
import { type Table, table } from "./table.ts";
import { tallyFigure } from "./tallyFigure.ts";

/** Cautions, and for whom they are; nothing where there is nothing. */
export function cautionTables(
  name: string,
  cautions: readonly PortionCaution[],
  language: Language,
): Table[] {
  if (cautions.length === 0) return [];
  const words = (text: string): string => say(language, text);
  return [
    table({
      title: say(language, "{name}: cautions", { name }),
      columns: [
        { key: "lines", heading: words("Line") },
        { key: "for", heading: words("For") },
        { key: "text", heading: words("Caution") },
        { key: "source", heading: words("Source") },
      ],
      rows: cautions.map(({ lines, because, text, source, check, amounts }) => [
        lines.length > 0 ? lines.map(pathWords).join(", ") : words("the whole"),
        because.length > 0
          ? because.map((trait) => words(trait.replaceAll("-", " "))).join(", ")
          : words("everyone"),
        [words(text), ...amounts.map(({ of, amount }) => amountText(of, amount, language))].join(" "),
        sourceText({ source, check }, language),
      ]),
    }),
  ];
}

/** What a portion brings of what a caution speaks of, as a sentence. */
export function amountText(of: ComponentId, amount: Tally, language: Language): string {
  const { name, unit } = components[of];
  const shown = tallyFigure(amount, { unit: say(language, unit), language }).text;
  return say(language, "{component}: {amount}.", { component: say(language, name), amount: shown });
}
