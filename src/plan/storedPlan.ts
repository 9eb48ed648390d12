import { exact, isNumeric } from "../number/exact.ts";
import { Sheet } from "../sheet/sheet.ts";
import { type StoredSheet, storedSheet } from "../sheet/stored.ts";
import type { Besides, DayInput, DishInput, MealInput, PersonInput, PlanInput } from "./input.ts";
import type { Portion, PortionStatus } from "./portion.ts";

/** The format that this version writes: the first had no menu of days. */
export const PLAN_FORMAT = "steelyard-plan/2" as const;

/** A plan as plain data: what it was made from, and every portion that was found. `openPlan` opens it. */
export interface StoredPlan extends Omit<PlanInput, "days" | "meals" | "people"> {
  readonly format: typeof PLAN_FORMAT;
  /** The sheets of all dishes, each once. */
  readonly sheets: readonly StoredSheet[];
  readonly people: readonly StoredPerson[];
  readonly days?: readonly StoredDay[];
  readonly meals?: readonly StoredMeal[];
  readonly portions: readonly StoredPortion[];
}

/** A person whose own sheets stand in the plan's `sheets`, by their place there. */
export interface StoredPerson extends Omit<PersonInput, "instead" | "besides"> {
  readonly besides?: readonly (Omit<Besides, "sheet"> & { readonly sheet?: number })[];
  readonly instead?: { readonly [dish: string]: number };
}

/** A day whose meals name their sheets by place. */
export interface StoredDay extends Omit<DayInput, "meals"> {
  readonly meals: readonly StoredMeal[];
}

/** A meal whose sheets stand in the plan's `sheets`, by their place there, from 0. */
export interface StoredMeal extends Omit<MealInput, "dishes"> {
  /** The one dish, where it has no name of its own. */
  readonly dish?: number;
  readonly dishes?: readonly StoredDish[];
}

/** A dish by name: in a list, since some databases give the fields of an object back in another order. */
export interface StoredDish extends Omit<DishInput, "sheet"> {
  readonly name: string;
  readonly sheet: number;
}

/** What someone was found to be served: grams by dish and line, as exact text. */
export interface StoredPortion {
  readonly person: string;
  readonly meal: string;
  readonly status: PortionStatus;
  readonly factor: string;
  readonly dishes: { readonly [dish: string]: { readonly [line: string]: string } };
}

/** What a plan keeps of what it was handed in, to be stored with. */
export type PlanOf = Omit<StoredPlan, "format" | "sheets" | "portions"> & { readonly of: readonly Sheet[] };

/** What a plan was handed in, told apart into sheets and plain data: a copy, which the caller cannot change. */
export function planOfInput(input: PlanInput, defaults: Pick<PlanInput, "tolerance" | "silent">): PlanOf {
  const of: Sheet[] = [];
  const placeOf = (s: Sheet): number => (of.includes(s) ? of.indexOf(s) : of.push(s) - 1);
  const storedMeal = ({ dishes, ...meal }: MealInput): StoredMeal => {
    if (dishes instanceof Sheet) return { ...meal, dish: placeOf(dishes) };
    const named = Object.entries(dishes).map(([name, dish]): StoredDish => {
      const { sheet, ...how } = dish instanceof Sheet ? { sheet: dish } : dish;
      return { name, ...how, sheet: placeOf(sheet) };
    });
    return { ...meal, dishes: named };
  };
  const { days, meals, people: given, ...rest } = input;
  const people = given.map(({ instead, besides, ...person }): StoredPerson => {
    const places = Object.entries(instead ?? {}).map(([dish, s]) => [dish, placeOf(s)]);
    const eaten = besides?.map(({ sheet, ...each }) => ({
      ...each,
      ...(sheet && { sheet: placeOf(sheet) }),
    }));
    return {
      ...person,
      ...(instead && { instead: Object.fromEntries(places) }),
      ...(eaten && { besides: eaten }),
    };
  });
  const menu = {
    ...(days && { days: days.map((day): StoredDay => ({ ...day, meals: day.meals.map(storedMeal) })) }),
    ...(meals && { meals: meals.map(storedMeal) }),
  };
  return { ...plainData({ ...defaults, ...rest, people, ...menu }), of };
}

/** What JSON makes of data; a number without end is the greatest that JSON has, a clone of an exact one its text. */
function plainData<T>(data: T): T {
  const plain = (_: string, value: unknown): unknown => {
    if (value === Number.POSITIVE_INFINITY) return Number.MAX_VALUE;
    return typeof value === "object" && value !== null && isNumeric(value) ? exact(value).toJSON() : value;
  };
  return JSON.parse(JSON.stringify(data, plain));
}

/** A plan as plain data. */
export function storedPlan({ of, ...input }: PlanOf, portions: readonly Portion[]): StoredPlan {
  const avoided = input.people.flatMap(foodsAvoided);
  return {
    format: PLAN_FORMAT,
    ...input,
    sheets: of.map((s) => storedSheet(s, avoided)),
    portions: portions.map(storedPortion),
  };
}

/** Foods that people avoid are named in the plan, whether or not a recipe has them. */
function foodsAvoided({ avoid = [] }: StoredPerson): readonly string[] {
  return avoid.flatMap((each) => (typeof each === "object" && "food" in each ? each.food : []));
}

/** What is to be found again when the plan is opened. */
export function storedPortion({ person, meal, status, factor, dishes }: Portion): StoredPortion {
  const grams = (s: Sheet): { readonly [line: string]: string } =>
    Object.fromEntries(s.lines.map((line) => [line.key, line.grams.toJSON()]));
  return {
    person,
    meal,
    status,
    factor: factor.toJSON(),
    dishes: Object.fromEntries([...dishes].map(([name, s]) => [name, grams(s)])),
  };
}
