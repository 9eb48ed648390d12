import { britishEnglish, type Language, say } from "../document/language.ts";
import { sourceText } from "../person/check.ts";
import type { AboutPeople } from "../plan/people/about.ts";
import { avoidedTables } from "./avoidedTable.ts";
import { amountText } from "./cautionTable.ts";
import { doseTables } from "./doseTable.ts";
import { type Row, type Table, table } from "./table.ts";

/** What concerns the people of a plan: what they avoid, what to heed, doses against their levels. */
export function peopleTables(about: AboutPeople, language: Language = britishEnglish): readonly Table[] {
  const { avoided, doses } = about;
  return [
    ...avoidedTables(avoided, language),
    ...heedTables(about, language),
    ...(doses && doses.rows.length > 0 ? doseTables(doses, language) : []),
  ];
}

/** Where a portion meets what a person declares; what foods carry for everyone stands on their cards. */
function heedTables(about: AboutPeople, language: Language): readonly Table[] {
  const words = (text: string): string => say(language, text);
  const rows = [...about.bodies.keys()].flatMap((person): Row[] => {
    const own = about.portionsOf(person).flatMap((portion) =>
      about
        .cautions(person, [portion])
        .filter(({ because }) => because.length > 0)
        .map(({ lines, because, text, source, check, amounts }): Row => {
          const brings = amounts.map(({ of, amount }) => amountText(of, amount, language));
          return {
            kind: "body",
            cells: [
              about.names.meal(portion.meal),
              lines.length > 0 ? lines.join(", ") : words("the whole"),
              because.map((trait) => words(trait.replaceAll("-", " "))).join(", "),
              [words(text), ...brings].join(" "),
              sourceText({ source, check }, language),
            ],
          };
        }),
    );
    return own.length === 0 ? [] : [{ kind: "group", heading: about.names.person(person) }, ...own];
  });
  if (rows.length === 0) return [];
  return [
    table({
      title: words("Cautions, person by person"),
      columns: [
        { key: "meal", heading: words("Meal") },
        { key: "lines", heading: words("Line") },
        { key: "for", heading: words("For") },
        { key: "text", heading: words("Caution") },
        { key: "source", heading: words("Source") },
      ],
      rows,
    }),
  ];
}
