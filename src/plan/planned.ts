import type { Json } from "../document/leaves.ts";
import { type ComponentId, components } from "../food/components.ts";
import type { Kitchen } from "../measure/kitchen.ts";
import { fault, quote } from "../number/error.ts";
import { type Exact, isZero, ONE, over, sum, times } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { Result } from "../number/result.ts";
import type { ReferenceIntakes } from "../person/intakes/referenceIntakes.ts";
import type { PortionCaution } from "../person/portion/cautions.ts";
import type { DoseCheck } from "../person/portion/doses.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { combine, type Tally } from "../sheet/tally.ts";
import { PersonDay, type PlannedDay } from "./day.ts";
import type { PlannedDish, PlanQuestion } from "./dish.ts";
import type { BesideOfDay } from "./find/dayTask.ts";
import type { KeptPortion } from "./input.ts";
import { PersonMean } from "./mean.ts";
import type { AboutPeople } from "./people/about.ts";
import type { PlanAvoided } from "./people/avoided.ts";
import { type LevelOfDays, levelsOf } from "./people/levels.ts";
import type { Portion, ServedPortion } from "./portion.ts";
import { type PlanOf, type StoredPlan, storedPlan, storedPortion } from "./storedPlan.ts";

/** A meal for everyone: the dishes as cooked for all, each the sum of the portions. */
export interface PlannedMeal {
  /** In the plan: `mon/supper`, or `supper` where the plan has no menu of days. */
  readonly id: string;
  /** With the day's where there is a menu of days: `Monday: Supper`. */
  readonly name: string;
  /** The day's id. */
  readonly day: string;
  /** Its own id and name, without the day's. */
  readonly own: { readonly id: string; readonly name: string };
  /** The app's own data of the meal, as it was handed in. */
  readonly meta?: Json;
  readonly batch: ReadonlyMap<string, Sheet>;
  /** Each dish apart: what is cooked once, and what each person gets of it. */
  readonly dishes: ReadonlyMap<string, PlannedDish>;
}

/** Who gets how much of what, and what is cooked for all of them. */
export class Plan extends Result {
  readonly is = "steelyard/plan@1";
  readonly people: readonly { readonly id: string; readonly name: string; readonly meta?: Json }[];
  /** The app's own data of the plan, as it was handed in. */
  readonly meta: Json | undefined;
  /** In their order; of a plan that has no menu of days one, called `day`. */
  readonly days: readonly PlannedDay[];
  /** Of all days, in their order. */
  readonly meals: readonly PlannedMeal[];
  readonly portions: readonly Portion[];
  readonly #byKey: ReadonlyMap<string, ServedPortion>;
  readonly #about: AboutPeople;
  readonly #besides: (person: string, day: string) => readonly BesideOfDay[];
  readonly #input: PlanOf;
  readonly #kitchen: Kitchen | undefined;

  /** @internal Use {@link portionPlan}. */
  constructor(made: {
    readonly people: Plan["people"];
    readonly meta?: Json;
    readonly days: readonly PlannedDay[];
    readonly meals: readonly PlannedMeal[];
    readonly portions: readonly ServedPortion[];
    readonly besides: (person: string, day: string) => readonly BesideOfDay[];
    readonly about: AboutPeople;
    readonly input: PlanOf;
    readonly kitchen: Kitchen | undefined;
  }) {
    super();
    this.people = made.people;
    this.meta = made.meta;
    this.days = made.days;
    this.meals = made.meals;
    this.portions = made.portions;
    this.#about = made.about;
    this.#besides = made.besides;
    this.#input = made.input;
    this.#kitchen = made.kitchen;
    this.#byKey = new Map(made.portions.map((p) => [keyOf(p.person, p.meal), p]));
  }

  override toString(): string {
    const [people, meals] = [this.people, this.meals].map((all) => all.map(({ name }) => name).join(", "));
    return `a plan for ${people}: ${meals}`;
  }

  /** @internal What concerns people: what they avoid, are dosed with and should heed. */
  about(): AboutPeople {
    return this.#about;
  }

  /** @internal What its pots are measured with. */
  kitchen(): Kitchen | undefined {
    return this.#kitchen;
  }

  /** One person's portion of a meal. Throws `plan-malformed` where the plan has no such portion. */
  portion(person: string, meal: string): Portion {
    return this.#portion(person, meal);
  }

  #portion(person: string, meal: string): ServedPortion {
    const named = typeof person === "string" && typeof meal === "string";
    const found = named ? this.#byKey.get(keyOf(person, meal)) : undefined;
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

  /**
   * A person's portion as `keep` takes it, to stay as it is while the rest is planned again: grams of each
   * line, by dish. Throws `plan-malformed` where the plan has no such portion.
   */
  kept(person: string, meal: string): KeptPortion {
    return storedPortion(this.#portion(person, meal)).dishes;
  }

  /**
   * One person's day, all meals together; the day may be left out where the plan has one. Throws
   * `plan-malformed` where the plan has no such day or person.
   */
  day(person: string, day?: string): PersonDay {
    this.#known(person);
    const [first, ...others] = this.days;
    const found = day === undefined && others.length === 0 ? first : this.days.find(({ id }) => id === day);
    if (!found) {
      const ids = this.days.map(({ id }) => id);
      const hint = didYouMean(
        day ?? "",
        ids,
        `use ${ids
          .slice(0, 7)
          .map((id) => quote(id))
          .join(", ")}`,
      );
      const message = day === undefined ? "the plan has several days" : `the plan has no day ${quote(day)}`;
      throw fault("plan-malformed", message, hint);
    }
    const own = new Map(this.meals.map((meal) => [meal.id, meal.own.id]));
    const portions = found.meals.map((meal) => this.#portion(person, meal));
    return new PersonDay({
      person,
      day: found.id,
      portions,
      names: own,
      besides: this.#besides(person, found.id),
    });
  }

  /**
   * What a person eats on the mean of the days that are wholly eaten in the plan, with the least day and
   * the most. Throws `plan-malformed` for nobody's id.
   */
  mean(person: string): PersonMean {
    return new PersonMean(
      person,
      this.days.map(({ id }) => this.day(person, id)),
    );
  }

  /**
   * Holds what a person eats against the upper levels that count food: the mean of the days that are
   * wholly eaten in the plan, and each day that is above one by itself. Nothing where the plan has no
   * `authority`, or this one no `person`. Throws `plan-malformed` for nobody's id.
   */
  levels(person: string): readonly LevelOfDays[] | undefined {
    const intakes = this.intakes(person);
    return (
      intakes &&
      levelsOf(
        this.mean(person),
        this.days.map(({ id }) => this.day(person, id)),
        intakes,
      )
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

  /**
   * What people avoid, held against what they are served: foods that say nothing of an allergen
   * or an origin that is avoided, to ask about before serving, and what is served on a written override.
   */
  get avoided(): PlanAvoided {
    return this.#about.avoided;
  }

  /**
   * Lines that are the same for everyone, held against the upper levels of each person: one size for
   * all weighs most on the smallest. Nothing where the plan has no `authority`, or nobody a `person`.
   *
   * @example
   * ```ts
   * const broth = sheet(
   *   { name: "Broth", portions: 1, lines: [{ key: "liver", food: "beef-liver-braised", amount: "40 g", scaling: "per-portion" }] },
   *   starterFoods,
   * );
   * const plan = portionPlan({
   *   meals: [{ id: "supper", dishes: broth }],
   *   people: [
   *     { id: "cox", person: { sex: "female", age: 15, mass: "48 kg" } },
   *     { id: "stroke", person: { sex: "male", age: 27, mass: "92 kg" } },
   *   ],
   *   authority: "eu",
   * });
   * plan.doses?.past.map(({ line, of, riskiest }) => `${line}: ${of}, above all for ${riskiest}`); // => [ 'supper/liver: retinol, above all for cox', 'supper/liver: copper, above all for cox' ]
   * ```
   */
  get doses(): DoseCheck | undefined {
    return this.#about.doses;
  }

  /**
   * The plan's authority's figures for a person, for `compare(plan.portion(…).dishes, …)`. Nothing where
   * the plan has no `authority`, or this one no `person`. Throws `plan-malformed` for nobody's id.
   */
  intakes(person: string): ReferenceIntakes | undefined {
    this.#known(person);
    return this.#about.intakes(person);
  }

  /** @internal Tells whether the plan knows the body of one of its people. */
  knows(person: string): boolean {
    return this.#about.bodies.has(person);
  }

  /**
   * What to heed in a person's portion of a meal, or on a day, by its id: first where it meets what
   * their `person` declares, then what its foods carry for everyone, as `cautionsFor` gives them. A day is
   * all its meals together and what is eaten besides; without either it is every day by itself, each thing
   * told once with its days. Throws `plan-malformed` where the plan has no such meal, day or person.
   */
  cautions(person: string, at?: string): readonly PortionCaution[] {
    this.#known(person);
    const ids = this.days.map(({ id }) => id);
    const several = ids.length > 1;
    if (at === undefined) return this.#about.cautionsOfDays(person, ids);
    // A plan of one meal, or of meals without days, has no day that anybody named.
    if (several && ids.includes(at)) return this.#about.cautionsOfDays(person, [at]);
    return this.#about.cautions(person, [this.#portion(person, at)]);
  }

  #known(person: string): void {
    const [first] = this.meals;
    if (first) this.#portion(person, first.id);
  }

  #meal(meal: string): PlannedMeal {
    const found = this.meals.find(({ id }) => id === meal);
    if (found) return found;
    const ids = this.meals.map(({ id }) => id);
    const hint = didYouMean(meal, ids, "use an id of the plan");
    throw fault("plan-malformed", `the plan has no meal ${quote(meal)}`, hint);
  }

  /** The portions that do not bring all that was asked of them, before a kitchen measures: see {@link offTarget}. */
  get unmet(): readonly Portion[] {
    return this.portions.filter(({ status }) => status !== "met" && status !== "away");
  }

  /** The portions whose measured amounts miss something by more than the tolerance; none without a kitchen. */
  get offTarget(): readonly Portion[] {
    return this.portions.filter(({ drift }) => drift?.status === "off-target");
  }

  /** Gives what the plan was made from, sheets and all, and every portion that was found: `openPlan` opens it. */
  override toJSON(): StoredPlan {
    return storedPlan(this.#input, this.portions);
  }
}

/** Keys cannot run into each other: the length of the first part stands before it. */
const keyOf = (person: string, meal: string): string => `${person.length}:${person}${meal}`;

function together(dishes: ReadonlyMap<string, Sheet>, id: ComponentId): Tally {
  const tallies = [...dishes].map(([name, s]) => (dishes.size > 1 ? s.total(id).within(name) : s.total(id)));
  const mass = sum([...dishes.values()].map((s) => s.masses.raw));
  const known = (): Exact =>
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
