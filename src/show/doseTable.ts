import { type Language, say } from "../document/language.ts";
import { components } from "../food/components.ts";
import { type FigureOptions, showFigure } from "../measure/showFigure.ts";
import { type Exact, exact, fraction, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { practitionerNote } from "../person/caution.ts";
import type { Authority } from "../person/intakes/table.ts";
import type { DoseCheck, DoseEater, DoseFor, DoseRow } from "../person/portion/doses.ts";
import { pathWords } from "../sheet/names.ts";
import type { Tally } from "../sheet/tally.ts";
import { figureCell, legend, rangeFigure } from "./figure.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";
import { endsFigure, hasEnds, rangedNotes, tallyFigure } from "./tallyFigure.ts";

/** Shares of a level from this on are shown; the rest are counted in a note. */
const SHOWN: Exact = /* @__PURE__ */ fraction(1n, 20n);

/** People as columns, each dose as a share of their level. */
export function doseTables(doses: DoseCheck, language: Language): readonly Table[] {
  return [doseTable(doses.name, doses.who(), doses.rows, language)];
}

function doseTable(
  name: string,
  who: readonly DoseEater[],
  all: readonly DoseRow[],
  language: Language,
): Table {
  const words = (text: string, gaps?: { readonly [gap: string]: string }): string =>
    say(language, text, gaps);
  const shown = all.filter(({ people }) =>
    people.some(({ share, verdict }) => verdict !== "under" || !share || compareRatios(share, SHOWN) >= 0),
  );
  const names = new Map(who.map(({ id, name }) => [id, name]));
  const rows = shown.map(({ line, of, amount, people, riskiest, checked }): Row => {
    const held = new Map(people.map((each) => [each.who, each]));
    const eaters = new Set(checked);
    const cellOf = ({ id }: DoseEater): Cell => {
      const own = held.get(id);
      return own ? levelCell(amount, own, language) : eaters.has(id) ? words("no upper level: ask") : "";
    };
    return {
      kind: "body",
      cells: [
        pathWords(line),
        words(components[of].name),
        amountCell(amount, people, { unit: words(components[of].unit), language }),
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
    title: words("{name}: fixed doses against daily upper levels", {
      name: words(name),
    }),
    columns: [
      { key: "line", heading: words("Line") },
      { key: "component", heading: words("Component") },
      { key: "amount", heading: words("Brings"), align: "end" },
      ...who.map(({ id, name: heading }) => ({ key: `for ${id}`, heading, align: "end" as const })),
      ...(who.length > 1 ? [{ key: "riskiest", heading: words("Closest to the limit") }] : []),
    ],
    rows,
    notes: [
      ...[...heeded].map(([said, lines]) => `${[...lines].map(pathWords).join(", ")}: ${said}`),
      ...(fewer > 0
        ? [words("{count} more, under a twentieth of everyone's level", { count: String(fewer) })]
        : []),
      ...legend(rows, language),
      ...rangedNotes(
        shown.map(({ of, amount }) => [components[of].name, amount]),
        language,
      ),
      ...dayNotes(all, names, language),
      ...askNotes(shown, language),
      words("A level is of a whole day: what else is eaten comes on top."),
      words(practitionerNote),
    ],
  });
}

/** Days that are above a level though their mean is not. */
function dayNotes(
  rows: readonly DoseRow[],
  names: ReadonlyMap<string, string>,
  language: Language,
): readonly string[] {
  return rows.flatMap(({ line, of, people }) =>
    people
      .filter(({ days, verdict }) => days.length > 0 && verdict !== "past")
      .map(({ who, days }) =>
        say(
          language,
          "{line}, {component}: {person} is above the level on single days, not on the mean: {days}",
          {
            line: pathWords(line),
            component: say(language, components[of].name),
            person: names.get(who) ?? who,
            days: days.join(", "),
          },
        ),
      ),
  );
}

/** What the dose brings; where its ends leave open how that stands to a level, both however close they are. */
function amountCell(amount: Tally, people: readonly DoseFor[], how: FigureOptions): Cell {
  const isOpen = people.some(isOpenTo);
  return isOpen && hasEnds(amount) ? endsFigure(amount, how) : tallyFigure(amount, how);
}

function isOpenTo({ verdict }: DoseFor): boolean {
  return verdict === "not-proven" || verdict === "may-be-past";
}

/** How an authority is named in a table of several people. */
const NAMES: { readonly [A in Authority]: string } = {
  uk: "UK",
  us: "US",
  eu: "EU",
  nordic: "Nordic",
  who: "WHO",
};

/** What to do where an authority has no level at someone's age, or nobody has. */
function askNotes(rows: readonly DoseRow[], language: Language): string[] {
  const words = (text: string): string => say(language, text);
  const isLent = rows.some(({ people }) => people.some(({ noLevelBy }) => noLevelBy !== undefined));
  const isBare = rows.some(({ people, checked }) => checked.length > people.length);
  return [
    ...(isLent
      ? [
          words(
            "Where someone's authority has no level at their age, another's stands in and is named: a help for whoever is asked, and no leave to serve up to it.",
          ),
        ]
      : []),
    ...(isBare
      ? [
          words(
            "no upper level available, which does not mean any amount is safe; ask a clinician or dietitian",
          ),
        ]
      : []),
  ];
}

/** A share of the level, and the level itself. */
function levelCell(amount: Tally, own: DoseFor, language: Language): Cell {
  const { level, authority, noLevelBy, share: exactShare, least, most } = own;
  const figureOf = showFigure(exact(level.value), { unit: say(language, level.unit), language });
  const lent = "{level} ({authority} level: no {own} level at this age)";
  const of = noLevelBy
    ? say(language, lent, { level: figureOf, authority: NAMES[authority], own: NAMES[noLevelBy] })
    : figureOf;
  if (exactShare === undefined) {
    const unknown = figureCell(null, { language });
    return { ...unknown, text: say(language, "{share} of {level}", { share: unknown.text, level: of }) };
  }
  const percent = tallyFigure(amount.times(100).over(level.value), { places: 0, language });
  // What the amount is marked with stands beside it, in its own column; a bound stays.
  const isBound = percent.tone === "at-least" || percent.tone === "at-most" || percent.tone === "between";
  const known = isBound ? percent.text : inPercent(exactShare, language);
  const isOpen = isOpenTo(own) && most !== undefined;
  const share = isOpen ? between(exact(least), exact(most), language) : known;
  return { ...percent, text: say(language, "{share}% of {level}", { share, level: of }) };
}

/** Two shares, where what is known leaves open which side of the level it is. */
function between(low: Exact, high: Exact, language: Language): string {
  const [least, most] = [times(low, HUNDRED), times(high, HUNDRED)];
  return rangeFigure(most, least, most, { places: 0, language }).text;
}

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);

function inPercent(share: Exact, language: Language): string {
  return showFigure(times(share, HUNDRED), { places: 0, language });
}
