import { versioned } from "../document/format.ts";
import { count, meta, text, value, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import {
  asFar,
  byName,
  fields,
  list,
  once,
  optional,
  readAs,
  type Schema,
  type Shape,
} from "../document/schema.ts";
import { type Fault, type Path, quote, throwIfAny } from "../number/error.ts";
import { fitHow } from "../scale/fit/read.ts";
import { sheetSchema, writtenBy } from "../sheet/openSheet.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { DishInput, MealInput, PlanInput } from "./input.ts";
import { portionPlan } from "./plan.ts";
import type { Plan } from "./planned.ts";
import { planShape } from "./read/readPlan.ts";
import {
  PLAN_FORMAT,
  type StoredDay,
  type StoredDish,
  type StoredMeal,
  type StoredPerson,
  type StoredPlan,
  type StoredPortion,
  storedPortion,
} from "./storedPlan.ts";

/** Options of {@link openPlan}. */
export interface OpenPlanOptions {
  /**
   * What to do where this version finds other portions than the stored ones: `refuse` unless told.
   * `accept` gives the plan as it is found now.
   */
  readonly moved?: "refuse" | "accept";
}

/**
 * Opens a plan that was stored: what `JSON.parse` gives of a plan's JSON. It needs no food table. What the plan
 * was made from is planned again, and every portion is held against the stored one, gram by gram, so that
 * the plan that is given has the figures that were stored, literally.
 *
 * Throws `plan-malformed` with every fault, `plan-format-newer` for one that a later version wrote,
 * `plan-moved` where a portion comes out otherwise than it was stored, and the codes of
 * `openSheet` and {@link portionPlan}.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "60 g" }] }, starterFoods);
 * const plan = portionPlan({
 *   meals: [{ id: "breakfast", dishes: oats }],
 *   people: [{ id: "cox" }, { id: "bow", demands: { factor: "4/3" } }],
 * });
 * const opened = openPlan(JSON.parse(JSON.stringify(plan)));
 * console.log(opened.portion("bow", "breakfast").dishes.get("breakfast")?.mass.portion.toString()); // => 80
 * ```
 */
export function openPlan(stored: unknown, how: OpenPlanOptions = {}): Plan {
  const { moved = "refuse" } = read(openPlanOptions(), how, "plan-malformed");
  const { input, portions } = read(storedPlanSchema(), writtenBy(stored), "plan-malformed");
  const plan = portionPlan(input);
  if (moved === "refuse") throwIfAny(movedFrom(portions, plan));
  return plan;
}

const openPlanOptions: () => Schema<OpenPlanOptions> = /* @__PURE__ */ once(() =>
  fields<OpenPlanOptions>({ moved: optional(word(["refuse", "accept"])) }),
);

/** What is not as it was stored, portion by portion. */
function movedFrom(portions: readonly StoredPortion[], plan: Plan): readonly Fault[] {
  const said = (portion: StoredPortion): string => JSON.stringify(storedInOrder(portion));
  const now = new Map(plan.portions.map((each) => [keyOf(each), said(storedPortion(each))]));
  return portions.flatMap((portion, i): Fault[] => {
    if (now.get(keyOf(portion)) === said(portion)) return [];
    const { person, meal } = portion;
    const message = `the portion of ${quote(person)} for ${quote(meal)} comes out otherwise than it was stored`;
    const hint = 'open it with the version that wrote it, or take it as it is found now: { moved: "accept" }';
    return [{ code: "plan-moved", path: ["portions", i], message, hint }];
  });
}

const keyOf = ({ person, meal }: { readonly person: string; readonly meal: string }): string =>
  JSON.stringify([person, meal]);

/** In one order of fields, however a database gives them back. */
function storedInOrder({ person, meal, status, factor, dishes }: StoredPortion): unknown {
  const sorted = (of: object): [string, unknown][] => Object.entries(of).sort(([a], [b]) => (a < b ? -1 : 1));
  return [
    person,
    meal,
    status,
    factor,
    sorted(dishes).map(([name, lines]) => [name, sorted(lines as object)]),
  ];
}

interface ReadStored {
  readonly input: PlanInput;
  readonly portions: readonly StoredPortion[];
}

type Read = Omit<StoredPlan, "sheets" | "format"> & {
  readonly format: string;
  readonly sheets: readonly Sheet[];
};

/** Every format that a plan was ever written in. What is no sheet is `portionPlan`'s to read. */
export const storedPlanSchema: () => Schema<ReadStored> = /* @__PURE__ */ once(() =>
  versioned<ReadStored>("plan", "plan-format-newer", {
    1: storedAs("steelyard-plan/1", { meals: list(storedMeal()) }),
    2: storedAs(PLAN_FORMAT, {
      days: optional(list(storedDay())),
      meals: optional(list(storedMeal())),
    }),
  }),
);

/** A plan whose menu is written in a certain way. */
function storedAs(format: string, menu: Partial<Shape<Pick<Read, "days" | "meals">>>): Schema<ReadStored> {
  return asFar(
    fields<Read>({
      format: word([format]),
      sheets: list(sheetSchema()),
      ...menu,
      portions: list(
        fields<StoredPortion>({
          person: text(),
          meal: text(),
          status: word(["met", "within-tolerance", "out-of-reach", "not-served", "away"]),
          factor: text(100_000),
          dishes: byName(byName(text(100_000))),
        }),
      ),
      ...passedOn(),
    } as Shape<Read>),
    ({ format: _, sheets = [], days, meals, portions = [], ...rest }, refuse) => {
      const at = (place: number, path: Path): Sheet => {
        if (sheets[place] === undefined && place >= sheets.length)
          refuse(`there is no sheet ${place}`, "name sheets by their place, from 0", path);
        return sheets[place] as Sheet;
      };
      const made = (all: readonly StoredMeal[], path: Path): readonly MealInput[] =>
        all.flatMap((meal, i) => (meal === undefined ? [] : mealOf(meal, [...path, i], at)));
      const menu = {
        ...(days && {
          days: days.map((day, i) => day && { ...day, meals: made(day.meals ?? [], ["days", i, "meals"]) }),
        }),
        ...(meals && { meals: made(meals, ["meals"]) }),
      };
      const people = Array.isArray(rest.people)
        ? rest.people.map((person, i) => personOf(person, ["people", i], at))
        : rest.people;
      return { input: { ...rest, people, ...menu } as PlanInput, portions };
    },
  );
}

function storedMeal(): Schema<StoredMeal> {
  return fields<StoredMeal>({
    id: text(),
    name: optional(text()),
    dish: optional(count(0, 10_000)),
    dishes: optional(
      list(fields<StoredDish>({ name: text(), sheet: count(0, 10_000), density: optional(value()) })),
    ),
    fit: optional(asGiven(fitHow())),
    meta: optional(asGiven(meta())),
  });
}

function storedDay(): Schema<StoredDay> {
  return fields<StoredDay>({
    id: text(),
    name: optional(text()),
    meals: list(storedMeal()),
    meta: optional(asGiven(meta())),
  });
}

function mealOf(
  { dish, dishes = [], ...own }: StoredMeal,
  path: Path,
  at: (place: number, path: Path) => Sheet,
): MealInput {
  if (dish !== undefined) return { ...own, dishes: at(dish, [...path, "dish"]) };
  const named = dishes.flatMap((each, k): [string, DishInput][] => {
    if (each === undefined) return [];
    const { name, sheet, ...how } = each;
    return [[name, { ...how, sheet: at(sheet, [...path, "dishes", k, "sheet"]) }]];
  });
  return { ...own, dishes: Object.fromEntries(named) };
}

/** With their own sheets; all else is `portionPlan`'s to read. */
function personOf(person: StoredPerson, path: Path, at: (place: number, path: Path) => Sheet): unknown {
  if (!isRecord(person)) return person;
  const { instead, besides } = person;
  const placed = (place: unknown, ...field: Path): unknown =>
    typeof place === "number" ? at(place, [...path, ...field]) : place;
  const own = isRecord(instead)
    ? Object.entries(instead).map(([dish, place]) => [dish, placed(place, "instead", dish)])
    : undefined;
  const eaten = Array.isArray(besides)
    ? besides.map((each: unknown, i) =>
        isRecord(each) && "sheet" in each
          ? { ...each, sheet: placed(each.sheet, "besides", i, "sheet") }
          : each,
      )
    : undefined;
  return { ...person, ...(own && { instead: Object.fromEntries(own) }), ...(eaten && { besides: eaten }) };
}

/** The fields that `portionPlan` reads, handed on as they are. */
function passedOn(): Shape<Omit<PlanInput, "days" | "meals">> {
  const { days: _days, meals: _meals, people, ...others } = planShape();
  const passed = Object.entries(others).map(([field, like]) => [field, optional(asGiven(like))]);
  return { people: asGiven(people), ...Object.fromEntries(passed) } as Shape<
    Omit<PlanInput, "days" | "meals">
  >;
}

function asGiven<T>(like: Schema<unknown>): Schema<T> {
  return readAs(like, "what portionPlan takes", (given) => given as T);
}
