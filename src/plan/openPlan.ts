import { versioned } from "../document/format.ts";
import { count, meta, text, value, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
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
import { type Fault, quote, throwIfAny } from "../number/error.ts";
import { fitHow } from "../scale/fit/read.ts";
import { sheetSchema, writtenBy } from "../sheet/openSheet.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { DishInput, MealInput, PlanInput } from "./input.ts";
import { portionPlan } from "./plan.ts";
import type { Plan } from "./planned.ts";
import { planShape } from "./read/readPlan.ts";
import {
  PLAN_FORMAT,
  type StoredDish,
  type StoredMeal,
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
 * {@link openSheet} and {@link portionPlan}.
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

type Read = Omit<StoredPlan, "sheets"> & { readonly sheets: readonly Sheet[] };

/** Every format that a plan was ever written in. What is no sheet is `portionPlan`'s to read. */
export const storedPlanSchema: () => Schema<ReadStored> = /* @__PURE__ */ once(() =>
  versioned<ReadStored>("plan", "plan-format-newer", {
    1: asFar(
      fields<Read>({
        format: word([PLAN_FORMAT]),
        sheets: list(sheetSchema()),
        meals: list(
          fields<StoredMeal>({
            id: text(),
            name: optional(text()),
            dish: optional(count(0, 10_000)),
            dishes: optional(
              list(fields<StoredDish>({ name: text(), sheet: count(0, 10_000), density: optional(value()) })),
            ),
            fit: optional(asGiven(fitHow())),
            meta: optional(asGiven(meta())),
          }),
        ),
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
      }),
      ({ format: _, sheets = [], meals = [], portions = [], ...rest }, refuse) => {
        const made = meals.map((meal, i): MealInput | undefined => {
          if (meal === undefined) return undefined;
          const at = (place: number, path: readonly (string | number)[]): Sheet => {
            if (sheets[place] === undefined && place >= sheets.length)
              refuse(`there is no sheet ${place}`, "name sheets by their place, from 0", [
                "meals",
                i,
                ...path,
              ]);
            return sheets[place] as Sheet;
          };
          const { dish, dishes = [], ...own } = meal;
          if (dish !== undefined) return { ...own, dishes: at(dish, ["dish"]) };
          const named = dishes.flatMap((each, k): [string, DishInput][] => {
            if (each === undefined) return [];
            const { name, sheet, ...how } = each;
            return [[name, { ...how, sheet: at(sheet, ["dishes", k, "sheet"]) }]];
          });
          return { ...own, dishes: Object.fromEntries(named) };
        });
        return { input: { ...rest, meals: made as readonly MealInput[] }, portions };
      },
    ),
  }),
);

/** The fields that `portionPlan` reads, handed on as they are. */
function passedOn(): Shape<Omit<PlanInput, "meals">> {
  const { meals: _, people, ...others } = planShape();
  const passed = Object.entries(others).map(([field, like]) => [field, optional(asGiven(like))]);
  return { people: asGiven(people), ...Object.fromEntries(passed) } as Shape<Omit<PlanInput, "meals">>;
}

function asGiven<T>(like: Schema<unknown>): Schema<T> {
  return readAs(like, "what portionPlan takes", (given) => given as T);
}
