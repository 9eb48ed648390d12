import type { ComponentId } from "../food/components.ts";
import type { ReadFigure } from "../food/figure.ts";
import type { FoodInput } from "../food/food.ts";
import type { Ratio } from "../number/ratio.ts";
import { type CellValue, isFailure, type RowRef } from "../sheet/own.ts";
import { componentIndex, type PlanLine } from "../sheet/plan.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { cellRow, type FigureRow, pointRow, tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { type WantedRows, wanted } from "./wanted.ts";

/** Columns of lines that every result with sheets in it has. */
export const lineColumns: readonly string[] = ["name", "state", "scaling", "part", "weighed"];

/** Whose sheet it is, and what its figures are, where there is more than one of a kind. */
export type Whose = Pick<TidyRow, "sheet" | "person" | "day" | "meal" | "dish" | "what" | "own">;

/**
 * A sheet as tidy rows: what its lines weigh as weighed in (`mass`, `raw`) and their amounts as written
 * (`amount`, `written`), what they bring as eaten; then the batch (`total`), a portion and 100 g; columns and rows of one's own among them. Every component has
 * its rows, whether or not anything is known of it. The water that a pot takes up or gives off belongs to no
 * line, so that water alone does not add up to the batch.
 */
export function sheetTidy(s: Sheet, asked: Asked): Tidy {
  const { columns, constants } = s.grid?.own ?? {};
  const want = wanted(
    asked,
    ["portions", ...(columns?.keys() ?? []), ...(constants?.keys() ?? [])],
    s.plan.ownComponents,
  );
  return { own: [...lineColumns, "failed"], rows: sheetRows(s, want) };
}

function* sheetRows(s: Sheet, want: WantedRows): Generator<TidyRow> {
  const whose = { sheet: s.name };
  const grid = s.grid;
  const columns = [...(grid?.own.columns.keys() ?? [])].filter((name) => want.has(name));
  const cells = function* (row: RowRef, head: TidyRow): Generator<TidyRow> {
    if (!grid) return;
    for (const column of columns) yield { head, component: column, ...ownRow(grid.value({ column, row })) };
  };
  for (const [i, line] of s.lines.entries()) {
    yield* lineRows(s, i, whose, want);
    if (columns.length > 0) yield* cells({ line: line.key }, headOf(s, i, whose));
  }
  if (want.has("portions"))
    yield { ...whose, row: "total", component: "portions", ...pointRow(s.values.portions, "") };
  if (want.has("mass"))
    yield { ...whose, row: "total", what: "raw", component: "mass", ...pointRow(s.masses.raw, "g") };
  for (const row of ["total", "portion", "per100g"] as const) {
    yield* sumRows(s, row, whose, want);
    yield* cells(row, { ...whose, row });
  }
  if (!grid) return;
  for (const name of grid.own.rows.keys())
    for (const column of [...want.ids, ...(want.has("mass") ? ["grams"] : []), ...columns])
      yield {
        ...whose,
        row: "own",
        what: name,
        component: column === "grams" ? "mass" : column,
        ...ownRow(grid.value({ column, row: { row: name } })),
      };
}

/** A cell of one's own: its figure, or why there is none. */
function ownRow(value: CellValue): FigureRow | (Pick<TidyRow, "bound" | "own"> & { readonly marks: "" }) {
  if (!isFailure(value)) return tallyRow(value);
  return { bound: "unknown", marks: "", own: { failed: `${value.message} (${value.cell})` } };
}

function headOf(s: Sheet, i: number, { sheet, person, day, meal, dish, what, own }: Whose): TidyRow {
  const { line, source } = s.plan.lines[i] as PlanLine;
  const { key, scaling, part, weighed } = line;
  const said = { name: source.name, state: source.state, scaling, part, weighed };
  const food = source.food?.input.id;
  return {
    sheet,
    person,
    day,
    meal,
    dish,
    line: key,
    food,
    row: "line",
    what,
    own: own ? { ...said, ...own } : said,
  };
}

/** One line: what it weighs as weighed in and as written, and what it brings as eaten. */
export function lineRows(s: Sheet, i: number, whose: Whose, want: WantedRows): TidyRow[] {
  const head = headOf(s, i, whose);
  const { source } = s.plan.lines[i] as PlanLine;
  const food = source.food?.input;
  const rows = weights(s, i, head, want);
  const eaten = { ...head, what: whose.what ?? "eaten" };
  for (const id of want.ids) {
    const from = food && sourceOf(source.figure(componentIndex(id)), food);
    rows.push(cellRow(eaten, id, s.cellAt(i, id), from));
  }
  return rows;
}

/** What one line weighs, as weighed in and as written; nothing of what it brings. */
export function writtenRows(s: Sheet, i: number, whose: Whose, want: WantedRows): TidyRow[] {
  return weights(s, i, headOf(s, i, whose), want);
}

function weights(s: Sheet, i: number, head: TidyRow, want: WantedRows): TidyRow[] {
  const [grams, amount] = [s.values.grams[i], s.values.amounts[i]];
  const rows: TidyRow[] = [];
  if (grams && want.has("mass"))
    rows.push({ ...head, what: head.what ?? "raw", component: "mass", ...pointRow(grams, "g") });
  if (!amount || !want.has("amount")) return rows;
  for (const { value, unit } of amount.parts ?? [amount])
    rows.push({ ...head, what: head.what ?? "written", component: "amount", ...pointRow(value, unit) });
  return rows;
}

/** The batch, a portion or 100 g, as eaten. */
export function sumRows(
  s: Sheet,
  row: "total" | "portion" | "per100g",
  { own, ...whose }: Whose,
  want: WantedRows,
): TidyRow[] {
  const isEmpty = s.masses.cooked.n === 0n;
  if (row === "per100g" && isEmpty) return [];
  const head = { ...whose, row, what: whose.what ?? "eaten", ...(own && { own }) };
  const masses: { readonly [R in typeof row]: () => Ratio } = {
    total: () => s.masses.cooked,
    portion: () => s.portionMass,
    per100g: () => HUNDRED,
  };
  const rows: TidyRow[] = [];
  if (want.has("mass")) rows.push({ ...head, component: "mass", ...pointRow(masses[row](), "g") });
  for (const id of want.ids) rows.push(cellRow(head, id, sumOf(s, row, id)));
  return rows;
}

const HUNDRED: Ratio = { n: 100n, d: 1n };

function sumOf(s: Sheet, row: "total" | "portion" | "per100g", id: ComponentId): ReturnType<Sheet["total"]> {
  return row === "total" ? s.total(id) : row === "portion" ? s.portion(id) : s.per100g(id);
}

/** Where a food's figure comes from; undefined if nothing is known of it. */
export function sourceOf(figure: ReadFigure | undefined, food: FoodInput): string | undefined {
  if (figure === undefined || figure.kind === "missing") return undefined;
  const { formula, kind, note } = figure;
  if (formula) return `${formula.source}, from figures of ${food.source}`;
  if (note === undefined) return food.source;
  return kind === "derived" ? `${note}: ${food.source}` : note;
}
