import type { Json } from "../document/leaves.ts";
import { type Fault, type Path, SteelyardError } from "../number/error.ts";
import { ONE } from "../number/fraction.ts";
import { readTask } from "../scale/fit/read.ts";
import type { FitHow } from "../scale/fit.ts";
import { Sheet } from "../sheet/sheet.ts";
import { type Given, kindOf, type PlanFaults } from "./given.ts";
import type { MealInput } from "./input.ts";
import { type ReadDish, readDish } from "./readDish.ts";

/** A meal, read. */
export interface ReadMeal {
  readonly id: string;
  readonly name: string;
  readonly made: ReadonlyMap<string, ReadDish>;
  /** One portion of each. */
  readonly dishes: ReadonlyMap<string, Sheet>;
  /** The one dish, where the caller gave a sheet without a name. */
  readonly alone: { readonly name: string; readonly sheet: Sheet } | undefined;
  readonly fit: FitHow;
  readonly meta?: Json;
}

/** The fields of a meal. */
export const MEAL: readonly string[] = ["id", "name", "dishes", "fit", "meta"] satisfies (keyof MealInput)[];

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
  const fit = made && readFit(faults.all, given.fit, alone, made, [...path, "fit"]);
  const meta = faults.meta(given, path);
  if (id === undefined || made === undefined || fit === undefined) return undefined;
  return mealOf({ id, name: name ?? id, fit, isAlone: alone, made, ...meta });
}

interface Made {
  readonly id: string;
  readonly name: string;
  readonly fit: FitHow;
  readonly isAlone: boolean;
  readonly made: ReadonlyMap<string, ReadDish>;
  readonly meta?: Json;
}

function mealOf({ isAlone, ...meal }: Made): ReadMeal {
  const { id, made } = meal;
  const dishes = new Map([...made].map(([dish, { written }]) => [dish, written.scaled(ONE, ONE)]));
  const only = isAlone ? dishes.get(id) : undefined;
  return { ...meal, dishes, alone: only && { name: id, sheet: only } };
}

/** A meal's sheets as they were handed in, by dish. */
export function sheetsOf(meal: ReadMeal | undefined): ReadonlyMap<string, Sheet> | undefined {
  return meal && new Map([...meal.made].map(([dish, { written }]) => [dish, written]));
}

/** The meal with another sheet for a dish. */
export function withSheet(meal: ReadMeal, dish: string, sheet: Sheet): ReadMeal {
  const made = new Map(meal.made);
  const before = made.get(dish);
  if (before) made.set(dish, { ...before, written: sheet });
  return mealOf({ ...meal, isAlone: meal.alone !== undefined, made });
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

/** The options of a fit, tried on the meal's dishes without a demand. */
function readFit(
  faults: Fault[],
  given: unknown,
  alone: boolean,
  dishes: ReadonlyMap<string, ReadDish>,
  path: Path,
): FitHow | undefined {
  if (given === undefined) return {};
  const sheets = [...dishes].map(([name, { written }]) => [name, written] as const);
  try {
    readTask(alone ? sheets[0]?.[1] : Object.fromEntries(sheets), [], given as FitHow);
    return given as FitHow;
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    for (const each of error.faults) faults.push({ ...each, path: [...path, ...each.path.slice(1)] });
    return undefined;
  }
}
