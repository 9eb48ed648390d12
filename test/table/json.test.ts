import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import type { TableData } from "../../src/table/records.ts";
import { Shown } from "../../src/table/shown.ts";
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

const results: readonly (readonly [string, Shown])[] = [
  ["a sheet", camp],
  ["an explanation", camp.explain("protein", "portion")],
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
    expect(result).toBeInstanceOf(Shown);
    const text = JSON.stringify(result);
    const read: unknown = JSON.parse(text);
    expect(JSON.stringify(read)).toBe(text);
    expect(text).not.toContain("[object");
    expect(text.length).toBeGreaterThan(50);
  });

  it.each(results.filter(([, { toJSON }]) => toJSON === Shown.prototype.toJSON))(
    "of %s holds the rows of its records, exactly",
    (_, result) => {
      const tables = JSON.parse(JSON.stringify(result)) as readonly TableData[];
      expect(tables.flatMap(({ rows }) => rows)).toEqual(face.toRecords(result, { figures: "exact" }));
    },
  );

  it("of a sheet holds figures without end as fractions", () => {
    // 200 g among 3 portions, and a target of 1000/3 kcal.
    expect(JSON.stringify(face.sweep(camp, [{ target: "energy", values: ["1000/3"] }]))).toContain(
      '"1000/3"',
    );
  });

  const fitted = face.fit(camp, demands);
  const measured = face.portionPlan({
    meals: [{ id: "supper", dishes: camp }],
    people: [{ id: "cox", demands: [{ of: "energy", exactly: "500 kcal" }] }, { id: "stroke" }],
    kitchen: "metric",
  });
  const parts: readonly (readonly [string, unknown])[] = [
    ["lines", camp.lines],
    ["a scaling", face.scale(camp, { energy: 600 })],
    ["energy shares", camp.energyShares()],
    ["a range", face.between(camp, "iodine")],
    ["factors and outcomes", [fitted.factors, fitted.outcomes, fitted.status === "met" && fitted.binding]],
    ["changes", face.difference(camp, larger).lines],
    ["portions", measured.portions],
    ["drift", measured.portion("cox", "supper").drift],
    ["meals, with maps in them", measured.meals],
    ["servings", measured.dish("supper").servings],
    ["what to buy", face.shoppingList(measured).lines],
    ["sessions", face.cookingSchedule(measured).sessions],
  ];

  it.each(parts)("of %s is written by asJson, with nothing left empty and no figure lost", (_, part) => {
    const text = JSON.stringify(part, face.asJson);
    expect(JSON.stringify(JSON.parse(text))).toBe(text);
    expect(text).not.toMatch(/\{\}|\[object/);
    expect(text.length).toBeGreaterThan(50);
    // Wherever an exact figure stands beside its decimal face, the text is that very fraction.
    const pairs = [...text.matchAll(/"exactGrams":"([^"]+)"/g)].map(([, exactly = ""]) => exactly);
    for (const each of pairs) expect(each).toMatch(/^-?\d+(?:\.\d+|\/\d+)?$/);
  });

  it("by asJson keeps a fraction that has no end, big whole numbers, maps and sets", () => {
    const given = {
      third: { n: 1n, d: 3n },
      big: 2n ** 70n,
      map: new Map([["a", [1]]]),
      set: new Set(["b"]),
      __proto__: null,
    };
    expect(JSON.parse(JSON.stringify(given, face.asJson))).toEqual({
      third: "1/3",
      big: "1180591620717411303424",
      map: { a: [1] },
      set: ["b"],
    });
  });
});
