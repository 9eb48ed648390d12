import { fault, kindOf, throwIfAny } from "../number/error.ts";
import { checkFields } from "../number/fields.ts";
import { britishEnglish, type Language, say } from "./language.ts";
import { readLanguage } from "./readLanguage.ts";
import { type Column, checkTable, type Row, type Table, tableFaults } from "./table.ts";
import type { Asked, Tidy } from "./tidy.ts";

/** Anything that can say how it looks: the one method that every renderer asks for. */
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
export type Showable = Tabular | Table | readonly Table[];

/** What every renderer of shown tables can be told. */
export interface ShowHow {
  /**
   * Whose words and decimal mark to use; British English unless told. What a language has no words
   * for stays British. A table that was made as plain data keeps its words, whatever is told here.
   */
  readonly language?: Language;
}

/** Refuses options of a renderer that there are not, and those that all have where they make no sense. Throws `table-malformed`. */
export function checkShow(how: ShowHow & { readonly rows?: number }, fields: readonly string[]): void {
  const { rows } = checkFields(how, [...fields, "language"], "table-malformed");
  if (rows !== undefined && (typeof rows !== "number" || Number.isNaN(rows))) {
    const message = `rows is ${typeof rows === "number" ? rows : kindOf(rows)}`;
    throw fault("table-malformed", message, "give how many rows to show at most: 50", ["rows"]);
  }
  readLanguage(how.language);
}

/** The tables of anything that can be shown, checked. Throws `table-malformed`. */
export function tablesOf(
  x: Showable,
  { language, rows }: ShowHow & { readonly rows?: number } = {},
): readonly Table[] {
  if (isTabular(x)) return checked(x.toTables(language, rows));
  if (isTables(x)) return checked(x);
  checkTable(x);
  return [x];
}

/** What gives its own tidy rows. */
export interface Recordable {
  toRows(asked: Asked): Tidy;
}

/** Whether something gives its own tidy rows. */
export function isTidy(x: Showable | Recordable): x is Recordable {
  return typeof x === "object" && x !== null && "toRows" in x && typeof x.toRows === "function";
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
  { rows: most = Number.POSITIVE_INFINITY, language = britishEnglish }: ShowHow & { readonly rows?: number },
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
  throwIfAny(tables.flatMap((t, i) => tableFaults(t, [i])));
  return tables;
}

function isTabular(x: Showable): x is Tabular {
  return typeof x === "object" && x !== null && "toTables" in x && typeof x.toTables === "function";
}

function isTables(x: Showable): x is readonly Table[] {
  return Array.isArray(x);
}
