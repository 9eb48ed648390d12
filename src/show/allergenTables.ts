import { type Language, say } from "../document/language.ts";
import { allergens } from "../food/allergens.ts";
import { type Allergens, idsOn } from "../person/portion/allergens.ts";
import { pathWords } from "../sheet/names.ts";
import { type Table, table } from "./table.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** Each allergen of the list, with the lines that hold it and those that do not say. */
export function allergenTables(all: Allergens, language: Language): readonly Table[] {
  const words = (text: string): string => say(language, text);
  const title = say(language, "{name}: allergens", { name: all.name });
  return [
    table({
      title,
      columns: [
        { key: "allergen", heading: words("Allergen") },
        { key: "holds", heading: words("Holds it") },
        { key: "unknown", heading: words("Not known") },
      ],
      rows: idsOn(all.list).map((id) => [
        words(allergens[id].name),
        all.contains
          .find((each) => each.allergen === id)
          ?.lines.map(pathWords)
          .join(", ") ?? "",
        all.unknown
          .filter(({ of }) => of.includes(id))
          .map(({ line }) => pathWords(line))
          .join(", "),
      ]),
      notes: [
        words(
          "A blank is not a guarantee: foods are taken at what their data say, and a kitchen can carry traces over. Read the labels.",
        ),
      ],
    }),
  ];
}

/**
 * Which lines hold what, which do not say, and what none is said to hold (`not-said`, which is no promise), as
 * rows of words.
 */
export function allergenTidy(all: Allergens, asked: Asked): Tidy {
  return tidyOf(asked, ["text", "because"], () => allergenRows(all));
}

function* allergenRows(all: Allergens): Generator<TidyRow> {
  const head = { sheet: all.name, row: "line" };
  const silent = new Set(all.unknown.flatMap(({ of }) => of));
  for (const id of idsOn(all.list))
    if (!silent.has(id) && !all.contains.some(({ allergen }) => allergen === id))
      yield { sheet: all.name, row: "total", what: "not-said", own: { text: id } };
  for (const { allergen, lines } of all.contains)
    for (const line of lines) yield { ...head, line, what: "holds", own: { text: allergen } };
  for (const { line, of, why } of all.unknown)
    for (const text of of) yield { ...head, line, what: "not-known", own: { text, because: why } };
}
