import {
  type Component,
  type ComponentId,
  componentIds,
  components,
  isComponentId,
} from "../food/components.ts";
import type { FoodInput } from "../food/food.ts";
import { fault, kindOf, quote, SteelyardError } from "../number/error.ts";
import { exact } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { Definitions } from "./definitions.ts";
import {
  type CarriedOver,
  type CellEntry,
  type CellRef,
  type CellValue,
  cellKey,
  cellLabel,
  Evaluator,
  type Failure,
  type FormulaResult,
  nothingCarried,
  type RowRef,
} from "./own.ts";
import type { Sheet, SheetLine } from "./sheet.ts";
import { constantTally, type Tally, type TallyData } from "./tally.ts";

/** A column of one's own: given a row, its value there. */
export type ColumnFormula = (at: RowView) => FormulaResult;

/** A row of one's own: given a column, its value there. */
export type RowFormula = (at: ColumnView) => FormulaResult;

/** What a sheet carries of one's own, by name. */
export interface Own {
  readonly columns: Definitions<ColumnFormula>;
  readonly rows: Definitions<RowFormula>;
  readonly constants: Definitions<Tally>;
  /** What cells came to when the sheet was stored, where their formulas are still to be given again. */
  readonly stored?: readonly StoredCell[] | undefined;
}

/** A cell of one's own as a stored sheet tells it. */
export type StoredCell = CellRef & { readonly value: TallyData | Failure };

export const NOTHING_OWN: Own = /* @__PURE__ */ nothingOwn();

function nothingOwn(): Own {
  return { columns: new Definitions(), rows: new Definitions(), constants: new Definitions() };
}

/** Where a column's formula stands: one line, or a sum of them. */
export interface RowView {
  readonly row: RowRef;
  /** The line, where the row is one. */
  readonly line: SheetLine | undefined;
  /** The line's food as it was written, where the row is a line of one. */
  readonly food: FoodInput | undefined;
  /**
   * A column in this row: a component, `grams`, or one of one's own. `grams` of a line are as weighed
   * in; of the batch, a portion and 100 g as eaten. What is bought by weight therefore adds up in `sum`,
   * and not from the grams of the batch where the yield is not 1.
   */
  get(column: string): Tally;
  total(column: string): Tally;
  portion(column: string): Tally;
  /**
   * A column added up over the lines, for what the row stands for: the batch, one portion of it, or
   * 100 g of it. In the row of a line it is the sum for the batch.
   */
  sum(column: string): Tally;
  /** How many portions the batch makes. */
  readonly portions: Tally;
  constant(name: string): Tally;
}

/** Where a row's formula stands: one column. */
export interface ColumnView {
  readonly column: string;
  readonly component: Component | undefined;
  line(key: string): Tally;
  total(): Tally;
  portion(): Tally;
  per100g(): Tally;
  /** Another row of one's own, in this column. */
  row(name: string): Tally;
  /** How many portions the batch makes. */
  readonly portions: Tally;
  constant(name: string): Tally;
}

/** The grid of one sheet: every cell that there is, and who reads whom. */
export class Grid {
  readonly own: Own;
  readonly #sheet: Sheet;
  readonly #evaluator: Evaluator;

  constructor(sheet: Sheet, own: Own, earlier: CarriedOver = nothingCarried()) {
    this.#sheet = sheet;
    this.own = own;
    this.#evaluator = new Evaluator(earlier);
  }

  /** The same definitions over a version of the sheet with other values. */
  over(next: Sheet): Grid {
    return new Grid(next, unstored(this.own), this.#evaluator.reusable);
  }

  /** The same over other lines: sums of those are other cells, so nothing worked out before serves again. */
  overOtherLines(next: Sheet): Grid {
    return new Grid(next, unstored(this.own));
  }

  /** What a cell holds now. */
  value(ref: CellRef): CellValue {
    const { column, row } = ref;
    checkRow(row);
    if (typeof row === "object" && "row" in row) return this.#inOwnRow(ref, row.row);
    const formula = this.own.columns.get(column);
    if (formula)
      return this.#evaluator.value(
        ref,
        () => formula(this.#rowView(row)),
        (r) => this.value(r),
      );
    return this.own.constants.get(column) ?? given(this.#sheet, ref);
  }

  /** What a sheet with another definition of `name` carries over, and the cells that it may change. */
  redefining(name: string): { readonly carried: CarriedOver; readonly reached: readonly CellRef[] } {
    return this.#evaluator.redefining(
      name,
      (ref) => defines(ref, name),
      (ref) => this.#isMine(ref),
    );
  }

  /** Evaluates the cells that a definition makes or changes: what it checks before it stands. */
  evaluate(name: string, reached: readonly CellRef[]): CellValue[] {
    const rows = [...this.own.rows.keys()].map((row) => ({ row }));
    const cells: CellRef[] = [...reached];
    if (this.own.columns.has(name))
      cells.push(...[...this.#rows(), ...rows].map((row) => ({ column: name, row })));
    if (this.own.rows.has(name))
      cells.push(...this.#columns().map((column) => ({ column, row: { row: name } })));
    return cells.map((ref) => this.value(ref));
  }

  /** Whether this sheet has the column and the row of a cell: a later one may have written more. */
  #isMine({ column, row }: CellRef): boolean {
    const isRow = typeof row === "string" || "line" in row || this.own.rows.has(row.row);
    return isRow && (this.own.columns.has(column) || isGiven(column));
  }

  #columns(): string[] {
    return [...this.#sheet.plan.components, "grams", ...this.own.columns.keys()];
  }

  /** Evaluates every cell of one's own, in the order of definitions. */
  all(): readonly CellEntry[] {
    const rows = this.#rows();
    const columns = this.#columns();
    const refs = [
      ...[...this.own.columns.keys()].flatMap((column) => rows.map((row): CellRef => ({ column, row }))),
      ...[...this.own.rows.keys()].flatMap((row) =>
        columns.map((column): CellRef => ({ column, row: { row } })),
      ),
    ];
    return refs.flatMap((ref) => {
      this.value(ref);
      return this.#evaluator.entries.get(cellKey(ref)) ?? [];
    });
  }

  /** The cells that a cell reads: what its formula read, or what a given cell is made of. */
  reads(ref: CellRef): readonly CellRef[] {
    this.value(ref);
    const entry = this.#evaluator.entries.get(cellKey(ref));
    if (entry) return distinct(entry.reads.map((read) => read.ref));
    return madeOf(this.#sheet, ref);
  }

  /** The cells that read a cell. */
  feeds(ref: CellRef): readonly CellRef[] {
    const key = cellKey(ref);
    const own = this.all().filter((entry) => entry.reads.some((read) => cellKey(read.ref) === key));
    const given = usedBy(this.#sheet, ref).filter((user) => !this.own.columns.has(user.column));
    return distinct([...given, ...own.map((entry) => entry.ref)]);
  }

  #rows(): RowRef[] {
    return [...this.#sheet.plan.lines.map(({ line }) => ({ line: line.key })), "total", "portion", "per100g"];
  }

  #inOwnRow(ref: CellRef, name: string): CellValue {
    const formula = this.own.rows.get(name);
    if (!formula) return unknown(ref, name, this.own.rows.keys());
    // A column that there is not here may be another sheet's: what its cells would hold is kept by nobody.
    if (!this.own.columns.has(ref.column) && !isGiven(ref.column)) {
      const known = [...componentIds, ...GIVEN, ...this.own.columns.keys()];
      return unknown(ref, ref.column, known);
    }
    return this.#evaluator.value(
      ref,
      () => formula(this.#columnView(ref.column)),
      (r) => this.value(r),
    );
  }

  #read(ref: CellRef): Tally {
    return this.#evaluator.read(ref, this.value(ref));
  }

  #constant(name: string): Tally {
    const ref: CellRef = { column: name, row: "total" };
    return this.#evaluator.read(
      ref,
      this.own.constants.get(name) ?? unknown(ref, name, this.own.constants.keys()),
    );
  }

  #rowView(row: Exclude<RowRef, { readonly row: string }>): RowView {
    const i = typeof row === "string" ? undefined : this.#sheet.plan.indexOf(row.line);
    const line = (): SheetLine | undefined => {
      if (i === undefined) return undefined;
      // Whoever looks at the line itself is worked out again when its amount is written anew.
      this.#read({ column: "amount", row });
      return this.#sheet.lines[i];
    };
    const portions = (): Tally => this.#portions();
    return {
      row,
      get line() {
        return line();
      },
      food: i === undefined ? undefined : this.#sheet.plan.lines[i]?.source.food?.input,
      get: (column) => this.#read({ column, row }),
      total: (column) => this.#read({ column, row: "total" }),
      portion: (column) => this.#read({ column, row: "portion" }),
      sum: (column) => this.#shareOf(row, this.#sum(column)),
      get portions() {
        return portions();
      },
      constant: (name) => this.#constant(name),
    };
  }

  #sum(column: string): Tally {
    const [first, ...rest] = this.#sheet.plan.lines.map(({ line }) =>
      this.#read({ column, row: { line: line.key } }),
    );
    return rest.reduce((all, each) => all.plus(each), first ?? constantTally(exact(0), ""));
  }

  #portions(): Tally {
    return this.#read({ column: "portions", row: "total" });
  }

  /** What a row has of a sum for the batch. */
  #shareOf(row: RowRef, whole: Tally): Tally {
    if (row === "portion") return whole.over(this.#portions());
    if (row !== "per100g") return whole;
    return whole.times(
      this.#read({ column: "grams", row }).over(this.#read({ column: "grams", row: "total" })),
    );
  }

  #columnView(column: string): ColumnView {
    const portions = (): Tally => this.#portions();
    return {
      column,
      component: isComponentId(column) ? components[column] : undefined,
      line: (key) => this.#read({ column, row: { line: key } }),
      total: () => this.#read({ column, row: "total" }),
      portion: () => this.#read({ column, row: "portion" }),
      per100g: () => this.#read({ column, row: "per100g" }),
      row: (name) => this.#read({ column, row: { row: name } }),
      get portions() {
        return portions();
      },
      constant: (name) => this.#constant(name),
    };
  }
}

/** What cells came to when they were stored says nothing of other values. */
function unstored(own: Own): Own {
  return own.stored ? { ...own, stored: undefined } : own;
}

/** Throws `line-unknown` for what names no row, which would else be taken for the batch. */
export function checkRow(row: unknown): void {
  if (row === "total" || row === "portion" || row === "per100g") return;
  if (typeof row === "object" && row !== null && ("line" in row || "row" in row)) return;
  const message = `${typeof row === "string" ? quote(row) : kindOf(row)} is not a row`;
  const hint = 'write "total", "portion", "per100g", { line: "its key" } or { row: "its name" }';
  throw fault("line-unknown", message, hint, ["row"]);
}

/** Columns that every sheet has beside the components. */
export const GIVEN: readonly string[] = ["grams", "amount", "portions"];

function isGiven(column: string): boolean {
  return isComponentId(column) || GIVEN.includes(column);
}

function defines({ column, row }: CellRef, name: string): boolean {
  return column === name || (typeof row === "object" && "row" in row && row.row === name);
}

function distinct(refs: readonly CellRef[]): CellRef[] {
  return [...new Map(refs.map((ref) => [cellKey(ref), ref])).values()];
}

/** What a given cell is made of: a portion of the total, a total of its lines, a line of its grams. */
function madeOf(s: Sheet, { column, row }: CellRef): CellRef[] {
  if (row === "portion") return [{ column, row: "total" }];
  if (row === "per100g")
    return [
      { column, row: "total" },
      { column: "grams", row: "total" },
    ];
  if (row === "total") return s.plan.lines.map(({ line }) => ({ column, row: { line: line.key } }));
  return "line" in row && column !== "grams" ? [{ column: "grams", row }] : [];
}

/** The given cells that are made of a given cell. */
function usedBy(s: Sheet, { column, row }: CellRef): CellRef[] {
  if (row === "total")
    return [
      { column, row: "portion" },
      { column, row: "per100g" },
    ];
  if (typeof row !== "object" || !("line" in row)) return [];
  const total: CellRef = { column, row: "total" };
  if (column !== "grams") return [total];
  return [total, ...s.plan.components.filter((id) => isReal(s, id)).map((id) => ({ column: id, row }))];
}

function isReal(s: Sheet, id: ComponentId): boolean {
  return s.total(id).bound !== "unknown";
}

/** A cell that every sheet has: a component or the grams of a line or a sum. */
function given(s: Sheet, ref: CellRef): CellValue {
  const { column, row } = ref;
  try {
    if (isComponentId(column)) return component(s, column, row);
    if (column === "grams") return grams(s, row);
    if (column === "portions") return constantTally(s.values.portions, "");
    if (column === "amount" && typeof row === "object" && "line" in row) return written(s, row.line);
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    return { failed: true, code: error.code, message: error.message, cell: cellLabel(ref) };
  }
  return unknown(ref, column, [...componentIds, "grams", "amount", "portions"]);
}

function component(s: Sheet, id: ComponentId, row: RowRef): Tally {
  if (row === "portion") return s.portion(id);
  if (row === "per100g") return s.per100g(id);
  return typeof row === "object" && "line" in row ? s.cell(row.line, id) : s.total(id);
}

function grams(s: Sheet, row: RowRef): Tally {
  if (row === "portion") return constantTally(s.portionMass, "g");
  if (row === "per100g") return constantTally(exact(100), "g");
  if (typeof row === "object" && "line" in row) {
    return constantTally(s.values.grams[s.plan.indexOf(row.line)] ?? exact(0), "g");
  }
  return constantTally(s.masses.cooked, "g");
}

/** A line's amount as written: the figure in its own unit, which says whose spoon it is. */
function written(s: Sheet, key: string): Tally {
  const amount = s.values.amounts[s.plan.indexOf(key)];
  if (!amount) return constantTally(exact(0), "");
  const whose = typeof amount.measures === "object" ? amount.measures.name : amount.measures;
  return constantTally(amount.value, whose === undefined ? amount.unit : `${whose} ${amount.unit}`);
}

function unknown(ref: CellRef, name: string, known: Iterable<string>): Failure {
  const message = `nothing is called "${name}": ${didYouMean(name, known, "define it first")}`;
  return { failed: true, code: "column-unknown", message, cell: cellLabel(ref) };
}
