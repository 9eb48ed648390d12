import { fault, type Path, quote, throwIfAny } from "../number/error.ts";
import { Plan, type PlannedMeal } from "../plan/planned.ts";
import { PlanFaults } from "../plan/read/planFaults.ts";
import { readAway } from "./away.ts";
import { type Days, dayList, readByName, readDays, readSomeDays } from "./days.ts";
import { Eating, type Span, spansOf } from "./eating.ts";
import type { ScheduleHow } from "./input.ts";
import { MealLots } from "./lots.ts";
import { EVERY_DAY, type ReadMealSchedule, readMealSchedule } from "./readMeal.ts";

/** A meal with when it is cooked and eaten. */
export interface ScheduledMeal {
  readonly meal: PlannedMeal;
  readonly eating: Eating;
  readonly spans: readonly Span[];
  readonly lots: MealLots;
}

export interface ReadSchedule {
  readonly days: Days;
  readonly meals: readonly ScheduledMeal[];
}

const HOW: readonly string[] = ["days", "cook", "away", "meals"] satisfies (keyof ScheduleHow)[];

/** Throws one error with every fault: `schedule-malformed`, and the codes of amounts and numbers. */
export function readSchedule(plan: unknown, how: unknown): ReadSchedule {
  if (!(plan instanceof Plan)) {
    throw fault("schedule-malformed", "there is no plan to cook", "make one with portionPlan({ … })");
  }
  const faults = new PlanFaults("schedule-malformed");
  const given = faults.record(how, [], "the schedule", HOW, 'give options: { days: ["Sun", "Mon"] }');
  const days = readDays(faults, given?.days);
  const people = plan.people.map(({ id }) => id);
  const cook = readSomeDays(faults, given?.cook, ["cook"], days);
  const isAway = readAway(faults, given?.away, ["away"], { people, days });
  const byMeal = new Map<string, ReadMealSchedule>(
    readByName(faults, given?.meals, ["meals"], {
      what: "meal",
      names: plan.meals.map(({ id }) => id),
      hint: 'write by the meal\'s id: { breakfast: { vessel: "2 l" } }',
    }).map(({ name, value, path }) => {
      const dishes = [...(plan.meals.find(({ id }) => id === name)?.dishes.keys() ?? [])];
      const isPlanned = (person: string): boolean => plan.portion(person, name).status !== "away";
      return [name, readMealSchedule(faults, value, path, { days, people, dishes, isPlanned })];
    }),
  );
  // Days that were refused say nothing of what is eaten when.
  const isSure = faults.all.length === 0;
  const meals = plan.meals.map((meal): ScheduledMeal => {
    const read = byMeal.get(meal.id) ?? EVERY_DAY;
    const { servings, vessel } = read;
    const eating = new Eating({
      eaten: read.eaten ?? days.all,
      people: eaters(meal),
      servings,
      isAway: (person, day) => isAway(person, day) || read.isAway(person, day),
    });
    const { spans, early } = spansOf(read.cook ?? cook ?? eating.days, eating.days);
    const path: Path = read.cook ? ["meals", meal.id, "cook"] : ["cook"];
    if (isSure && early.length > 0) refuseEarly(faults, meal.name, path, days, early, spans[0]);
    return { meal, eating, spans, lots: new MealLots(meal, vessel) };
  });
  throwIfAny(faults.all);
  return { days, meals };
}

/** Whoever is served some dish of a meal. */
function eaters({ dishes }: PlannedMeal): readonly string[] {
  return [...new Set([...dishes.values()].flatMap(({ servings }) => servings.map(({ person }) => person)))];
}

function refuseEarly(
  faults: PlanFaults,
  meal: string,
  path: Path,
  days: Days,
  early: readonly number[],
  first: Span | undefined,
): void {
  const eaten = dayList(days, early);
  const cooked = first && quote(days.names[first.cooked] ?? "");
  const message = cooked
    ? `${quote(meal)} is eaten on ${eaten}, before it is first cooked, on ${cooked}`
    : `${quote(meal)} is eaten on ${eaten}, but on no day cooked`;
  faults.refuse(
    path,
    message,
    `cook it on ${quote(days.names[early[0] ?? 0] ?? "")} too, or name the days on which it is eaten`,
  );
}
