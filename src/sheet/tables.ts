import { type ComponentGroup, type ComponentId, componentIds, components } from "../food/components.ts";
import { type Fraction, over } from "../number/fraction.ts";
import { figure, legend } from "../table/figure.ts";
import { type Cell, type Row, type Table, table } from "../table/table.ts";
import type { Own } from "./grid.ts";
import { type CellValue, isFailure, type RowRef } from "./own.ts";
import type { Sheet } from "./sheet.ts";
import { measuresNote, shownAmount, silentNotes, tallyFigure } from "./show.ts";

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

/** What goes into the batch: line, state, amount, grams, how it scales. */
export function linesTable(s: Sheet): Table {
  const rows = s.lines.map((line) => [
    line.name,
    line.state ?? "",
    shownAmount(line.amount, s.origin.measures),
    figure(line.exactGrams),
    line.scaling === "held" ? (line.part ?? "") : line.scaling,
  ]);
  const { raw, cooked } = s.masses;
  const mass = (heading: string, grams: Fraction): Row => ({
    kind: "total",
    cells: [heading, "", "", figure(grams), ""],
  });
  return table({
    title: `${s.name}: ${s.portions.toString()} portions`,
    columns: [
      { key: "line", heading: "Line" },
      { key: "state", heading: "State" },
      { key: "amount", heading: "Amount" },
      { key: "grams", heading: "Mass", unit: "g", align: "end" },
      { key: "scaling", heading: "Scaling" },
    ],
    notes: measuresNote(s.values.amounts),
    rows: [
      ...rows,
      mass("As weighed in", raw),
      mass("As eaten", cooked),
      mass("One portion", over(cooked, s.values.portions)),
    ],
  });
}

/** The figures of one portion, 100 g and the batch, as eaten, of every component that a line knows of. */
export function figuresTable(s: Sheet, ids: readonly ComponentId[] = componentIds): Table {
  const known = ids.filter((id) => s.total(id).bound !== "unknown");
  const rows: Row[] = [];
  for (const group of Object.keys(groupHeadings) as ComponentGroup[]) {
    const inGroup = known.filter((id) => components[id].group === group);
    if (inGroup.length > 0) rows.push({ kind: "group", heading: groupHeadings[group] });
    for (const id of inGroup) {
      const { name, unit } = components[id];
      rows.push({
        kind: "body",
        cells: [name, unit, tallyFigure(s.portion(id)), tallyFigure(s.per100g(id)), tallyFigure(s.total(id))],
      });
    }
  }
  return table({
    title: `${s.name}: figures as eaten`,
    columns: [
      { key: "component", heading: "Component" },
      { key: "unit", heading: "Unit" },
      { key: "portion", heading: "One portion", align: "end" },
      { key: "per100g", heading: "100 g", align: "end" },
      { key: "total", heading: "Batch", align: "end" },
    ],
    rows,
    notes: [...legend(rows), ...silentNotes(known.map((id) => [components[id].name, s.total(id)]))],
  });
}

/** Columns of one's own, and rows of one's own over energy and the columns. */
export function ownTables(s: Sheet, own: Own): Table[] {
  const columns = [...own.columns.keys()];
  const tables: Table[] = [];
  if (columns.length > 0) {
    const rowsOf: readonly (readonly [string, RowRef])[] = [
      ...s.lines.map((line): [string, RowRef] => [line.name, { line: line.key }]),
      ["Batch", "total"],
      ["One portion", "portion"],
      ["100 g", "per100g"],
    ];
    const rows = rowsOf.map(([name, row]) => [
      name,
      ...columns.map((column) => cellShown(s.value(column, row))),
    ]);
    tables.push(ownTable(`${s.name}: own columns`, "Line", columns, rows));
  }
  const names = [...own.rows.keys()];
  if (names.length > 0) {
    const known = [...componentIds.filter((id) => s.total(id).bound !== "unknown"), "grams", ...columns];
    const rows = known.map((column) => [column, ...names.map((row) => cellShown(s.value(column, { row })))]);
    tables.push(ownTable(`${s.name}: own rows`, "Column", names, rows));
  }
  return tables;
}

function ownTable(title: string, first: string, headings: readonly string[], rows: readonly Cell[][]): Table {
  const columns = headings.map((heading) => ({ key: `own ${heading}`, heading, align: "end" as const }));
  return table({ title, columns: [{ key: "name", heading: first }, ...columns], rows, notes: legend(rows) });
}

/** A failed cell says what went wrong in place of a figure. */
function cellShown(value: CellValue): Cell {
  if (isFailure(value)) return `failed: ${value.message} (${value.cell})`;
  return tallyFigure(value, value.unit === "" ? {} : { unit: value.unit });
}
