import type { EnergySystem } from "../../food/energy.ts";
import { type Exact, fraction, minus, ONE, plus, sum, times, ZERO } from "../../number/exact.ts";
import { type Brought, broughtBy } from "../../scale/engine/brought.ts";
import type { ByLine, Dish } from "../../scale/engine/model.ts";
import type { ReadDemand, Subject } from "../../scale/engine/readDemand.ts";
import type { SubjectFigures } from "../../scale/round/heldBefore.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import type { LineFactors } from "../share/lineFactors.ts";

/** One end of a demand, as a sum over lines: `Σ per base portion × factor` on the side of `end`. */
export interface DemandRow {
  readonly side: "least" | "most";
  readonly end: Exact;
  readonly firm: boolean;
  /** What a line of one base portion brings. */
  readonly brings: (dish: string, line: number) => Exact;
}

/** What a meal's lines bring of whatever is demanded, read once for everyone. */
export class MealFigures {
  /** One portion of each, in the order of their names. */
  readonly dishes: readonly Dish[];
  readonly #places: ReadonlyMap<string, number>;
  readonly #system: EnergySystem;
  readonly #brought = new Map<string, Brought>();

  constructor(dishes: readonly Dish[], system: EnergySystem) {
    this.dishes = dishes;
    this.#places = new Map(this.dishes.map(({ name }, i) => [name ?? "", i]));
    this.#system = system;
  }

  static of(meal: ReadMeal): MealFigures {
    const dishes = meal.together.map(({ name = meal.own.id, sheet }) => ({ name, sheet }));
    return new MealFigures(dishes, meal.fit.system);
  }

  /** The same of dishes whose lines draw on other sheets. */
  with(sheetOf: (dish: string) => Sheet | undefined): MealFigures {
    const dishes = this.dishes.map(({ name, sheet }) => ({ name, sheet: sheetOf(name ?? "") ?? sheet }));
    return dishes.every(({ sheet }, i) => sheet === this.dishes[i]?.sheet)
      ? this
      : new MealFigures(dishes, this.#system);
  }

  get system(): EnergySystem {
    return this.#system;
  }

  /** What tells subjects apart. */
  key(subject: Subject): string {
    const { by = "", margin } = subject.kind === "amount" ? subject : {};
    const sure = margin ? `${margin.side} ${margin.confidence}` : "";
    return `${subject.kind} ${String(subject.of)} ${by} ${sure}`;
  }

  brought(subject: Subject): Brought {
    const key = this.key(subject);
    const found = this.#brought.get(key) ?? broughtBy(this.dishes, subject, this.#system);
    this.#brought.set(key, found);
    return found;
  }

  /** What a portion with these factors brings of a subject, `value / per`. */
  at(subject: Subject, factors: LineFactors): SubjectFigures {
    const { value, per } = this.brought(subject);
    const all = (of: ByLine): Exact =>
      sum([...factors].map(([dish, own]) => sum(own.map((f, line) => times(f, this.#of(of, dish, line))))));
    return { value: all(value), per: per ? all(per) : ONE };
  }

  /** The ends of a demand; those of a quotient stand over its divisor, with 0 as their end. */
  rows({ subject, least, most, firm }: ReadDemand): readonly DemandRow[] {
    const { value, per } = this.brought(subject);
    const row = (side: DemandRow["side"], end: Exact): DemandRow => ({
      side,
      firm,
      end: per ? ZERO : end,
      brings: (dish, line) => {
        const own = this.#of(value, dish, line);
        return per ? minus(own, times(end, this.#of(per, dish, line))) : own;
      },
    });
    return [...(least ? [row("least", least)] : []), ...(most ? [row("most", most)] : [])];
  }

  #of({ lines, scale }: ByLine, dish: string, line: number): Exact {
    return fraction(lines[this.#places.get(dish) ?? -1]?.[line] ?? 0n, scale);
  }
}

/** What a row comes to for a portion. */
export function rowAt({ brings }: DemandRow, factors: LineFactors): Exact {
  let total = ZERO;
  for (const [dish, own] of factors) {
    for (const [line, factor] of own.entries()) total = plus(total, times(factor, brings(dish, line)));
  }
  return total;
}

/** What some lines of one dish come to for a row. */
export function potBrings(
  { brings }: DemandRow,
  dish: string,
  pot: readonly number[],
  factors: readonly Exact[],
): Exact {
  return sum(pot.map((line) => times(factors[line] ?? ZERO, brings(dish, line))));
}
