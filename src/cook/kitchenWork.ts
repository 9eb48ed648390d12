import type { PlannedDish } from "../plan/dish.ts";
import type { Plan } from "../plan/planned.ts";
import { Batches } from "./batches.ts";
import { hasNested } from "./drawn.ts";
import type { EatingSpan } from "./eating.ts";
import { Lots } from "./lots.ts";
import type { MadeBatch } from "./madeBatch.ts";
import type { ReadSchedule, ScheduledMeal } from "./read.ts";
import { type DishServing, servingsOf, type Work } from "./served.ts";

/** All that is made and cooked: batches of nested recipes, then lots of pots, each made once. */
export class KitchenWork implements Work {
  readonly #plan: Plan;
  readonly #read: ReadSchedule;
  readonly #made: Batches;
  readonly #lots = new Map<ScheduledMeal, Map<string, Lots>>();
  #isSettled = false;

  constructor(plan: Plan, read: ReadSchedule) {
    this.#plan = plan;
    this.#read = read;
    this.#made = new Batches(plan, read);
  }

  /** Batches, once it is known what is taken of them. */
  get batches(): readonly MadeBatch[] {
    this.#settle();
    return this.#made.all;
  }

  /** What is cooked of a meal's dishes for the days of a span. */
  lots(scheduled: ScheduledMeal, span: EatingSpan): Lots {
    this.#settle();
    return this.#lotsOf(scheduled, span);
  }

  /** A dish as it is made of the batches at hand when it is cooked, and when it is served. */
  dish(dish: PlannedDish, cooked: number, served: number): PlannedDish {
    return this.#made.dish(dish, cooked, served);
  }

  /** What everyone is served, in the plan's order. */
  servings(): readonly DishServing[] {
    const { days, meals } = this.#read;
    const all = meals.flatMap((scheduled) =>
      scheduled.dishes.flatMap((dish) => servingsOf(dish, scheduled, days, this)),
    );
    const places = new Map(
      this.#plan.meals
        .flatMap(({ id, dishes }) => [...dishes.keys()].map((dish) => placeKey(id, dish)))
        .map((key, i) => [key, i]),
    );
    const placeOf = ({ meal, dish }: DishServing): number => places.get(placeKey(meal, dish)) ?? 0;
    return all.sort((a, b) => placeOf(a) - placeOf(b));
  }

  /** What draws on batches is measured in the order of cooking: what comes first never takes what the next needs. */
  #settle(): void {
    if (this.#isSettled) return;
    this.#isSettled = true;
    if (this.#made.all.length === 0) return;
    const all = this.#read.meals.flatMap((scheduled) =>
      scheduled.spans.filter(({ eaten }) => eaten.length > 0).map((span) => ({ scheduled, span })),
    );
    const drawing = all.filter(({ scheduled }) => scheduled.dishes.some((dish) => hasNested(dish.base())));
    for (const { scheduled, span } of drawing.sort((a, b) => a.span.cooked - b.span.cooked)) {
      this.#lotsOf(scheduled, span).makeAll();
    }
  }

  #lotsOf(scheduled: ScheduledMeal, span: EatingSpan): Lots {
    const { meal, dishes, eating, vessel, keeps } = scheduled;
    const { cooked } = span;
    const counts = eating.counts(span.eaten);
    const draws = (dish: PlannedDish) => this.#made.draws(dish, cooked);
    // What draws on nothing is the same whenever as much of it is cooked.
    const day = dishes.some((dish) => hasNested(dish.base())) ? cooked : undefined;
    const key = JSON.stringify([day, ...[...counts].map(([person, count]) => [person, String(count)])]);
    const known = this.#lots.get(scheduled) ?? new Map<string, Lots>();
    this.#lots.set(scheduled, known);
    const made = (dish: PlannedDish) => this.#made.dish(dish, cooked, cooked);
    const lots = known.get(key) ?? new Lots({ meal, dishes, counts, made, draws, vessel, keeps });
    known.set(key, lots);
    return lots;
  }
}

function placeKey(meal: string, dish: string): string {
  return JSON.stringify([meal, dish]);
}
