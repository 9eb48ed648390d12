import type Decimal from "decimal.js";
import { type ComponentId, components } from "../food/components.ts";
import type { EnergySystemId } from "../food/energy.ts";
import type { State } from "../food/food.ts";
import type { Amount } from "../measure/amount.ts";
import { fault } from "../number/error.ts";
import {
  type Fraction,
  fraction,
  isZero,
  minus,
  over,
  plus,
  sum,
  times,
  toDecimal,
  ZERO,
} from "../number/fraction.ts";
import type { Recipe, Scaling, WrittenAmount } from "../recipe/document.ts";
import { Shown } from "../table/shown.ts";
import type { Table } from "../table/table.ts";
import { editedValues } from "./edit.ts";
import { type EnergyShares, shareEnergy } from "./energy.ts";
import { componentIndex, gatherMarks, type LineMark, type SheetPlan } from "./plan.ts";
import type { Mark } from "./source.ts";
import { figuresTable, linesTable } from "./tables.ts";
import { type Marks, Tally } from "./tally.ts";
import { type Masses, massesOf, type Values, type Weights, weigh } from "./values.ts";

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
  readonly grams: Decimal;
  readonly exactGrams: Fraction;
  readonly scaling: Scaling;
  readonly part: string | undefined;
  readonly added: "cooking" | "serving";
  readonly prep: string | undefined;
}

/**
 * A recipe resolved to grams and figures: the one thing that flows. A sheet never changes;
 * operations give new sheets. Figures are as eaten, after retention.
 */
export class Sheet extends Shown {
  /** @internal */
  readonly plan: SheetPlan;
  /** @internal */
  readonly values: Values;
  #masses: Masses | undefined;
  #weights: Weights | undefined;
  #lines: readonly SheetLine[] | undefined;
  readonly #totals: (Tally | undefined)[] = [];

  /** @internal Use {@link sheet}. */
  constructor(plan: SheetPlan, values: Values) {
    super();
    this.plan = plan;
    this.values = values;
  }

  get name(): string {
    return this.plan.recipe.name;
  }

  /** The recipe that the sheet was first made from; `toRecipe` gives the one it stands for now. */
  get origin(): Recipe {
    return this.plan.recipe;
  }

  get portions(): Decimal {
    return toDecimal(this.values.portions);
  }

  get lines(): readonly SheetLine[] {
    this.#lines ??= this.plan.lines.map(({ line, source, nested }, i) => {
      const exactGrams = this.values.grams[i] ?? ZERO;
      return {
        key: line.key,
        name: source.name,
        state: source.state,
        food: source.food?.input.id,
        nested,
        amount: this.#amount(i),
        grams: toDecimal(exactGrams),
        exactGrams,
        scaling: line.scaling,
        part: line.part,
        added: line.added,
        prep: line.prep,
      };
    });
    return this.#lines;
  }

  /** Grams: of the batch as weighed in, of the batch as eaten, and of one portion as eaten. */
  get mass(): { readonly raw: Decimal; readonly cooked: Decimal; readonly portion: Decimal } {
    const { raw, cooked } = this.masses;
    return { raw: toDecimal(raw), cooked: toDecimal(cooked), portion: toDecimal(this.portionMass) };
  }

  /** What one line brings of a component to the batch as eaten. Throws `line-unknown`, `component-unknown`. */
  cell(lineKey: string, id: ComponentId): Tally {
    const i = this.plan.indexOf(lineKey);
    const c = componentIndex(id);
    const { lifted, denominator } = this.weights;
    const value = this.plan.lines[i]?.source.values[c] ?? 0n;
    const marks = this.#present(c).filter((m) => m.line === i);
    return new Tally((lifted[i] ?? 0n) * value, denominator, components[id].unit, gatherMarks(marks), () =>
      minus(fraction(1n), sum(marks.filter((m) => m.mark.kind === "missing").map((m) => m.mark.share))),
    );
  }

  /** The batch as eaten. Throws `component-unknown`. */
  total(id: ComponentId): Tally {
    const c = componentIndex(id);
    const made = this.#totals[c] ?? this.#sum(id, c);
    this.#totals[c] = made;
    return made;
  }

  /** One portion as eaten. Throws `component-unknown`. */
  portion(id: ComponentId): Tally {
    return this.total(id).times(over(fraction(1n), this.values.portions));
  }

  /**
   * 100 g as eaten: total ÷ cooked mass × 100. Throws `component-unknown`, `sheet-empty`.
   *
   * Source of the method: Greenfield & Southgate, Food composition data (FAO 2003), recipe calculation.
   */
  per100g(id: ComponentId): Tally {
    const { cooked } = this.masses;
    if (isZero(cooked))
      throw fault(
        "sheet-empty",
        "the recipe has no mass, so 100 g of it cannot be told",
        "give a line an amount above 0",
      );
    return this.total(id).times(over(fraction(100n), cooked));
  }

  /**
   * A sheet with other amounts, by line key, in any unit that the line can be measured in.
   *
   * Throws one error with every fault: `line-unknown`, and the codes of amounts.
   */
  edit(amounts: Readonly<Record<string, WrittenAmount>>): Sheet {
    return new Sheet(this.plan, editedValues(this.plan, this.values, amounts));
  }

  /** Shares of the energy by a named factor system, exact and as whole per cents that total 100. */
  energyShares(how: { readonly system?: EnergySystemId } = {}): EnergyShares {
    return shareEnergy((id) => this.total(id), how.system ?? "atwater-general");
  }

  /** Lines with their amounts, and figures as eaten. */
  override toTables(): readonly Table[] {
    return [linesTable(this), figuresTable(this)];
  }

  /** @internal */
  get masses(): Masses {
    this.#masses ??= massesOf(this.plan, this.values);
    return this.#masses;
  }

  /** @internal */
  get portionMass(): Fraction {
    return over(this.masses.cooked, this.values.portions);
  }

  /** @internal */
  get weights(): Weights {
    this.#weights ??= weigh(this.plan, this.values.grams);
    return this.#weights;
  }

  /** @internal What the figures of a component say of themselves, as shares of this sheet's mass. */
  marks(component: number): readonly Mark[] {
    return this.#present(component).map(({ key, mark, line }) => ({
      at: key,
      kind: mark.kind,
      share: times(mark.share, this.#massShare(line)),
    }));
  }

  #amount(i: number): Amount {
    const amount = this.values.amounts[i];
    if (!amount) throw fault("line-unknown", `no line ${i}`, "use a key from .lines");
    return amount;
  }

  #massShare(line: number): Fraction {
    const { raw } = this.masses;
    return isZero(raw) ? ZERO : over(this.values.grams[line] ?? ZERO, raw);
  }

  /** Lines of no mass bring nothing, whether or not their figures are known. */
  #present(component: number): readonly LineMark[] {
    const all = this.plan.lineMarks(component);
    return this.#hasEmptyLines() ? all.filter((m) => !isZero(this.values.grams[m.line] ?? ZERO)) : all;
  }

  #hasEmptyLines(): boolean {
    return this.values.grams.some(isZero);
  }

  #sum(id: ComponentId, c: number): Tally {
    const { lifted, denominator } = this.weights;
    let n = 0n;
    this.plan.lines.forEach(({ source }, i) => {
      n += (lifted[i] ?? 0n) * (source.values[c] ?? 0n);
    });
    const marks: Marks = this.#hasEmptyLines() ? gatherMarks(this.#present(c)) : this.plan.marks(c);
    const covered = (): Fraction => this.#coverage(c);
    const unit = components[id].unit;
    if (id !== "water") return new Tally(n, denominator, unit, marks, covered);
    const water = plus(fraction(n, denominator), this.masses.waterChange);
    return new Tally(water.n, water.d, unit, marks, covered);
  }

  /** Share of the raw mass whose figures are known for a component. */
  #coverage(component: number): Fraction {
    const silent = this.#present(component).filter((m) => m.mark.kind === "missing");
    return minus(fraction(1n), sum(silent.map((m) => times(m.mark.share, this.#massShare(m.line)))));
  }
}
