import { readFar } from "../document/read.ts";
import { byName, fields, once, optional, type Schema } from "../document/schema.ts";
import { type Fault, fault, type Path, quote, throwIfAny } from "../number/error.ts";
import { Plan, type PlannedMeal } from "../plan/planned.ts";
import { type AwayDays, awayOf, awaySchema } from "./away.ts";
import {
  type Days,
  dayList,
  daysOf,
  daysSchema,
  known,
  placesOf,
  type RefuseAt,
  someDaysSchema,
} from "./days.ts";
import { Eating, type Span, spansOf } from "./eating.ts";
import { MealLots } from "./lots.ts";
import { EVERY_DAY, mealScheduleOf, mealScheduleSchema, type ReadMealSchedule } from "./readMeal.ts";

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

interface ScheduleFields {
  readonly days?: readonly string[];
  readonly cook?: readonly string[];
  readonly away?: AwayDays;
  readonly meals?: { readonly [meal: string]: Parameters<typeof mealScheduleOf>[0] };
}

const scheduleSchema: () => Schema<ScheduleFields> = /* @__PURE__ */ once(() =>
  fields<ScheduleFields>({
    days: optional(daysSchema()),
    cook: optional(someDaysSchema()),
    away: optional(awaySchema()),
    meals: optional(byName(mealScheduleSchema(), { like: '{ breakfast: { vessel: "2 l" } }' })),
  }),
);

/** Throws one error with every fault: `schedule-malformed`, and the codes of amounts and numbers. */
export function readSchedule(plan: unknown, how: unknown): ReadSchedule {
  if (!(plan instanceof Plan)) {
    throw fault("schedule-malformed", "there is no plan to cook", "make one with portionPlan({ … })");
  }
  const faults: Fault[] = [];
  const refuse: RefuseAt = (path, message, hint) => {
    faults.push({ code: "schedule-malformed", path, message, hint });
  };
  const given = readFar(faults, scheduleSchema(), how, "schedule-malformed") ?? {};
  const isKnown = given.days !== undefined || !faults.some(({ path }) => path[0] === "days");
  const days = daysOf(given.days ?? [], isKnown, refuse);
  const people = plan.people.map(({ id }) => id);
  const cook = given.cook && placesOf(given.cook, ["cook"], days, refuse);
  const isAway = awayOf(given.away, ["away"], { people, days }, refuse);
  const names = plan.meals.map(({ id }) => id);
  const byMeal = new Map<string, ReadMealSchedule>(
    known(given.meals, ["meals"], { what: "meal", names }, refuse).map(({ name, value, path }) => {
      const dishes = [...(plan.meals.find(({ id }) => id === name)?.dishes.keys() ?? [])];
      const isPlanned = (person: string): boolean => plan.portion(person, name).status !== "away";
      return [name, mealScheduleOf(value, path, { days, people, dishes, isPlanned }, refuse)];
    }),
  );
  // Days that were refused say nothing of what is eaten when.
  const isSure = faults.length === 0;
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
    if (isSure && early.length > 0) refuseEarly(refuse, meal.name, path, days, early, spans[0]);
    return { meal, eating, spans, lots: new MealLots(meal, vessel) };
  });
  throwIfAny(faults);
  return { days, meals };
}

/** Whoever is served some dish of a meal. */
function eaters({ dishes }: PlannedMeal): readonly string[] {
  return [...new Set([...dishes.values()].flatMap(({ servings }) => servings.map(({ person }) => person)))];
}

function refuseEarly(
  refuse: RefuseAt,
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
  refuse(
    path,
    message,
    `cook it on ${quote(days.names[early[0] ?? 0] ?? "")} too, or name the days on which it is eaten`,
  );
}
