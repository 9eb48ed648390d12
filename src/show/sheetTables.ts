import { britishEnglish, type Language, say } from "../document/language.ts";
import { type ComponentGroup, type ComponentId, components, isListed } from "../food/components.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, isZero, over } from "../number/exact.ts";
import type { Grid } from "../sheet/grid.ts";
import { lineNameIn } from "../sheet/names.ts";
import { type CellValue, isFailure, type RowRef } from "../sheet/own.ts";
import type { PlanLine } from "../sheet/plan.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { measuresNote, shownAmount } from "../sheet/stated.ts";
import type { Tally } from "../sheet/tally.ts";
import { isPresumed } from "../sheet/values.ts";
import { driedNote } from "../sheet/water.ts";
import { figureCell, legend } from "./figure.ts";
import { intervalTable } from "./intervalTable.ts";
import { isAsked, type Parts } from "./parts.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";
import { marksColumn, marksOf, plainFigure, rangedNotes, silentNotes, tallyFigure } from "./tallyFigure.ts";

/** Headings of the groups of components, in the order they are shown. */
export const groupHeadings: { readonly [G in ComponentGroup]: string } = {
  energy: "Energy",
  proximate: "Proximates",
  carbohydrate: "Carbohydrates",
  fattyAcid: "Fatty acids",
  mineral: "Minerals",
  vitamin: "Vitamins",
  carotenoid: "Carotenoids",
  aminoAcid: "Amino acids",
  other: "Other",
};

/** A line's amount; what is weighed with its peel says so, since its grams are without. */
function writtenAmount(s: Sheet, i: number, language: Language): string {
  const { line } = s.plan.lines[i] as PlanLine;
  const shown = shownAmount(s.lineAt(i).amount, s.origin.measures, language);
  return line.weighed === "as-purchased" ? say(language, "{amount} as purchased", { amount: shown }) : shown;
}

const PRESUMED =
  "the yield is assumed: it is that of an earlier weighing, and what is cooked has changed since; weigh the cooked dish again";

const PRESUMED_RETENTION =
  "what cooking leaves of {lines} is assumed: it was said of another food in the same place; give its own retention";

/**
 * Lines with their amounts, figures as eaten, and columns and rows of one's own; where they are asked for by name,
 * how sure a portion's figures are.
 */
export function sheetTables(
  s: Sheet,
  language: Language = britishEnglish,
  most?: number,
  parts: Parts = "all",
): readonly Table[] {
  const portion = {
    ...{ key: "portion", heading: say(language, "One portion"), sheets: [s] },
    brings: (id: ComponentId) => s.portion(id),
  };
  return [
    linesTable(s, language, most),
    figuresTable(s, undefined, language, most),
    ...(parts !== "all" && isAsked(parts, "intervals")
      ? [intervalTable(s.name, listedOf(s), [portion], language)]
      : []),
    ...(s.grid ? ownTables(s, s.grid, language, most) : []),
  ];
}

/** What goes into the batch: line, state, amount, grams, how it scales. */
export function linesTable(
  s: Sheet,
  language: Language = britishEnglish,
  most: number = Number.POSITIVE_INFINITY,
): Table {
  const count = s.plan.lines.length;
  const shown = Math.min(count, Math.max(0, most));
  const presumed = s.plan.lines.flatMap(({ line, source }) =>
    line.retentionPresumed ? [say(language, source.name)] : [],
  );
  const rows = Array.from({ length: shown }, (_, i): Cell[] => {
    const line = s.lineAt(i);
    return [
      say(language, line.name),
      say(language, line.state ?? ""),
      writtenAmount(s, i, language),
      figureCell(line.grams, { language }),
      line.scaling === "held" ? (line.part ?? "") : say(language, line.scaling),
    ];
  });
  const { raw, cooked } = s.masses;
  const mass = (heading: string, grams: Exact): Row => ({
    kind: "total",
    cells: [say(language, heading), "", "", figureCell(grams, { language }), ""],
  });
  const portions = showFigure(s.values.portions, { language });
  const title = portions === "1" ? "{name}: 1 portion" : "{name}: {count} portions";
  const sums = [
    mass("As weighed in", raw),
    mass("As eaten", cooked),
    mass("One portion", over(cooked, s.values.portions)),
  ];
  return table({
    title: say(language, title, { name: s.name, count: portions }),
    columns: [
      { key: "line", heading: say(language, "Line") },
      { key: "state", heading: say(language, "State") },
      { key: "amount", heading: say(language, "Amount") },
      { key: "grams", heading: say(language, "Mass"), unit: say(language, "g"), align: "end" },
      { key: "scaling", heading: say(language, "Scaling") },
    ],
    notes: [
      ...measuresNote(s.values.amounts.slice(0, shown), language),
      ...(isPresumed(s.values) ? [say(language, PRESUMED)] : []),
      ...(presumed.length > 0 ? [say(language, PRESUMED_RETENTION, { lines: presumed.join(", ") })] : []),
    ],
    // Sums stand below all lines, and are not shown where those are not.
    rows: shown < count ? rows : [...rows, ...sums],
    more: shown < count ? count - shown + sums.length : 0,
  });
}

/**
 * The figures of one portion, 100 g and the batch, as eaten, of every component that a line knows of;
 * a note names those that none does, so that a row left out is not taken for none of it.
 */
export function figuresTable(
  s: Sheet,
  ids: readonly ComponentId[] = listedOf(s),
  language: Language = britishEnglish,
  most?: number,
): Table {
  const known = ids.filter((id) => s.total(id).bound !== "unknown");
  const rows: Row[] = [];
  const marks = marksColumn(
    known.map((id) => marksOf(s.total(id))),
    language,
  );
  for (const group of Object.keys(groupHeadings) as ComponentGroup[]) {
    const inGroup = known.filter((id) => components[id].group === group);
    if (inGroup.length > 0) rows.push({ kind: "group", heading: say(language, groupHeadings[group]) });
    for (const id of inGroup) {
      const { name, unit } = components[id];
      const figures = [s.portion(id), per100g(s, id), s.total(id)].map((t) =>
        t ? plainFigure(t, { language }) : figureCell(null, { language }),
      );
      const cells = [say(language, name), say(language, unit), ...figures, ...marks.cell(known.indexOf(id))];
      rows.push({ kind: "body", cells });
    }
  }
  const lineName = (key: string): string => lineNameIn(s, key, language);
  return table({
    title: say(language, "{name}: figures as eaten", { name: s.name }),
    columns: [
      { key: "component", heading: say(language, "Component") },
      { key: "unit", heading: say(language, "Unit") },
      { key: "portion", heading: say(language, "One portion"), align: "end" },
      { key: "per100g", heading: say(language, "100 g"), align: "end" },
      { key: "total", heading: say(language, "Batch"), align: "end" },
      ...marks.columns,
    ],
    rows,
    notes: [
      ...legend(rows, language, marks.used),
      ...driedNote(s.water, language),
      ...silentNotes(
        known.map((id) => [components[id].name, s.total(id)]),
        language,
        most,
        lineName,
      ),
      ...rangedNotes(
        known.map((id) => [components[id].name, s.total(id)]),
        language,
        most,
        lineName,
      ),
      ...unknownNote(
        ids.filter((id) => !known.includes(id)),
        language,
      ),
    ],
  });
}

/** Components that are listed without being asked for: of single sugars, fatty acids and the like those that it holds. */
function listedOf(s: Sheet): readonly ComponentId[] {
  return s.plan.components.filter((id) => isListed(id) || s.total(id).value.n > 0n);
}

/** Of a recipe with no mass there are no 100 g. */
function per100g(s: Sheet, id: ComponentId): Tally | undefined {
  return isZero(s.masses.cooked) ? undefined : s.per100g(id);
}

function unknownNote(ids: readonly ComponentId[], language: Language): string[] {
  if (ids.length === 0) return [];
  const names = ids.map((id) => say(language, components[id].name)).join(", ");
  return [say(language, "nothing is known of: {components}", { components: names })];
}

/** Columns of one's own, and rows of one's own over energy and the columns. */
export function ownTables(
  s: Sheet,
  grid: Grid,
  language: Language = britishEnglish,
  most: number = Number.POSITIVE_INFINITY,
): Table[] {
  const shown = (value: CellValue): Cell => cellShown(value, language);
  const columns = [...grid.own.columns.keys()];
  const tables: Table[] = [];
  if (columns.length > 0) {
    const count = s.plan.lines.length;
    const lines = s.plan.lines.slice(0, Math.max(0, most));
    const sums: readonly (readonly [string, RowRef])[] = [
      [say(language, "Batch"), "total"],
      [say(language, "One portion"), "portion"],
      [say(language, "100 g"), "per100g"],
    ];
    const rowsOf: readonly (readonly [string, RowRef])[] = [
      ...lines.map(({ line, source }): [string, RowRef] => [say(language, source.name), { line: line.key }]),
      ...(lines.length < count ? [] : sums),
    ];
    const rows = rowsOf.map(([name, row]) => [
      name,
      ...columns.map((column) => shown(grid.value({ column, row }))),
    ]);
    tables.push(
      ownTable(
        say(language, "{name}: own columns", { name: s.name }),
        "Line",
        columns,
        rows,
        language,
        gramsNote(s, grid, columns, language),
        lines.length < count ? count - lines.length + sums.length : 0,
      ),
    );
  }
  const names = [...grid.own.rows.keys()];
  if (names.length > 0) {
    const known = [...listedOf(s).filter((id) => s.total(id).bound !== "unknown"), "grams", ...columns];
    const rows = known.map((column) => [
      column,
      ...names.map((row) => shown(grid.value({ column, row: { row } }))),
    ]);
    tables.push(
      ownTable(say(language, "{name}: own rows", { name: s.name }), "Column", names, rows, language),
    );
  }
  return tables;
}

function ownTable(
  title: string,
  first: string,
  headings: readonly string[],
  rows: readonly Cell[][],
  language: Language,
  notes: readonly string[] = [],
  more = 0,
): Table {
  const columns = headings.map((heading) => ({ key: `own ${heading}`, heading, align: "end" as const }));
  return table({
    title,
    columns: [{ key: "name", heading: say(language, first) }, ...columns],
    rows,
    more,
    notes: [...legend(rows, language), ...notes],
  });
}

/** Grams of lines are as weighed in and those of the batch as eaten: what a column makes of them need not add up. */
function gramsNote(s: Sheet, grid: Grid, columns: readonly string[], language: Language): string[] {
  const { raw, cooked, change } = s.masses;
  const isRead = (column: string): boolean =>
    grid.reads({ column, row: "total" }).some((ref) => ref.column === "grams" && ref.row === "total");
  const readers = isZero(change) ? [] : columns.filter(isRead);
  if (readers.length === 0) return [];
  const grams = (f: Exact): string => showFigure(f, { unit: "g", language });
  return [
    say(
      language,
      "{columns}: lines count by their grams as weighed in, {raw} in all, and the batch by its {cooked} as eaten, so that the lines need not add up to it; at.sum adds up lines",
      { columns: readers.join(", "), raw: grams(raw), cooked: grams(cooked) },
    ),
  ];
}

/** A failed cell says what went wrong in place of a figure. */
function cellShown(value: CellValue, language: Language): Cell {
  if (isFailure(value))
    return say(language, "failed: {message} ({cell})", { message: value.message, cell: value.cell });
  return tallyFigure(value, value.unit === "" ? { language } : { language, unit: value.unit });
}
