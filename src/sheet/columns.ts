import { isCallable } from "../document/leaves.ts";
import { isComponentId } from "../food/components.ts";
import { fault, kindOf } from "../number/error.ts";
import { exact, type Value } from "../number/exact.ts";
import { checkSheet } from "./given.ts";
import {
  type ColumnFormula,
  checkRow,
  GIVEN,
  Grid,
  NOTHING_OWN,
  type Own,
  type RowFormula,
  type StoredCell,
} from "./grid.ts";
import { type CellRef, type CellValue, isFailure, type RowRef } from "./own.ts";
import { Sheet } from "./sheet.ts";
import { constantTally } from "./tally.ts";

/**
 * Adds a column of one's own to a sheet: a formula that is worked out for every line and for the batch,
 * the portion and 100 g. A formula that throws gives a failed cell and spoils nothing else. A column of that
 * name is replaced.
 *
 * What lines add up to is `at.sum`: in the row of a portion it is a portion's share.
 *
 * Throws `column-name-taken` (a component's name, `grams`, `amount` or `portions`), `column-cycle` with the
 * way round, and `sheet-malformed` for what is no sheet, name or formula.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const measured = withConstant(porridge, "measure", 100, "kcal");
 * const rich = withColumn(measured, "proteinIn100kcal", (at) =>
 *   at.get("protein").times(at.constant("measure")).over(at.get("energy")),
 * );
 * const cell = cellValue(rich, "proteinIn100kcal", "portion");
 * console.log(cell.failed ? cell.message : `${cell.value.toFixed(2)} ${cell.unit}`); // => 3.47 g
 * ```
 */
export function withColumn(s: Sheet, name: string, formula: ColumnFormula): Sheet {
  checkName(s, name);
  checkFormula(formula, '(at) => at.get("protein")');
  const own = ownOf(s);
  return defined(s, { ...own, columns: own.columns.with(name, formula) }, name);
}

/**
 * Adds a row of one's own, worked out for every column. Throws as {@link withColumn}.
 *
 * @example
 * ```ts
 * const oats = sheet(
 *   { name: "Oats", portions: 2, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const two = withRow(oats, "two portions", (at) => at.portion().times(2));
 * const cell = cellValue(two, "protein", { row: "two portions" });
 * console.log(cell.failed ? cell.message : cell.value.toString()); // => 13.15
 * ```
 */
export function withRow(s: Sheet, name: string, formula: RowFormula): Sheet {
  checkName(s, name);
  checkFormula(formula, "(at) => at.total()");
  const own = ownOf(s);
  return defined(s, { ...own, rows: own.rows.with(name, formula) }, name);
}

/**
 * Adds a named figure for formulas: a number, with its unit where it has one. Throws as {@link withColumn},
 * and the codes of numbers.
 *
 * @example
 * ```ts
 * const oats = sheet(
 *   { name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "50 g" }] },
 *   starterFoods,
 * );
 * const priced = withColumn(withConstant(oats, "price", "0.2", "p/g"), "cost", (at) =>
 *   at.get("grams").times(at.constant("price").value),
 * );
 * const cell = cellValue(priced, "cost");
 * console.log(cell.failed ? cell.message : cell.value.toString()); // => 10
 * ```
 */
export function withConstant(s: Sheet, name: string, value: Value, unit = ""): Sheet {
  checkName(s, name);
  if (typeof unit !== "string")
    throw fault("sheet-malformed", `unit is ${kindOf(unit)}`, "write it as text, or leave it out", ["unit"]);
  const own = ownOf(s);
  return defined(s, { ...own, constants: own.constants.with(name, constantTally(exact(value), unit)) }, name);
}

/**
 * Gives what a cell of the grid holds: a tally, or why there is none. Columns are components, `grams`, `amount`,
 * `portions` and those of one's own; the row is the batch unless told. Throws `line-unknown` for what is no row.
 *
 * @example
 * ```ts
 * const oats = sheet(
 *   { name: "Oats", portions: 2, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const cell = cellValue(oats, "grams", "portion");
 * console.log(cell.failed ? cell.message : cell.value.toString()); // => 50
 * ```
 */
export function cellValue(s: Sheet, column: string, row: RowRef = "total"): CellValue {
  return gridOf(s).value(cellRef(column, row));
}

/** Lists the cells that a cell reads. Throws as {@link cellValue}. */
export function cellReads(s: Sheet, column: string, row: RowRef = "total"): readonly CellRef[] {
  return gridOf(s).reads(cellRef(column, row));
}

/** Lists the cells that read a cell. Throws as {@link cellValue}. */
export function cellFeeds(s: Sheet, column: string, row: RowRef = "total"): readonly CellRef[] {
  return gridOf(s).feeds(cellRef(column, row));
}

/** A sheet that was opened, with what its cells came to when it was stored. */
export function withStored(s: Sheet, stored: readonly StoredCell[]): Sheet {
  if (!s.grid || stored.length === 0) return s;
  const own = { ...s.grid.own, stored };
  return new Sheet(s.plan, s.values, { sheet: s, changed: [] }, (next) => new Grid(next, own));
}

/** A sheet with nothing of one's own has the cells that every sheet has. */
function gridOf(s: Sheet): Grid {
  checkSheet(s);
  return s.grid ?? new Grid(s, NOTHING_OWN);
}

function ownOf(s: Sheet): Own {
  return s.grid?.own ?? NOTHING_OWN;
}

function checkName(s: Sheet, name: string): void {
  checkSheet(s);
  if (typeof name !== "string")
    throw fault("sheet-malformed", `expected a name, got ${kindOf(name)}`, "write it as text", ["name"]);
  if (name !== "" && !GIVEN.includes(name) && !isComponentId(name)) return;
  const what = name === "" ? "a name of no characters" : `${name} is a column of every sheet`;
  throw fault("column-name-taken", what, "choose another name");
}

function checkFormula(formula: unknown, example: string): void {
  if (isCallable(formula)) return;
  const hint = `give a function: ${example}`;
  throw fault("sheet-malformed", `expected a formula, got ${kindOf(formula)}`, hint, ["formula"]);
}

/** A cell as the caller names it, checked. */
function cellRef(column: unknown, row: RowRef): CellRef {
  checkRow(row);
  if (typeof column === "string") return { column, row };
  const hint = "use a component id, grams, or the name of a column of your own";
  throw fault("column-unknown", `expected the name of a column, got ${kindOf(column)}`, hint, ["column"]);
}

/** Works out what the new definition makes or changes before it stands, so that a cycle is refused here. */
function defined(s: Sheet, own: Own, name: string): Sheet {
  const { carried, reached } = gridOf(s).redefining(name);
  const grid = (next: Sheet): Grid => new Grid(next, own, carried);
  const next = new Sheet(s.plan, s.values, { sheet: s, changed: [] }, grid);
  for (const value of next.grid?.evaluate(name, reached) ?? []) {
    if (isFailure(value) && value.code === "column-cycle") {
      const message = `the formula reads itself: ${value.message}`;
      throw fault("column-cycle", message, "take one of the reads out");
    }
  }
  return next;
}
