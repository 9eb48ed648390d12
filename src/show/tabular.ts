import { britishEnglish, type Language, say } from "../document/language.ts";
import { size } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { language, readLanguage } from "../document/readLanguage.ts";
import { refuseHole } from "../document/safe.ts";
import { fields, once, optional, type Schema, type Shape } from "../document/schema.ts";
import { throwIfAny } from "../number/error.ts";
import { isTold, type LibraryResult, makerOf } from "./makers.ts";
import { type Parts, partsSchema } from "./parts.ts";
import { type Column, checkTable, type Row, type Table, tableFaults } from "./table.ts";
import type { Asked, Tidy } from "./tidy.ts";

/** A thing of the caller's that says how it looks: the one method that every renderer asks for. */
export interface Tabular {
  /**
   * The tables that show it to a person, in reading order; in British English unless told. `most` is how many
   * rows of each will be shown: a table may be made of no more than those, and say how many `more` there are.
   */
  toTables(language?: Language, most?: number): readonly Table[];
  /** The same as tidy rows, one figure each; `toRecords` reads them. */
  toRows?(asked: Asked): Tidy;
}

/** What the renderers take. */
export type Showable = LibraryResult | Tabular | Table | readonly Table[];

/** What every renderer of shown tables can be told. */
export interface ShowOptions {
  /**
   * Whose words and decimal mark to use; British English unless told. What a language has no words
   * for stays British. A table that was made as plain data keeps its words, whatever is told here.
   */
  readonly language?: Language | undefined;
}

/** Options of a renderer that shows the first rows alone. */
export interface RowsOptions extends ShowOptions {
  /** The most rows to show of each table; the rest are counted in a note. */
  readonly rows?: number;
  /**
   * Which parts of a plan or a cooking schedule to show: `"all"`, or some by name. Of a plan `summary`,
   * `amounts`, `pots`, `nutrients`, `rounding`, `unmet`, `people`, and `intervals`, how sure figures are, which are
   * left out unless named; of a sheet `intervals`, beside all the rest of it; of a schedule `order`, `batches`, `pots`,
   * `servings`, `notes`. Unless told, text shows the summary of a plan, and all of everything else.
   */
  readonly parts?: Parts;
}

/** @internal The schema of {@link RowsOptions}. */
export const rowsHow: () => Schema<RowsOptions> = /* @__PURE__ */ once(() =>
  fields<RowsOptions>(rowsShape()),
);

/** @internal Its fields, for options that have more. */
export function rowsShape(): Shape<RowsOptions> {
  const rows = optional(size("how many rows to show at most: 50"));
  return { language: optional(language()), rows, parts: optional(partsSchema()) };
}

/**
 * The tables of anything that can be shown, as plain data; `rows` is the most rows that will be shown of each.
 * Throws `table-malformed`.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 2, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * console.log(tablesOf(porridge).map(({ title }) => title)); // => [ 'Porridge: 2 portions', 'Porridge: figures as eaten' ]
 * ```
 */
export function tablesOf(x: Showable, how: RowsOptions = {}): readonly Table[] {
  return tablesFrom(x, read(rowsHow(), how, "table-malformed"));
}

/** @internal As {@link tablesOf}, its options read. */
export function tablesFrom(x: Showable, { language, rows, parts }: RowsOptions = {}): readonly Table[] {
  if (isTold(x)) return checked(makerOf(x).tables(x, readLanguage(language), rows, parts));
  if (isTabular(x)) return checked(x.toTables(language, rows));
  if (isTables(x)) return checked(x);
  checkTable(x);
  return [x];
}

/** What gives its own tidy rows. */
export interface Recordable {
  toRows(asked: Asked): Tidy;
}

/** Its tidy rows, of what is asked for; nothing where it is only known as tables. */
export function tidyFrom(x: Showable | Recordable, asked: Asked): Tidy | undefined {
  if (isTold(x)) return makerOf(x).rows(x, asked);
  if (typeof x !== "object" || x === null || !("toRows" in x)) return undefined;
  return typeof x.toRows === "function" ? x.toRows(asked) : undefined;
}

/** A column's heading with its unit: `Energy (kcal)`. */
export function headingOf(column: Column): string {
  return column.unit === undefined || column.unit === ""
    ? column.heading
    : `${column.heading} (${column.unit})`;
}

/** The first rows of a table; a note says how many more there are. */
export function firstRows(
  t: Table,
  {
    rows: most = Number.POSITIVE_INFINITY,
    language = britishEnglish,
  }: ShowOptions & { readonly rows?: number },
): Table {
  const left = Math.max(0, t.rows.length - Math.max(0, most));
  const more = left + (t.more ?? 0);
  if (more === 0) return t;
  const phrase = more === 1 ? "1 more row not shown" : "{count} more rows not shown";
  const note = say(language, phrase, { count: String(more) });
  return { ...t, rows: t.rows.slice(0, t.rows.length - left), notes: [note, ...t.notes] };
}

/** A row's cells as shown, blanks beside a group's heading. */
export function shownCells(row: Row, columns: number): readonly string[] {
  if (row.kind === "group") return [row.heading, ...Array<string>(columns - 1).fill("")];
  return row.cells.map((cell) => (typeof cell === "string" ? cell : cell.text));
}

function checked(tables: readonly Table[]): readonly Table[] {
  refuseHole(tables, "table-malformed");
  throwIfAny(tables.flatMap((t, i) => tableFaults(t, [i])));
  return tables;
}

function isTabular(x: Showable): x is Tabular {
  return typeof x === "object" && x !== null && "toTables" in x && typeof x.toTables === "function";
}

function isTables(x: Showable): x is readonly Table[] {
  return Array.isArray(x);
}
