import { type Language, say } from "../document/language.ts";
import { type ComponentGroup, type ComponentId, components } from "../food/components.ts";
import { type FigureOptions, showFigure } from "../measure/showFigure.ts";
import { exact } from "../number/exact.ts";
import { type Check, markUnverified, unverifiedNotes } from "../person/check.ts";
import type { ComparisonData, ComparisonRow } from "../person/compare/comparison.ts";
import type { HeldReference, HeldUpper, ReferenceVerdict, UpperVerdict } from "../person/compare/held.ts";
import { missing } from "../person/intakes/authority.ts";
import type { Authority, ReferenceKind, UpperKind } from "../person/intakes/table.ts";
import type { Tally } from "../sheet/tally.ts";
import { balanceTables } from "./balanceTable.ts";
import { cautionTables } from "./cautionTable.ts";
import { boundFigure, nameOf } from "./comparisonCells.ts";
import { figureCell, legend, rangeFigure } from "./figure.ts";
import { groupHeadings } from "./sheetTables.ts";
import { type Cell, type Row, type Table, type TableFigure, table } from "./table.ts";
import { endsFigure, hasEnds, rangedNotes, silentNotes } from "./tallyFigure.ts";

/** How an authority is named to a reader. */
const AUTHORITIES: { readonly [A in Authority]: string } = {
  uk: "United Kingdom",
  us: "United States and Canada",
  eu: "European Union",
  nordic: "Nordic countries",
  who: "WHO and FAO",
};

const REFERENCE_WORDS: { readonly [V in ReferenceVerdict]: string } = {
  part: "part of a day's",
  whole: "at or above the reference",
  "not-proven": "not proven",
};

const UPPER_WORDS: { readonly [V in UpperVerdict]: string } = {
  under: "under the level",
  past: "past the level",
  "may-be-past": "may be past the level",
  "not-proven": "cannot be shown to be below it",
  "other-sources": "of other sources",
};

/** What the letters in a table stand for. */
const KINDS: readonly (readonly [ReferenceKind | UpperKind, string])[] = [
  ["RNI", "RNI: reference nutrient intake, enough for nearly everyone"],
  ["RDA", "RDA: recommended dietary allowance, enough for nearly everyone"],
  ["RI", "RI: recommended intake, enough for nearly everyone"],
  ["PRI", "PRI: population reference intake, enough for nearly everyone"],
  ["AI", "AI: adequate intake, where no more exact figure could be set"],
  ["AMDR", "AMDR: acceptable range of intake, against chronic disease"],
  ["NRV", "NRV: nutrient reference value for labels"],
  ["NRV-R", "NRV-R: nutrient reference value for labels, set from requirements"],
  ["NRV-NCD", "NRV-NCD: nutrient reference value for labels, set from risk of disease"],
  ["DV", "DV: daily value for labels"],
  ["UL", "UL: tolerable upper intake level"],
  ["SUL", "SUL: safe upper level"],
  ["TDI", "TDI: tolerable daily intake, for every day of a life"],
  ["ADI", "ADI: acceptable daily intake, for every day of a life"],
  ["CDRR", "CDRR: intake above which eating less is expected to lower chronic disease; no level of harm"],
];

/** Components against the day, the balance of energy, and what to heed. */
export function comparisonTables(c: ComparisonData, language: Language): Table[] {
  return [
    dayTable(c, language),
    ...levelTables(c, language),
    ...balanceTables(c, language),
    ...cautionTables(c.name, c.cautions, language),
  ];
}

function dayTable(c: ComparisonData, language: Language): Table {
  const words = (text: string): string => say(language, text);
  const rows = inGroups(c.rows, language, ({ of, reference: held }) =>
    held
      ? [
          nameOf(of, language),
          amountCell(held, language),
          referenceCell(held, language),
          shareCell(held, language),
          words(REFERENCE_WORDS[held.verdict]),
        ]
      : undefined,
  );
  return table({
    title: titleOf(c, language),
    columns: [
      { key: "component", heading: words("Component") },
      { key: "portion", heading: words(c.meals > 1 ? "Eaten" : "Portion"), align: "end" },
      { key: "reference", heading: words("A day's reference"), align: "end" },
      { key: "share", heading: words("Share of a day"), unit: "%", align: "end" },
      { key: "verdict", heading: words("Where it stands") },
    ],
    rows,
    notes: dayNotes(c, rows, language),
  });
}

/** Levels that count what food brings; the others are named in a note. */
function levelTables(c: ComparisonData, language: Language): Table[] {
  const words = (text: string, gaps?: { readonly [name: string]: string }): string =>
    say(language, text, gaps);
  const rows = inGroups(c.rows, language, ({ of, upper: held }) =>
    held && held.verdict !== "other-sources"
      ? [
          nameOf(of, language),
          amountCell(held, language),
          upperCell(held, language),
          shareCell(held, language),
          words(UPPER_WORDS[held.verdict]),
        ]
      : undefined,
  );
  const held = c.rows.flatMap(({ upper }) => (upper ? [upper] : []));
  const elsewhere = c.rows
    .filter(({ upper }) => upper?.verdict === "other-sources")
    .map(({ of }) => nameOf(of, language));
  const note = words("only supplements or what is added count towards the level of {components}", {
    components: elsewhere.join(", "),
  });
  if (rows.length === 0) return [];
  return [
    table({
      title: words("{name}: upper levels of a day", { name: c.name }),
      columns: [
        { key: "component", heading: words("Component") },
        { key: "portion", heading: words(c.meals > 1 ? "Eaten" : "Portion"), align: "end" },
        { key: "upper", heading: words("Upper level"), align: "end" },
        { key: "share", heading: words("Share of it"), unit: "%", align: "end" },
        { key: "verdict", heading: words("Where it stands") },
      ],
      rows,
      notes: [
        words("A level is of a whole day. Where none is published, no amount is proven safe."),
        ...unlimitedNotes(c, language),
        ...(elsewhere.length > 0 ? [note] : []),
        ...stateNotes(held, language),
        ...kindNotes(held, language),
        ...unverifiedNotes(checksOf(held), language),
        ...legend(rows, language),
        ...silentNotes(
          c.rows.flatMap(({ of, upper }) => silentOf(of, upper, language)),
          language,
        ),
        ...rangedNotes(
          c.rows.flatMap(({ of, upper }) => silentOf(of, upper, language)),
          language,
        ),
        ...c.rows.flatMap(({ of, upper }) => toldNotes(of, upper, language)),
      ],
    }),
  ];
}

/** Rows under the headings of their groups; those without cells are left out. */
function inGroups(
  all: readonly ComparisonRow[],
  language: Language,
  cells: (row: ComparisonRow) => readonly Cell[] | undefined,
): Row[] {
  return (Object.keys(groupHeadings) as ComponentGroup[]).flatMap((group): Row[] => {
    const rows = all
      .filter(({ of }) => components[of[0] ?? "energy"].group === group)
      .flatMap((row): Row[] => {
        const made = cells(row);
        return made ? [{ kind: "body", cells: made }] : [];
      });
    return rows.length > 0 ? [{ kind: "group", heading: say(language, groupHeadings[group]) }, ...rows] : [];
  });
}

function titleOf(c: ComparisonData, language: Language): string {
  const who = c.authority.startsWith("label")
    ? "{name}: against label reference values"
    : c.meals > 1
      ? "{name}: together, against a day ({authority})"
      : "{name}: one portion against a day ({authority})";
  const authority = Object.hasOwn(AUTHORITIES, c.authority) ? AUTHORITIES[c.authority as Authority] : "";
  return say(language, who, { name: c.name, authority: say(language, authority) });
}

function amountCell(held: HeldReference | HeldUpper, language: Language): Cell {
  return openFigure(held.amount, held.verdict, { unit: say(language, held.figure.unit), language });
}

/** As a tally is shown; where its ends leave open where it stands, they are shown however close they are. */
function openFigure(
  amount: Tally,
  verdict: HeldReference["verdict"] | UpperVerdict,
  how: FigureOptions,
): TableFigure {
  const isOpen = verdict === "not-proven" || verdict === "may-be-past";
  return isOpen && hasEnds(amount) ? endsFigure(amount, how) : boundFigure(amount, how);
}

function referenceCell({ figure: f }: HeldReference, language: Language): Cell {
  const value = exact(f.value);
  const unit = say(language, f.unit);
  const low = showFigure(value, { language });
  const text = f.most
    ? say(language, "{low} to {high}", { low, high: showFigure(exact(f.most), { language }) })
    : low;
  return {
    ...figureCell(value, { language }),
    text: markUnverified(`${text} ${unit}, ${say(language, f.kind)}`, f.check, language),
  };
}

function upperCell({ figure: f }: HeldUpper, language: Language): Cell {
  const value = exact(f.value);
  const text = showFigure(value, { unit: f.unit, language });
  return {
    ...figureCell(value, { language }),
    text: markUnverified(`${text}, ${say(language, f.kind)}`, f.check, language),
  };
}

/** A share in per cent, with what must be said of the amount. */
function shareCell({ amount, figure: f, verdict }: HeldReference | HeldUpper, language: Language): Cell {
  return openFigure(amount.times(100).over(f.value), verdict, { places: 0, language });
}

function dayNotes(c: ComparisonData, rows: readonly Row[], language: Language): string[] {
  const words = (text: string, gaps?: { readonly [name: string]: string }): string =>
    say(language, text, gaps);
  const held = c.rows.flatMap(({ reference }) => (reference ? [reference] : []));
  const isEquivalents = held.some(({ figure: f }) => f.basis === "alpha-tocopherol equivalents");
  const names = c.needEnergy.map((id) => words(components[id].name));
  return [
    words("References are averages of many days, for healthy people: no portion has to meet them."),
    ...missingNotes(c, language),
    ...(isEquivalents
      ? [
          words(
            "Of alpha-tocopherol equivalents the alpha-tocopherol alone is counted: there is at least that.",
          ),
        ]
      : []),
    ...(names.length > 0
      ? [words("no figure without the day's energy: {components}", { components: names.join(", ") })]
      : []),
    ...(hasLevels(c) ? [] : unlimitedNotes(c, language)),
    ...stateNotes(held, language),
    ...kindNotes(held, language),
    ...unverifiedNotes(checksOf(held), language),
    ...legend(rows, language),
    ...silentNotes(
      c.rows.flatMap(({ of, reference }) => silentOf(of, reference, language)),
      language,
    ),
    ...rangedNotes(
      c.rows.flatMap(({ of, reference }) => silentOf(of, reference, language)),
      language,
    ),
    words(c.note),
  ];
}

/** Of an authority that was read in part, what is not here. */
function missingNotes({ authority }: ComparisonData, language: Language): string[] {
  const text = Object.hasOwn(missing, authority) ? missing[authority as Authority] : undefined;
  return text === undefined ? [] : [say(language, text)];
}

/** Whether there is a level that counts what food brings, and so a table of them. */
function hasLevels(c: ComparisonData): boolean {
  return c.rows.some(({ upper }) => upper !== undefined && upper.verdict !== "other-sources");
}

function unlimitedNotes({ withoutUpper }: ComparisonData, language: Language): string[] {
  if (withoutUpper.length === 0) return [];
  const names = withoutUpper.map(({ of }) => nameOf([of], language)).join(", ");
  return [say(language, "no upper level applies to {components}", { components: names })];
}

/** Which figures leave out a person's state. */
function stateNotes(held: readonly (HeldReference | HeldUpper)[], language: Language): string[] {
  const left = held.filter(({ figure: f }) => f.leavesOut !== undefined);
  return [...new Set(left.map(({ figure: f }) => f.leavesOut ?? ""))].map((state) =>
    say(language, "no figure for {state} is published here, and what stands leaves it out: {components}", {
      state: say(language, state),
      components: left.map(({ figure: f }) => nameOf(f.of, language)).join(", "),
    }),
  );
}

function kindNotes(held: readonly (HeldReference | HeldUpper)[], language: Language): string[] {
  const used = held.filter(({ verdict }) => verdict !== "other-sources").map(({ figure: f }) => f.kind);
  return KINDS.filter(([kind]) => used.includes(kind)).map(([, text]) => say(language, text));
}

/** How far what is told reaches, where silent lines leave no most to show. */
function checksOf(held: readonly (HeldReference | HeldUpper)[]): readonly Check[] {
  return held.map(({ figure: f }) => f.check);
}

function toldNotes(of: readonly ComponentId[], held: HeldUpper | undefined, language: Language): string[] {
  const { low, high, told } = held?.amount.ends ?? {};
  if (held?.verdict !== "may-be-past" || high || !low || !told) return [];
  const { text } = rangeFigure(told, low, told, { unit: say(language, held.figure.unit), language });
  return [
    say(language, "{components}: what is told makes {range}, and what is not told comes on top", {
      components: nameOf(of, language),
      range: text,
    }),
  ];
}

function silentOf(
  of: readonly ComponentId[],
  held: HeldReference | HeldUpper | undefined,
  language: Language,
): [string, Tally][] {
  return held && held.verdict !== "other-sources" ? [[nameOf(of, language), held.amount]] : [];
}
