import { type Json, meta } from "../../document/leaves.ts";
import { readFar } from "../../document/read.ts";
import { coded, fields, list, once, optional, type Schema, type Shape } from "../../document/schema.ts";
import { type Kitchen, kitchenGiven } from "../../measure/kitchen.ts";
import { TWO_PER_CENT, tolerance } from "../../measure/tolerance.ts";
import { type Fault, quote, throwIfAny } from "../../number/error.ts";
import type { Exact } from "../../number/exact.ts";
import { authorityName } from "../../person/intakes/authority.ts";
import type { Authority } from "../../person/intakes/table.ts";
import { wishesSchema } from "../../scale/round/wish.ts";
import { type Silence, silence } from "../../scale/target.ts";
import type { PlanAnswer } from "../input.ts";
import { knownFoods } from "./knownFoods.ts";
import { LineWishes, readLineWishes } from "./lineWishes.ts";
import { answersSchema, takeAnswers } from "./readAnswers.ts";
import { mealSchema, type ReadMeal, readMeal, sheetsOf, withSheet } from "./readMeal.ts";
import { eaterSchema, type ReadPerson, readPerson } from "./readPerson.ts";
import { potsSchema, type ReadPots } from "./readPots.ts";

export interface ReadPlan {
  readonly meals: readonly ReadMeal[];
  readonly people: readonly ReadPerson[];
  readonly silence: Silence;
  /** Nothing where everyone keeps the ratios that suit them best. */
  readonly pots: ReadPots | undefined;
  /** The cook's. */
  readonly kitchen: Kitchen | undefined;
  readonly tolerance: Exact;
  /** By what lines are measured in the cook's kitchen. */
  readonly wishes: LineWishes;
  readonly meta?: Json;
}

/** A plan's fields as they are read. */
interface PlanFields {
  readonly meals: readonly Parameters<typeof readMeal>[1][];
  readonly people: readonly Parameters<typeof readPerson>[1][];
  readonly authority?: Authority;
  readonly silent?: Silence;
  readonly pots?: ReadPots;
  readonly answers?: readonly PlanAnswer[];
  readonly kitchen?: Kitchen;
  readonly lines?: Readonly<Record<string, string>>;
  readonly tolerance?: Exact;
  readonly meta?: Json;
}

const planSchema: () => Schema<PlanFields> = /* @__PURE__ */ once(() => fields<PlanFields>(planShape()));

/** The fields of what a plan is handed. */
export function planShape(): Shape<PlanFields> {
  return {
    meals: list(mealSchema(), { least: 1, like: '[{ id: "breakfast", dishes }]' }),
    people: list(eaterSchema(), { least: 1, like: '[{ id: "cox" }]' }),
    authority: optional(authorityName()),
    silent: optional(silence()),
    pots: optional(potsSchema()),
    answers: optional(answersSchema()),
    kitchen: optional(kitchenGiven()),
    lines: optional(coded("rounding-malformed", wishesSchema())),
    tolerance: optional(tolerance()),
    meta: optional(meta()),
  };
}

/**
 * Reads what a plan is handed, all faults at once: `plan-malformed`, the codes of targets and
 * demands, and those of the options of a fit.
 */
export function readPlan(input: unknown): ReadPlan {
  const faults: Fault[] = [];
  const given = readFar(faults, planSchema(), input, "plan-malformed") ?? {};
  const { authority, silent = "refuse", pots, kitchen, tolerance = TWO_PER_CENT, meta } = given;
  // A meal that is refused can still be named.
  const named = namesOf(faults, "meals", given.meals);
  namesOf(faults, "people", given.people);
  const meals = partsOf(given.meals, (meal, i) => readMeal(faults, meal, ["meals", i]));
  const areAll = meals.length === given.meals?.length;
  const setting = { meals: named, foods: areAll ? knownFoods(meals) : undefined, authority };
  const people = partsOf(given.people, (person, i) => readPerson(faults, person, ["people", i], setting));
  const answered = new Map(meals.map((meal) => [meal.id, meal]));
  takeAnswers(faults, given.answers ?? [], {
    meals: named,
    dishes: (meal) => sheetsOf(answered.get(meal)),
    put: (meal, dish, sheet) => {
      const before = answered.get(meal);
      if (before) answered.set(meal, withSheet(before, dish, sheet));
    },
  });
  // Lines are known where every meal is; an answer may change how they scale.
  const all = [...answered.values()];
  const wishes = areAll ? readLineWishes(faults, given.lines, ["lines"], { meals: all, kitchen }) : NO_WISHES;
  const served = people.map((person): ReadPerson => {
    if (!areAll) return person;
    const at = { meals: all, kitchen: person.kitchen ?? kitchen };
    const own = readLineWishes(faults, person.lines.given, person.lines.path, at);
    return { ...person, wishes: person.kitchen ? own : wishes.with(own) };
  });
  throwIfAny(faults);
  return {
    meals: all,
    people: served,
    silence: silent,
    pots,
    kitchen,
    tolerance,
    wishes,
    ...(meta !== undefined && { meta }),
  };
}

const NO_WISHES: LineWishes = /* @__PURE__ */ new LineWishes();

/** Reads on from each of a list that could be read so far. */
function partsOf<T, U>(
  list: readonly (T | undefined)[] | undefined,
  read: (each: T, i: number) => U | undefined,
): readonly U[] {
  return (list ?? []).flatMap((each, i) => (each === undefined ? [] : (read(each, i) ?? [])));
}

/** Ids in their order; one that comes twice is a fault. */
function namesOf(
  faults: Fault[],
  field: "meals" | "people",
  list: readonly ({ readonly id?: string } | undefined)[] | undefined,
): readonly string[] {
  const ids = (list ?? []).map((each) => each?.id);
  ids.forEach((id, i) => {
    if (id === undefined || ids.indexOf(id) === i) return;
    const hint = "give each an id of its own";
    faults.push({
      code: "plan-malformed",
      path: [field, i, "id"],
      message: `${quote(id)} comes twice`,
      hint,
    });
  });
  return ids.filter((id) => id !== undefined);
}
