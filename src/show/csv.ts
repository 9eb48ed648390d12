import { flag, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { language } from "../document/readLanguage.ts";
import { fields as fieldsOf, once, optional, type Schema } from "../document/schema.ts";
import { clean } from "./clean.ts";
import type { Cell, Row, Table } from "./table.ts";
import { boundedColumns, boundOf, plainNumber } from "./tableRecords.ts";
import { headingOf, type Showable, type ShowOptions, tablesFrom } from "./tabular.ts";

export interface CsvOptions extends ShowOptions {
  /**
   * `shown` (unless told): every cell as the other renderers show it. `plain`: each figure as a bare
   * decimal of up to 15 significant digits, an unknown as an empty field; where one is only a bound,
   * a column more says how it bounds the truth.
   */
  readonly figures?: "shown" | "plain";
  /** Column headings with units (unless told), or the columns' keys. */
  readonly header?: "heading" | "key";
  /** Whether the notes follow the rows, after an empty line. */
  readonly notes?: boolean;
}

const csvHow: () => Schema<CsvOptions> = /* @__PURE__ */ once(() =>
  fieldsOf<CsvOptions>({
    figures: optional(word(["shown", "plain"])),
    header: optional(word(["heading", "key"])),
    notes: optional(flag()),
    language: optional(language()),
  }),
);

/**
 * Tables as comma-separated values: RFC 4180, lines ended by CR LF. One table gives one file of
 * equally long records; several are set under each other, an empty line between.
 *
 * A text that a spreadsheet program would run as a formula is made inert by an apostrophe before it:
 * one that begins with `=`, `+`, `-` or `@`, in any of their width and height variants, after spaces
 * or quotation marks if any, at the start of the field, of a line inside it, or after a semicolon
 * (which a program of another locale takes for the separator). To undo it, take one apostrophe away
 * from each such place. Figures whose shown text is a number are left alone, so that -3 stays one.
 *
 * Throws `table-malformed`.
 */
export function toCsv(x: Showable, how: CsvOptions = {}): string {
  read(csvHow(), how, "table-malformed");
  return tablesFrom(x, how)
    .map((t) => tableCsv(t, how))
    .join("\r\n");
}

function tableCsv(t: Table, how: CsvOptions): string {
  const bounded = how.figures === "plain" ? boundedColumns(t) : [];
  const header = [
    ...t.columns.map((c) => inert(how.header === "key" ? c.key : headingOf(c))),
    ...bounded.map(([key, i]) => inert(how.header === "key" ? key : `${t.columns[i]?.heading}: bound`)),
  ];
  const bounds = (row: Row): string[] =>
    bounded.map(([, i]) => (row.kind === "group" ? "" : (boundOf(row.cells[i]) ?? "")));
  const body = t.rows.map((row) => [...fields(row, t.columns.length, how), ...bounds(row)]);
  const rows = [header, ...body].map(record).join("");
  if (how.notes !== true || t.notes.length === 0) return rows;
  return `${rows}\r\n${t.notes.map((note) => record([inert(note)])).join("")}`;
}

/** A record of one empty field is written as quotes, for an empty line is none. */
function record(line: readonly string[]): string {
  // Where semicolons part fields, a record that starts with a negative number is one field, and
  // bare words after it could make a sum of it: -3,5+x.
  const text = line.map(line[0]?.startsWith("-") ? guarded : quoted).join(",");
  return text === "" ? '""\r\n' : `${text}\r\n`;
}

function fields(row: Row, columns: number, how: CsvOptions): string[] {
  if (row.kind === "group") return [inert(row.heading), ...Array<string>(columns - 1).fill("")];
  return row.cells.map((cell) => field(cell, how));
}

const NUMBER = /^-?\d[\d.,\u00A0\u202F ]*$/;

function field(cell: Cell, how: CsvOptions): string {
  if (typeof cell === "string") return inert(cell);
  if (how.figures === "plain") return cell.value === null ? "" : plainNumber(cell.value);
  return cell.value !== null && NUMBER.test(cell.text) ? cell.text : inert(cell.text);
}

const FORMULA = /(^|[;\n])(?=[\p{Zs}"']*[=＝﹦⁼₌⩵⩶+＋﹢⁺₊﬩\-－﹣−⁻₋@＠﹫])/gu;
const GUARDED = /(^|[;\n])'(?=[\p{Zs}"']*[=＝﹦⁼₌⩵⩶+＋﹢⁺₊﬩\-－﹣−⁻₋@＠﹫])/gu;

function inert(text: string): string {
  return guardedText(clean(text));
}

/** Text with an apostrophe before what a spreadsheet program would run as a formula. */
export function guardedText(text: string): string {
  return text.replace(FORMULA, "$1'");
}

/** Takes the apostrophes of {@link guardedText} away again. */
export function unguardedText(text: string): string {
  return text.replace(GUARDED, "$1");
}

function quoted(text: string): string {
  return /[",\r\n;]|^\s|\s$/.test(text) ? inQuotes(text) : text;
}

function guarded(text: string): string {
  return /[^\d.-]/.test(text) ? inQuotes(text) : text;
}

function inQuotes(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}
