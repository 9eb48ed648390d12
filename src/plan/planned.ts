import { type ComponentId, components } from "../food/components.ts";
import { fault, quote } from "../number/error.ts";
import { type Fraction, isZero, ONE, over, sum, times } from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { combine, type Tally } from "../sheet/tally.ts";
import type { Language } from "../table/language.ts";
import { Shown } from "../table/shown.ts";
import type { Table } from "../table/table.ts";
import type { PlannedDish, PlanQuestion } from "./dish.ts";
import type { Portion } from "./portion.ts";
import { portionRows } from "./records.ts";
import { planTables } from "./tables.ts";

/** A meal for everyone: the dishes as cooked for all, each the sum of the portions. */
export interface PlannedMeal {
  readonly id: string;
  readonly name: string;
  readonly batch: ReadonlyMap<string, Sheet>;
  /** Each dish apart: what is cooked once, and what each person gets of it. */
  readonly dishes: ReadonlyMap<string, PlannedDish>;
}

/** Who gets how much of what, and what is cooked for all of them. */
export class Plan extends Shown {
  readonly people: readonly { readonly id: string; readonly name: string }[];
  readonly meals: readonly PlannedMeal[];
  readonly portions: readonly Portion[];
  readonly #byKey: ReadonlyMap<string, Portion>;

  /** @internal Use {@link portionPlan}. */
  constructor(people: Plan["people"], meals: readonly PlannedMeal[], portions: readonly Portion[]) {
    super();
    this.people = people;
    this.meals = meals;
    this.portions = portions;
    this.#byKey = new Map(portions.map((p) => [keyOf(p.person, p.meal), p]));
  }

  /** One person's portion of a meal. Throws `plan-malformed` where the plan has no such portion. */
  portion(person: string, meal: string): Portion {
    const found = this.#byKey.get(keyOf(person, meal));
    if (found) return found;
    const known = this.people.some((p) => p.id === person) ? this.meals : this.people;
    const name = known === this.meals ? meal : person;
    throw fault(
      "plan-malformed",
      `the plan has no ${known === this.meals ? "meal" : "person"} ${quote(name)}`,
      didYouMean(
        name,
        known.map((k) => k.id),
        "use an id of the plan",
      ),
    );
  }

  /** What a person's portion of a meal brings of a component, all dishes together. */
  brings(person: string, meal: string, id: ComponentId): Tally {
    return together(this.portion(person, meal).dishes, id);
  }

  /** What the whole batch of a meal holds of a component: the sum of the portions. */
  holds(meal: string, id: ComponentId): Tally {
    return together(this.#meal(meal).batch, id);
  }

  /**
   * A dish apart into pot and additions; the name may be left out where the meal has one. Throws
   * `plan-malformed` where the plan has no such dish.
   */
  dish(meal: string, name?: string): PlannedDish {
    const { dishes } = this.#meal(meal);
    const [first, ...others] = dishes.values();
    const found = name === undefined ? (others.length === 0 ? first : undefined) : dishes.get(name);
    if (found) return found;
    const message =
      name === undefined ? `${quote(meal)} has several dishes` : `${quote(meal)} has no dish ${quote(name)}`;
    const names = [...dishes.keys()];
    throw fault(
      "plan-malformed",
      message,
      didYouMean(name ?? "", names, `use ${names.map((name) => quote(name)).join(", ")}`),
    );
  }

  /** What only the cook can decide, to be answered in `answers`; until then a line counts as the portions say. */
  get questions(): readonly PlanQuestion[] {
    return this.meals.flatMap(({ dishes }) => [...dishes.values()].flatMap(({ questions }) => questions));
  }

  #meal(meal: string): PlannedMeal {
    const found = this.meals.find(({ id }) => id === meal);
    if (found) return found;
    const ids = this.meals.map(({ id }) => id);
    const hint = didYouMean(meal, ids, "use an id of the plan");
    throw fault("plan-malformed", `the plan has no meal ${quote(meal)}`, hint);
  }

  /** The portions that do not bring all that was asked of them. */
  get unmet(): readonly Portion[] {
    return this.portions.filter(({ status }) => status !== "met");
  }

  /** People as columns: amounts by dish, then figures by meal. */
  override toTables(language?: Language): readonly Table[] {
    return planTables(this, language);
  }

  /** One row for each person, meal, dish, line and component, tidy, for data frames: see {@link portionRows}. */
  toLong(): readonly Table[] {
    return [portionRows(this.portions)];
  }
}

/** Keys cannot run into each other: the length of the first part stands before it. */
const keyOf = (person: string, meal: string): string => `${person.length}:${person}${meal}`;

function together(dishes: ReadonlyMap<string, Sheet>, id: ComponentId): Tally {
  const tallies = [...dishes].map(([name, s]) => (dishes.size > 1 ? s.total(id).within(name) : s.total(id)));
  const mass = sum([...dishes.values()].map((s) => s.masses.raw));
  const known = (): Fraction =>
    sum(
      [...dishes.values()].map((s) =>
        times(s.total(id).coverage, isZero(mass) ? ONE : over(s.masses.raw, mass)),
      ),
    );
  return combine(
    components[id].unit,
    tallies.map((t) => [t, ONE]),
    known,
  );
}
