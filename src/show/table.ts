import { refuseHole } from "../document/safe.ts";
import { collect, type Fault, type Path, quote, throwIfAny } from "../number/error.ts";

/**
 * How far a figure can be trusted, as one word: the weakest thing that must be said of it.
 * `at-least` and `at-most` are bounds; of `between` both ends are shown, and the value is a middle figure;
 * `unknown` has no value at all.
 */
export type Tone =
  | "known"
  | "presumed"
  | "derived"
  | "calculated"
  | "borrowed"
  | "trace"
  | "at-least"
  | "at-most"
  | "between"
  | "unknown";

const TONES: readonly Tone[] = [
  "known",
  "presumed",
  "derived",
  "calculated",
  "borrowed",
  "trace",
  "at-least",
  "at-most",
  "between",
  "unknown",
];

/** A number in a table: what a person reads, and the exact value that a program reads. */
export interface TableFigure {
  /** As shown, bound and mark included: `at least 4.1`, `?`. Never empty. */
  readonly text: string;
  /** Exact decimal or fraction text (`61.5`, `1/3`) in the column's unit; null where unknown. */
  readonly value: string | null;
  readonly tone: Tone;
}

/** One place in a table: words, or a figure. */
export type Cell = string | TableFigure;

export interface Column {
  /** Names the column in records: not empty, not repeated, not `__proto__`. */
  readonly key: string;
  readonly heading: string;
  /** Unit of every figure in the column, where they share one. */
  readonly unit?: string;
  /** Figures stand at the end, words at the start. */
  readonly align: "start" | "end";
}

/** A row of cells, one for each column; or a heading for the rows that follow it. */
export type Row =
  | { readonly kind: "body" | "subtotal" | "total"; readonly cells: readonly Cell[] }
  | { readonly kind: "group"; readonly heading: string };

/** A table as plain data. It says what is shown, and nothing of how. */
export interface Table {
  readonly title?: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** How many rows follow that were not made, since they are not shown. */
  readonly more?: number;
  /** What a reader must know to read the figures right: silent lines, sources, cautions. */
  readonly notes: readonly string[];
}

/** A table as it is written: a bare list of cells is a body row; columns start-align unless they say. */
export interface TableInput {
  readonly title?: string;
  readonly columns: readonly (Omit<Column, "align"> & { readonly align?: "start" | "end" })[];
  readonly rows: readonly (Row | readonly Cell[])[];
  readonly more?: number;
  readonly notes?: readonly string[];
}

/**
 * Makes a table, and checks that it is one: every row as long as there are columns, keys that are
 * distinct and safe, figures whose unknowns look unknown.
 *
 * Throws `table-malformed`, all faults at once.
 *
 * @example
 * ```ts
 * const t = table({
 *   columns: [{ key: "line", heading: "Line" }, { key: "grams", heading: "Amount", unit: "g", align: "end" }],
 *   rows: [["Oats", { text: "40", value: "40", tone: "known" }]],
 * });
 * console.log(toText(t));
 * ```
 *
 * ```text
 * Line  Amount (g)
 * ────  ──────────
 * Oats          40
 * ```
 */
export function table(input: TableInput): Table {
  const listed = Array.isArray(input?.columns) && Array.isArray(input.rows);
  if (listed) throwIfAny(holesIn(input, []));
  const made = listed ? normal(input) : (input as Table);
  checkTable(made);
  return made;
}

function normal(input: TableInput): Table {
  return {
    ...(input.title === undefined ? {} : { title: input.title }),
    columns: input.columns.map((c) => ({ ...c, align: c?.align ?? "start" })),
    rows: input.rows.map((row): Row => (isCells(row) ? { kind: "body", cells: row } : row)),
    ...(input.more === undefined || input.more === 0 ? {} : { more: input.more }),
    notes: input.notes ?? [],
  };
}

/** Refuses what is not a table, naming every fault. Throws `table-malformed`. */
export function checkTable(t: Table): void {
  throwIfAny(tableFaults(t));
}

/** What is wrong with a table, each fault's path beginning with `path`. */
export function tableFaults(t: Table, path: Path = []): Fault[] {
  if (typeof t !== "object" || t === null || !Array.isArray(t.columns) || !Array.isArray(t.rows)) {
    return [wrong(path, "this is not a table", "give columns, rows and notes, or call table()")];
  }
  const faults = holesIn(t, path);
  if (faults.length > 0) return faults;
  checkColumns(t.columns, [...path, "columns"], faults);
  for (const [i, row] of t.rows.entries()) checkRow(row, [...path, "rows", i], t.columns.length, faults);
  if (t.title !== undefined) checkWords(t.title, [...path, "title"], faults);
  const at = [...path, "notes"];
  if (!Array.isArray(t.notes)) faults.push(wrong(at, "notes are not a list", "give a list of texts"));
  else for (const [i, note] of t.notes.entries()) checkWords(note, [...at, i], faults);
  return faults;
}

/** Where a table's lists are short of an item; the cells of a row are looked at with it. */
function holesIn(
  { columns, rows, notes }: Pick<TableInput, "columns" | "rows" | "notes">,
  path: Path,
): Fault[] {
  const faults: Fault[] = [];
  for (const [name, list] of Object.entries({ columns, rows, notes }))
    if (Array.isArray(list)) collect(faults, [...path, name], () => refuseHole(list, "table-malformed"));
  return faults;
}

function checkColumns(columns: readonly Column[], path: Path, faults: Fault[]): void {
  if (columns.length === 0) faults.push(wrong(path, "a table without columns", "name at least one"));
  const seen = new Set<string>();
  for (const [i, column] of columns.entries()) {
    const at = [...path, i];
    if (typeof column !== "object" || column === null) {
      faults.push(wrong(at, "this is not a column", "give it a key, a heading and an align"));
      continue;
    }
    checkWords(column.key, [...at, "key"], faults);
    checkWords(column.heading, [...at, "heading"], faults);
    if (column.unit !== undefined) checkWords(column.unit, [...at, "unit"], faults);
    if (column.key === "" || column.key === "__proto__") {
      faults.push(wrong([...at, "key"], `a column keyed ${quote(column.key)}`, "give it another key"));
    }
    if (seen.has(column.key)) {
      faults.push(wrong([...at, "key"], `a second column keyed ${quote(column.key)}`, "keys must differ"));
    }
    seen.add(column.key);
    if (column.align !== "start" && column.align !== "end") {
      faults.push(wrong([...at, "align"], "an unknown alignment", 'write "start" or "end"'));
    }
  }
}

function checkRow(row: Row, path: Path, width: number, faults: Fault[]): void {
  const kind = row?.kind;
  if (kind === "group") {
    checkWords(row.heading, [...path, "heading"], faults);
    return;
  }
  if ((kind !== "body" && kind !== "subtotal" && kind !== "total") || !Array.isArray(row.cells)) {
    faults.push(wrong(path, "this is not a row", "give a kind and its cells, or a bare list of cells"));
    return;
  }
  if (row.cells.length !== width) {
    const hint = "give one cell for each column";
    faults.push(wrong(path, `${row.cells.length} cells under ${width} columns`, hint));
  }
  const before = faults.length;
  collect(faults, [...path, "cells"], () => refuseHole(row.cells, "table-malformed"));
  if (faults.length > before) return;
  for (let c = 0; c < row.cells.length; c += 1) {
    const cell: unknown = row.cells[c];
    if (typeof cell !== "string") checkFigure(cell, [...path, "cells", c], faults);
  }
}

const EXACT = /^-?\d+(?:\.\d+|\/0*[1-9]\d*)?$/;
const LONGEST_VALUE = 20_000;
const LOOKS_LIKE_A_NUMBER = /^[-+]?[\d.,'\s]+$/;

function checkFigure(cell: unknown, path: Path, faults: Fault[]): void {
  if (typeof cell !== "object" || cell === null) {
    faults.push(wrong(path, "this is neither words nor a figure", "give text, or text, value and tone"));
    return;
  }
  const { text, value, tone } = cell as { [K in keyof TableFigure]?: unknown };
  if (typeof text !== "string" || text.trim() === "") {
    faults.push(wrong([...path, "text"], "a figure that shows nothing", 'show a number, or "?" if unknown'));
  }
  if (!(TONES as readonly unknown[]).includes(tone))
    faults.push(wrong([...path, "tone"], "an unknown tone", `use ${TONES.join(", ")}`));
  if (value === null) {
    if (tone !== "unknown") {
      faults.push(wrong([...path, "tone"], "a figure without a value", 'give it the tone "unknown"'));
    }
    if (typeof text === "string" && LOOKS_LIKE_A_NUMBER.test(text)) {
      faults.push(wrong([...path, "text"], `an unknown shown as ${quote(text)}`, 'show it as "?"'));
    }
  } else if (typeof value !== "string" || value.length > LONGEST_VALUE || !EXACT.test(value)) {
    faults.push(wrong([...path, "value"], "a value that is not exact text", 'write "61.5" or "1/3"'));
  } else if (tone === "unknown") {
    faults.push(wrong([...path, "value"], "an unknown with a value", "give null, or another tone"));
  }
}

function checkWords(text: unknown, path: Path, faults: Fault[]): void {
  if (typeof text !== "string") faults.push(wrong(path, "this is not text", "write it as text"));
}

function wrong(path: Path, message: string, hint: string): Fault {
  return { code: "table-malformed", path, message, hint };
}

function isCells(row: Row | readonly Cell[]): row is readonly Cell[] {
  return Array.isArray(row);
}
