import { type Json, meta } from "../../document/leaves.ts";
import { coded, fields, optional, type Schema } from "../../document/schema.ts";
import { collect, type Fault, type Path } from "../../number/error.ts";
import { ONE } from "../../number/exact.ts";
import { compareText } from "../../number/text.ts";
import type { Dish } from "../../scale/engine/model.ts";
import { type FitAsRead, type FitFields, fitHow, howFor } from "../../scale/fit/read.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { name } from "./name.ts";
import { planDishesSchema, type ReadDish } from "./readDish.ts";

/** A meal, read. */
export interface ReadMeal {
  /** In the plan: `mon/supper`, or `supper` where the plan has one day without a name. */
  readonly id: string;
  /** With the day's. */
  readonly name: string;
  readonly day: string;
  /** Its own id and name, without the day's. */
  readonly own: { readonly id: string; readonly name: string };
  readonly made: ReadonlyMap<string, ReadDish>;
  /** One portion of each. */
  readonly dishes: ReadonlyMap<string, Sheet>;
  /** The same as a fit takes them; a sheet that was given by itself has no name. */
  readonly together: readonly Dish[];
  /** How they are fitted. */
  readonly fit: FitAsRead;
  readonly meta?: Json;
}

/** A meal's fields as they are read. */
interface MealFields {
  readonly id: string;
  readonly name?: string;
  readonly dishes: Sheet | ReadonlyMap<string, ReadDish>;
  readonly fit?: FitFields;
  readonly meta?: Json;
}

/** The schema of a meal. */
export function mealSchema(): Schema<MealFields> {
  return fields<MealFields>({
    id: name(),
    name: optional(name()),
    dishes: planDishesSchema(),
    fit: optional(coded("fit-malformed", fitHow())),
    meta: optional(meta()),
  });
}

/** Gives what a fit tells of each of a meal's dishes, in its order, by their names. */
export function byDish<T>({ own, together }: ReadMeal, all: readonly T[]): ReadonlyMap<string, T> {
  return new Map(together.flatMap(({ name = own.id }, d) => (d in all ? [[name, all[d] as T]] : [])));
}

/** The day that a meal is of. */
export interface MealDay {
  readonly id: string;
  /** Nothing where the plan has one day without a name of its own. */
  readonly named?: { readonly name: string };
}

/** Reads on from a meal's fields; undefined where some of it is refused. */
export function readMeal(
  faults: Fault[],
  { id, name, dishes, fit: how = {}, meta }: Partial<MealFields>,
  path: Path,
  day: MealDay,
): ReadMeal | undefined {
  if (dishes === undefined) return undefined;
  const isAlone = dishes instanceof Sheet;
  const made = isAlone ? new Map([[id ?? "", { written: dishes, density: undefined }]]) : dishes;
  const fit = collect(faults, [...path, "fit"], () => howFor(inOrder(writtenIn(made), isAlone), how));
  if (id === undefined || fit === undefined) return undefined;
  const own = { id, name: name ?? id };
  const { named } = day;
  const told = named ? { id: mealId(day.id, id), name: `${named.name}: ${own.name}` } : own;
  return mealOf({ ...told, own, day: day.id, fit, isAlone, made, ...(meta !== undefined && { meta }) });
}

/** What a day's meal goes by in the plan. */
export function mealId(day: string, meal: string): string {
  return `${day}/${meal}`;
}

interface Made {
  readonly id: string;
  readonly name: string;
  readonly day: string;
  readonly own: ReadMeal["own"];
  readonly fit: FitAsRead;
  readonly isAlone: boolean;
  readonly made: ReadonlyMap<string, ReadDish>;
  readonly meta?: Json;
}

function mealOf({ isAlone, ...meal }: Made): ReadMeal {
  const { made } = meal;
  const dishes = new Map([...made].map(([dish, { written }]) => [dish, onePortion(written)]));
  return { ...meal, dishes, together: inOrder(dishes, isAlone) };
}

/** A sheet that is served on several days is one dish, and what it brings is read once. */
const PORTIONS: WeakMap<Sheet, Sheet> = /* @__PURE__ */ new WeakMap();

/** One portion of a sheet. */
export function onePortion(written: Sheet): Sheet {
  const made = PORTIONS.get(written) ?? written.scaled(ONE, ONE);
  PORTIONS.set(written, made);
  return made;
}

/** The meal with other dishes, one portion of each; a dish that it had is made as it was. */
export function mealWith(meal: ReadMeal, dishes: ReadonlyMap<string, Sheet>): ReadMeal {
  const isAlone = meal.together[0]?.name === undefined && [...dishes.keys()].join() === meal.own.id;
  const made = new Map(
    [...dishes].map(([dish, s]): [string, ReadDish] => {
      const before = meal.made.get(dish);
      return [
        dish,
        { density: before?.density, written: meal.dishes.get(dish) === s && before ? before.written : s },
      ];
    }),
  );
  return { ...meal, made, dishes, together: inOrder(dishes, isAlone) };
}

/** A meal's sheets as they were handed in, by dish. */
export function sheetsOf(meal: ReadMeal | undefined): ReadonlyMap<string, Sheet> | undefined {
  return meal && writtenIn(meal.made);
}

function writtenIn(made: ReadonlyMap<string, ReadDish>): ReadonlyMap<string, Sheet> {
  return new Map([...made].map(([dish, { written }]) => [dish, written]));
}

/** The meal with another sheet for a dish. */
export function withSheet(meal: ReadMeal, dish: string, sheet: Sheet): ReadMeal {
  const made = new Map(meal.made);
  const before = made.get(dish);
  if (before) made.set(dish, { ...before, written: sheet });
  return mealOf({ ...meal, isAlone: meal.together[0]?.name === undefined, made });
}

/** Dishes in the order of their names; a sheet that was given by itself has none. */
function inOrder(sheets: Iterable<readonly [string, Sheet]>, isAlone: boolean): readonly Dish[] {
  return [...sheets]
    .map(([name, sheet]) => ({ name: isAlone ? undefined : name, sheet }))
    .sort((a, b) => compareText(a.name ?? "", b.name ?? ""));
}
