import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const own = foodTable([
  { id: "salt", name: "Sea salt", source: "made up", per100g: { sodium: 39000 } },
  {
    id: "gruel",
    name: "Gruel",
    group: "grains",
    state: "cooked",
    source: "made up",
    per100g: { energy: 60, iron: "trace" },
  },
]);

describe("a table of foods", () => {
  it("is walked in order", () => {
    expect([...own].map(({ id }) => id)).toEqual(["salt", "gruel"]);
    expect(own.size).toBe(2);
    expect([...starterFoods]).toHaveLength(starterFoods.ids.length);
  });

  it("is merged: the other's foods take the place of those of the same id", () => {
    const merged = starterFoods.merge(own);
    expect(merged.size).toBe(starterFoods.size + 1);
    expect(merged.get("salt").name).toBe("Sea salt");
    expect(merged.get("oats-rolled-dry")).toBe(starterFoods.get("oats-rolled-dry"));
    expect(merged.retention).toBe(starterFoods.retention);
    expect(starterFoods.get("salt").name).not.toBe("Sea salt");
    expect(errorOf(() => own.merge([] as never)).code).toBe("food-malformed");
  });

  it("is cut to a part, by ids or by a test, and keeps its order", () => {
    expect(own.subset(["gruel", "salt"]).ids).toEqual(["salt", "gruel"]);
    expect(own.subset((food) => food.group === "grains").ids).toEqual(["gruel"]);
    const error = errorOf(() => own.subset(["gruell", "x"]));
    expect(error.faults.map(({ code }) => code)).toEqual(["food-unknown", "food-unknown"]);
    expect(error.hint).toContain("gruel");
    expect(errorOf(() => own.subset(5 as never)).code).toBe("food-malformed");
  });

  it("is shown as a list of foods, unknowns looking unknown", () => {
    const text = toText(own);
    expect(text).toContain("Foods, what 100 g have");
    expect(text).toMatch(/Gruel\s+gruel\s+cooked\s+grains\s+60/);
    expect(text).toContain("?");
    expect(toText(starterFoods, { rows: 3 })).toContain(`${starterFoods.size - 3} more rows not shown`);
  });

  it("is told as records, one for each figure that is known", () => {
    const records = toRecords(own, { components: ["energy", "sodium"] });
    expect(records.map(({ food, component, amount, unit }) => [food, component, amount, unit])).toEqual([
      ["salt", "sodium", 39000, "mg"],
      ["gruel", "energy", 60, "kcal"],
    ]);
  });
});
