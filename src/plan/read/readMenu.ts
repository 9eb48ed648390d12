import { type Json, meta, text } from "../../document/leaves.ts";
import { fields, list, optional, type Schema } from "../../document/schema.ts";
import { type Fault, type Path, quote } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import { checkName, name } from "./name.ts";
import { type MealDay, mealId, mealSchema, type ReadMeal, readMeal } from "./readMeal.ts";

/** A day, read. */
export interface ReadDay {
  readonly id: string;
  readonly name: string;
  /** Ids of its meals in the plan. */
  readonly meals: readonly string[];
  readonly meta?: Json;
}

type MealFields = Parameters<typeof readMeal>[1];

/** A day's fields as they are read. */
interface DayFields {
  readonly id: string;
  readonly name?: string;
  readonly meals: readonly MealFields[];
  readonly meta?: Json;
}

/** The schema of a plan's meals. */
export function mealsSchema(): Schema<readonly MealFields[]> {
  return list(mealSchema(), { least: 1, like: '[{ id: "breakfast", dishes }]' });
}

/** The schema of a menu of days. */
export function daysSchema(): Schema<readonly Partial<DayFields>[]> {
  const day = fields<DayFields>({
    id: text(200, (given, refuse) => {
      checkName(given, refuse);
      if (given.includes("/"))
        refuse("a day with a stroke in its id", 'meals go by "day/meal": leave it out');
    }),
    name: optional(name()),
    meals: mealsSchema(),
    meta: optional(meta()),
  });
  return list(day, { least: 1, like: '[{ id: "mon", meals: [{ id: "breakfast", dishes }] }]' });
}

/** What the one day is called of a plan that has no menu of days. */
export const ONE_DAY = "day";

/** A menu, read. */
export interface ReadMenu {
  readonly days: readonly ReadDay[];
  readonly meals: readonly ReadMeal[];
  readonly names: MealNames;
  /** Whether every meal could be read. */
  readonly isWhole: boolean;
}

/** Reads on from days, or from the meals of one. */
export function readMenu(
  faults: Fault[],
  given: {
    readonly days?: readonly (Partial<DayFields> | undefined)[];
    readonly meals?: readonly (MealFields | undefined)[];
  },
): ReadMenu {
  const menu = given.days?.map((day, i) => ({
    day: day ?? {},
    path: ["days", i] as Path,
    isNamed: true,
  })) ?? [
    { day: { id: ONE_DAY, meals: given.meals } as Partial<DayFields>, path: [] as Path, isNamed: false },
  ];
  distinct(faults, given.days?.map((day) => day?.id) ?? [], (i) => ["days", i, "id"]);
  const read = menu.map(({ day, path, isNamed }) => readOne(faults, day, path, isNamed));
  return {
    days: read.flatMap(({ day }) => day ?? []),
    meals: read.flatMap(({ meals }) => meals),
    names: new MealNames(read.flatMap(({ named }) => named)),
    isWhole: read.every(({ isWhole }) => isWhole),
  };
}

/** A meal that is refused can still be named. */
interface Named {
  readonly id: string;
  readonly day: string | undefined;
  readonly own: string;
}

function readOne(
  faults: Fault[],
  { id, name, meals: given = [], meta }: Partial<DayFields>,
  path: Path,
  isNamed: boolean,
): {
  readonly day?: ReadDay;
  readonly meals: readonly ReadMeal[];
  readonly named: readonly Named[];
  readonly isWhole: boolean;
} {
  distinct(
    faults,
    given.map((meal) => meal?.id),
    (i) => [...path, "meals", i, "id"],
  );
  const day: MealDay = { id: id ?? "", ...(isNamed && { named: { name: name ?? id ?? "" } }) };
  const meals = given.flatMap(
    (meal, i) => (meal && readMeal(faults, meal, [...path, "meals", i], day)) ?? [],
  );
  const named = given.flatMap((meal): Named[] => {
    if (meal?.id === undefined || id === undefined) return [];
    return [{ id: isNamed ? mealId(id, meal.id) : meal.id, day: isNamed ? id : undefined, own: meal.id }];
  });
  const isWhole = id !== undefined && given.length > 0 && meals.length === given.length;
  if (id === undefined) return { meals, named, isWhole };
  const own = {
    id,
    name: name ?? id,
    meals: named.map((each) => each.id),
    ...(meta !== undefined && { meta }),
  };
  return { day: own, meals, named, isWhole };
}

/** An id that comes twice is a fault. */
export function distinct(
  faults: Fault[],
  ids: readonly (string | undefined)[],
  pathOf: (i: number) => Path,
): void {
  ids.forEach((id, i) => {
    if (id === undefined || ids.indexOf(id) === i) return;
    const hint = "give each an id of its own";
    faults.push({ code: "plan-malformed", path: pathOf(i), message: `${quote(id)} comes twice`, hint });
  });
}

/** By what names a person's fields can speak of meals. */
export class MealNames {
  readonly #all: readonly Named[];

  constructor(all: readonly Named[]) {
    this.#all = all;
  }

  /** Every meal's id in the plan. */
  get ids(): readonly string[] {
    return this.#all.map(({ id }) => id);
  }

  /** The days' ids, where days have names. */
  get days(): readonly string[] {
    return [...new Set(this.#all.flatMap(({ day }) => day ?? []))];
  }

  /** The meals' ids, day by day. */
  get byDay(): readonly (readonly string[])[] {
    const days = this.days.length === 0 ? [undefined] : this.days;
    return days.map((day) => this.#all.filter((each) => each.day === day).map(({ id }) => id));
  }

  /** Meals by their id in the plan, or of every day by their own. */
  meals(name: string): readonly string[] {
    const one = this.#all.filter(({ id }) => id === name);
    return (one.length > 0 ? one : this.#all.filter(({ own }) => own === name)).map(({ id }) => id);
  }

  /** The same, and all meals of a day by its id. */
  within(name: string): readonly string[] {
    const day = this.#all.filter((each) => each.day === name).map(({ id }) => id);
    return day.length > 0 ? day : this.meals(name);
  }

  /** Says that no meal goes by a name. */
  unknown(name: string, path: Path, withDays = false): Fault {
    const own = this.#all.map((each) => each.own);
    const names = [...new Set([...this.ids, ...own, ...(withDays ? this.days : [])])];
    const few = names.slice(0, 5).map((known) => quote(known));
    const hint = didYouMean(name, names, `use ${few.join(", ")}`);
    const what = withDays && this.days.length > 0 ? "meal or day" : "meal";
    return { code: "plan-malformed", path, message: `no ${what} is called ${quote(name)}`, hint };
  }
}
