import { type ComponentId, components } from "../food/components.ts";
import { collect, type Fault, fault, quote, throwIfAny } from "../number/error.ts";
import { type Fraction, isZero, ONE, over, sum, times } from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { combine, type Tally } from "../sheet/tally.ts";
import type { Language } from "../table/language.ts";
import { Shown } from "../table/shown.ts";
import type { Table } from "../table/table.ts";
import { batchOf } from "./batch.ts";
import type { PlanInput } from "./input.ts";
import { type Portion, PortionFinder } from "./portion.ts";
import { readPlan } from "./read.ts";
import { planTables } from "./tables.ts";

export type { Portion, PortionFit, PortionStatus } from "./portion.ts";

/** A meal for everyone: the dishes as cooked for all, each the sum of the portions. */
export interface PlannedMeal {
  readonly id: string;
  readonly name: string;
  readonly batch: ReadonlyMap<string, Sheet>;
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
    const found = this.meals.find((m) => m.id === meal);
    if (!found)
      throw fault(
        "plan-malformed",
        `the plan has no meal ${quote(meal)}`,
        didYouMean(
          meal,
          this.meals.map((m) => m.id),
          "use an id of the plan",
        ),
      );
    return together(found.batch, id);
  }

  /** The portions that do not bring all that was asked of them. */
  get unmet(): readonly Portion[] {
    return this.portions.filter(({ status }) => status !== "met");
  }

  /** People as columns: amounts by dish, then figures by meal. */
  override toTables(language?: Language): readonly Table[] {
    return planTables(this, language);
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

/**
 * Plans each person's portion of each meal, and the batch that feeds them all. The batch is the sum
 * of the portions, line by line and in every component, literally.
 *
 * A target that a recipe cannot reach is refused. Demands that cannot all be met are not: the portion
 * is then the nearest that keeps the firm ones, or nothing, and says what it misses.
 *
 * Throws one error with every fault: `plan-malformed`, and the codes of {@link scale} and {@link fit},
 * each from where the demand stands in the input.
 */
export function portionPlan(input: PlanInput): Plan {
  const read = readPlan(input);
  const faults: Fault[] = [];
  const finders = read.meals.map((meal) => new PortionFinder(meal, read.silence));
  const portions = read.people.flatMap((person) =>
    finders.flatMap((finder) => collect(faults, [], () => finder.find(person)) ?? []),
  );
  throwIfAny(faults);
  const people = read.people.map(({ id, name }) => ({ id, name }));
  const byMeal = groupBy(portions, ({ meal }) => meal);
  const meals = read.meals.map(({ id, name, dishes }) => ({
    id,
    name,
    batch: batchOf(dishes, byMeal.get(id) ?? []),
  }));
  return new Plan(people, meals, portions);
}

function groupBy<T>(all: readonly T[], key: (each: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const each of all) {
    const group = groups.get(key(each));
    if (group) group.push(each);
    else groups.set(key(each), [each]);
  }
  return groups;
}
