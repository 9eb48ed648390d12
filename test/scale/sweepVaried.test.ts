/** Axes of what is known, each point held against a sheet that was written so by hand. */
import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { type Axis, sweep } from "../../src/scale/sweep.ts";
import { sheet } from "../../src/sheet/build.ts";
import { withColumn } from "../../src/sheet/columns.ts";
import { toRecords } from "../../src/show/records.ts";

const leaf = {
  id: "leaf",
  name: "Leaf",
  source: "made up for a test",
  per100g: { energy: 40, iron: 2, vitaminC: 30, water: 85 },
  price: { currency: "GBP", per100g: "0.50" },
} as const;
const beans = {
  id: "beans",
  name: "Beans",
  source: "made up for a test",
  per100g: { energy: 120, iron: 3, water: 60 },
};
const foods = foodTable([leaf, beans]);
const written: RecipeInput = {
  name: "Stew",
  portions: 2,
  yieldFactor: "0.9",
  lines: [
    { key: "leaf", food: "leaf", amount: "200 g", retention: { iron: "0.8" } },
    { key: "beans", food: "beans", amount: "300 g" },
  ],
};
const stew = sheet(written, foods);

describe("a sweep of what is known", () => {
  it("over yields", () => {
    const grid = sweep(stew, [{ yieldFactor: ["0.7", "0.9", 1.2] }]);
    expect(grid.axes).toEqual(["yield"]);
    grid.points.forEach(({ sheet: s }, i) => {
      const made = sheet({ ...written, yieldFactor: ["0.7", "0.9", "1.2"][i] ?? "" }, foods);
      for (const id of ["water", "iron"] as const)
        expect(s?.per100g(id).value.toJSON()).toBe(made.per100g(id).value.toJSON());
    });
  });

  it("over what a line keeps of a component, other shares staying", () => {
    const grid = sweep(stew, [{ retentionIn: "leaf", of: "vitaminC", shares: ["0.5", 1] }]);
    expect(grid.points.map(({ sheet: s }) => s?.portion("vitaminC").value.toString())).toEqual(["15", "30"]);
    expect(grid.points.map(({ sheet: s }) => s?.portion("iron").value.toString())).toEqual(["6.1", "6.1"]);
  });

  it("over a food's figure, in nested recipes too, and a target on the other axis", () => {
    const inner = { name: "Inner", portions: 1, lines: [{ food: "leaf", amount: "100 g" }] };
    const around = sheet(
      { name: "Around", portions: 1, lines: [{ recipe: "inner", amount: "1 portion" }] },
      foods,
      {
        recipes: { inner },
      },
    );
    const axes: readonly Axis[] = [
      { food: "leaf", of: "iron", figures: [1, 4] },
      { target: "energy", values: [40, 80] },
    ];
    const grid = sweep(around, axes, { components: ["iron"] });
    expect(grid.points.map(({ sheet: s }) => s?.portion("iron").value.toString())).toEqual([
      "1",
      "2",
      "4",
      "8",
    ]);
    const rows = toRecords(grid);
    expect(rows.map((row) => [row.at_leaf_iron, row.at_energy, row.amount, row.bound, row.least])).toEqual([
      [1, 40, 1, "point", 1],
      [1, 80, 2, "point", 2],
      [4, 40, 4, "point", 4],
      [4, 80, 8, "point", 8],
    ]);
  });

  it("over a price, which a column of one's own reads", () => {
    const priced = withColumn(stew, "cost", (at) =>
      at
        .get("grams")
        .times(at.food?.price?.per100g ?? 0)
        .over(100),
    );
    const grid = sweep(priced, [{ food: "leaf", prices: ["0.50", "0.75"] }]);
    const cells = (k: number) => toRecords(grid.points[k]?.sheet ?? stew, { components: ["cost"] });
    const cost = (k: number): unknown => cells(k).find(({ line }) => line === "leaf")?.amount;
    expect([cost(0), cost(1)]).toEqual([1, 1.5]);
  });

  it.each([
    ["line-unknown", { retentionIn: "leef", of: "iron", shares: [1] }],
    ["component-unknown", { retentionIn: "leaf", of: "irn", shares: [1] }],
    ["food-unknown", { food: "leef", of: "iron", figures: [1] }],
    ["sweep-malformed", { food: "beans", prices: [1] }],
    ["sweep-malformed", { yieldFactor: [] }],
    ["sweep-malformed", { yieldFactor: [0] }],
    ["sweep-malformed", { retentionIn: "leaf", of: "iron", shares: [2] }],
  ])("refuses with %s what cannot be varied: %j", (code, axis) => {
    expect(() => sweep(stew, [axis as unknown as Axis])).toThrow(expect.objectContaining({ code }));
  });
});
