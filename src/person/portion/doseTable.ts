import { components } from "../../food/components.ts";
import { compare, exact, type Fraction, times } from "../../number/fraction.ts";
import { tallyFigure } from "../../sheet/show.ts";
import type { Tally } from "../../sheet/tally.ts";
import { figure, legend, showFigure } from "../../table/figure.ts";
import { type Language, say } from "../../table/language.ts";
import { type Cell, type Row, type Table, table } from "../../table/table.ts";
import { practitionerNote } from "../caution.ts";
import type { DoseEater, DoseFor, DoseRow } from "./doses.ts";

/** Shares of a level from this on are shown; the rest are counted in a note. */
const SHOWN: Fraction = { n: 1n, d: 20n };

/** People as columns, each dose as a share of their level. */
export function doseTable(
  name: string,
  who: readonly DoseEater[],
  all: readonly DoseRow[],
  language: Language,
): Table {
  const words = (text: string, gaps?: { readonly [gap: string]: string }): string =>
    say(language, text, gaps);
  const shown = all.filter(({ people }) =>
    people.some(
      ({ exactShare, verdict }) => verdict !== "under" || !exactShare || compare(exactShare, SHOWN) >= 0,
    ),
  );
  const names = new Map(who.map(({ id, name }) => [id, name]));
  const rows = shown.map(({ line, of, amount, people, riskiest, checked }): Row => {
    const held = new Map(people.map((each) => [each.who, each]));
    const eaters = new Set(checked);
    const cellOf = ({ id }: DoseEater): Cell => {
      const own = held.get(id);
      return own ? levelCell(amount, own, language) : eaters.has(id) ? words("no level") : "";
    };
    return {
      kind: "body",
      cells: [
        line,
        words(components[of].name),
        tallyFigure(amount, { unit: words(components[of].unit), language }),
        ...who.map(cellOf),
        ...(who.length > 1 ? [names.get(riskiest) ?? riskiest] : []),
      ],
    };
  });
  const heeded = new Map<string, Set<string>>();
  for (const { line, cautions } of all) {
    for (const { text, source } of cautions) {
      const said = words("{caution} ({source})", { caution: words(text), source });
      heeded.set(said, (heeded.get(said) ?? new Set()).add(line));
    }
  }
  const fewer = all.length - shown.length;
  return table({
    title: words("{name}: lines that are the same for everyone, against upper levels of a day", {
      name: words(name),
    }),
    columns: [
      { key: "line", heading: words("Line") },
      { key: "component", heading: words("Component") },
      { key: "amount", heading: words("Brings"), align: "end" },
      ...who.map(({ id, name: heading }) => ({ key: `for ${id}`, heading, align: "end" as const })),
      ...(who.length > 1 ? [{ key: "riskiest", heading: words("Weighs most on") }] : []),
    ],
    rows,
    notes: [
      ...[...heeded].map(([said, lines]) => `${[...lines].join(", ")}: ${said}`),
      ...(fewer > 0
        ? [words("{count} more, under a twentieth of everyone's level", { count: String(fewer) })]
        : []),
      ...legend(rows, language),
      words("A level is of a whole day: what else is eaten comes on top."),
      words(practitionerNote),
    ],
  });
}

/** A share of the level, and the level itself. */
function levelCell(
  amount: Tally,
  { level, exactShare, least, most, verdict }: DoseFor,
  language: Language,
): Cell {
  const of = showFigure(exact(level.value), { unit: say(language, level.unit), language });
  if (exactShare === undefined) {
    const unknown = figure(null, { language });
    return { ...unknown, text: say(language, "{share} of {level}", { share: unknown.text, level: of }) };
  }
  const percent = tallyFigure(amount.times(100).over(level.value), { places: 0, language });
  // What the amount is marked with stands beside it, in its own column; a bound stays.
  const isBound = percent.tone === "at-least" || percent.tone === "at-most";
  const known = isBound ? percent.text : inPercent(exactShare, language);
  const isOpen = verdict === "not-proven" && most !== undefined;
  const share = isOpen ? between(exact(least), exact(most), language) : known;
  return { ...percent, text: say(language, "{share}% of {level}", { share, level: of }) };
}

/** Two shares, where what is known leaves open which side of the level it is. */
function between(low: Fraction, high: Fraction, language: Language): string {
  return say(language, "{low} to {high}", { low: inPercent(low, language), high: inPercent(high, language) });
}

function inPercent(share: Fraction, language: Language): string {
  return showFigure(times(share, { n: 100n, d: 1n }), { places: 0, language });
}
