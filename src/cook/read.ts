import { readFar } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import { byName, choice, fields, once, optional, type Schema } from "../document/schema.ts";
import { type Fault, fault, type Path, quote, throwIfAny } from "../number/error.ts";
import type { Exact } from "../number/exact.ts";
import { groupBy } from "../number/groupBy.ts";
import type { PlannedDish } from "../plan/dish.ts";
import { Plan, type PlannedMeal } from "../plan/planned.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type AwayDays, awayOf, awaySchema } from "./away.ts";
import {
  cookingDaysSchema,
  type Days,
  dayList,
  daysOf,
  known,
  placesOf,
  type RefuseAt,
  someDaysSchema,
  someOf,
} from "./days.ts";
import { Eating, type EatingSpan, spansOf } from "./eating.ts";
import { type Part, pooled, type Who } from "./pooled.ts";
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
  readonly spans: readonly EatingSpan[];
  readonly vessel: (dish: string) => ReadVessel | undefined;
  /** Who an eater is: of a dish that is cooked for several meals, a person at one of them. */
  readonly who: (eater: string) => Who;
  /** The eater that someone is at a meal; undefined where they are none of these. */
  readonly eaterOf: (person: string, meal: string) => string | undefined;
  readonly keeps?: (eater: string, factors: readonly Exact[]) => boolean;
  /** Dishes that are cooked on the day on which they are eaten, other than was told of all. */
  readonly onTheDay: readonly PlannedDish[];
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
    days: optional(cookingDaysSchema()),
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
  const menu = menuDays(plan);
  const days = daysOf(given.days ?? menu, isKnown, refuse);
  if (given.days) refuseMissing(menu, days, refuse);
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
  const refused = new Set<readonly number[]>();
  const spansFor = ({ on, path }: Cooked, eating: Eating, name: string): readonly EatingSpan[] => {
    const { spans, early } = spansOf(on ?? eating.days, eating.days);
    if (isSure && on && early.length > 0 && !refused.has(on)) {
      refuseEarly(refuse, name, path, days, early, spans[0]);
      refused.add(on);
    }
    return spans;
  };
  const pools = new Map<Sheet, Part[]>();
  const own = plan.meals.flatMap((meal): readonly (ScheduledMeal | Part[])[] => {
    const read = byMeal.get(meal.id) ?? EVERY_DAY;
    const vessel = (dish: string): ReadVessel | undefined => read.vessel(dish) ?? vessels.get(dish);
    const place = menu.length > 0 ? days.place(meal.day) : undefined;
    const eating = new Eating({
      eaten: read.eaten ?? (place === undefined ? days.all : [place]),
      people: eaters(meal),
      servings: read.servings,
      isAway: (person, day) => isAway(person, day) || read.isAway(person, day),
    });
    const cooked = (dish: PlannedDish): Cooked => {
      if (read.cook) return { on: read.cook, path: ["meals", meal.id, "cook"] };
      const told = cook(dish.name);
      return told.isForAll && isOnTheDay(dish) ? { ...told, on: undefined } : told;
    };
    const groups = groupBy(meal.dishes.values(), (dish) => (cooked(dish).on ?? ["every"]).join());
    return [...groups.values()].flatMap((dishes): readonly (ScheduledMeal | Part[])[] => {
      const [first] = dishes;
      const told = first ? cooked(first) : cook("");
      if (menu.length > 0 && told.on && !read.cook) {
        return dishes.flatMap((dish) => {
          const known = pools.get(dish.base());
          if (known) known.push({ meal, dish, eating });
          const parts = known ?? [{ meal, dish, eating }];
          pools.set(dish.base(), parts);
          return known ? [] : [parts];
        });
      }
      const who = (person: string): Who => ({ person, meal: meal.id });
      const eaterOf = (person: string, id: string) => (id === meal.id ? person : undefined);
      const spans = spansFor(told, eating, meal.name);
      const onTheDay = dishes.filter(
        (dish) => cook(dish.name).isForAll && cook(dish.name).on && isOnTheDay(dish),
      );
      return [{ meal, dishes, eating, spans, vessel, who, eaterOf, onTheDay }];
    });
  });
  const meals = own.flatMap((each): readonly ScheduledMeal[] => {
    if (!isParts(each)) return [each];
    const made = pooled(each);
    if (!made) return [];
    const { dish, ...rest } = made;
    const spans = spansFor(cook(dish.name), made.eating, dish.batch.name);
    return [{ ...rest, dishes: [dish], spans, vessel: (name) => vessels.get(name), onTheDay: [] }];
  });
  throwIfAny(faults);
  return { days, meals, cook: (recipe) => cook(recipe).on, vessel: (recipe) => vessels.get(recipe) };
}

function isParts(each: ScheduledMeal | Part[]): each is Part[] {
  return Array.isArray(each);
}

/** The days of a plan's menu; none of a plan without one. */
function menuDays(plan: Plan): readonly string[] {
  return plan.meals.some(({ id, own }) => id !== own.id) ? plan.days.map(({ id }) => id) : [];
}

/** Days of one's own may stand before a menu's, or after, but not instead of them. */
function refuseMissing(menu: readonly string[], days: Days, refuse: RefuseAt): void {
  const missing = menu.filter((day) => days.place(day) === undefined);
  if (missing.length === 0) return;
  const hint = `name all of the menu's days, in order: ${someOf(menu)}`;
  refuse(["days"], `the menu's ${someOf(missing)} missing`, hint);
}

/**
 * Whether a dish is cooked on the day on which it is eaten, unless it is told otherwise by its name or its recipe
 * says how long it keeps: rice is (common practice, no source).
 */
function isOnTheDay({ batch }: PlannedDish): boolean {
  const says = (batch.origin.notes ?? []).some(({ days }) => days !== undefined);
  return (
    !says &&
    batch.plan.lines.some(({ line, source }) => {
      const cautions = source.food?.input.cautions ?? [];
      return line.added === "cooking" && cautions.some(({ code }) => code === "rice-keeping");
    })
  );
}

/** Days of cooking as they were told, and where; undefined where they were not. */
interface Cooked {
  readonly on: readonly number[] | undefined;
  readonly path: Path;
  /** Whether that was told of all dishes together. */
  readonly isForAll?: boolean;
}

function cookOf(
  given: CookFields | undefined,
  about: Parameters<typeof known>[2],
  days: Days,
  refuse: RefuseAt,
): (name: string) => Cooked {
  if (given === undefined || isDays(given)) {
    const on = given && placesOf(given, ["cook"], days, refuse);
    return () => ({ on, path: ["cook"], isForAll: true });
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
  first: EatingSpan | undefined,
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
