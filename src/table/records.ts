import { word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { FACE_DIGITS, type Fraction, fixedText, fraction, magnitude } from "../number/fraction.ts";
import type { Cell, Table } from "./table.ts";
import { longTablesOf, type Showable } from "./tabular.ts";

export interface RecordsHow {
  /** `number` (unless told): the nearest double, for plots. `exact`: text that loses nothing. */
  readonly figures?: "number" | "exact";
}

const recordsHow: () => Schema<RecordsHow> = /* @__PURE__ */ once(() =>
  fields<RecordsHow>({ figures: optional(word(["number", "exact"])) }),
);

/** One row of data: words as they are, figures as numbers or exact text, unknowns as null. */
export type DataRecord = { readonly [key: string]: string | number | null };

/**
 * Tidy rows for a data frame or a plotting library: one plain object for each body row, by column
 * keys. Totals and subtotals are left out, for the reader will sum again; the heading of a group is
 * given as `group`. Words are as they were put in, uncleaned: escape them for where they go. Where a
 * figure is only a bound, its column has a second one beside it, its key followed by `Bound`: `exact`,
 * `at-least`, `at-most`, `unknown`, or `between` for a middle figure of a range, which bounds nothing.
 *
 * A figure too large or small for a double stays exact text. Throws `table-malformed`.
 *
 * @example
 * ```ts
 * const columns = [{ key: "line", heading: "Line" }, { key: "grams", heading: "Amount", unit: "g" }];
 * toRecords(table({ columns, rows: [["Oats", { text: "40", value: "40", tone: "known" }]] })); // => [ { line: 'Oats', grams: 40 } ]
 * ```
 */
export function toRecords(x: Showable, how: RecordsHow = {}): DataRecord[] {
  read(recordsHow(), how, "table-malformed");
  return longTablesOf(x).flatMap((t) => tableRecords(t, how.figures ?? "number"));
}

/** A table as JSON holds it. */
export interface TableData {
  readonly title?: string;
  /** Exact: figures are decimal or fraction text, null where nothing is known. */
  readonly rows: readonly DataRecord[];
  readonly notes: readonly string[];
}

/** What can be shown as JSON holds it: the rows that `toRecords` gives with exact figures, table by table. */
export function tableData(x: Showable): readonly TableData[] {
  return longTablesOf(x).map((t) => ({
    ...(t.title === undefined ? {} : { title: t.title }),
    rows: tableRecords(t, "exact"),
    notes: t.notes,
  }));
}

function tableRecords(t: Table, figures: "number" | "exact"): DataRecord[] {
  const records: DataRecord[] = [];
  const grouped = t.rows.some((row) => row.kind === "group") && !t.columns.some((c) => c.key === "group");
  const bounded = boundedColumns(t);
  let group: string | null = null;
  for (const row of t.rows) {
    if (row.kind === "group") group = row.heading;
    if (row.kind !== "body") continue;
    const own = t.columns.map((c, i) => [c.key, datum(row.cells[i] ?? null, figures)] as const);
    const bounds = bounded.map(([key, i]) => [key, boundOf(row.cells[i])] as const);
    const all = [...own, ...bounds];
    records.push(Object.fromEntries(grouped ? [["group", group], ...all] : all));
  }
  return records;
}

/**
 * Columns with a figure that only bounds the truth, under the keys that say so: a bare number would
 * pass for exact. Long tables that say it in a column of their own need no other.
 */
export function boundedColumns(t: Table): (readonly [key: string, column: number])[] {
  const keys = t.columns.map(({ key }) => key);
  if (keys.includes("bound")) return [];
  return keys.flatMap((key, i) => {
    const bound = `${key}Bound`;
    const isBounded = t.rows.some((row) => {
      const said = row.kind === "body" ? boundOf(row.cells[i]) : null;
      return said !== null && said !== "exact";
    });
    return isBounded && !keys.includes(bound) ? [[bound, i] as const] : [];
  });
}

/** How a figure bounds the truth; nothing of words. */
export function boundOf(
  cell: Cell | undefined,
): "exact" | "at-least" | "at-most" | "between" | "unknown" | null {
  if (cell === undefined || typeof cell === "string") return null;
  if (cell.value === null) return "unknown";
  if (cell.tone === "trace") return "at-least";
  const { tone } = cell;
  const isBound = tone === "at-least" || tone === "at-most" || tone === "between" || tone === "unknown";
  return isBound ? tone : "exact";
}

function datum(cell: Cell | null, figures: "number" | "exact"): string | number | null {
  if (cell === null || typeof cell === "string") return cell;
  return cell.value === null || figures === "exact" ? cell.value : numberOr(cell.value);
}

function numberOr(value: string): number | string {
  const number = Number(value.includes("/") ? decimal(value, FACE_DIGITS) : value);
  return Number.isFinite(number) && (number !== 0 || /^-?[0.]+$/.test(value)) ? number : value;
}

/** Exact text as a bare decimal, to 15 significant digits where it is longer. */
export function plainNumber(value: string): string {
  return decimal(value, 15);
}

function decimal(value: string, digits: number): string {
  const f = parsed(value);
  const places = digits - 1 - magnitude(f);
  const text = fixedText(f, places);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/** The value of a checked figure; `exact` has a shorter limit than a figure may need. */
function parsed(value: string): Fraction {
  const [n = "0", d] = value.split("/");
  if (d !== undefined) return fraction(BigInt(n), BigInt(d));
  const [whole = "0", part = ""] = n.split(".");
  return fraction(BigInt(whole + part), 10n ** BigInt(part.length));
}
