import { type Fraction, fraction } from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Plan } from "../planned.ts";
import type { ScheduledMeal } from "./read.ts";
import { partOf } from "./vessel.ts";

/** What one person eats of a meal over all days. */
export interface Eaten {
  readonly person: string;
  readonly meal: string;
  readonly portions: Fraction;
  readonly sheets: readonly Sheet[];
}

/** What each person eats, person by person and meal by meal as a plan has its portions; nobody who never does. */
export function eatenOf(plan: Plan, meals: readonly ScheduledMeal[]): readonly Eaten[] {
  return plan.people.flatMap(({ id: person }) =>
    meals.flatMap(({ meal: { id: meal }, eating }): Eaten[] => {
      const count = eating.servings(person) * BigInt(eating.daysOf(person).length);
      const { dishes } = plan.portion(person, meal);
      if (count === 0n || dishes.size === 0) return [];
      const portions = fraction(count);
      return [{ person, meal, portions, sheets: [...dishes.values()].map((s) => partOf(s, portions)) }];
    }),
  );
}
