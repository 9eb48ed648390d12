import { drawnSheets } from "../cook/drawnSheets.ts";
import { type Language, say } from "../document/language.ts";
import type { Amount } from "../measure/amount.ts";
import { showPercent } from "../measure/showFigure.ts";
import type { PlannedDish } from "../plan/dish.ts";
import { lineAmount } from "../plan/lineAmount.ts";
import type { PartServing, Pot } from "../plan/share/parts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { measuresNote, shownAmount, stated } from "../sheet/stated.ts";
import { figureCell } from "./figure.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";

/** A dish of a plan, with what its tables are headed by. */
interface Titled {
  readonly dish: PlannedDish;
  readonly title: string;
  readonly nameOf: (person: string) => string;
  readonly language: Language;
}

/** Nested recipes of a dish, as much of each as is drawn on for everyone, innermost first. */
export function firstTables(batch: Sheet, title: string, language: Language): readonly Table[] {
  return drawnSheets(batch).map((s) =>
    table({
      title: say(language, "{name}: {recipe}, made first", { name: title, recipe: s.name }),
      columns: [
        { key: "line", heading: say(language, "Line") },
        { key: "all", heading: say(language, "For all"), align: "end" },
      ],
      rows: [
        ...s.lines.map((line, at) => [stated(line.name, line.state, language), lineAmount(s, at, language)]),
        {
          kind: "total",
          cells: [say(language, "when done"), figureCell(s.masses.cooked, { unit: "g", language })],
        },
      ],
      notes: measuresNote(s.values.amounts, language),
    }),
  );
}

/** What is cooked once, and what each person gets of it; nothing where there is nothing to part. */
export function potTables(titled: Titled): readonly Table[] {
  if (!isParted(titled.dish)) return [];
  return [...titled.dish.pots.map((pot, i) => potTable(titled, pot, i)), servingsTable(titled)];
}

/** Whether there is something to part. */
export function isParted({ pots, servings }: PlannedDish): boolean {
  return servings.length > 1 && (pots.length > 1 || servings.some(({ added }) => added !== undefined));
}

function potTable({ dish, title, nameOf, language }: Titled, pot: Pot, i: number): Table {
  const { sheet: s, people, notes } = pot;
  const several = dish.pots.length > 1;
  const gaps = { name: title, number: String(i + 1), people: people.map(nameOf).join(", ") };
  const rows = s.lines.map((line, at) => [
    stated(line.name, line.state, language),
    lineAmount(s, at, language),
  ]);
  const cooked: Row = {
    kind: "total",
    cells: [say(language, "as cooked"), figureCell(s.masses.cooked, { unit: "g", language })],
  };
  return table({
    title: say(language, several ? "{name}: pot {number}, for {people}" : "{name}: the pot", gaps),
    columns: [
      { key: "line", heading: say(language, "Line") },
      { key: "all", heading: say(language, "For all"), align: "end" },
    ],
    rows: [...rows, cooked],
    notes: [
      ...measuresNote(s.values.amounts, language),
      ...(several && i === 0 ? [dish.whyIn(language)] : []),
      ...notes.map(({ text }) => say(language, text)),
    ],
  });
}

function servingsTable({ dish, title, nameOf, language }: Titled): Table {
  const { pots, servings, questions } = dish;
  const several = pots.length > 1;
  const byVolume = servings.some(({ millilitres }) => millilitres !== undefined);
  const rows = servings.map((serving): Cell[] => [
    nameOf(serving.person),
    ...(several ? [serving.pot ? String(pots.indexOf(serving.pot) + 1) : ""] : []),
    ...shareCells(serving, byVolume, language),
    addedText(serving, language),
  ]);
  const end = { align: "end" } as const;
  return table({
    title: say(language, "{name}: what each person gets", { name: title }),
    columns: [
      { key: "person", heading: say(language, "Person") },
      ...(several ? [{ key: "pot", heading: say(language, "Pot"), ...end }] : []),
      { key: "share", heading: say(language, "Of the pot"), ...end },
      { key: "grams", heading: say(language, "By mass"), ...end },
      ...(byVolume ? [{ key: "millilitres", heading: say(language, "By volume"), ...end }] : []),
      { key: "added", heading: say(language, "Added") },
    ],
    rows,
    notes: [
      ...measuresNote(otherSpoons(servings), language),
      ...questions.map(({ text, options }) =>
        say(language, "{question}. Either {options}", {
          question: text,
          options: options.map((option) => say(language, option.text)).join("; or "),
        }),
      ),
    ],
  });
}

/** Amounts in spoons of a kitchen whose measures are not the recipe's. */
function otherSpoons(servings: readonly PartServing[]): readonly Amount[] {
  return servings.flatMap(({ added }) =>
    (added?.values.amounts ?? []).filter(
      ({ measures }) => measures !== undefined && measures !== added?.origin.measures,
    ),
  );
}

function shareCells(serving: PartServing, byVolume: boolean, language: Language): Cell[] {
  const { pot, share: exactShare, millilitres } = serving;
  const volume = millilitres === undefined ? "" : figureCell(millilitres, { unit: "ml", language });
  if (!pot) return byVolume ? ["", "", ""] : ["", ""];
  const share = showPercent(exactShare, { language, significant: 3 });
  return [share, massCell(serving, language), ...(byVolume ? [volume] : [])];
}

/** As the scale shows it, where it is weighed out. */
function massCell({ grams: exactGrams, weighed, isRest, pot }: PartServing, language: Language): Cell {
  const grams = figureCell(exactGrams, { unit: "g", language });
  if (isRest) return say(language, "the rest ({grams})", { grams: grams.text });
  if (!weighed || weighed.unit === "g") return grams;
  return `${shownAmount(weighed, pot?.sheet.origin.measures, language)} (${grams.text})`;
}

/** Lines that are weighed out for one person. */
function addedText({ added }: PartServing, language: Language): string {
  const lines = added?.lines ?? [];
  return lines
    .map((line, i) => {
      const amount = added ? lineAmount(added, i, language) : "";
      return `${stated(line.name, line.state, language)} ${amount}`;
    })
    .join("; ");
}
