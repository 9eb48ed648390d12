import { readFar } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import { byName, choice, fields, once, optional, type Schema } from "../document/schema.ts";
import { type Fault, fault, type Path, quote, throwIfAny } from "../number/error.ts";
import { groupBy } from "../number/groupBy.ts";
import type { PlannedDish } from "../plan/dish.ts";
import { Plan, type PlannedMeal } from "../plan/planned.ts";
import type { Sheet } from "../sheet/sheet.ts";
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
import {
  EVERY_DAY,
  mealScheduleOf,
  mealScheduleSchema,
  type ReadMealSchedule,
  type ReadVessel,
  vesselSchema,
} from "./readMeal.ts";

/** Dishes of a meal that are cooked on the same days, with when they are cooked and eaten. */
export interface ScheduledMeal {
  readonly meal: PlannedMeal;
  readonly dishes: readonly PlannedDish[];
  readonly eating: Eating;
  readonly spans: readonly Span[];
  readonly vessel: (dish: string) => ReadVessel | undefined;
}

/** A schedule, read. */
export interface ReadSchedule {
  readonly days: Days;
  readonly meals: readonly ScheduledMeal[];
  /** When nested recipes are made, by id; undefined where nothing is said. */
  readonly cook: (recipe: string) => readonly number[] | undefined;
  readonly vessel: (recipe: string) => ReadVessel | undefined;
}

type CookFields = readonly string[] | { readonly [dish: string]: readonly string[] };

interface ScheduleFields {
  readonly days?: readonly string[];
  readonly cook?: CookFields;
  readonly vessels?: { readonly [dish: string]: ReadVessel };
  readonly away?: AwayDays;
  readonly meals?: { readonly [meal: string]: Parameters<typeof mealScheduleOf>[0] };
}

const scheduleSchema: () => Schema<ScheduleFields> = /* @__PURE__ */ once(() =>
  fields<ScheduleFields>({
    days: optional(daysSchema()),
    cook: optional(cookSchema()),
    vessels: optional(byName(vesselSchema(), { like: '{ rice: "6 l" }' })),
    away: optional(awaySchema()),
    meals: optional(byName(mealScheduleSchema(), { like: '{ breakfast: { vessel: "2 l" } }' })),
  }),
);

function cookSchema(): Schema<CookFields> {
  const [all, each] = [someDaysSchema(), byName(someDaysSchema(), { like: '{ dal: ["Sun", "Wed"] }' })];
  return choice<CookFields>(
    [all, each],
    (given) => (isRecord(given) ? each : all),
    'days, or days by dish: { dal: ["Sun", "Wed"] }',
  );
}

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
  const names = plan.meals.map(({ id }) => id);
  const dishNames = [...new Set(plan.meals.flatMap(({ dishes }) => [...dishes.keys()]))];
  const all = { what: "dish or nested recipe", names: [...dishNames, ...nestedIds(plan)] };
  const cook = cookOf(given.cook, all, days, refuse);
  const vessels = new Map(
    known(given.vessels, ["vessels"], all, refuse).map(({ name, value }) => [name, value]),
  );
  const isAway = awayOf(given.away, ["away"], { people, days }, refuse);
  const byMeal = new Map<string, ReadMealSchedule>(
    known(given.meals, ["meals"], { what: "meal", names }, refuse).map(({ name, value, path }) => {
      const dishes = [...(plan.meals.find(({ id }) => id === name)?.dishes.keys() ?? [])];
      const isPlanned = (person: string): boolean => plan.portion(person, name).status !== "away";
      return [name, mealScheduleOf(value, path, { days, people, dishes, isPlanned }, refuse)];
    }),
  );
  // Days that were refused say nothing of what is eaten when.
  const isSure = faults.length === 0;
  const meals = plan.meals.flatMap((meal): readonly ScheduledMeal[] => {
    const read = byMeal.get(meal.id) ?? EVERY_DAY;
    const { servings } = read;
    const vessel = (dish: string): ReadVessel | undefined => read.vessel(dish) ?? vessels.get(dish);
    const eating = new Eating({
      eaten: read.eaten ?? days.all,
      people: eaters(meal),
      servings,
      isAway: (person, day) => isAway(person, day) || read.isAway(person, day),
    });
    const cooked = (dish: string): Cooked =>
      read.cook ? { on: read.cook, path: ["meals", meal.id, "cook"] } : cook(dish);
    const groups = groupBy(meal.dishes.values(), ({ name }) => (cooked(name).on ?? ["every"]).join());
    const refused = new Set<readonly number[] | undefined>();
    return [...groups.values()].map((dishes): ScheduledMeal => {
      const { on, path } = cooked(dishes[0]?.name ?? "");
      const { spans, early } = spansOf(on ?? eating.days, eating.days);
      if (isSure && early.length > 0 && !refused.has(on))
        refuseEarly(refuse, meal.name, path, days, early, spans[0]);
      refused.add(on);
      return { meal, dishes, eating, spans, vessel };
    });
  });
  throwIfAny(faults);
  return { days, meals, cook: (recipe) => cook(recipe).on, vessel: (recipe) => vessels.get(recipe) };
}

/** Days of cooking as they were told, and where; undefined where they were not. */
interface Cooked {
  readonly on: readonly number[] | undefined;
  readonly path: Path;
}

function cookOf(
  given: CookFields | undefined,
  about: Parameters<typeof known>[2],
  days: Days,
  refuse: RefuseAt,
): (name: string) => Cooked {
  if (given === undefined || isDays(given)) {
    const on = given && placesOf(given, ["cook"], days, refuse);
    return () => ({ on, path: ["cook"] });
  }
  const byName = new Map(
    known(given, ["cook"], about, refuse).map(({ name, value, path }): [string, Cooked] => [
      name,
      { on: placesOf(value, path, days, refuse), path },
    ]),
  );
  return (name) => byName.get(name) ?? { on: undefined, path: ["cook"] };
}

function isDays(given: CookFields): given is readonly string[] {
  return Array.isArray(given);
}

/** Ids of all recipes that dishes draw on, however deep. */
function nestedIds(plan: Plan): readonly string[] {
  const ids = new Set<string>();
  const add = (s: Sheet): void => {
    for (const { source, nested } of s.plan.lines) {
      if (!nested) continue;
      ids.add(source.id);
      add(nested);
    }
  };
  for (const { dishes } of plan.meals) for (const dish of dishes.values()) add(dish.base());
  return [...ids];
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
