import type { ComponentId } from "../food/components.ts";
import type { State } from "../food/food.ts";
import type { Amount } from "../measure/amount.ts";
import { showFigure } from "../measure/showFigure.ts";
import { fault } from "../number/error.ts";
import { type Exact, fraction, isZero, ONE, over, ZERO } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import type { Recipe, Scaling, WrittenAmount } from "../recipe/document.ts";
import { editedValues } from "./edit.ts";
import type { Grid } from "./grid.ts";
import type { PlanLine, SheetPlan } from "./plan.ts";
import { type FromOrigin, onceMore, scaledMasses, scaledValues } from "./scaled.ts";
import type { Mark } from "./source.ts";
import { type StoredSheet, storedSheet } from "./stored.ts";
import type { Tally } from "./tally.ts";
import { SheetTotals } from "./totals.ts";
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
  readonly #grid: Grid | undefined;
  readonly #origin: FromOrigin | undefined;
  #masses: Masses | undefined;
  #sums: SheetTotals | undefined;
  #lines: readonly SheetLine[] | undefined;

  /** @internal Use {@link sheet}. */
  constructor(plan: SheetPlan, values: Values, earlier?: Earlier, own?: OwnCells) {
    super();
    this.plan = plan;
    this.values = values;
    this.#origin = earlier?.origin;
    const from = earlier?.sheet;
    // What carries over is taken now, so that no version holds the one before it.
    if (from && from.plan === plan && earlier.changed)
      this.#sums = new SheetTotals(plan, values, this.masses, from.#totals, earlier.changed);
    this.#grid = own?.(this);
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

  /** @internal Columns, rows and constants of one's own; undefined where there are none. */
  get grid(): Grid | undefined {
    return this.#grid;
  }

  /** @internal Grams of the batch, as weighed in and as eaten. */
  get masses(): Masses {
    this.#masses ??= this.#origin ? scaledMasses(this.plan, this.#origin) : massesOf(this.plan, this.values);
    return this.#masses;
  }

  get #totals(): SheetTotals {
    this.#sums ??= new SheetTotals(this.plan, this.values, this.masses);
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

  /** Gives the recipe, nested ones, the foods used and what can be told of one's own columns: `openSheet` opens it. */
  override toJSON(): StoredSheet {
    return storedSheet(this);
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
    return new Sheet(this.plan, values, { sheet: this, changed }, this.#ownAgain);
  }

  /**
   * @internal All lines multiplied by one factor, for portions of the size, and to a number of portions;
   * doses follow the portions. A sheet scaled again and again keeps its origin and the one factor that all of
   * them make. Throws `number-too-long` for one that no recipe could be written with.
   */
  scaled(by: Exact, portions: Exact): Sheet {
    const origin = onceMore(this.#origin, this.values, by, portions);
    return new Sheet(this.plan, scaledValues(this.plan, origin), { sheet: this, origin }, this.#ownAgain);
  }

  /** @internal The same columns and rows of one's own over other lines. */
  rebuilt(next: Sheet): Sheet {
    const { grid } = this;
    return grid ? new Sheet(next.plan, next.values, undefined, (made) => grid.overOtherLines(made)) : next;
  }

  get #ownAgain(): OwnCells | undefined {
    const { grid } = this;
    return grid && ((next) => grid.over(next));
  }

  #amount(i: number): Amount {
    const amount = this.values.amounts[i];
    if (!amount) throw fault("line-unknown", `no line ${i}`, "use a key from .lines");
    return amount;
  }
}

/** Makes the cells of one's own that a new sheet carries. */
type OwnCells = (next: Sheet) => Grid;

/** What a version is made from: the sheet before, and the lines that changed. */
interface Earlier {
  readonly sheet: Sheet;
  readonly changed?: readonly number[] | undefined;
  readonly origin?: FromOrigin;
}
