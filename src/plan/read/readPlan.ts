import type { Json } from "../../document/leaves.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import { type Path, quote, throwIfAny } from "../../number/error.ts";
import type { Fraction } from "../../number/fraction.ts";
import type { Silence } from "../../scale/target.ts";
import type { PlanInput } from "../input.ts";
import { knownFoods } from "./knownFoods.ts";
import { LineWishes, readLineWishes } from "./lineWishes.ts";
import { type Given, kindOf, PlanFaults } from "./planFaults.ts";
import { readAnswers } from "./readAnswers.ts";
import { readAuthority } from "./readBody.ts";
import { readPlace, readTolerance } from "./readKitchen.ts";
import { MEAL, type ReadMeal, readMeal, sheetsOf, withSheet } from "./readMeal.ts";
import { PERSON, type ReadPerson, readPerson } from "./readPerson.ts";
import { type ReadPots, readPots } from "./readPots.ts";

export interface ReadPlan {
  readonly meals: readonly ReadMeal[];
  readonly people: readonly ReadPerson[];
  readonly silence: Silence;
  /** Nothing where everyone keeps the ratios that suit them best. */
  readonly pots: ReadPots | undefined;
  /** The cook's. */
  readonly kitchen: Kitchen | undefined;
  readonly tolerance: Fraction;
  /** By what lines are measured in the cook's kitchen. */
  readonly wishes: LineWishes;
  readonly meta?: Json;
}

const PLAN: readonly string[] = [
  "meals",
  "people",
  "authority",
  "silent",
  "pots",
  "answers",
  "kitchen",
  "lines",
  "tolerance",
  "meta",
] satisfies (keyof PlanInput)[];

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
  const setting = {
    meals: named,
    foods: faults.all.length === 0 ? knownFoods(meals) : undefined,
    authority: readAuthority(faults, given?.authority),
  };
  const people = readList(faults, given, "people", (each, id, path) =>
    readPerson(faults, each, id, path, setting),
  );
  const silence = readSilence(faults, given?.silent);
  const pots = readPots(faults, given?.pots);
  const kitchen = readPlace(faults, given?.kitchen, ["kitchen"]);
  const tolerance = readTolerance(faults, given?.tolerance);
  const answered = new Map(meals.map((meal) => [meal.id, meal]));
  readAnswers(faults, given?.answers, {
    meals: named,
    dishes: (meal) => sheetsOf(answered.get(meal)),
    put: (meal, dish, sheet) => {
      const before = answered.get(meal);
      if (before) answered.set(meal, withSheet(before, dish, sheet));
    },
  });
  // Lines are known where every meal is; an answer may change how they scale.
  const all = [...answered.values()];
  const known = all.length === named.length ? all : undefined;
  const wishes = known && readLineWishes(faults, given?.lines, ["lines"], { meals: known, kitchen });
  const served = people.map((person): ReadPerson => {
    if (!known || !wishes) return person;
    const at = { meals: known, kitchen: person.kitchen ?? kitchen };
    const ownLines = readLineWishes(faults, person.lines.given, person.lines.path, at);
    return { ...person, wishes: person.kitchen ? ownLines : wishes.with(ownLines) };
  });
  const own = given ? faults.meta(given, []) : {};
  throwIfAny(faults.all);
  return {
    meals: all,
    people: served,
    silence,
    pots,
    kitchen,
    tolerance,
    wishes: wishes ?? new LineWishes(),
    ...own,
  };
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

function readSilence(faults: PlanFaults, given: unknown): Silence {
  if (given === undefined || given === "refuse") return "refuse";
  if (given !== "accept") {
    faults.refuse(["silent"], `silent is ${kindOf(given)}`, 'write "refuse" or "accept"');
  }
  return "accept";
}
