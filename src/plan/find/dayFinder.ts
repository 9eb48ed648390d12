import { collect, type Fault, throwIfAny } from "../../number/error.ts";
import { type Exact, ONE, ZERO } from "../../number/exact.ts";
import { solveTask } from "../../scale/engine/solveTask.ts";
import { type Answered, ServedPortion } from "../portion.ts";
import type { ReadDaily } from "../read/readDaily.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import type { LineFactors } from "../share/lineFactors.ts";
import { DayFit } from "./dayFit.ts";
import { type BesideOfDay, type DayTask, dayTaskOf } from "./dayTask.ts";
import { AWAY } from "./portionFinder.ts";

/** Someone's day: what it is to bring, and of what. */
export interface DayOf {
  readonly person: string;
  readonly daily: ReadDaily;
  /** All meals of the day, in their order. */
  readonly menu: readonly ReadMeal[];
  readonly away: ReadonlySet<string>;
  readonly besides: readonly BesideOfDay[];
}

/** Fits a person's day as one. Throws the codes of `fit`, from where the demands stand in the input. */
export function findDay({ person, daily, menu, away, besides }: DayOf): readonly ServedPortion[] {
  const isAway = (meal: string): boolean => away.has(meal);
  const there = menu.filter(({ id }) => !isAway(id));
  const faults: Fault[] = [];
  const answers = collect(faults, daily.path, () =>
    there.length === 0
      ? new Map<string, Answered>()
      : answered(dayTaskOf(menu, isAway, daily, besides), there),
  );
  throwIfAny(faults);
  return menu.flatMap((meal) => {
    const answer = isAway(meal.id) ? AWAY : answers?.get(meal.id);
    return answer ? new ServedPortion(person, meal, answer) : [];
  });
}

function answered(day: DayTask, meals: readonly ReadMeal[]): ReadonlyMap<string, Answered> {
  const solved = solveTask(day.task);
  const fit = new DayFit(day, solved);
  const answer = solved.found ? solved.answer : solved.nearest();
  if (!answer) {
    const none: Answered = {
      status: "not-served",
      factor: ZERO,
      factors: new Map(),
      fit: undefined,
      day: fit,
    };
    return new Map(meals.map(({ id }) => [id, none]));
  }
  const all = answer.lineFactors;
  const status = solved.found ? "met" : "out-of-reach";
  return new Map(
    meals.map((meal): [string, Answered] => {
      const own = day.dishes.flatMap(({ meal: of, own }, d): [string, readonly Exact[]][] =>
        of === meal.id && own !== undefined ? [[own, all[d] ?? []]] : [],
      );
      // In the order of the meal's dishes, as everywhere else.
      const factors = new Map(
        [...meal.dishes.keys()].flatMap((dish) => own.filter(([name]) => name === dish)),
      );
      return [meal.id, { status, factor: baseFactor(meal, factors), factors, fit: undefined, day: fit }];
    }),
  );
}

/** What the held lines of a meal's first dish by name were multiplied by. */
function baseFactor({ together, own }: ReadMeal, factors: LineFactors): Exact {
  for (const { name, sheet } of together) {
    const lines = sheet.plan.lines.map(({ line }) => line);
    const is = (scaling: string, parted: boolean): number =>
      lines.findIndex((line) => line.scaling === scaling && (parted || line.part === undefined));
    const place = [is("held", false), is("held", true)].find((i) => i >= 0);
    if (place !== undefined) return factors.get(name ?? own.id)?.[place] ?? ONE;
  }
  return ONE;
}
