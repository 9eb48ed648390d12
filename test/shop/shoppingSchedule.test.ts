import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, plus, sum, times, ZERO } from "../../src/number/exact.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { type ShoppingList, shoppingList } from "../../src/shop/shoppingList.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText as tablesText } from "../../src/show/text.ts";
import { campPlan } from "../plan/camp.ts";
import { runs } from "../runs.ts";
import { written } from "../written.ts";

/** Foods of our own: prices and packs are made up. */
const food = (id: string, about: Partial<FoodInput> = {}): FoodInput => ({
  id,
  name: id,
  source: "made up",
  per100g: { energy: 100 },
  price: { currency: "GBP", per100g: "0.37" },
  ...about,
});
const foods = foodTable([
  food("beans", { packs: [{ name: "tin", edible: 240, price: "0.85" }], price: { currency: "GBP" } }),
  food("rice"),
  food("seeds", { edibleShare: "0.8" }),
  food("chilli"),
]);
const topping: RecipeInput = {
  name: "Topping",
  portions: 10,
  lines: [
    { food: "seeds", amount: "90 g" },
    { food: "rice", amount: "7 g" },
  ],
};
const bowl = sheet(
  {
    name: "Bowl",
    portions: 2,
    lines: [
      { key: "beans", food: "beans", amount: "130 g" },
      { key: "rice", food: "rice", amount: "100 g", part: "rice" },
      { key: "topping", recipe: "topping", amount: "2 portions", added: "serving" },
      { key: "chilli", food: "chilli", amount: "3 g", scaling: "per-portion" },
    ],
  },
  foods,
  { recipes: { topping } },
);
const soup = sheet(
  { name: "Soup", portions: 3, lines: [{ key: "beans", food: "beans", amount: "200 g" }] },
  foods,
);
const people = [
  { id: "cox", name: "Cox", demands: { factor: "5/7" } },
  { id: "bow", name: "Bow", demands: { factor: "11/9" } },
  { id: "stroke", name: "Stroke", demands: { factor: 2 } },
];
const plan = portionPlan({
  meals: [
    { id: "lunch", name: "Lunch", dishes: bowl },
    { id: "supper", name: "Supper", dishes: { bowl, soup } },
  ],
  people,
});

/** Foods of a sheet by hand: the topping is 97 g, of which so many grams are seeds and rice. */
function foodsOf(s: Sheet): ReadonlyMap<string, Exact> {
  const grams = new Map<string, Exact>();
  const add = (id: string, more: Exact): unknown => grams.set(id, plus(grams.get(id) ?? ZERO, more));
  for (const { key, food: id, grams: exactGrams } of s.lines) {
    if (id !== undefined) add(id, exactGrams);
    if (key === "topping") {
      add("seeds", times(exactGrams, fraction(90n, 97n)));
      add("rice", times(exactGrams, fraction(7n, 97n)));
    }
  }
  return grams;
}

const days = ["Sun", "Mon", "Tue", "Wed", "Thu"];
const someDays = fc.subarray(days);
const week = fc.record({
  cook: someDays,
  eaten: fc.subarray(days, { minLength: 1 }),
  away: fc.dictionary(fc.constantFrom("cox", "bow", "stroke"), someDays),
  servings: fc.dictionary(fc.constantFrom("cox", "bow", "stroke"), fc.integer({ min: 0, max: 2 })),
  vessel: fc.option(fc.constantFrom("300 g", "1 kg", "20 kg"), { nil: undefined }),
});

const needs = (list: ShoppingList): Record<string, string> =>
  Object.fromEntries(list.lines.map(({ food: id, needed }) => [id, exactText(needed)]));

describe("a schedule, shopped for", () => {
  it("is bought as everyone eats of it on all days, line by line", () => {
    fc.assert(
      fc.property(week, ({ cook, eaten, away, servings, vessel }) => {
        const schedule = cookingSchedule(plan, {
          days,
          cook: [...new Set(["Sun", ...cook])],
          away,
          meals: { supper: { eaten, servings, ...(vessel !== undefined && { vessel }) } },
        });
        const needed = new Map<string, Exact>();
        for (const { person, meal, dishes } of plan.portions) {
          const on = (meal === "supper" ? eaten : days).filter((day) => !away[person]?.includes(day));
          const each = meal === "supper" ? (servings[person] ?? 1) : 1;
          for (const s of dishes.values()) {
            for (const [id, grams] of foodsOf(s)) {
              const all = times(grams, fraction(BigInt(each * on.length)));
              needed.set(id, plus(needed.get(id) ?? ZERO, all));
            }
          }
        }
        const found = needs(shoppingList(schedule));
        const wanted = [...needed].filter(([, grams]) => grams.n !== 0n);
        expect(found).toEqual(Object.fromEntries(wanted.map(([id, grams]) => [id, exactText(grams)])));
      }),
      { numRuns: runs(100) },
    );
  });

  it("of one day is the plan's own list, costs and all", () => {
    const cupboard = { beans: "100 g", rice: "enough" };
    for (const how of [{}, { days: ["Sun"] }]) {
      for (const each of [plan, campPlan()]) {
        const stock = each === plan ? { cupboard } : {};
        const list = shoppingList(cookingSchedule(each, how), stock);
        expect(written(list)).toEqual(written(shoppingList(each, stock)));
        expect(tablesText(list)).toBe(tablesText(shoppingList(each, stock)));
      }
    }
  });

  it("costs everyone what they eat, which adds up to what is paid", () => {
    fc.assert(
      fc.property(week, ({ cook, eaten, away, servings }) => {
        const list = shoppingList(
          cookingSchedule(plan, {
            days,
            cook: [...new Set(["Sun", ...cook])],
            away,
            meals: { lunch: { eaten, servings } },
          }),
        );
        for (const { currency, value, unrounded: whole } of list.totals) {
          const parts = list.portions.flatMap(({ costs }) => costs.filter((c) => c.currency === currency));
          expect(exactText(sum(parts.map((part) => part.unrounded)))).toBe(exactText(whole));
          expect(exactText(sum(parts.map((part) => exact(part.value))))).toBe(exactText(exact(value)));
        }
        expect(list.portions.every(({ portions }) => portions.gt(0))).toBe(true);
      }),
      { numRuns: runs(50) },
    );
  });

  it("says that costs are of all days", () => {
    const text = tablesText(shoppingList(cookingSchedule(plan, { days })));
    expect(text).toContain("all portions of each person, on all days");
    expect(tablesText(shoppingList(plan))).not.toContain("on all days");
  });

  it("is nothing where nobody eats", () => {
    const none = cookingSchedule(plan, { meals: { lunch: { servings: 0 }, supper: { servings: 0 } } });
    expect(written(shoppingList(none))).toEqual({
      is: "steelyard/shopping@1",
      lines: [],
      cupboard: [],
      totals: [],
      unpriced: [],
      left: {},
      portions: [],
    });
  });
});

describe("several things, shopped for together", () => {
  const week1 = cookingSchedule(plan, { days: ["Sun", "Mon"], away: { cox: ["Mon"] } });
  const guests: Plan = portionPlan({
    meals: [{ id: "supper", name: "Guests", dishes: soup }],
    people: [{ id: "guest", name: "Guest" }, { id: "cox" }],
  });

  it("are what each needs, added up, packs chosen for all of it", () => {
    const all = [week1, guests, bowl] as const;
    const list = shoppingList(all);
    const each = all.map((one) => needs(shoppingList(one)));
    for (const { food: id, needed } of list.lines) {
      expect(exactText(needed)).toBe(exactText(sum(each.map((one) => exact(one[id] ?? 0)))));
    }
    const tins = (of: ShoppingList): number => of.line("beans").packs[0]?.count.toNumber() ?? 0;
    const apart = all.map((one) => tins(shoppingList(one))).reduce((a, b) => a + b);
    expect(tins(list)).toBeLessThanOrEqual(apart);
    expect(toRecords(shoppingList([plan]))).toEqual(toRecords(shoppingList(plan)));
  });

  it("tell of one person in several of them once, and of sheets beside people", () => {
    const list = shoppingList([week1, guests, bowl]);
    const of = (who: string): string[] =>
      list.portions.flatMap(({ person, meal, portions }) => (person === who ? [`${meal} ${portions}`] : []));
    expect(of("cox")).toEqual(["lunch 1", "supper 2"]);
    expect(of("guest")).toEqual(["supper 1"]);
    const text = tablesText(list);
    expect(text.match(/What portions cost/g)).toHaveLength(2);
    // The first says what a person or meal is called.
    expect(text).toMatch(/Person .*Lunch.*Supper/);
    expect(text).not.toContain("Guests");
    const [total] = list.totals;
    const paid = list.portions.flatMap(({ costs }) => costs.map(({ unrounded: own }) => own));
    expect(exactText(sum(paid))).toBe(exactText(total?.unrounded ?? ZERO));
  });
});
