import { type Exact, fraction, sum, times } from "../number/exact.ts";
import type { PlannedDish } from "../plan/dish.ts";
import type { Plan } from "../plan/planned.ts";
import type { Serving } from "../plan/share/parts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { isMeasured } from "./lots.ts";
import type { ScheduledMeal } from "./read.ts";
import { partOf } from "./vessel.ts";

/** What one person eats of a meal over all days. */
export interface Eaten {
  readonly person: string;
  readonly meal: string;
  readonly portions: Exact;
  readonly sheets: readonly Sheet[];
}

/** What each person eats, person by person and meal by meal as a plan has its portions; nobody who never does. */
export function eatenOf(plan: Plan, meals: readonly ScheduledMeal[]): readonly Eaten[] {
  const served = new Map(meals.map((scheduled) => [scheduled, dishesOf(scheduled)]));
  return plan.people.flatMap(({ id: person }) =>
    meals.flatMap((scheduled): Eaten[] => {
      const { meal, eating } = scheduled;
      const count = eating.servings(person) * BigInt(eating.daysOf(person).length);
      const { dishes } = plan.portion(person, meal.id);
      if (count === 0n || dishes.size === 0) return [];
      const portions = fraction(count);
      const sheets = [...dishes].flatMap(([name, s]): readonly Sheet[] => {
        const serving = served.get(scheduled)?.get(name)?.get(person);
        return serving ? lotsOf(serving, s, scheduled) : [partOf(s, portions)];
      });
      return [{ person, meal: meal.id, portions, sheets }];
    }),
  );
}

/** Servings of dishes that a kitchen measures, by person. */
function dishesOf({ meal }: ScheduledMeal): ReadonlyMap<string, ReadonlyMap<string, Serving>> {
  const byPerson = ({ servings }: PlannedDish) => new Map(servings.map((each) => [each.person, each]));
  return new Map(
    [...meal.dishes].filter(([, dish]) => isMeasured(dish)).map(([name, dish]) => [name, byPerson(dish)]),
  );
}

/** What someone takes of all that is cooked, time after time, and what is added to it. */
function lotsOf(
  { person, pot, added }: Serving,
  planned: Sheet,
  { eating, spans, lots }: ScheduledMeal,
): readonly Sheet[] {
  return spans.flatMap((span): readonly Sheet[] => {
    const counts = eating.counts(span.eaten);
    const count = counts.get(person);
    if (count === undefined) return [];
    const lot = pot && lots.of(counts).lot(pot);
    const own = lot?.portions?.get(person);
    if (!lot || !own) return [partOf(planned, fraction(count))];
    const share = sum(own.map((each) => times(each.share, fraction(each.count))));
    return [partOf(lot.sheet, share), ...(added ? [partOf(added, fraction(count))] : [])];
  });
}
