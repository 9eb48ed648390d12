/** Gathers from the source all that `phrases()` lists, and writes its data file. */
import { boundCodes, statusCodes } from "../../src/bulk/columns.ts";
import { cautionTexts } from "../../src/person/caution.ts";
import { readSource, type Source, textsReaching } from "./flow.ts";

/**
 * Where the flow ends outside the source: names that a caller gave, units and currencies of figures, words of a
 * fixed list that are written with other marks. Any other end is finished English, which no language can say.
 */
const outside: readonly RegExp[] = [
  // What callers call their foods, recipes, people, meals, days, parts and columns.
  /: (name|names\.get\(key\)|line\.name|doses\.name|component|key|head|aisle|currency|what|worst\.of|food)$/,
  /^(plan\/read\/versions|plan\/share\/lines|scale\/engine\/\w+|recipe\/make|food\/components|interchange\/sr|sheet\/names)\.ts/,
  // Units of figures, and amounts in a language's own words.
  /: (this|t|x|value)\.unit$|: unit$|^measure\/format\.ts/,
  // What has been said before it reaches a table, and what the reader of documents makes.
  /^(card\/html|interchange\/workbook\/(recipePage|workbook)|show\/(comparisonTables|measuredTables|figure))\.ts: (text|note)$/,
  /^document\/(language|schema)\.ts/,
  // Words of lists, which `listed` has.
  /replaceAll\("-", " "\)$|replace\("-", " "\)$|: mark$/,
];

/** Words that the source keeps as ids with hyphens, and shows without them. */
const listed: readonly string[] = [
  ...[
    "kidney-disease",
    "insulin",
    "warfarin",
    "thyroid-disease",
    "eating-disorder-history",
    "coeliac-disease",
  ],
  ...["diabetes", "hypertension", "levothyroxine", "lithium", "mao-inhibitors", "phenylketonuria"],
  ...["haemochromatosis", "pregnant", "breastfeeding", ...statusCodes, ...boundCodes],
].map((id) => id.replaceAll("-", " "));

export interface Collected {
  readonly notes: readonly string[];
  readonly ends: readonly string[];
}

export function collected(source: Source = readSource()): Collected {
  const said = textsReaching(source, "document/language.ts", "say", 1);
  const notes = new Set([...Object.values(cautionTexts).map(({ text }) => text), ...listed]);
  for (const [text, file] of said.texts)
    if (text !== "" && !file.startsWith("food/") && !file.startsWith("interchange/sr")) notes.add(text);
  return {
    notes: [...notes].sort(),
    ends: said.ends.filter((end) => !outside.some((known) => known.test(end))),
  };
}

/** The text of the data file. */
export function dataFile({ notes }: Collected): string {
  const text = notes.join("\n").replace(/[\\`]|\$\{/g, "\\$&");
  return `// All that \`say\` is asked for, one phrase a line, as read from the source: npm run phrases.
export const NOTES: string = \`${text}\`;
`;
}
