import { type Exact, fraction, sum, times } from "../number/exact.ts";
import type { PlannedDish } from "../plan/dish.ts";
import type { Plan } from "../plan/planned.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { hasNested } from "./drawn.ts";
import { isMeasured } from "./lots.ts";
import type { ReadSchedule, ScheduledMeal } from "./read.ts";
import type { Work } from "./served.ts";
import { linesAdded } from "./session.ts";
import { partOf } from "./vessel.ts";

/** What one person eats of a meal over all days. */
export interface EatenOfPot {
  readonly person: string;
  readonly meal: string;
  readonly portions: Exact;
  readonly sheets: readonly Sheet[];
}

/** What each person eats, person by person and meal by meal as a plan has its portions; nobody who never does. */
export function eatenOf(plan: Plan, { meals }: ReadSchedule, work: Work): readonly EatenOfPot[] {
  return plan.people.flatMap(({ id: person }) =>
    plan.meals.flatMap((meal): EatenOfPot[] => {
      const own = meals.flatMap((scheduled) => {
        const eater = scheduled.eaterOf(person, meal.id);
        return eater === undefined ? [] : [{ scheduled, eater, count: countOf(scheduled, eater) }];
      });
      const { dishes } = plan.portion(person, meal.id);
      const [first] = own.filter(({ count }) => count > 0n);
      if (!first || dishes.size === 0) return [];
      const sheets = own.flatMap(({ scheduled, eater, count }) =>
        scheduled.dishes.flatMap((dish): readonly Sheet[] => {
          const planned = dishes.get(dish.name);
          if (!planned || count === 0n) return [];
          const isSized = isMeasured(dish) || hasNested(dish.base());
          return isSized ? lotsOf(dish, eater, scheduled, work) : [partOf(planned, fraction(count))];
        }),
      );
      return [{ person, meal: meal.id, portions: fraction(first.count), sheets }];
    }),
  );
}

function countOf({ eating }: ScheduledMeal, eater: string): bigint {
  return eating.servings(eater) * BigInt(eating.daysOf(eater).length);
}

/**
 * What one person eats of the plan's meals of one day of its menu, as it is cooked: one portion of each dish,
 * by meal. Dishes that nobody measures, and that draw on nothing, are as they were planned.
 */
export function eatenOn(
  plan: Plan,
  { meals }: ReadSchedule,
  work: Work,
  { person, day }: { readonly person: string; readonly day: string },
): readonly { readonly meal: string; readonly sheets: readonly Sheet[] }[] {
  return plan.meals
    .filter((meal) => meal.day === day)
    .map((meal) => ({
      meal: meal.id,
      sheets: [...plan.portion(person, meal.id).dishes].flatMap(([name, planned]): readonly Sheet[] => {
        for (const scheduled of meals) {
          const eater = scheduled.eaterOf(person, meal.id);
          const dish = scheduled.dishes.find((each) => each.name === name);
          if (eater === undefined || !dish || (!isMeasured(dish) && !hasNested(dish.base()))) continue;
          const count = countOf(scheduled, eater);
          if (count === 0n) return [];
          const own = lotsOf(dish, eater, scheduled, work);
          return own.map((s) => partOf(s, fraction(1n, count)));
        }
        return [planned];
      }),
    }));
}

/** What someone takes of all that is cooked, time after time, and what is added to it. */
function lotsOf(dish: PlannedDish, person: string, scheduled: ScheduledMeal, work: Work): readonly Sheet[] {
  const { eating, spans } = scheduled;
  return spans.flatMap((span): readonly Sheet[] => {
    const days = eating.daysOf(person, span.eaten);
    const count = eating.counts(span.eaten).get(person);
    if (count === undefined) return [];
    const lots = work.lots(scheduled, span);
    const { pot, share, added } = (lots.dish(dish.name) ?? dish).serving(person);
    const lot = pot && lots.lot(pot);
    const own = lot?.portions?.get(person);
    const whole = fraction(count);
    const part = own ? sum(own.map((each) => times(each.share, fraction(each.count)))) : times(share, whole);
    // Of the plan's own pot a share is of one portion of everyone, of a lot it is of all of it.
    const eaten = lot ? [partOf(own ? lot.sheet : pot.sheet, part)] : [];
    const apart = added && linesAdded(added, "cooking");
    const plated = days.flatMap((day) => {
      const { added } = work.dish(dish, span.cooked, day).serving(person);
      const serving = added && linesAdded(added, "serving");
      return serving ? [partOf(serving, fraction(eating.servings(person)))] : [];
    });
    return [...eaten, ...(apart ? [partOf(apart, whole)] : []), ...plated];
  });
}
