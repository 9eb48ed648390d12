import { besidesIn } from "../find/dayTask.ts";
import type { ServedPortion } from "../portion.ts";
import type { ReadPlan } from "../read/readPlan.ts";
import type { EaterGroup } from "../share/groups.ts";
import { DayTable } from "./dayTable.ts";
import { MeasuredMeal } from "./measuredMeal.ts";

/** Portions, and who eats of one pot where that was settled: by meal and dish. */
export interface SettledInKitchen {
  readonly portions: readonly ServedPortion[];
  readonly groups: ReadonlyMap<string, ReadonlyMap<string, readonly EaterGroup[]>>;
}

/** A person whose portions are measured. */
interface Step {
  readonly person: string;
  readonly done: number;
  readonly of: number;
  readonly stage: "measured";
}

/**
 * Brings pots, shares and additions to amounts that kitchens can measure, one person a step. Without a
 * kitchen nothing changes.
 */
export function* inKitchens(
  read: ReadPlan,
  portions: readonly ServedPortion[],
): Generator<Step, SettledInKitchen, void> {
  const { people } = read;
  if (!read.kitchen && people.every(({ kitchen }) => !kitchen)) return { portions, groups: new Map() };
  const meals = read.meals.map(
    (meal) =>
      new MeasuredMeal(
        read,
        meal,
        portions.filter((portion) => portion.meal === meal.id),
      ),
  );
  for (const meal of meals) meal.measurePots();
  setDays(read, meals, portions);
  for (const [i, { id: person }] of people.entries()) {
    for (const meal of meals) meal.measureFor(person);
    yield { person, done: i + 1, of: people.length, stage: "measured" };
  }
  for (const meal of meals) meal.settle();
  return settled(meals, portions);
}

/** Lets the plates of a day that was fitted as one know of each other, in the menu's order. */
function setDays(read: ReadPlan, meals: readonly MeasuredMeal[], portions: readonly ServedPortion[]): void {
  const byId = new Map(meals.map((meal) => [meal.id, meal]));
  const fits = new Map(portions.map((each) => [JSON.stringify([each.person, each.meal]), each.dayFit()]));
  for (const { id: person } of read.people.filter(({ daily }) => daily !== undefined)) {
    for (const day of read.days) {
      const fit = day.meals.map((meal) => fits.get(JSON.stringify([person, meal]))).find((each) => each);
      if (!fit) continue;
      const plates = day.meals.flatMap((meal) => byId.get(meal)?.plateOf(person) ?? []);
      const table = new DayTable(plates, fit.asked(), read.tolerance, (subject) =>
        besidesIn(fit.day(), subject),
      );
      for (const plate of plates) plate.day = table;
    }
  }
}

/** In the order that they came in. */
function settled(meals: readonly MeasuredMeal[], before: readonly ServedPortion[]): SettledInKitchen {
  const made = meals.map((meal) => {
    const portions = meal.portions();
    return { meal: meal.id, portions, groups: meal.groups(portions) };
  });
  const byMeal = new Map(made.map((each) => [each.meal, each.portions]));
  return {
    portions: before.map((portion) => byMeal.get(portion.meal)?.get(portion.person) ?? portion),
    groups: new Map(made.map(({ meal, groups }) => [meal, groups])),
  };
}
