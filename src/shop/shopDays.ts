import { cookingSchedule } from "../cook/cookingSchedule.ts";
import { CookingSchedule } from "../cook/schedule.ts";
import { anyText } from "../document/leaves.ts";
import { readFar } from "../document/read.ts";
import { fields, list, once, type Schema } from "../document/schema.ts";
import { type Fault, fault, quote, throwIfAny } from "../number/error.ts";
import { type Exact, fraction } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { compareRatios } from "../number/ratio.ts";
import { Plan } from "../plan/planned.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { InCupboard, ShoppingOptions } from "./input.ts";
import type { ShopDay, ShoppingList } from "./list.ts";
import { makeList } from "./makeList.ts";
import { Opener } from "./need.ts";
import { namesIn } from "./shopped.ts";

/** Options of {@link shoppingLists}. */
export interface ShopDaysOptions extends ShoppingOptions {
  /** The days on which someone goes to the shop, by the names of the schedule's days. */
  readonly on: readonly string[];
}

/**
 * What to buy on each shop day: what is cooked, made or added from that day until the next one. What is left of
 * the packs of one list is in the cupboard for the next, unless the food says (`keepsDays`) that it will not
 * keep until then. A food that is used later than it keeps after it is bought is told (`usedLate`): name
 * another shop day, or freeze it. Of a food that says nothing, nothing is presumed.
 *
 * A plan is bought as each dish is cooked on the day it is eaten. What portions cost is told by the one list
 * of all days, {@link shoppingList}. Days before the first meal are named by the schedule:
 * `cookingSchedule(plan, { days: ["sat", "sun", "mon", …] })`.
 *
 * Throws one error with every fault: `shopping-malformed` (no shop day before the first cooking, days that
 * are not the schedule's), and those of {@link shoppingList}.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "60 g" }] }, starterFoods);
 * const days = ["mon", "tue", "wed"].map((id) => ({ id, meals: [{ id: "breakfast", dishes: oats }] }));
 * const plan = portionPlan({ days, people: [{ id: "cox" }, { id: "bow" }] });
 * const lists = shoppingLists(plan, { on: ["mon", "wed"], cupboard: { "oats-rolled-dry": "100 g" } });
 * console.log(lists.map(({ shopDay, lines }) => `${shopDay?.day}: ${lines[0].bought} g`)); // => [ 'mon: 140 g', 'wed: 120 g' ]
 * ```
 */
export function shoppingLists(x: Plan | CookingSchedule, how: ShopDaysOptions): readonly ShoppingList[] {
  const schedule = scheduleOf(x);
  const names = new Map(schedule.plan.days.map(({ id, name }) => [id, name]));
  const nameOf = (day: string): string => names.get(day) ?? day;
  const { on, ...rest } = readShopDays(how, schedule);
  const byDay = schedule.cookedByDay();
  refuseEarly(byDay, on, schedule);
  const ages = new Map<string, number>();
  let cupboard: Readonly<Record<string, InCupboard>> = rest.cupboard ?? {};
  return on.map((place, i): ShoppingList => {
    const next = on[i + 1];
    const places = Array.from({ length: (next ?? byDay.length) - place }, (_, after) => place + after);
    const days = places.filter((day) => (byDay[day] ?? []).length > 0);
    const day = schedule.days[place] ?? "";
    const shopDay: ShopDay = {
      day,
      name: nameOf(day),
      for: days.flatMap((of) => {
        const id = schedule.days[of];
        return id === undefined ? [] : [{ day: id, name: nameOf(id) }];
      }),
    };
    const list = makeList(
      { sheets: days.flatMap((of) => byDay[of] ?? []), eaters: () => [], names: namesIn(schedule.plan) },
      { ...rest, cupboard },
      {
        shopDay,
        foods: byDay.flat(),
        usedLate: (food, keeps) =>
          days
            .filter((of) => isPast(keeps, of - place) && uses(byDay[of] ?? [], food))
            .flatMap((of) => nameOf(schedule.days[of] ?? "")),
      },
    );
    for (const { food, bought } of list.lines) if (bought.n !== 0n) ages.set(food, place);
    if (next !== undefined) cupboard = keptUntil(next, list, ages);
    return list;
  });
}

function scheduleOf(x: unknown): CookingSchedule {
  if (x instanceof CookingSchedule) return x;
  if (x instanceof Plan) return cookingSchedule(x);
  const hint = "give a plan with a menu of days, or a schedule that names its days";
  throw fault("shopping-malformed", "there are no days to shop for", hint);
}

const shopDaysHow: () => Schema<Pick<ShopDaysOptions, "on">> = /* @__PURE__ */ once(() =>
  fields<Pick<ShopDaysOptions, "on">>({
    on: list(anyText(), { least: 1, most: 366, like: '["sun", "wed"]' }),
  }),
);

/** Shop days by their places, in order; the rest is read where the list is made. */
function readShopDays(
  how: unknown,
  { days }: CookingSchedule,
): Omit<ShopDaysOptions, "on"> & { readonly on: readonly number[] } {
  const faults: Fault[] = [];
  const { on: given, ...rest } = (typeof how === "object" && how !== null ? how : {}) as ShopDaysOptions;
  const { on = [] } =
    readFar(faults, shopDaysHow(), given === undefined ? {} : { on: given }, "shopping-malformed") ?? {};
  const places = on.map((day, i) => {
    const place = days.indexOf(day);
    if (place < 0) {
      const hint = didYouMean(
        day,
        days,
        "use the days of the schedule; it may have some before the first meal",
      );
      faults.push({
        code: "shopping-malformed",
        path: ["on", i],
        message: `no day is called ${quote(day)}`,
        hint,
      });
    }
    return place;
  });
  throwIfAny(faults);
  return { ...rest, on: [...new Set(places)].sort((a, b) => a - b) };
}

function refuseEarly(
  byDay: readonly (readonly Sheet[])[],
  [first = 0]: readonly number[],
  { days }: CookingSchedule,
): void {
  const early = byDay.findIndex((sheets) => sheets.length > 0);
  if (early < 0 || early >= first) return;
  const hint = `shop on ${quote(days[early] ?? "")} or before`;
  const message = `something is cooked on ${quote(days[early] ?? "")}, before the first shop day`;
  throw fault("shopping-malformed", message, hint, ["on"]);
}

/** What is left of a list, less what does not keep until another day. */
function keptUntil(
  next: number,
  list: ShoppingList,
  ages: ReadonlyMap<string, number>,
): Readonly<Record<string, InCupboard>> {
  const keeps = new Map(list.lines.map(({ food, keepsDays }) => [food, keepsDays]));
  return Object.fromEntries(
    Object.entries(list.left).filter(([food]) => {
      const bought = ages.get(food);
      return bought === undefined || !isPast(keeps.get(food), next - bought);
    }),
  );
}

function isPast(keeps: Exact | undefined, days: number): boolean {
  return keeps !== undefined && compareRatios(fraction(BigInt(days)), keeps) > 0;
}

function uses(sheets: readonly Sheet[], food: string): boolean {
  return new Opener().gramsOf(sheets).has(food);
}
