import { type Language, say } from "../document/language.ts";
import { exact } from "../number/exact.ts";
import type { Citation, Citations } from "../sheet/citations.ts";
import { type Table, table } from "./table.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** A row for each source, the one that most figures rest on first. */
export function citationTables({ sources }: Citations, language: Language): readonly Table[] {
  return [
    table({
      title: say(language, "Sources"),
      columns: [
        { key: "source", heading: say(language, "Source") },
        { key: "release", heading: say(language, "Release") },
        { key: "licence", heading: say(language, "Licence") },
        { key: "kind", heading: say(language, "For") },
        { key: "figures", heading: say(language, "Figures"), align: "end" },
        { key: "foods", heading: say(language, "Foods"), align: "end" },
      ],
      rows: sources.map(({ title, source, release, licence, kind, figures, foods }) => [
        title ?? source,
        release ?? "",
        licence ?? "",
        say(language, kind),
        counted(figures),
        counted(foods.length),
      ]),
      notes: [],
    }),
  ];
}

function counted(count: number): { text: string; value: string; tone: "known" } {
  return { text: String(count), value: String(count), tone: "known" };
}

const OWN: readonly string[] = ["kind", "title", "release", "licence", "figures", "foods", "records"];

/** A row for each source. */
export function citationTidy({ sources }: Citations, asked: Asked): Tidy {
  const row = ({ kind, source, title, release, licence, figures, foods, records }: Citation): TidyRow => ({
    row: "source",
    source,
    own: {
      ...{ kind, title, release, licence },
      figures: exact(figures),
      foods: foods.join(", "),
      records: records.join(", "),
    },
  });
  return tidyOf(asked, OWN, () => sources.map(row));
}
