import type { Decimal } from "decimal.js";
import { type ComponentId, components } from "../food/components.ts";
import { collect, type Fault, fault, quote, throwIfAny } from "../number/error.ts";
import {
  type Fraction,
  fraction,
  isZero,
  ONE,
  over,
  plus,
  sum,
  times,
  toDecimal,
  ZERO,
} from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import { moveAll, moveLines, notesOn, type ScaleNote } from "../scale/move.ts";
import { factorFor, type ReadTarget, readTarget, type Silence, type Target } from "../scale/target.ts";
import { Sheet } from "../sheet/sheet.ts";
import { combine, type Tally } from "../sheet/tally.ts";
import type { Language } from "../table/language.ts";
import { Shown } from "../table/shown.ts";
import type { Table } from "../table/table.ts";
import type { MealInput, PersonInput, PlanInput } from "./input.ts";
import { planTables } from "./tables.ts";

/** One person's portion of one meal. */
export interface Portion {
  readonly person: string;
  readonly meal: string;
  /** What the held and adjustable lines were multiplied by. */
  readonly factor: Decimal;
  readonly exactFactor: Fraction;
  /** What the person is served, by dish: a sheet for one portion. */
  readonly dishes: ReadonlyMap<string, Sheet>;
  readonly notes: readonly ScaleNote[];
}

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
 * Throws one error with every fault: `plan-malformed`, and the codes of {@link scale}, each with
 * the person and meal in its path.
 */
export function portionPlan(input: PlanInput): Plan {
  const faults: Fault[] = [];
  const meals = (input.meals ?? []).map((meal) => ({
    id: meal.id,
    name: meal.name ?? meal.id,
    dishes: dishesOf(meal),
  }));
  refuseRepeats(input, faults);
  const portions = (input.people ?? []).flatMap((person, p) =>
    meals.flatMap((meal) => {
      const made = collect(faults, ["people", p], () => portionOf(person, meal, input.silent ?? "refuse"));
      return made ? [made] : [];
    }),
  );
  throwIfAny(faults);
  const people = input.people.map(({ id, name }) => ({ id, name: name ?? id }));
  const planned = meals.map(({ id, name, dishes }) => ({
    id,
    name,
    batch: batchOf(
      dishes,
      portions.filter((p) => p.meal === id),
    ),
  }));
  return new Plan(people, planned, portions);
}

interface Meal {
  readonly id: string;
  readonly name: string;
  /** One portion of each, as its recipe was written. */
  readonly dishes: ReadonlyMap<string, Sheet>;
}

function dishesOf(meal: MealInput): ReadonlyMap<string, Sheet> {
  const named: [string, Sheet][] =
    meal.dishes instanceof Sheet ? [[meal.id, meal.dishes]] : Object.entries(meal.dishes);
  return new Map(named.map(([name, s]) => [name, moveAll(s, ONE, ONE)]));
}

function refuseRepeats(input: PlanInput, faults: Fault[]): void {
  for (const field of ["meals", "people"] as const) {
    const seen = new Set<string>();
    const list: readonly { readonly id: string }[] = input[field] ?? [];
    if (list.length === 0)
      faults.push({
        code: "plan-malformed",
        path: [field],
        message: `a plan without ${field}`,
        hint: "give at least one",
      });
    list.forEach(({ id }, i) => {
      if (seen.has(id))
        faults.push({
          code: "plan-malformed",
          path: [field, i, "id"],
          message: `${quote(id)} comes twice`,
          hint: "give each an id of its own",
        });
      seen.add(id);
    });
  }
}

function portionOf(person: PersonInput, meal: Meal, silence: Silence): Portion {
  const target: Target = person.byMeal?.[meal.id] ?? person.demands ?? {};
  const { aim }: ReadTarget = readTarget({ ...target, portions: 1 });
  const sheets = [...meal.dishes.values()];
  const exactFactor = factorFor(sheets, aim, silence);
  const dishes = new Map([...meal.dishes].map(([name, s]) => [name, moveAll(s, exactFactor, ONE)]));
  const notes = [...meal.dishes].flatMap(([name, s]) => notesOn(s, dishes.get(name) ?? s));
  return { person: person.id, meal: meal.id, factor: toDecimal(exactFactor), exactFactor, dishes, notes };
}

/** Adds up portions line by line: each line's factors of one base portion. */
function batchOf(
  dishes: ReadonlyMap<string, Sheet>,
  portions: readonly Portion[],
): ReadonlyMap<string, Sheet> {
  const total = portions.reduce((all, p) => plus(all, p.exactFactor), ZERO);
  const people = fraction(BigInt(portions.length));
  return new Map(
    [...dishes].map(([name, s]) => {
      const factors = s.plan.lines.map(({ line }) => (line.scaling === "per-portion" ? people : total));
      return [name, moveLines(s, factors, people)];
    }),
  );
}
