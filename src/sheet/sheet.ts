import { isCallable } from "../document/leaves.ts";
import { type ComponentId, isComponentId } from "../food/components.ts";
import type { State } from "../food/food.ts";
import type { Amount } from "../measure/amount.ts";
import { showFigure } from "../measure/showFigure.ts";
import { fault, kindOf } from "../number/error.ts";
import { type Exact, exact, fraction, isZero, ONE, over, type Value, ZERO } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import type { Recipe, Scaling, WrittenAmount } from "../recipe/document.ts";
import { editedValues } from "./edit.ts";
import { type ColumnFormula, checkRow, GIVEN, Grid, NOTHING_OWN, type Own, type RowFormula } from "./grid.ts";
import {
  type CarriedOver,
  type CellRef,
  type CellValue,
  isFailure,
  nothingCarried,
  type RowRef,
} from "./own.ts";
import type { PlanLine, SheetPlan } from "./plan.ts";
import { type FromOrigin, onceMore, scaledMasses, scaledValues } from "./scaled.ts";
import type { Mark } from "./source.ts";
import { type StoredSheet, storedSheet } from "./stored.ts";
import { constantTally, type Tally } from "./tally.ts";
import { Totals } from "./totals.ts";
import { isPresumed, type Masses, massesOf, type Values } from "./values.ts";
import type { WaterChange } from "./water.ts";

/** One line of a sheet, in grams. */
export interface SheetLine {
  readonly key: string;
  readonly name: string;
  readonly state: State | undefined;
  /** Id of the food, or nothing where the line is a nested recipe. */
  readonly food: string | undefined;
  readonly nested: Sheet | undefined;
  /** The amount as it stands now, in the unit it was written in. */
  readonly amount: Amount;
  /** Edible portion for the batch. */
  readonly grams: Exact;
  readonly scaling: Scaling;
  readonly part: string | undefined;
  readonly added: "cooking" | "serving";
  readonly prep: string | undefined;
}

/**
 * A recipe resolved to grams and figures: the one thing that flows. A sheet never changes;
 * operations give new sheets. Figures are as eaten, after retention.
 */
export class Sheet extends Result {
  /** @internal */
  readonly plan: SheetPlan;
  /** @internal */
  readonly values: Values;
  readonly #own: Own;
  readonly #origin: FromOrigin | undefined;
  readonly #grid: Grid;
  #masses: Masses | undefined;
  #sums: Totals | undefined;
  #lines: readonly SheetLine[] | undefined;

  /** @internal Use {@link sheet}. */
  constructor(plan: SheetPlan, values: Values, own: Own = NOTHING_OWN, earlier?: Earlier) {
    super();
    this.plan = plan;
    this.values = values;
    this.#own = own;
    this.#origin = earlier?.origin;
    const from = earlier?.sheet;
    // What carries over is taken now, so that no version holds the one before it.
    if (from && from.plan === plan && earlier.changed)
      this.#sums = new Totals(plan, values, this.masses, from.#totals, earlier.changed);
    const again = (): CarriedOver => (from ? from.#grid.reusable : nothingCarried());
    this.#grid = new Grid(this, own, earlier?.carried ?? again());
  }

  get name(): string {
    return this.plan.recipe.name;
  }

  get is(): "steelyard/sheet@1" {
    return "steelyard/sheet@1";
  }

  override toString(): string {
    const count = showFigure(this.portions);
    const each = showFigure(this.portionMass, { unit: "g" });
    return `${this.name}: ${count === "1" ? "1 portion" : `${count} portions`} of ${each}`;
  }

  /** @internal Grams of the batch, as weighed in and as eaten. */
  get masses(): Masses {
    this.#masses ??= this.#origin ? scaledMasses(this.plan, this.#origin) : massesOf(this.plan, this.values);
    return this.#masses;
  }

  get #totals(): Totals {
    this.#sums ??= new Totals(this.plan, this.values, this.masses);
    return this.#sums;
  }

  /** The recipe that the sheet was first made from; `toRecipe` gives the one it stands for now. */
  get origin(): Recipe {
    return this.plan.recipe;
  }

  get portions(): Exact {
    return this.values.portions;
  }

  get lines(): readonly SheetLine[] {
    this.#lines ??= Object.freeze(this.plan.lines.map((_, i) => Object.freeze(this.lineAt(i))));
    return this.#lines;
  }

  /** @internal One line, for whoever needs few of many. */
  lineAt(i: number): SheetLine {
    const { line, source, nested } = this.plan.lines[i] as PlanLine;
    const grams = this.values.grams[i] ?? ZERO;
    return {
      key: line.key,
      name: source.name,
      state: source.state,
      food: source.food?.input.id,
      nested,
      amount: this.#amount(i),
      grams,
      scaling: line.scaling,
      part: line.part,
      added: line.added,
      prep: line.prep,
    };
  }

  /** Grams: of the batch as weighed in, of the batch as eaten, and of one portion as eaten. */
  get mass(): { readonly raw: Exact; readonly cooked: Exact; readonly portion: Exact } {
    const { raw, cooked } = this.masses;
    return { raw, cooked, portion: this.portionMass };
  }

  /** What one line brings of a component to the batch as eaten. Throws `line-unknown`, `component-unknown`. */
  cell(lineKey: string, id: ComponentId): Tally {
    return this.#totals.cell(this.plan.indexOf(lineKey), id);
  }

  /**
   * The batch as eaten. Water follows the mass that cooking adds or takes off; where that is more
   * than the pot held, the water left is not known, and its `missing` names what went into the pot.
   * Throws `component-unknown`.
   */
  total(id: ComponentId): Tally {
    return this.#totals.total(id);
  }

  /** One portion as eaten. Throws `component-unknown`. */
  portion(id: ComponentId): Tally {
    return this.total(id).share(over(ONE, this.values.portions));
  }

  /**
   * 100 g as eaten: total ÷ cooked mass × 100. Throws `component-unknown`, `sheet-empty`.
   *
   * Source of the method: Greenfield & Southgate, Food composition data (FAO 2003), recipe calculation.
   */
  per100g(id: ComponentId): Tally {
    const { cooked } = this.masses;
    if (isZero(cooked)) {
      const message = "the recipe has no mass, so 100 g of it cannot be told";
      throw fault("sheet-empty", message, "give a line an amount above 0");
    }
    const tally = this.total(id).share(over(fraction(100n), cooked));
    return isPresumed(this.values) ? tally.derivedFrom(this.#inPot) : tally;
  }

  /**
   * A sheet with other amounts, by line key, in any unit that the line can be measured in. A cooked mass
   * that was weighed becomes the yield factor that it implied, presumed, where what is cooked weighs otherwise.
   *
   * Throws one error with every fault: `line-unknown`, and the codes of amounts.
   */
  edit(amounts: Readonly<Record<string, WrittenAmount>>): Sheet {
    const values = editedValues(this.plan, this.values, amounts);
    const changed = Object.keys(amounts).map((key) => this.plan.indexOf(key));
    return this.version(values, changed);
  }

  /**
   * A sheet with a column of one's own, a formula that is worked out for every line and for the
   * batch, the portion and 100 g. A formula that throws gives a failed cell and spoils nothing else.
   * A column of that name is replaced.
   *
   * What lines add up to is `at.sum`: in the row of a portion it is a portion's share. Throws
   * `column-name-taken` (a component's name, `grams`, `amount` or `portions`), `column-cycle` with the
   * way round.
   *
   * @example
   * ```ts
   * const porridge = sheet(
   *   { name: "Porridge", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
   *   starterFoods,
   * )
   *   .constant("measure", 100, "kcal")
   *   .column("proteinIn100kcal", (at) =>
   *     at.get("protein").times(at.constant("measure")).over(at.get("energy")),
   *   );
   * const cell = porridge.value("proteinIn100kcal", "portion");
   * console.log(cell.failed ? cell.message : `${cell.value.toFixed(2)} ${cell.unit}`); // => 3.47 g
   * ```
   */
  column(name: string, formula: ColumnFormula): Sheet {
    this.#refuseTaken(name);
    checkFormula(formula, '(at) => at.get("protein")');
    return this.#define({ ...this.#own, columns: this.#own.columns.with(name, formula) }, name);
  }

  /** A sheet with a row of one's own, worked out for every column. Throws as {@link column}. */
  row(name: string, formula: RowFormula): Sheet {
    this.#refuseTaken(name);
    checkFormula(formula, "(at) => at.total()");
    return this.#define({ ...this.#own, rows: this.#own.rows.with(name, formula) }, name);
  }

  /** A sheet with a named figure for formulas: a number, with its unit where it has one. Throws as {@link column}. */
  constant(name: string, value: Value, unit = ""): Sheet {
    this.#refuseTaken(name);
    if (typeof unit !== "string")
      throw fault("sheet-malformed", `unit is ${kindOf(unit)}`, "write it as text, or leave it out", [
        "unit",
      ]);
    const constants = this.#own.constants.with(name, constantTally(exact(value), unit));
    return this.#define({ ...this.#own, constants }, name);
  }

  /** What a cell of the grid holds: a tally, or why there is none. Throws `line-unknown` for what is no row. */
  value(column: string, row: RowRef = "total"): CellValue {
    return this.#grid.value(cellRef(column, row));
  }

  /** The cells that a cell reads. */
  reads(column: string, row: RowRef = "total"): readonly CellRef[] {
    return this.#grid.reads(cellRef(column, row));
  }

  /** The cells that read a cell. */
  feeds(column: string, row: RowRef = "total"): readonly CellRef[] {
    return this.#grid.feeds(cellRef(column, row));
  }

  /** Gives the recipe, nested ones, the foods used and what can be told of one's own columns: `openSheet` opens it. */
  override toJSON(): StoredSheet {
    return storedSheet(this);
  }

  /** @internal What the cells of one's own hold. */
  ownCells(): ReturnType<Grid["all"]> {
    return this.#grid.all();
  }

  /** @internal */
  get own(): Own {
    return this.#own;
  }

  /** @internal As {@link cell}, of the line in that place. */
  cellAt(i: number, id: ComponentId): Tally {
    return this.#totals.cell(i, id);
  }

  /** @internal What all lines bring together, before the pot takes up or gives off water. */
  brought(id: ComponentId): Tally {
    return this.#totals.brought(id);
  }

  /** @internal What cooking does to water. */
  get water(): WaterChange {
    return this.#totals.water;
  }

  get #inPot(): readonly string[] {
    return this.plan.lines.flatMap(({ line }, i) =>
      line.added === "cooking" && !isZero(this.values.grams[i] ?? ZERO) ? line.key : [],
    );
  }

  /** @internal */
  get portionMass(): Exact {
    return over(this.masses.cooked, this.values.portions);
  }

  /** @internal What the figures of a component say of themselves, as shares of this sheet's mass. */
  marks(component: number): readonly Mark[] {
    return this.#totals.marks(component);
  }

  /** @internal Another version of the same lines; `changed` names those whose amounts differ, where few do. */
  version(values: Values, changed?: readonly number[]): Sheet {
    return new Sheet(this.plan, values, this.#own, { sheet: this, changed });
  }

  /**
   * @internal All lines multiplied by one factor, for portions of the size, and to a number of portions;
   * doses follow the portions. A sheet scaled again and again keeps its origin and the one factor that all of
   * them make. Throws `number-too-long` for one that no recipe could be written with.
   */
  scaled(by: Exact, portions: Exact): Sheet {
    const origin = onceMore(this.#origin, this.values, by, portions);
    return new Sheet(this.plan, scaledValues(this.plan, origin), this.#own, { sheet: this, origin });
  }

  /** @internal The same columns and rows of one's own over other lines. */
  rebuilt(next: Sheet): Sheet {
    // Sums over other lines are other cells, so nothing worked out before serves again.
    return new Sheet(next.plan, next.values, this.#own);
  }

  #amount(i: number): Amount {
    const amount = this.values.amounts[i];
    if (!amount) throw fault("line-unknown", `no line ${i}`, "use a key from .lines");
    return amount;
  }

  #refuseTaken(name: string): void {
    if (typeof name !== "string")
      throw fault("sheet-malformed", `expected a name, got ${kindOf(name)}`, "write it as text", ["name"]);
    if (name !== "" && !GIVEN.includes(name) && !isComponentId(name)) return;
    const what = name === "" ? "a name of no characters" : `${name} is a column of every sheet`;
    throw fault("column-name-taken", what, "choose another name");
  }

  /** Works out what the new definition makes or changes before it stands, so that a cycle is refused here. */
  #define(own: Own, name: string): Sheet {
    const { carried, reached } = this.#grid.redefining(name);
    const next = new Sheet(this.plan, this.values, own, { sheet: this, changed: [], carried });
    for (const value of next.#grid.evaluate(name, reached)) {
      if (isFailure(value) && value.code === "column-cycle") {
        throw fault(
          "column-cycle",
          `the formula reads itself: ${value.message}`,
          "take one of the reads out",
        );
      }
    }
    return next;
  }
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

/** What a version is made from: the sheet before, the lines that changed, and cells that may serve again. */
interface Earlier {
  readonly sheet: Sheet;
  readonly changed?: readonly number[] | undefined;
  readonly origin?: FromOrigin;
  readonly carried?: CarriedOver;
}
