import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { type Exact, exact, minus, plus, sum, ZERO } from "../../src/number/exact.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import {
  type ShoppingList,
  shoppingDifference,
  shoppingList,
  shoppingLists,
} from "../../src/shop/shoppingList.ts";
import { toText } from "../../src/show/text.ts";
import { runs } from "../runs.ts";

/** Foods of our own: packs, prices and keeping are made up. */
const food = (id: string, about: Partial<FoodInput> = {}): FoodInput => ({
  ...{ id, name: id, source: "made up", per100g: { energy: 100 } },
  ...about,
});
const foods = foodTable([
  food("beans", { packs: [{ name: "tin", edible: 240 }] }),
  food("rice", { packs: [{ name: "1 kg bag", edible: 1000 }] }),
  food("spinach", { packs: [{ name: "200 g bag", edible: 200 }], keepsDays: 2 }),
  food("oil"),
]);
const stew = sheet(
  {
    ...{ name: "Stew", portions: 2 },
    lines: [
      { key: "beans", food: "beans", amount: "130 g" },
      { key: "sauce", recipe: "sauce", amount: "80 g" },
      { key: "spinach", food: "spinach", amount: "70 g", added: "serving" },
    ],
  },
  foods,
  {
    recipes: {
      sauce: {
        ...{ name: "Sauce", portions: 2, cookedMass: "150 g" },
        lines: [
          { food: "oil", amount: "20 g" },
          { food: "rice", amount: "140 g" },
        ],
        notes: [{ kind: "storage", text: "Keeps 2 days.", source: "own", days: 2 }],
      },
    },
  },
);
const ids = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];
const week = (factor: string): Plan =>
  portionPlan({
    days: ids.map((id) => ({ id, name: `Day ${id}`, meals: [{ id: "supper", dishes: { stew } }] })),
    people: [
      { id: "cox", demands: { factor } },
      { id: "bow", demands: { factor: 2 }, away: ["thu/supper"] },
    ],
  });
const plan = week("5/7");

/** Grams of each food that stood in the cupboard and were bought, and those used and left. */
function both({ lines, cupboard, left }: ShoppingList, id: string): readonly [Exact, Exact] {
  const line = lines.find((each) => each.food === id);
  const had = cupboard.find((each) => each.food === id)?.had ?? ZERO;
  const rest = left[id];
  const kept = rest === undefined || rest === "enough" ? ZERO : rest.value;
  return [plus(had, line?.bought ?? ZERO), plus(line?.needed ?? ZERO, kept)];
}

describe("lists by shop day", () => {
  it("buy all that the one list of all days needs, and of each what was in stock and bought is used and left", () => {
    const schedule = cookingSchedule(plan, { cook: { stew: ["mon", "wed", "sat"] } });
    fc.assert(
      fc.property(fc.subarray(ids.slice(1)), fc.integer({ min: 0, max: 900 }), (on, rice) => {
        const cupboard = { rice: `${rice} g` };
        const lists = shoppingLists(schedule, { on: ["mon", ...on], cupboard });
        const whole = shoppingList(schedule, { cupboard });
        for (const { food: id, needed } of whole.lines) {
          const each = lists.flatMap(({ lines }) => lines.filter((line) => line.food === id));
          expect(sum(each.map((line) => line.needed)).toJSON()).toBe(needed.toJSON());
          for (const list of lists) {
            const [inHand, gone] = both(list, id);
            expect(inHand.toJSON()).toBe(gone.toJSON());
          }
        }
        lists.slice(1).forEach(({ cupboard: stock }, i) => {
          const left = lists[i]?.left ?? {};
          for (const { food: id, had } of stock) {
            const before = left[id];
            expect(had?.toJSON()).toBe(before === "enough" ? undefined : before?.value.toJSON());
          }
        });
      }),
      { numRuns: runs(20) },
    );
  });

  it("do not keep for the next what the food says does not keep, and tell what is used too late", () => {
    const [first, second] = shoppingLists(plan, { on: ["mon", "sat"] });
    expect(first?.shopDay).toEqual({
      ...{ day: "mon", name: "Day mon" },
      for: ids.slice(0, 5).map((day) => ({ day, name: `Day ${day}` })),
    });
    expect(first?.line("spinach").usedLate).toEqual(["Day thu", "Day fri"]);
    expect(first?.line("beans").usedLate).toEqual([]);
    const text = first ? toText(first) : "";
    expect(text).toContain("Shopping list, Day mon: for Day mon to Day fri");
    expect(text).toContain("spinach: keeps 2 days as bought, and is used on Day thu, Day fri");
    expect(first?.left).toHaveProperty("spinach");
    expect(second?.cupboard.map(({ food: id }) => id)).toEqual(["beans", "oil", "rice"]);
    const near = shoppingLists(plan, { on: ["mon", "wed", "thu"] })[2];
    expect(near?.cupboard.map(({ food: id }) => id)).toContain("spinach");
  });

  it("of days before the menu's are shopped for ahead", () => {
    const schedule = cookingSchedule(plan, { days: ["sun before", ...ids] });
    const [list] = shoppingLists(schedule, { on: ["sun before"] });
    expect(list?.shopDay?.for.map(({ day }) => day)).toEqual(ids);
    expect(list?.line("spinach").usedLate).toEqual(["Day wed", "Day thu", "Day fri", "Day sat", "Day sun"]);
  });

  it("refuse days that are none, and a first one after something is cooked", () => {
    const codes = (on: readonly string[]): unknown => {
      try {
        return shoppingLists(plan, { on });
      } catch (error) {
        return error instanceof SteelyardError
          ? error.faults.map(({ path, code }) => [code, ...path])
          : error;
      }
    };
    expect(codes(["mon", "someday", "never"])).toEqual([
      ["shopping-malformed", "on", 1],
      ["shopping-malformed", "on", 2],
    ]);
    expect(codes(["tue"])).toEqual([["shopping-malformed", "on"]]);
    expect(codes([])).toEqual([["shopping-malformed", "on"]]);
  });
});

describe("next week's list", () => {
  it("takes what this week's leaves, so that two weeks are used and left as bought", () => {
    const [this_, next] = [plan, week("6/7")];
    const first = shoppingList(this_, { cupboard: { oil: "enough", beans: "30 g" } });
    const carried = JSON.parse(JSON.stringify(first.left)) as typeof first.left;
    const second = shoppingList(next, { cupboard: carried });
    expect(second.line("oil").bought.isZero()).toBe(true);
    for (const id of ["beans", "rice", "spinach"]) {
      const rest = second.left[id];
      const left = rest === undefined || rest === "enough" ? ZERO : rest.value;
      const had = id === "beans" ? exact(30) : ZERO;
      const inHand = sum([had, first.line(id).bought, second.line(id).bought]);
      const used = plus(first.line(id).needed, second.line(id).needed);
      expect(minus(inHand, used).toJSON()).toBe(left.toJSON());
    }
  });

  it("is held against this week's by what is bought", () => {
    const [before, after] = [
      shoppingList(plan),
      shoppingList(
        [week("3"), sheet({ name: "Toast", portions: 1, lines: [{ food: "oil", amount: "500 g" }] }, foods)],
        { cupboard: { rice: "enough" } },
      ),
    ];
    const { changes } = shoppingDifference(before, after);
    expect(changes.map(({ food: id, change }) => [id, change])).toEqual([
      ["beans", "bought"],
      ["oil", "bought"],
      ["rice", "removed"],
      ["spinach", "bought"],
    ]);
    for (const { food: id, by, change } of changes) {
      const bought = (list: ShoppingList): Exact => list.lines.find((l) => l.food === id)?.bought ?? ZERO;
      expect(by.toJSON()).toBe(minus(bought(after), bought(before)).toJSON());
      expect(change === "removed").toBe(bought(after).isZero());
    }
    expect(toText(shoppingDifference(before, after))).toMatch(/beans +\d+ × tin +\d+ × tin +\d+/);
    expect(shoppingDifference(before, before).changes).toEqual([]);
  });
});
