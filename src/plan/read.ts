import { collect, type Fault, fault, type Path, quote, SteelyardError, throwIfAny } from "../number/error.ts";
import { ONE } from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import type { Demand } from "../scale/demand.ts";
import { readDemands } from "../scale/fit/demands.ts";
import { readTask } from "../scale/fit/read.ts";
import type { FitHow } from "../scale/fit.ts";
import { moveAll } from "../scale/move.ts";
import { type ReadTarget, readTarget, type Silence, type Target } from "../scale/target.ts";
import { Sheet } from "../sheet/sheet.ts";
import { readAnswers } from "./answers.ts";
import { type Given, kindOf, own, PlanFaults } from "./given.ts";
import type { PlanInput } from "./input.ts";
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
}

/** What a portion is to bring, and where in the input that stands. */
export type Want = { readonly path: Path } & (
  | { readonly kind: "target"; readonly aim: ReadTarget["aim"] }
  | { readonly kind: "demands"; readonly demands: readonly Demand[] }
);

/** Someone to be fed, read. */
export interface ReadPerson {
  readonly id: string;
  readonly name: string;
  /** By the meal's id. */
  readonly wants: ReadonlyMap<string, Want>;
}

export interface ReadPlan {
  readonly meals: readonly ReadMeal[];
  readonly people: readonly ReadPerson[];
  readonly silence: Silence;
}

const PLAN: readonly string[] = ["meals", "people", "silent", "answers"] satisfies (keyof PlanInput)[];
const MEAL: readonly string[] = ["id", "name", "dishes", "fit"] satisfies (keyof PlanInput["meals"][0])[];
const PERSON: readonly string[] = [
  "id",
  "name",
  "demands",
  "byMeal",
] satisfies (keyof PlanInput["people"][0])[];

/**
 * Reads what a plan is handed, all faults at once: `plan-malformed`, the codes of targets and
 * demands, and those of the options of a fit.
 */
export function readPlan(input: unknown): ReadPlan {
  const faults = new PlanFaults();
  const given = faults.record(input, [], "the plan", PLAN, "give meals and people");
  // A meal that is refused can still be named.
  const named: string[] = [];
  const meals = readList(faults, given, "meals", (each, id, path) => {
    if (id !== undefined) named.push(id);
    return readMeal(faults, each, id, path);
  });
  const people = readList(faults, given, "people", (each, id, path) =>
    readPerson(faults, each, id, path, named),
  );
  const silence = readSilence(faults, given?.silent);
  const answered = new Map(meals.map((meal) => [meal.id, meal]));
  readAnswers(faults, given?.answers, {
    meals: named,
    dishes: (meal) => sheetsOf(answered.get(meal)),
    put: (meal, dish, sheet) => {
      const before = answered.get(meal);
      if (before) answered.set(meal, withSheet(before, dish, sheet));
    },
  });
  throwIfAny(faults.all);
  return { meals: [...answered.values()], people, silence };
}

const LISTS = {
  meals: { one: "a meal", fields: MEAL, hint: 'give it an id and dishes: { id: "breakfast", dishes }' },
  people: { one: "a person", fields: PERSON, hint: 'give them an id: { id: "cox" }' },
} as const;

/** Reads each of a list; none, and an id that comes twice, are faults. */
function readList<T>(
  faults: PlanFaults,
  given: Given | undefined,
  field: keyof typeof LISTS,
  read: (given: Given, id: string | undefined, path: Path) => T | undefined,
): readonly T[] {
  const { one, fields, hint } = LISTS[field];
  const list = given && faults.list(given[field], [field], `the list of ${field}`, `give a list of ${field}`);
  if (list?.length === 0) faults.refuse([field], `a plan without ${field}`, "give at least one");
  const seen = new Set<string>();
  return (list ?? []).flatMap((value, i) => {
    const each = faults.record(value, [field, i], one, fields, hint);
    if (!each) return [];
    const id = faults.name(each.id, [field, i, "id"], hint);
    if (id !== undefined && seen.has(id)) {
      faults.refuse([field, i, "id"], `${quote(id)} comes twice`, "give each an id of its own");
    }
    if (id !== undefined) seen.add(id);
    return read(each, id, [field, i]) ?? [];
  });
}

function readMeal(
  faults: PlanFaults,
  given: Given,
  id: string | undefined,
  path: Path,
): ReadMeal | undefined {
  const name = faults.optionalName(given.name, [...path, "name"], "leave it out, or write a name");
  const made = readDishes(faults, given.dishes, id ?? "", [...path, "dishes"]);
  const alone = given.dishes instanceof Sheet;
  const fit = made && readFit(faults.all, given.fit, alone, made, [...path, "fit"]);
  if (id === undefined || made === undefined || fit === undefined) return undefined;
  return mealOf({ id, name: name ?? id, fit, isAlone: alone, made });
}

interface Made {
  readonly id: string;
  readonly name: string;
  readonly fit: FitHow;
  readonly isAlone: boolean;
  readonly made: ReadonlyMap<string, ReadDish>;
}

function mealOf({ id, name, fit, isAlone, made }: Made): ReadMeal {
  const dishes = new Map([...made].map(([dish, { written }]) => [dish, moveAll(written, ONE, ONE)]));
  const only = isAlone ? dishes.get(id) : undefined;
  return { id, name, made, dishes, alone: only && { name: id, sheet: only }, fit };
}

function sheetsOf(meal: ReadMeal | undefined): ReadonlyMap<string, Sheet> | undefined {
  return meal && new Map([...meal.made].map(([dish, { written }]) => [dish, written]));
}

/** The meal with another sheet for a dish. */
function withSheet(meal: ReadMeal, dish: string, sheet: Sheet): ReadMeal {
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

function readPerson(
  faults: PlanFaults,
  given: Given,
  id: string | undefined,
  path: Path,
  meals: readonly string[],
): ReadPerson | undefined {
  const name = faults.optionalName(given.name, [...path, "name"], "leave it out, or write a name");
  const usual = readWant(faults.all, given.demands, [...path, "demands"]);
  const byMeal = readByMeal(faults, given.byMeal, [...path, "byMeal"], meals);
  if (id === undefined || usual === undefined) return undefined;
  return { id, name: name ?? id, wants: new Map(meals.map((meal) => [meal, byMeal.get(meal) ?? usual])) };
}

function readByMeal(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  meals: readonly string[],
): ReadonlyMap<string, Want> {
  const read = new Map<string, Want>();
  if (given === undefined) return read;
  const hint = "write demands by the meal's id: { breakfast: { energy: 450 } }";
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    faults.refuse(path, `byMeal is ${kindOf(given)}`, hint);
    return read;
  }
  for (const [meal, demands] of Object.entries(given)) {
    if (!meals.includes(meal)) {
      const otherwise = `use ${meals
        .slice(0, 5)
        .map((name) => quote(name))
        .join(", ")}`;
      faults.refuse([...path, meal], `no meal is called ${quote(meal)}`, didYouMean(meal, meals, otherwise));
      continue;
    }
    const want = readWant(faults.all, own(given as Given, meal), [...path, meal]);
    if (want && demands !== undefined) read.set(meal, want);
  }
  return read;
}

/** Nothing said is the recipes' own portion. */
function readWant(faults: Fault[], given: unknown, path: Path): Want | undefined {
  return collect(faults, path, (): Want => {
    if (Array.isArray(given)) {
      readDemands(given);
      return { kind: "demands", path, demands: given as readonly Demand[] };
    }
    if (typeof given !== "object" && given !== undefined) return refuseWant(given);
    if (given === null) return refuseWant(given);
    const target: Target = given ?? {};
    if (target.portions !== undefined) {
      const hint = "a person has one portion: for a larger one, ask for more, or give a factor";
      throw fault("target-malformed", "a number of portions for one person", hint, ["portions"]);
    }
    // Nothing asked is a factor of 1.
    return { kind: "target", path, aim: readTarget({ ...target, portions: 1 }).aim };
  });
}

function refuseWant(given: unknown): never {
  const hint = 'write a target, { energy: "650 kcal" }, or a list of demands';
  throw fault("target-malformed", `the demands are ${kindOf(given)}`, hint);
}

function readSilence(faults: PlanFaults, given: unknown): Silence {
  if (given === undefined || given === "refuse") return "refuse";
  if (given !== "accept") {
    faults.refuse(["silent"], `silent is ${kindOf(given)}`, 'write "refuse" or "accept"');
  }
  return "accept";
}
