import type { Json } from "../document/leaves.ts";
import { collect, type Fault, throwIfAny } from "../number/error.ts";
import { ONE } from "../number/exact.ts";
import { groupBy } from "../number/groupBy.ts";
import { Lookup } from "../number/told.ts";
import { PlannedDish } from "./dish.ts";
import type { DishVersions } from "./dishVersion.ts";
import { findDay } from "./find/dayFinder.ts";
import { type BesideOfDay, besidesOf } from "./find/dayTask.ts";
import { besidesOfKept, keptPortion } from "./find/kept.ts";
import { PortionFinder } from "./find/portionFinder.ts";
import { Watch } from "./find/watch.ts";
import type { PlanInput } from "./input.ts";
import { inKitchens, type SettledInKitchen } from "./measure/inKitchens.ts";
import { AboutPeople } from "./people/about.ts";
import { Plan, type PlannedMeal } from "./planned.ts";
import type { ServedPortion } from "./portion.ts";
import type { EatenMeal } from "./read/eatenMeals.ts";
import type { ReadDaily } from "./read/readDaily.ts";
import type { ReadMeal } from "./read/readMeal.ts";
import type { ReadDay } from "./read/readMenu.ts";
import type { ReadPerson } from "./read/readPerson.ts";
import { type ReadPlan, readPlan } from "./read/readPlan.ts";
import { pooledFactors, type Version, type Versions } from "./read/versions.ts";
import type { EaterGroup } from "./share/groups.ts";
import type { LineFactors } from "./share/lineFactors.ts";
import { type SharedPots, sharePots } from "./share/sharePots.ts";
import type { DishSharing } from "./share/sharing.ts";
import { type PlanOf, planOfInput } from "./storedPlan.ts";

export { PersonDay, type PlannedDay } from "./day.ts";
export { PlannedDish, type PlanQuestion } from "./dish.ts";
export type { DishVersion } from "./dishVersion.ts";
export { DayFit, type DayShare } from "./find/dayFit.ts";
export { type DayEnd, type GroupEaten, PersonMean } from "./mean.ts";
export { type DemandDrift, PortionDrift, type RatioDrift } from "./measure/drift.ts";
export type { PortionSize } from "./normalPortion.ts";
export { type AvoidedServed, type AvoidedUnknown, type Avoider, PlanAvoided } from "./people/avoided.ts";
export type { LevelOfDays } from "./people/levels.ts";
export { Plan, type PlannedMeal } from "./planned.ts";
export type { Portion, PortionFit, PortionStatus } from "./portion.ts";
export type { KitchenNote } from "./share/groups.ts";
export type { Addition, ApartWhy, PartServing, Pot, PotRatio } from "./share/parts.ts";
export type { DishSharing, PortionSharing } from "./share/sharing.ts";

/** How far a plan has come: one person's portions are all found, or all measured. */
export interface PlanProgress {
  readonly person: string;
  /** People who are planned, this one counted in. */
  readonly done: number;
  readonly of: number;
  /** Where there is a kitchen: everyone is told of again when their amounts are measured. */
  readonly stage?: "measured";
}

/**
 * Plans each person's portion of each meal, and the batch that feeds them all. The batch is the sum
 * of the portions, line by line and in every component, literally.
 *
 * A target that a recipe cannot reach is refused. Demands that cannot all be met are not: the portion
 * is then the nearest that keeps the firm ones, or nothing, and says what it misses.
 *
 * With `pots: { tolerance }` people who need different ratios of held parts are brought together in the
 * fewest pots that leave no demand further off. What a dish's pots then are, and at whose cost, is in
 * `dish.why`; who is off by how much is in `portion.shared`.
 *
 * Each dish is taken apart into what is cooked once and what is added person by person: see
 * `plan.dish`. What only the cook can decide stands in `plan.questions`.
 *
 * With a `kitchen` amounts are such as can be measured, and what each portion is off by stands in its
 * `drift`. Each pot is rounded first, its ratios drifting least; then it is shared out in steps of the
 * scale, the largest share getting what is left; then what is added for each person is chosen in their
 * own kitchen, so that it makes up for what the pot cost. Firm demands hold, targets do within the
 * `tolerance` or the portion says that they do not; where measurable amounts would break what is firm,
 * amounts stay exact and say so. Lines that are the same for everyone are never touched; for others
 * `lines` says which to weigh instead of counting them, or by what else to measure them.
 *
 * What a person avoids is never served silently: every line that holds it is a fault, unless it is
 * overridden in writing, and foods that say nothing of an allergen, or of their origin where that is
 * avoided, are listed in `plan.avoided`. With an `authority`, `plan.doses` holds the lines that are the
 * same for everyone against the upper levels of each `person`, and `plan.cautions` says what to heed in
 * a portion.
 *
 * Throws one error with every fault: `plan-malformed`, `kitchen-malformed`, `person-malformed`,
 * `person-needs`, `authority-unknown`, `allergen-served`, `avoided-served`, the codes of `scale`
 * and `fit`, and for `lines` those of `roundToKitchen`, each from where its cause stands in
 * the input.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   {
 *     name: "Porridge",
 *     portions: 1,
 *     lines: [
 *       { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
 *       { key: "milk", food: "milk-whole", amount: "200 g" },
 *       { key: "honey", food: "honey", amount: "10 g", scaling: "per-portion", added: "serving" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const plan = portionPlan({
 *   meals: [{ id: "breakfast", dishes: porridge }],
 *   people: [
 *     { id: "cox", demands: { factor: 1 } },
 *     { id: "bow", demands: { factor: 2 } },
 *   ],
 * });
 * const bow = plan.dish("breakfast").serving("bow");
 * console.log(bow.grams.toString(), bow.share.toFixed(3), bow.additions.map(({ name }) => name)); // => 520 0.667 [ 'Honey' ]
 * ```
 *
 * @example
 * ```ts
 * const bowl = sheet(
 *   {
 *     name: "Bowl",
 *     portions: 1,
 *     lines: [
 *       { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
 *       { key: "seeds", food: "pumpkin-seeds", amount: "20 g", added: "serving" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const measured = portionPlan({
 *   meals: [{ id: "breakfast", dishes: bowl }],
 *   people: [
 *     { id: "cox", demands: { energy: 310 } },
 *     { id: "bow", demands: { energy: 420 } },
 *   ],
 *   kitchen: "metric",
 * });
 * const { pots, servings } = measured.dish("breakfast");
 * console.log(pots[0]?.sheet.mass.raw.toString(), servings.map(({ grams }) => grams.toString())); // => 129 [ '55', '74' ]
 * console.log(measured.portion("bow", "breakfast").drift?.demands[0]?.brings?.toFixed(1)); // => 420.2
 * ```
 *
 * @example
 * ```ts
 * const broth = sheet(
 *   { name: "Broth", portions: 1, lines: [{ key: "salmon", food: "salmon-farmed-baked", amount: "80 g" }] },
 *   starterFoods,
 * );
 * const meals = [{ id: "supper", dishes: broth }];
 * try {
 *   portionPlan({ meals, people: [{ id: "cox", avoid: ["fish"] }] });
 * } catch (error) {
 *   if (error instanceof SteelyardError) console.log(`${error.code}: ${error.path.join(".")}`); // => allergen-served: people.0.avoid.0
 * }
 * const allowed = [{ allergen: "fish", override: "The camp doctor: no longer allergic" }] as const;
 * const plated = portionPlan({ meals, people: [{ id: "cox", avoid: allowed }] });
 * console.log(plated.avoided.overridden.map(({ name, lines }) => `${name}: ${lines}`)); // => [ 'fish: salmon' ]
 * ```
 */
export function portionPlan(input: PlanInput): Plan {
  const steps = portionPlanSteps(input);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/**
 * The same plan person by person, for a page that shows how far it is, or that has to stop: each step
 * finds all portions of one person, the last gives the plan. Stopped between people it leaves nothing
 * half done. What is wrong with the input is thrown at once, what cannot be reached at the end.
 *
 * Throws as {@link portionPlan}.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "60 g" }] }, starterFoods);
 * const steps = portionPlanSteps({
 *   meals: [{ id: "breakfast", dishes: oats }],
 *   people: [{ id: "cox" }, { id: "bow", demands: { factor: 2 } }],
 * });
 * let step = steps.next();
 * for (; !step.done; step = steps.next()) console.log(`${step.value.done} of ${step.value.of}`);
 * console.log(step.value.portion("bow", "breakfast").factor.toString()); // => 2
 * ```
 *
 * ```text
 * 1 of 2
 * 2 of 2
 * ```
 */
export function portionPlanSteps(input: PlanInput): Generator<PlanProgress, Plan, void> {
  const read = readPlan(input);
  const { silence: silent, tolerance } = read;
  return stepsOf(read, planOfInput(input, { silent, tolerance }));
}

/** Finds every portion, then settles what people share, then makes the plan of it. */
function* stepsOf(read: ReadPlan, input: PlanOf): Generator<PlanProgress, Plan, void> {
  const found = yield* findAll(read);
  // What follows looks at everyone together, in this order: who can share a pot, then what a kitchen
  // can measure.
  const { portions, sharing } = sharePots(read, found);
  const settled = yield* inKitchens(read, portions);
  // Whoever shares a pot may be served what a portion of their own would have left out.
  const watch = new Watch(read.people, read.meals);
  throwIfAny(settled.portions.flatMap((portion) => watch.faults(portion)));
  return planOf(read, settled, sharing, input);
}

function* findAll({
  days,
  meals,
  pooled,
  people,
  silence,
}: ReadPlan): Generator<PlanProgress, Portions, void> {
  const faults: Fault[] = [];
  const watch = new Watch(people, meals);
  const finders = new Map<ReadMeal, PortionFinder>();
  const finderOf = (meal: ReadMeal): PortionFinder => {
    const found = finders.get(meal) ?? new PortionFinder(meal, silence);
    finders.set(meal, found);
    return found;
  };
  const portions: ServedPortion[] = [];
  for (const [i, person] of people.entries()) {
    const { id, daily } = person;
    for (const day of days) {
      const eaten = day.meals.flatMap((meal) => pooled.get(meal)?.eatenBy(id) ?? []);
      const menu = eaten.map(({ meal }) => meal);
      const kept = collect(faults, [], () => keptOf(person, menu)) ?? new Map<string, ServedPortion>();
      const own = daily
        ? collect(faults, [], () => dayOf(person, daily, day, menu, kept))
        : menu.flatMap(
            (meal) => kept.get(meal.id) ?? collect(faults, [], () => finderOf(meal).find(person)) ?? [],
          );
      const found = own?.map((portion) => {
        const versions = eaten.find(({ meal }) => meal.id === portion.meal)?.versions;
        return portion.among(pooled.get(portion.meal)?.meal as ReadMeal, versions);
      });
      portions.push(...(found ?? []));
      if (person.avoids.length === 0) continue;
      for (const { meal, versions } of eaten) {
        const served = found?.find((portion) => portion.meal === meal.id);
        const all = (): LineFactors | undefined => served?.factors() ?? (versions && onesOf(meal, versions));
        faults.push(...watch.faults({ person: id, meal: meal.id, factors: all }));
      }
    }
    yield { person: person.id, done: i + 1, of: people.length };
  }
  throwIfAny(faults);
  return portions;
}

/** What people eat besides, by person and day. */
function besidesByDay({ people, days }: ReadPlan): (person: string, day: string) => readonly BesideOfDay[] {
  const all = new Map(people.map((person) => [person.id, person.besides]));
  const byId = new Map(days.map((day) => [day.id, day]));
  return (person, id) => {
    const day = byId.get(id);
    return day ? besidesOf(all.get(person) ?? [], day) : [];
  };
}

/** Portions of a day that stay as they were, by meal; those of a meal that the person is away for are none. */
function keptOf(
  { id, keep: { amounts, path }, away }: ReadPerson,
  menu: readonly ReadMeal[],
): ReadonlyMap<string, ServedPortion> {
  return new Map(
    menu.flatMap((meal) => {
      const own = amounts.get(meal.id);
      return own && !away.has(meal.id)
        ? [[meal.id, keptPortion(id, meal, own, [...path, meal.id])] as const]
        : [];
    }),
  );
}

/** A day that is fitted as one around what is kept of it. */
function dayOf(
  person: ReadPerson,
  daily: ReadDaily,
  day: ReadDay,
  menu: readonly ReadMeal[],
  kept: ReadonlyMap<string, ServedPortion>,
): readonly ServedPortion[] {
  const stays = menu.flatMap((meal) => {
    const portion = kept.get(meal.id);
    return portion ? besidesOfKept(portion, meal) : [];
  });
  const found = findDay({
    person: person.id,
    daily,
    menu,
    away: new Set([...person.away, ...kept.keys()]),
    besides: [...besidesOf(person.besides, day), ...stays],
  });
  return found.map((portion) => kept.get(portion.meal) ?? portion);
}

/** All that is in someone's own versions, where their portion is not known. */
function onesOf({ dishes }: ReadMeal, versions: Versions): LineFactors {
  return pooledFactors(
    new Map([...dishes].map(([dish, s]) => [dish, s.plan.lines.map(() => ONE)])),
    versions,
  );
}

type Portions = readonly ServedPortion[];

function planOf(
  read: ReadPlan,
  { portions, groups }: SettledInKitchen,
  sharing: SharedPots["sharing"],
  input: PlanOf,
): Plan {
  const byMeal = groupBy(portions, ({ meal }) => meal);
  const people = read.people.map(({ id }) => id);
  const names = new Map(read.people.map(({ id, name }) => [id, name]));
  const meals = read.meals.map((meal) => {
    const { id } = meal;
    const pooled = read.pooled.get(id);
    const eaten = pooled?.isVaried ? people.map((person) => [person, pooled.eatenBy(person)] as const) : [];
    return plannedMeal(meal, byMeal.get(id) ?? [], {
      names,
      groups: groups.get(id),
      sharing: sharing.get(id),
      versions: (dish) => versionsIn(dish, eaten, pooled?.usual),
    });
  });
  const besides = besidesByDay(read);
  return new Plan({
    people: read.people.map(({ id, name, meta }) => ({ id, name, ...withMeta(meta) })),
    ...withMeta(read.meta),
    days: read.days.map(({ meta, ...day }) => ({ ...day, ...withMeta(meta) })),
    meals,
    portions,
    besides,
    input,
    kitchen: read.kitchen,
    about: new AboutPeople({ people: read.people, meals: read.meals, days: read.days, portions, besides }),
  });
}

/** What was settled for all of a meal, by dish. */
interface SettledMeal {
  readonly groups: ReadonlyMap<string, readonly EaterGroup[]> | undefined;
  readonly sharing: ReadonlyMap<string, DishSharing> | undefined;
  readonly versions: (dish: string) => DishVersions | undefined;
  readonly names: ReadonlyMap<string, string>;
}

/** Who eats which version of a dish; nothing where nobody has one of their own. */
function versionsIn(
  dish: string,
  eaten: readonly (readonly [string, EatenMeal])[],
  usual: Versions | undefined,
): DishVersions | undefined {
  const of = new Map(
    eaten.flatMap(([person, { versions }]): [string, Version][] => {
      const own = versions?.get(dish);
      return own ? [[person, own]] : [];
    }),
  );
  const own = usual?.get(dish);
  return [...of.values()].some((version) => version !== own) ? { usual: own, of } : undefined;
}

function plannedMeal(
  meal: ReadMeal,
  portions: readonly ServedPortion[],
  { groups, sharing, versions, names }: SettledMeal,
): PlannedMeal {
  const { id, name, day, own, meta, dishes: bases, made } = meal;
  const dishes = new Lookup<PlannedDish>();
  for (const [dish, base] of bases) {
    const eaters = portions.flatMap((portion) => portion.eating(dish) ?? []);
    const read = made.get(dish);
    const at = {
      meal: id,
      name: dish,
      base,
      eaters,
      groups: groups?.get(dish),
      sharing: sharing?.get(dish),
      versions: versions(dish),
      names,
    };
    if (read) dishes.set(dish, new PlannedDish({ ...at, read }));
  }
  const batch = new Lookup([...dishes].map(([dish, whole]) => [dish, whole.batch]));
  return { id, name, day, own, ...withMeta(meta), dishes, batch };
}

function withMeta(meta: Json | undefined): { readonly meta?: Json } {
  return meta === undefined ? {} : { meta };
}
