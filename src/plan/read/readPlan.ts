import { type Json, meta } from "../../document/leaves.ts";
import { readFar } from "../../document/read.ts";
import { coded, fields, list, once, optional, type Schema, type Shape } from "../../document/schema.ts";
import { type Kitchen, kitchenGiven } from "../../measure/kitchen.ts";
import { TWO_PER_CENT, tolerance } from "../../measure/tolerance.ts";
import { type Fault, throwIfAny } from "../../number/error.ts";
import type { Exact } from "../../number/exact.ts";
import { authorityName } from "../../person/intakes/authority.ts";
import type { Authority } from "../../person/intakes/table.ts";
import { wishesSchema } from "../../scale/round/wish.ts";
import { type Silence, silence } from "../../scale/target.ts";
import type { PlanAnswer } from "../input.ts";
import { type PooledMeal, pooledMeals } from "./eatenMeals.ts";
import { knownFoods } from "./knownFoods.ts";
import { LineWishes, readLineWishes } from "./lineWishes.ts";
import { answersSchema, takeAnswers, withAnswers } from "./readAnswers.ts";
import { type ReadMeal, sheetsOf, withSheet } from "./readMeal.ts";
import { daysSchema, distinct, mealsSchema, type ReadDay, readMenu } from "./readMenu.ts";
import { eaterSchema, type ReadPerson, readEater } from "./readPerson.ts";
import { potsSchema, type ReadPots } from "./readPots.ts";
import { type OwnSheets, VersionReader } from "./readVersions.ts";

export interface ReadPlan {
  readonly days: readonly ReadDay[];
  /** Of all days, in their order. */
  readonly meals: readonly ReadMeal[];
  /** The same by id, and how each person eats of them. */
  readonly pooled: ReadonlyMap<string, PooledMeal>;
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
  readonly days?: NonNullable<Parameters<typeof readMenu>[1]["days"]>;
  readonly meals?: NonNullable<Parameters<typeof readMenu>[1]["meals"]>;
  readonly people: readonly Parameters<typeof readEater>[1][];
  readonly authority?: Authority;
  readonly silent?: Silence;
  readonly pots?: ReadPots;
  readonly answers?: readonly PlanAnswer[];
  readonly kitchen?: Kitchen;
  readonly lines?: Readonly<Record<string, string>>;
  readonly tolerance?: Exact;
  readonly meta?: Json;
}

const planSchema: () => Schema<PlanFields> = /* @__PURE__ */ once(() =>
  fields<PlanFields>(planShape(), ({ days, meals }, _, refuse) => {
    if (days === undefined && meals === undefined)
      refuse("no meals", 'give meals: [{ id: "breakfast", dishes }], or days that have meals', ["meals"]);
    if (days !== undefined && meals !== undefined)
      refuse("both days and meals", "put the meals into a day of their own", ["meals"]);
  }),
);

/** The fields of what a plan is handed. */
export function planShape(): Shape<PlanFields> {
  return {
    days: optional(daysSchema()),
    meals: optional(mealsSchema()),
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
  const { days, meals, names, isWhole } = readMenu(faults, given);
  distinct(faults, given.people?.map((person) => person?.id) ?? [], (i) => ["people", i, "id"]);
  const setting = { meals: names, foods: isWhole ? knownFoods(meals) : undefined, authority };
  const people = partsOf(given.people, (person, i) => readEater(faults, person, ["people", i], setting));
  const answered = new Map(meals.map((meal) => [meal.id, meal]));
  takeAnswers(faults, given.answers ?? [], {
    meals: names.ids,
    dishes: (meal) => sheetsOf(answered.get(meal)),
    put: (meal, dish, sheet) => {
      const before = answered.get(meal);
      if (before) answered.set(meal, withSheet(before, dish, sheet));
    },
  });
  // Lines are known where every meal is; an answer may change how they scale.
  const own = isWhole ? ownSheets(faults, people, [...answered.values()], given.answers ?? []) : new Map();
  const pooled = pooledMeals([...answered.values()], own);
  const all = pooled.map(({ meal }) => meal);
  const wishes = isWhole
    ? readLineWishes(faults, given.lines, ["lines"], { meals: all, kitchen })
    : NO_WISHES;
  const served = people.map((person): ReadPerson => {
    if (!isWhole) return person;
    const at = { meals: all, kitchen: person.kitchen ?? kitchen };
    const own = readLineWishes(faults, person.lines.given, person.lines.path, at);
    return { ...person, wishes: person.kitchen ? own : wishes.with(own) };
  });
  throwIfAny(faults);
  return {
    days,
    meals: all,
    pooled: new Map(pooled.map((each) => [each.meal.id, each])),
    people: served,
    silence: silent,
    pots,
    kitchen,
    tolerance,
    wishes,
    ...(meta !== undefined && { meta }),
  };
}

/** People's own versions of dishes, by person. An answer speaks of every version that has the line. */
function ownSheets(
  faults: Fault[],
  people: readonly ReadPerson[],
  meals: readonly ReadMeal[],
  answers: readonly (Partial<PlanAnswer> | undefined)[],
): ReadonlyMap<string, OwnSheets> {
  const reader = new VersionReader(meals);
  return new Map(
    people.flatMap((person): [string, OwnSheets][] => {
      const { instead, leaveOut } = person.own;
      if (!instead && !leaveOut) return [];
      const read = reader.read(faults, person.own, person.lines.path.slice(0, -1));
      return [[person.id, withAnswers(read, answers)]];
    }),
  );
}

const NO_WISHES: LineWishes = /* @__PURE__ */ new LineWishes();

/** Reads on from each of a list that could be read so far. */
function partsOf<T, U>(
  list: readonly (T | undefined)[] | undefined,
  read: (each: T, i: number) => U | undefined,
): readonly U[] {
  return (list ?? []).flatMap((each, i) => (each === undefined ? [] : (read(each, i) ?? [])));
}
