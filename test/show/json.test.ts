import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { Result } from "../../src/number/result.ts";
import { explain } from "../../src/sheet/explain.ts";
import * as face from "../everything.ts";

const camp = face.sheet(
  {
    name: "Beans and rice",
    portions: 3,
    lines: [
      { key: "rice", food: "rice-brown-long-boiled", amount: "200 g" },
      { key: "beans", food: "kidney-beans-red-boiled", amount: "150 g", scaling: "adjustable" },
    ],
  },
  starterFoods,
);
const larger = face.scale(camp, { energy: 600 }).sheet;
const demands = [{ of: "protein", least: "20 g" }] as const;
const plan = face.portionPlan({
  meals: [{ id: "supper", dishes: camp }],
  people: [
    { id: "cox", demands: { energy: 500 } },
    { id: "stroke", demands: { energy: "2000/3" } },
  ],
});

const results: readonly (readonly [string, Result])[] = [
  ["a sheet", camp],
  ["an explanation", explain(camp, "protein", "portion")],
  ["an uncertainty", face.uncertainty(camp, "iron", "portion")],
  ["a difference", face.difference(camp, larger)],
  ["a sweep", face.sweep(camp, [{ target: "energy", values: [300, "1000/3"] }])],
  ["a cooking balance", face.cooking(camp)],
  ["an energy check", face.energyCheck(camp)],
  ["a fit", face.fit(camp, demands)],
  ["a fit of several", face.fit({ camp, larger }, demands)],
  [
    "a fit out of reach",
    face.fit(camp, [
      { of: "mass", most: 1 },
      { of: "energy", least: 900 },
    ]),
  ],
  [
    "a fit of several out of reach",
    face.fit({ camp, larger }, [
      { of: "mass", most: 1 },
      { of: "energy", least: 900 },
    ]),
  ],
  ["a rounding", face.roundToKitchen(larger, "metric")],
  ["a rounding of several", face.roundToKitchen({ camp, larger }, "metric")],
  ["substitutes", face.substitutes(camp, "beans")],
  ["a plan", plan],
  ["a schedule", face.cookingSchedule(plan)],
  ["a shopping list", face.shoppingList(plan)],
  ["allergens", face.allergensOf(camp)],
];

describe("JSON", () => {
  it.each(results)("of %s is written, and is the same when read and written again", (_, result) => {
    expect(result).toBeInstanceOf(Result);
    const text = JSON.stringify(result);
    const read: unknown = JSON.parse(text);
    expect(JSON.stringify(read)).toBe(text);
    expect(text).not.toContain("[object");
    expect(text.length).toBeGreaterThan(30);
  });

  it("of a sheet holds figures without end as fractions", () => {
    // 200 g among 3 portions, and a target of 1000/3 kcal.
    expect(JSON.stringify(face.sweep(camp, [{ target: "energy", values: ["1000/3"] }]))).toContain(
      '"1000/3"',
    );
  });
});
