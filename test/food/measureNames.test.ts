import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { sheet } from "../../src/sheet/build.ts";
import { errorOf } from "../number/errorOf.ts";

const chicken = (...names: readonly string[]): FoodInput => ({
  ...{ id: "chicken", name: "Chicken", source: "made up for a test", per100g: { protein: 20 } },
  measures: names.map((name, i) => ({ name, grams: 86 + i })),
});

const grams = (amount: string, ...names: readonly string[]): string =>
  sheet(
    { name: "Dish", portions: 1, measures: "us", lines: [{ food: "chicken", amount }] },
    foodTable([chicken(...names)]),
  ).lines[0]?.grams.toString() ?? "";

describe("the name of a household measure", () => {
  it.each([
    "1/2 cup",
    "½ breast",
    "1/2 breast",
    "1 1/2 cup",
    "3 oz",
    "15 oz can",
    ".5 cup",
    "-1 cup",
    " 2 legs",
    "١ كوب",
    "Ⅲ legs",
  ])("does not begin with a number, where a written amount has its own: %s", (name) => {
    const { faults } = errorOf(() => foodTable([chicken("breast", name)]));
    expect(faults.map(({ code, path }) => [code, path])).toEqual([
      ["food-malformed", [0, "measures", 1, "name"]],
    ]);
    expect(faults[0]?.hint).toMatch(/begin with a word/);
  });

  it("may hold a number further on, as the hint writes it", () => {
    expect(grams("1/2 breast", "breast")).toBe("43");
    expect(grams("1/2 half breast", "breast", "half breast")).toBe("43.5");
    expect(grams("2 half breasts", "half breast")).toBe("172");
    expect(grams("1 1/2 cans of 400 g", "can of 400 g")).toBe("129");
  });

  it("takes the figure before it whole: a fraction is of that measure, never part of its name", () => {
    const word = fc.constantFrom("breast", "half breast", "cup, chopped", "can of 400 g", "piece (1/2)");
    const part = fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }));
    fc.assert(
      fc.property(word, part, (name, [n, d]) => {
        expect(Number(grams(`${n}/${d} ${name}`, name))).toBeCloseTo((86 * n) / d, 10);
      }),
    );
  });

  it("of every starter food is one", () => {
    // Made anew, so that each name is read by the rule.
    expect(() => foodTable(starterFoods.ids.map((id) => starterFoods.get(id)))).not.toThrow();
  });
});
