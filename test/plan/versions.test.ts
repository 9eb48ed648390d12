import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { britishEnglish } from "../../src/document/language.ts";
import { starterFoods } from "../../src/foods.ts";
import { type ComponentId, components, type LineInput, revise, type Sheet, sheet } from "../../src/index.ts";
import type { DayInput, PersonInput, PlanInput } from "../../src/plan/input.ts";
import { openPlan, type Plan, portionPlan, swapFor } from "../../src/plan.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const of = (name: string, lines: readonly LineInput[], more: object = {}): Sheet =>
  sheet({ name, portions: 2, lines, ...more }, starterFoods);
const curry = of(
  "Curry",
  [
    { key: "chicken", food: "chicken-breast-raw", amount: "300 g" },
    { key: "onion", food: "onions-raw", amount: "200 g" },
    { key: "oil", food: "olive-oil", amount: "20 g", scaling: "adjustable" },
    { key: "cream", food: "yoghurt-plain-whole", amount: "60 g", added: "serving" },
  ],
  { cookedMass: "450 g" },
);
const porridge = of("Porridge", [
  { key: "oats", food: "oats-rolled-dry", amount: "120 g" },
  { key: "milk", food: "milk-whole", amount: "400 g" },
  { key: "seeds", food: "pumpkin-seeds", amount: "20 g", scaling: "per-portion", added: "serving" },
]);
const tofu = revise(curry, { swap: { chicken: "tofu-firm" } });
const days: readonly DayInput[] = ["mon", "tue"].map((id) => ({
  id,
  meals: [
    { id: "breakfast", dishes: porridge },
    { id: "supper", dishes: { curry } },
  ],
}));
const bow: PersonInput = { id: "bow", byMeal: { supper: { factor: 2 } } };
const cox = { id: "cox" };
const planned = (people: readonly PersonInput[], rest: Partial<PlanInput> = {}): Plan =>
  portionPlan({ days, people, ...rest });
const written = (s: Sheet | undefined): string | undefined =>
  s?.lines.map(({ key, grams }) => `${key} ${grams}`).join(", ");
const servedTo = (plan: Plan, person: string, meal: string, dish: string): string | undefined =>
  written(plan.portion(person, meal).dishes.get(dish));

describe("a person's own version of a dish", () => {
  it("that differs in what is added at serving shares the pot", () => {
    const plan = planned([bow, { ...cox, leaveOut: ["curry/cream"] }]);
    const dish = plan.dish("mon/supper", "curry");
    expect(dish.pots).toHaveLength(1);
    expect(dish.pots[0]?.people).toEqual(["bow", "cox"]);
    expect(dish.serving("cox").additions.map(({ line }) => line)).toEqual([]);
    expect(servedTo(plan, "cox", "mon/supper", "curry")).toBe("chicken 150, onion 100, oil 10");
    expect(dish.versions.map(({ people, pot, text }) => ({ people, pot, text }))).toEqual([
      { people: ["cox"], pot: "shared", text: "without Yoghurt, plain, whole milk: it shares the pot" },
    ]);
  });

  it("that differs in a line that is cooked is another pot, and the plan says so", () => {
    const plan = planned([bow, { ...cox, instead: { curry: tofu } }]);
    const dish = plan.dish("tue/supper", "curry");
    expect(dish.pots.map(({ people, sheet: s }) => [...people, written(s)])).toEqual([
      ["bow", "chicken 300, onion 200, oil 20"],
      ["cox", "onion 100, oil 10, chicken-2 150"],
    ]);
    expect(dish.versions[0]?.pot).toBe("own");
    expect(dish.why).toContain("one more pot to cook");
    // People and foods by name, in the reader's words.
    const named = planned([bow, { ...cox, name: "Cox", instead: { curry: tofu } }]).dish(
      "tue/supper",
      "curry",
    );
    expect(named.why).toMatch(/^2 pots, one for each version\. Cox, without Chicken/);
    const language = {
      ...britishEnglish,
      phrases: { "{version}: one more pot to cook": "{version}: noch ein Topf" },
    };
    expect(named.whyIn(language)).toMatch(/noch ein Topf$/);
    expect(servedTo(plan, "cox", "tue/supper", "curry")).toBe("chicken 150, onion 100, oil 10, cream 30");
    expect(plan.portion("cox", "tue/supper").dishes.get("curry")?.lines[0]?.name).toContain("Tofu");
  });

  it("of one day alone, or of a meal, is that and no other", () => {
    const plan = planned([
      {
        ...cox,
        instead: { curry: tofu, "mon/supper/curry": curry },
        leaveOut: ["tue/breakfast/breakfast/milk"],
      },
    ]);
    const name = (meal: string) => plan.portion("cox", meal).dishes.get("curry")?.lines[0]?.name ?? "";
    expect(name("mon/supper")).not.toContain("Tofu");
    expect(name("tue/supper")).toContain("Tofu");
    expect(servedTo(plan, "cox", "mon/breakfast", "breakfast")).toBe("oats 60, milk 200, seeds 10");
    expect(servedTo(plan, "cox", "tue/breakfast", "breakfast")).toBe("oats 60, seeds 10");
  });

  it("that yields otherwise is a dish of its own", () => {
    const dry = of("Dry curry", [{ key: "chicken", food: "chicken-breast-raw", amount: "300 g" }]);
    const plan = planned([bow, { ...cox, instead: { curry: dry } }]);
    expect([...(plan.meals.find(({ id }) => id === "mon/supper")?.dishes.keys() ?? [])]).toEqual([
      "curry",
      "Dry curry",
    ]);
    expect([...plan.portion("cox", "mon/supper").dishes.keys()]).toEqual(["Dry curry"]);
    expect(plan.dish("mon/supper", "curry").pots[0]?.people).toEqual(["bow"]);
  });

  it("keeps the yield that the dish was weighed with, presumed", () => {
    const without = planned([{ ...cox, leaveOut: ["curry/onion"] }])
      .portion("cox", "mon/supper")
      .dishes.get("curry");
    // 320 g of chicken and oil for two, at 450/520 of what goes in; 30 g of yoghurt beside.
    expect(without?.mass.cooked.toString()).toBe(curry.masses.yieldFactor.times(160).plus(30).toString());
  });

  it("changes nobody else's exact portion, and no pot that they do not share", () => {
    const demands = [
      { of: "energy", exactly: 700 },
      { of: "protein", least: "35 g" },
    ] as const;
    const others = [
      bow,
      { id: "stroke", byMeal: { supper: demands } },
      { id: "two", daily: [{ of: "energy", exactly: 2100 }] },
    ] as const;
    const before = planned([...others, cox]);
    const after = planned([...others, { ...cox, instead: { curry: tofu }, leaveOut: ["breakfast/milk"] }]);
    for (const { id } of others) {
      for (const { id: meal } of before.meals) {
        const all = (plan: Plan) => [...plan.portion(id, meal).dishes].map(([dish, s]) => [dish, written(s)]);
        expect(all(after)).toEqual(all(before));
      }
    }
    const without = planned(others);
    const pots = (plan: Plan) =>
      plan.dish("mon/supper", "curry").pots.filter(({ people }) => !people.includes("cox"));
    expect(pots(after).map(({ sheet: s }) => written(s))).toEqual(
      without.dish("mon/supper", "curry").pots.map(({ sheet: s }) => written(s)),
    );
  });

  it("is fitted by its own lines, by meal and by day", () => {
    const demands = [{ of: "energy", exactly: 500 }] as const;
    const plan = planned([{ ...cox, byMeal: { supper: demands }, instead: { curry: tofu } }]);
    expect(plan.brings("cox", "mon/supper", "energy").value.toString()).toBe("500");
    const day = planned([{ ...cox, daily: [{ of: "energy", exactly: 1500 }], leaveOut: ["curry/cream"] }]);
    expect(day.day("cox", "tue").brings("energy").value.toString()).toBe("1500");
  });

  it("lets someone eat who avoids what the dish holds", () => {
    const cow = { ...cox, avoid: ["milk"] } as const;
    expect(errorOf(() => planned([cow])).code).toBe("allergen-served");
    const spared = planned([bow, { ...cow, leaveOut: ["curry/cream", "breakfast/milk"] }]);
    expect(spared.avoided.overridden).toEqual([]);
  });

  it("opens again as it was", () => {
    const plan = planned([bow, { ...cox, instead: { curry: tofu }, leaveOut: ["breakfast/seeds"] }], {
      kitchen: "metric",
    });
    const opened = openPlan(JSON.parse(JSON.stringify(plan)));
    expect(opened.toJSON().portions).toEqual(plan.toJSON().portions);
  });

  it("is refused where it names what is not there, all at once", () => {
    const told = (person: object): readonly string[] =>
      errorOf(() => planned([{ ...cox, ...person }])).faults.map(
        ({ path, message }) => `${path.join(".")}: ${message}`,
      );
    expect(told({ instead: { cury: tofu }, leaveOut: ["curry/creme", "stew/cream", "cream"] })).toEqual([
      'people.0.instead.cury: no dish is called "cury"',
      'people.0.leaveOut.0: "curry" has no line "creme"',
      'people.0.leaveOut.1: no dish is called "stew"',
      'people.0.leaveOut.2: no dish is called ""',
    ]);
    expect(told({ instead: { curry: "tofu" } })).toHaveLength(1);
  });
});

describe("a swap for one person", () => {
  it("gives them a version with the closest food that they may eat, named after it", () => {
    const cow = { ...cox, avoid: ["milk"] } as const;
    const at = { dish: "breakfast", sheet: porridge, line: "milk" };
    const {
      person,
      chosen,
      substitutes: all,
    } = swapFor(cow, at, { among: ["milk-skimmed", "soya-drink-sweetened"] });
    expect([chosen?.food, all.avoided.map(({ food }) => food)]).toEqual([
      "soya-drink-sweetened",
      ["milk-skimmed"],
    ]);
    const spared = { ...person, leaveOut: ["curry/cream"] };
    expect(
      planned([bow, spared]).portion("cox", "mon/breakfast").dishes.get("breakfast")?.lines[1]?.food,
    ).toBe(chosen?.food);
    const none = swapFor(cow, at, { among: ["milk-skimmed"] });
    expect([none.chosen, none.person]).toEqual([undefined, cow]);
  });

  it("and what is left out are told by the dish's name, where that speaks of it", () => {
    const named = of(
      "Chicken curry",
      curry.lines.slice(0, 2).map(({ key, food }) => ({ key, food: food as string, amount: "100 g" })),
    );
    const plan = portionPlan({
      meals: [{ id: "supper", dishes: { curry: named } }],
      people: [{ ...cox, leaveOut: ["curry/chicken"] }],
    });
    expect(plan.portion("cox", "supper").dishes.get("curry")?.name).toContain("without");
  });
});

describe("a week with versions, absences and kitchens", () => {
  const ways = fc.constantFrom<Omit<PersonInput, "id">>(
    {},
    { instead: { curry: tofu } },
    { leaveOut: ["curry/cream"] },
    { leaveOut: ["curry/onion", "breakfast/seeds"], away: ["mon/supper"] },
    { instead: { curry: tofu }, leaveOut: ["breakfast/milk"], daily: [{ of: "energy", exactly: 1900 }] },
    {
      daily: [
        { of: "energy", exactly: 2600 },
        { of: "protein", least: "90 g" },
      ],
      away: ["tue"],
    },
    { byMeal: { supper: [{ of: "energy", exactly: 650 }] } },
  );
  const kitchens = fc.constantFrom("metric", undefined);

  it("is pot + additions = portions = batch, in mass and every component, literally", () => {
    fc.assert(
      fc.property(fc.array(ways, { minLength: 1, maxLength: 4 }), kitchens, (drawn, kitchen) => {
        const people = drawn.map((way, i) => ({ id: `rower ${i}`, ...way }));
        const plan = planned(people, kitchen ? { kitchen } : {});
        for (const meal of plan.meals) {
          for (const [name, dish] of meal.dishes) {
            const portions = plan.portions
              .filter((each) => each.meal === meal.id)
              .flatMap(({ dishes }) => dishes.get(name) ?? []);
            const parts = [
              ...dish.pots.map(({ sheet: s }) => s),
              ...dish.servings.flatMap(({ added }) => added ?? []),
            ];
            const total = (all: readonly Sheet[], of: (s: Sheet) => { plus(b: never): unknown }) =>
              all.map(of).reduce((a, b) => a.plus(b as never) as never, ZERO as never) as {
                toString(): string;
              };
            const mass = (s: Sheet) => s.mass.cooked as never;
            expect(String(total(portions, mass))).toBe(String(total([dish.batch], mass)));
            expect(String(total(parts, mass))).toBe(String(total(portions, mass)));
            for (const id of Object.keys(components) as ComponentId[]) {
              const value = (s: Sheet) => s.total(id).value as never;
              expect(String(total(portions, value))).toBe(String(total([dish.batch], value)));
              expect(String(total(parts, value))).toBe(String(total(portions, value)));
            }
          }
        }
      }),
      { numRuns: runs(8), endOnFailure: true },
    );
  });
});

const ZERO = curry.mass.raw.minus(curry.mass.raw);
