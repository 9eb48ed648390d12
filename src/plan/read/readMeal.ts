import type { Json } from "../../document/leaves.ts";
import { collect, type Fault, type Path } from "../../number/error.ts";
import { ONE } from "../../number/fraction.ts";
import { compareText } from "../../number/text.ts";
import type { Dish } from "../../scale/engine/model.ts";
import { type FitHow, type ReadHow, readHow } from "../../scale/fit/read.ts";
import { Sheet } from "../../sheet/sheet.ts";
import type { MealInput } from "../input.ts";
import { type Given, kindOf, type PlanFaults } from "./planFaults.ts";
import { type ReadDish, readDish } from "./readDish.ts";

/** A meal, read. */
export interface ReadMeal {
  readonly id: string;
  readonly name: string;
  readonly made: ReadonlyMap<string, ReadDish>;
  /** One portion of each. */
  readonly dishes: ReadonlyMap<string, Sheet>;
  /** The same as a fit takes them; a sheet that was given by itself has no name. */
  readonly together: readonly Dish[];
  /** How they are fitted. */
  readonly fit: ReadHow;
  readonly meta?: Json;
}

/** The fields of a meal. */
export const MEAL: readonly string[] = ["id", "name", "dishes", "fit", "meta"] satisfies (keyof MealInput)[];

/** Gives what a fit tells of each of a meal's dishes, in its order, by their names. */
export function byDish<T>({ id, together }: ReadMeal, all: readonly T[]): ReadonlyMap<string, T> {
  return new Map(together.flatMap(({ name = id }, d) => (d in all ? [[name, all[d] as T]] : [])));
}

/** Reads one meal; nothing where some of it is refused. */
export function readMeal(
  faults: PlanFaults,
  given: Given,
  id: string | undefined,
  path: Path,
): ReadMeal | undefined {
  const name = faults.optionalName(given.name, [...path, "name"], "leave it out, or write a name");
  const made = readDishes(faults, given.dishes, id ?? "", [...path, "dishes"]);
  const alone = given.dishes instanceof Sheet;
  const fit = made && readFit(faults.all, given.fit, inOrder(writtenIn(made), alone), [...path, "fit"]);
  const meta = faults.meta(given, path);
  if (id === undefined || made === undefined || fit === undefined) return undefined;
  return mealOf({ id, name: name ?? id, fit, isAlone: alone, made, ...meta });
}

interface Made {
  readonly id: string;
  readonly name: string;
  readonly fit: ReadHow;
  readonly isAlone: boolean;
  readonly made: ReadonlyMap<string, ReadDish>;
  readonly meta?: Json;
}

function mealOf({ isAlone, ...meal }: Made): ReadMeal {
  const { made } = meal;
  const dishes = new Map([...made].map(([dish, { written }]) => [dish, written.scaled(ONE, ONE)]));
  return { ...meal, dishes, together: inOrder(dishes, isAlone) };
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

function readDishes(
  faults: PlanFaults,
  given: unknown,
  meal: string,
  path: Path,
): ReadonlyMap<string, ReadDish> | undefined {
  if (given instanceof Sheet) return new Map([[meal, { written: given, density: undefined }]]);
  const hint = "give a sheet, or sheets by name: { pot, shot }";
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    return faults.refuse(path, `the dishes are ${kindOf(given)}`, hint);
  }
  const entries = Object.entries(given);
  if (entries.length === 0) return faults.refuse(path, "a meal without dishes", hint);
  const dishes = entries.flatMap(([name, dish]): [string, ReadDish][] => {
    if (faults.name(name, [...path, name], "give the dish a name") === undefined) return [];
    const read = readDish(faults, dish, [...path, name]);
    return read ? [[name, read]] : [];
  });
  return dishes.length === entries.length ? new Map(dishes) : undefined;
}

/** The options of a fit, read for the meal's dishes. */
function readFit(faults: Fault[], given: unknown, dishes: readonly Dish[], path: Path): ReadHow | undefined {
  return collect(faults, path, () => readHow((given === undefined ? {} : given) as FitHow, dishes));
}

/** Dishes in the order of their names; a sheet that was given by itself has none. */
function inOrder(sheets: Iterable<readonly [string, Sheet]>, isAlone: boolean): readonly Dish[] {
  return [...sheets]
    .map(([name, sheet]) => ({ name: isAlone ? undefined : name, sheet }))
    .sort((a, b) => compareText(a.name ?? "", b.name ?? ""));
}
