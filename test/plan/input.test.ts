import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { fraction } from "../../src/number/exact.ts";
import type { PlanInput } from "../../src/plan/input.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { errorOf } from "../number/errorOf.ts";

const porridge = sheet(
  {
    name: "Porridge",
    portions: 1,
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
      { key: "milk", food: "milk-whole", amount: "200 g" },
    ],
  },
  starterFoods,
);

/** What is wrong with a plan, as `path: code`. */
function faultsOf(input: unknown): string[] {
  return errorOf(() => portionPlan(input as PlanInput)).faults.map(
    ({ path, code }) => `${path.join(".")}: ${code}`,
  );
}

const meals = [{ id: "breakfast", dishes: porridge }];
const people = [{ id: "cox" }];

describe("an app's own data", () => {
  const meta = { id: 7, tags: ["winter"], rated: null, of: { cox: 1.5 } };
  const kept = JSON.stringify(meta);

  it("is carried along on the plan, on its meals and on its people, untouched and never read", () => {
    const salted = porridge.edit({});
    const input = {
      meta,
      meals: [
        { id: "breakfast", dishes: salted, meta },
        { id: "supper", dishes: porridge },
      ],
      people: [{ id: "cox", meta }, { id: "bow", meta: null }, { id: "stroke" }],
    };
    for (const kitchen of [undefined, "metric"] as const) {
      const plan = portionPlan({ ...input, ...(kitchen && { kitchen }) });
      expect(JSON.stringify([plan.meta, plan.meals[0]?.meta, plan.people[0]?.meta])).toBe(
        `[${kept},${kept},${kept}]`,
      );
      // Null is data, too; nothing is nothing.
      expect(plan.people.map((one) => "meta" in one && one.meta)).toEqual([meta, null, false]);
      expect("meta" in (plan.meals[1] ?? {})).toBe(false);
      expect(portionPlan({ meals, people }).meta).toBeUndefined();
    }
    expect(JSON.stringify(meta)).toBe(kept);
    expect(Object.isFrozen(meta.tags)).toBe(false);
  });

  it("stays on a meal that an answer changed, and is a copy", () => {
    const spiced = sheet(
      {
        name: "Curry",
        portions: 2,
        lines: [
          { key: "peas", food: "peas-frozen-boiled-drained", amount: "200 g" },
          { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion" },
        ],
      },
      starterFoods,
    );
    const own = { tags: ["mild"] };
    const plan = portionPlan({
      meals: [{ id: "m", dishes: spiced, meta: own }],
      people: [{ id: "cox" }, { id: "bow", demands: { factor: 2 } }],
      answers: [{ meal: "m", line: "salt", answer: "pot" }],
    });
    own.tags.push("hot");
    expect(plan.meals[0]?.meta).toEqual({ tags: ["mild"] });
  });

  it("is JSON alone", () => {
    expect(
      faultsOf({
        meta: () => 1,
        meals: [{ id: "breakfast", dishes: porridge, meta: { at: new Date(0) } }],
        people: [{ id: "cox", meta: [1, Number.NaN] }],
      }),
    ).toEqual(["meals.0.meta.at: plan-malformed", "people.0.meta.1: plan-malformed", "meta: plan-malformed"]);
  });
});

describe("what a plan is handed", () => {
  it("is refused where it is no plan at all", () => {
    for (const input of [undefined, null, 7, "plan", [], new Map()]) {
      expect(faultsOf(input).every((each) => each.endsWith("plan-malformed"))).toBe(true);
    }
    expect(faultsOf({})).toEqual(["people: plan-malformed", "meals: plan-malformed"]);
    expect(faultsOf({ meals: [], people: [] })).toEqual(["meals: plan-malformed", "people: plan-malformed"]);
  });

  it("names every fault at once, each where it stands", () => {
    expect(
      faultsOf({
        meals: [
          { id: "breakfast", dishes: porridge },
          { id: "breakfast", dishes: {} },
          { id: "", dishes: { pot: porridge, shot: "a recipe" } },
          { id: "lunch", dishes: { __proto__: null, pot: 3 }, fit: { base: "lid", common: { least: -1 } } },
          null,
        ],
        people: [
          { id: "cox", demands: { energy: "many" } },
          { id: "cox", demands: [{ of: "protein", least: "5 km" }] },
          { id: "bow", byMeal: { brekfast: { energy: 400 }, breakfast: { protien: 3 } } },
          { id: "stroke", demands: "650 kcal", weight: 3, byMeal: { lunch: { energy: 400 } } },
        ],
        silent: "loud",
        extra: 1,
      }),
    ).toEqual([
      "meals.1.dishes: plan-malformed",
      "meals.2.id: plan-malformed",
      "meals.2.dishes.shot: plan-malformed",
      "meals.3.dishes.pot: plan-malformed",
      "meals.3.fit.common.least: fit-malformed",
      "meals.4: plan-malformed",
      "people.0.demands.energy: amount-no-number",
      "people.1.demands.0.least: demand-malformed",
      "people.2.byMeal.breakfast.protien: target-malformed",
      "people.3.demands: target-malformed",
      "people.3.weight: plan-malformed",
      "silent: plan-malformed",
      "extra: plan-malformed",
      // What is not there, or there twice, is told after what is of the wrong shape.
      "meals.1.id: plan-malformed",
      "people.1.id: plan-malformed",
      "people.2.byMeal.brekfast: plan-malformed",
    ]);
  });

  it("says a way out", () => {
    const { faults } = errorOf(() =>
      portionPlan({
        meals,
        people: [{ id: "cox", byMeal: { brekfast: { energy: 400 } } }],
        sillent: "accept",
      } as PlanInput),
    );
    expect(faults.map(({ hint }) => hint)).toEqual(["did you mean silent?", "did you mean breakfast?"]);
  });

  it("refuses ids twice, empty, too long, with control characters or called __proto__", () => {
    for (const id of ["", "  ", "a\u0000b", "x".repeat(201), "__proto__", 7, null, undefined, {}]) {
      expect(faultsOf({ meals: [{ id, dishes: porridge }], people })).toEqual(["meals.0.id: plan-malformed"]);
      expect(faultsOf({ meals, people: [{ id }] })).toEqual(["people.0.id: plan-malformed"]);
    }
    const dishes = JSON.parse('{"__proto__": 1}') as object;
    expect(faultsOf({ meals: [{ id: "m", dishes }], people })).toEqual([
      "meals.0.dishes.__proto__: plan-malformed",
    ]);
    expect(faultsOf({ meals: [...meals, ...meals], people: [...people, ...people] })).toEqual([
      "meals.1.id: plan-malformed",
      "people.1.id: plan-malformed",
    ]);
  });

  it("takes names that every object has a field of", () => {
    for (const id of ["constructor", "toString", "hasOwnProperty", "1"]) {
      const plan = portionPlan({
        meals: [{ id, dishes: { [id]: porridge } }],
        people: [
          { id, byMeal: { [id]: { factor: 2 } } },
          { id: "other", demands: { factor: 3 } },
        ],
      });
      expect(plan.portion(id, id).dishes.get(id)?.lines[0]?.grams.toString()).toBe("120");
      // An inherited field is nobody's demand.
      expect(plan.portion("other", id).factor.toString()).toBe("3");
      expect(plan.meals[0]?.batch.get(id)?.lines[0]?.grams.toString()).toBe("300");
    }
  });

  it("refuses the options of a fit where they stand", () => {
    expect(faultsOf({ meals: [{ ...meals[0], fit: { base: "lid", pivots: 0, more: 1 } }], people })).toEqual([
      "meals.0.fit.pivots: fit-malformed",
      "meals.0.fit.more: fit-malformed",
      "meals.0.fit.base: fit-malformed",
    ]);
    expect(faultsOf({ meals: [{ ...meals[0], fit: 3 }], people })).toEqual(["meals.0.fit: fit-malformed"]);
  });

  it("takes one portion for each, and no other number of them", () => {
    expect(faultsOf({ meals, people: [{ id: "cox", demands: { portions: 2 } }] })).toEqual([
      "people.0.demands.portions: target-malformed",
    ]);
  });

  it("names the meal where demands for all meals cannot be met in one", () => {
    const { faults } = errorOf(() =>
      portionPlan({
        meals: [...meals, { id: "tea", name: "Tea", dishes: porridge }],
        people: [{ id: "cox", demands: { caffeine: "80 mg" } }],
        silent: "accept",
      }),
    );
    expect(faults.map(({ path, code }) => [path.join("."), code])).toEqual([
      ["people.0.demands.caffeine", "target-unreachable"],
      ["people.0.demands.caffeine", "target-unreachable"],
    ]);
    expect(faults[1]?.message).toMatch(/^Tea: /);
  });

  it("bears 5,000 people and names of every script", () => {
    const many = Array.from({ length: 5000 }, (_, i) => ({
      id: `${i} 漢字 <b>`,
      demands: { factor: `${i + 1}/7` },
    }));
    const plan = portionPlan({ meals, people: many });
    expect(plan.portions.length).toBe(5000);
    // 60 g × Σ 1…5000 ÷ 7
    expect(plan.meals[0]?.batch.get("breakfast")?.lines[0]?.grams).toEqual(fraction(60n * 12_502_500n, 7n));
  });
});
