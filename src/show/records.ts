import { word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { exactText } from "../number/digits.ts";
import { fraction } from "../number/exact.ts";
import { type Ratio, toFloat } from "../number/ratio.ts";
import type { LibraryResult } from "./makers.ts";
import { type DataRecord, tableRecords } from "./tableRecords.ts";
import { type Recordable, type Showable, tablesFrom, tidyFrom } from "./tabular.ts";
import { type Asked, askedShape, type Tidy, type TidyRow } from "./tidy.ts";

/** Options of {@link toRecords}. */
export interface RecordsOptions extends Asked {
  /** `number` (unless told): the nearest double, for plots. `exact`: text that loses nothing. */
  readonly figures?: "number" | "exact";
}

/**
 * One figure of a result: whose it is, what it is, how much and how far to trust it. The records of
 * every result have these columns, and beside them a few of their own.
 */
export interface TidyRecord extends DataRecord {
  /** The recipe's name. */
  readonly sheet: string | null;
  readonly person: string | null;
  readonly day: string | null;
  readonly meal: string | null;
  readonly dish: string | null;
  /** A line's key. */
  readonly line: string | null;
  /** A food's id. */
  readonly food: string | null;
  /** `line`, or which sum of lines: `total` (the batch), `portion`, `per100g` and others that a result has. */
  readonly row: string | null;
  /** What the amount is, where there are several of one component: `raw`, `eaten`, `before`, `change`. */
  readonly what: string | null;
  /** A component's id, `mass`, or the name of a column of one's own. */
  readonly component: string | null;
  /** In `unit`; null where nothing is known. */
  readonly amount: number | string | null;
  readonly unit: string | null;
  readonly bound: string | null;
  readonly least: number | string | null;
  readonly most: number | string | null;
  /** The share of the mass, 0 to 1, whose figures are known. */
  readonly coverage: number | string | null;
  /** What the figures behind the amount say of themselves, apart by spaces: `derived presumed`. */
  readonly marks: string | null;
  /** Keys of the lines that say nothing, apart by commas. */
  readonly silent: string | null;
  readonly source: string | null;
}

/**
 * Tidy rows for a data frame or a plotting library: one plain object for each figure, all with the same
 * columns. A result of the library gives {@link TidyRecord}s, lines and sums apart by `row`, with what is
 * not known as rows without an amount; `components` picks of them.
 *
 * A table of one's own gives one record for each body row, by column keys. Totals and subtotals are left
 * out, for the reader will sum again; the heading of a group is given as `group`. Where a figure is only a
 * bound, its column has a second one beside it, its key followed by `Bound`: `point`, `at-least`, `at-most`,
 * `unknown`, or `between` for a middle figure of a range, which bounds nothing.
 *
 * Words are as they were put in, uncleaned: escape them for where they go. A figure too large or small for a
 * double stays exact text. Throws `table-malformed`, and `component-unknown` for what no row could be of.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 2, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const [, batch] = toRecords(porridge, { components: ["protein"] });
 * console.log(`${batch.row}: ${batch.amount} ${batch.unit}`); // => total: 13.15 g
 * ```
 */
export function toRecords(x: LibraryResult | Recordable, how?: RecordsOptions): TidyRecord[];
export function toRecords(x: Showable, how?: RecordsOptions): DataRecord[];
export function toRecords(x: Showable | Recordable, how: RecordsOptions = {}): DataRecord[] {
  const asked = read(recordsHow(), how, "table-malformed");
  const { figures = "number", components } = asked;
  const tidy = tidyFrom(x, components === undefined ? {} : { components });
  if (tidy) return tidyRecords(tidy, asked);
  const records = tablesFrom(x as Showable).flatMap((t) => tableRecords(t, figures));
  return components === undefined
    ? records
    : records.filter(({ component }) => components.some((each) => each === component));
}

const recordsHow: () => Schema<RecordsOptions> = /* @__PURE__ */ once(() =>
  fields<RecordsOptions>({ ...askedShape(), figures: optional(word(["number", "exact"])) }),
);

/** The columns in the order that they stand in. */
const BLANK = {
  sheet: null,
  person: null,
  day: null,
  meal: null,
  dish: null,
  line: null,
  food: null,
  row: null,
  what: null,
  component: null,
  amount: null,
  unit: null,
  bound: null,
  least: null,
  most: null,
  coverage: null,
  marks: null,
  silent: null,
  source: null,
};

type Datum = string | number | null;
type Blank = { -readonly [C in keyof typeof BLANK]: Datum };
type Write = (value: Ratio | undefined) => Datum;

/** Rows as plain objects: figures as numbers or exact text, what does not apply as null. */
function tidyRecords({ own, rows }: Tidy, { figures, components }: RecordsOptions): TidyRecord[] {
  const write = figures === "exact" ? exactly : numeric;
  const asked = components && new Set(components);
  const blank = Object.assign({ ...BLANK }, Object.fromEntries(own.map((column) => [column, null]))) as Blank;
  // Many rows share a head: it is filled in once, and copied with all columns in their order.
  let head: TidyRow | undefined;
  let begun = blank;
  const records: TidyRecord[] = [];
  for (const row of rows) {
    if (asked && !asked.has(row.component ?? row.head?.component ?? "")) continue;
    if (row.head !== head) {
      head = row.head;
      begun = { ...blank };
      if (head) fill(begun, head, own, write);
    }
    const record = { ...begun };
    fill(record, row, own, write);
    records.push(record as unknown as TidyRecord);
  }
  return records;
}

/** Sets the columns that a row speaks of; named one by one, which is several times as fast. */
function fill(record: Blank, row: TidyRow, own: readonly string[], write: Write): void {
  if (row.sheet !== undefined) record.sheet = row.sheet;
  if (row.person !== undefined) record.person = row.person;
  if (row.day !== undefined) record.day = row.day;
  if (row.meal !== undefined) record.meal = row.meal;
  if (row.dish !== undefined) record.dish = row.dish;
  if (row.line !== undefined) record.line = row.line;
  if (row.food !== undefined) record.food = row.food;
  if (row.row !== undefined) record.row = row.row;
  if (row.what !== undefined) record.what = row.what;
  if (row.component !== undefined) record.component = row.component;
  if (row.amount !== undefined) record.amount = write(row.amount);
  if (row.unit !== undefined) record.unit = row.unit;
  if (row.bound !== undefined) record.bound = row.bound;
  if (row.least !== undefined) record.least = row.least === row.amount ? record.amount : write(row.least);
  if (row.most !== undefined) record.most = row.most === row.amount ? record.amount : write(row.most);
  if (row.coverage !== undefined) record.coverage = write(row.coverage);
  if (row.marks !== undefined) record.marks = row.marks;
  if (row.silent !== undefined) record.silent = row.silent;
  if (row.source !== undefined) record.source = row.source;
  if (!row.own) return;
  const columns = record as { [column: string]: Datum };
  for (const column of own) {
    const said = row.own[column];
    if (said !== undefined) columns[column] = typeof said === "string" ? said : write(said);
  }
}

function numeric(value: Ratio | undefined): number | string | null {
  if (value === undefined) return null;
  const number = toFloat(value);
  return Number.isFinite(number) && (number !== 0 || value.n === 0n) ? number : exactly(value);
}

function exactly(value: Ratio | undefined): string | null {
  return value === undefined ? null : exactText(fraction(value.n, value.d));
}
