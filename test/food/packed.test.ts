import { describe, expect, it } from "vitest";
import { type FoodInput, type FoodTable, foodTable, type PackedFoods } from "../../src/index.ts";
import { errorOf } from "../number/errorOf.ts";

/** More foods than are read at once. */
const many: readonly FoodInput[] = Array.from({ length: 1001 }, (_, i) => ({
  id: `f${i}`,
  name: `Food ${i}`,
  source: "made up",
  measures: [{ name: "piece", grams: `${i + 1}/3` }],
  per100g: {
    energy: String(i),
    ...(i % 2 === 0 && { iron: { value: "1.50", error: "0.1", count: i + 1, calculated: "by recipe" } }),
    ...(i % 3 === 0 && { zinc: "trace" as const, salt: { below: "0.0125" } }),
    ...(i % 5 === 0 && { protein: { value: "3", low: "2", high: "4", least: "1", most: "9" } }),
  },
}));
const packed = (): PackedFoods => JSON.parse(JSON.stringify(foodTable(many)));
const foodsOf = (table: FoodTable): FoodInput[] => table.ids.map((id) => table.get(id));

/** The faults of a table of which one thing is spoilt. */
function spoilt(spoil: (foods: PackedFoods) => void, open: (table: FoodTable) => unknown): string[] {
  const given = packed();
  spoil(given);
  return errorOf(() => open(foodTable(given))).faults.map(
    ({ code, path, message }) => `${code} ${path.join(".")}: ${message}`,
  );
}
const opened = (table: FoodTable): unknown => table;

describe("many packed foods", () => {
  it("are the foods that were packed, to the digit, and are packed as they were", () => {
    const table = foodTable(packed());
    expect(foodsOf(table)).toEqual(many);
    expect(JSON.parse(JSON.stringify(table))).toEqual(packed());
    expect(JSON.parse(JSON.stringify(table.with([many[7] as FoodInput])))).toEqual(packed());
  });

  it("are frozen, figures and all", () => {
    const food = foodTable(packed()).get("f0");
    expect([food, food.per100g, food.per100g.iron, food.measures].map(Object.isFrozen)).toEqual([
      true,
      true,
      true,
      true,
    ]);
  });

  it("are told apart by their ids when they are opened", () => {
    const twice = (given: PackedFoods) => Object.assign(given.foods[4] as object, { id: "f3" });
    expect(spoilt(twice, opened)).toEqual(['food-duplicate foods.4.id: two foods are called "f3"']);
    const unnamed = (given: PackedFoods) => Object.assign(given.foods[4] as object, { id: " " });
    expect(spoilt(unnamed, opened)).toEqual(["food-malformed foods.4.id: expected text, got none"]);
    const none = (given: PackedFoods) => Object.assign(given.foods, { 4: null });
    expect(spoilt(none, opened)).toEqual(["food-malformed foods.4.id: expected text, got null"]);
    const strange = (given: PackedFoods) => Object.assign(given, { components: ["energie"] });
    expect(spoilt(strange, opened)).toEqual([
      'component-unknown components.0: no component is called "energie"',
    ]);
  });

  it("tell what is wrong with a food when it is asked for, and let others be", () => {
    const nameless = (given: PackedFoods) => Object.assign(given.foods[4] as object, { name: 4 });
    expect(spoilt(nameless, (table) => [table.get("f3"), table.get("f4")])).toEqual([
      "food-malformed foods.4.name: expected text, got 4",
    ]);
    const figures = (row: string) => (given: PackedFoods) =>
      Object.assign(given.foods[4] as object, { per100g: row });
    const ask = (table: FoodTable) => table.get("f4").per100g;
    expect(spoilt(figures("1 -"), ask)).toEqual([
      "food-malformed foods.4.per100g: 2 figures for 5 components",
    ]);
    expect(spoilt(figures("1 x - - -"), ask)).toEqual([
      'number-malformed foods.4.per100g.protein: "x" is not a number',
    ]);
    expect(spoilt(figures("1:99 - - - -"), ask)).toEqual([
      "food-malformed foods.4.per100g: there is no mark 99 for energy",
    ]);
    expect(spoilt(figures("1:::::::::2 - - - -"), ask)[0]).toContain("more numbers than there are names");
  });
});
