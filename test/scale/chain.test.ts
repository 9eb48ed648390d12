import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, ONE, times } from "../../src/number/exact.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { difference } from "../../src/sheet/difference.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { runs } from "../runs.ts";

const written: RecipeInput = {
  name: "Porridge",
  portions: 3,
  cookedMass: "900 g",
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "1 lb 4 oz" },
    { key: "milk", food: "milk-whole", amount: "400 g" },
    { key: "salt", food: "salt", amount: "3 g", scaling: "per-portion" },
    { key: "almonds", food: "almonds", amount: "30 g", added: "serving" },
  ],
};
const base = sheet(written, starterFoods);

/** The same sheet by one scaling after the other. */
const chained = (s: Sheet, factors: readonly Exact[]): Sheet =>
  factors.reduce((at, factor) => scale(at, { factor: exactText(factor) }).sheet, s);

/** Whether two sheets weigh and bring the same, literally. */
const same = (a: Sheet, b: Sheet): void => {
  expect(b.values.grams).toEqual(a.values.grams);
  expect(b.values.portions).toEqual(a.values.portions);
  expect(b.masses).toEqual(a.masses);
  expect(b.total("protein").value).toEqual(a.total("protein").value);
  expect(b.total("water").value).toEqual(a.total("water").value);
};

describe("a chain of scalings", () => {
  const some = fc.tuple(fc.bigInt(1n, 60n), fc.bigInt(1n, 60n)).map(([n, d]) => fraction(n, d));

  it("is the one scaling by the product, and read back from its recipe, literally", () => {
    fc.assert(
      fc.property(fc.array(some, { maxLength: 6 }), fc.integer({ min: 1, max: 7 }), (factors, portions) => {
        const product = factors.reduce(times, ONE);
        const once = scale(base, { factor: exactText(product), portions }).sheet;
        const many = scale(chained(base, factors), { factor: 1, portions }).sheet;
        same(once, many);
        same(many, sheet(toRecipe(many), starterFoods));
      }),
      { numRuns: runs(40) },
    );
  });

  it("goes on from what was edited on the way", () => {
    const edited = chained(base, [exact("1.5")]).edit({ oats: "90 g" });
    const there = chained(edited, [exact("2"), exact("1/3")]);
    expect(there.lines.map(({ grams }) => exactText(grams))).toEqual(["60", "400", "3", "30"]);
    same(there, sheet(toRecipe(there), starterFoods));
  });

  it("comes back to what was written, parts of amounts and all", () => {
    const there = chained(base, [exact("3/7"), exact("7/3")]);
    expect(toRecipe(there)).toEqual(toRecipe(base));
    expect(difference(base, there).none).toBe(true);
  });

  // 2 to 9 new digits a step, below and above the line, that nothing divides out of.
  it.each([
    [10_000, "1.1", "0.9"],
    [2000, "37/41", "43/31"],
    [500, "1.000000007", "0.999999999"],
  ])("of %i by %s and %s holds the digits of the product, and is read back", (steps, a, b) => {
    let s = base;
    let product = ONE;
    for (let i = 0; i < steps; i++) {
      const factor = i % 2 === 0 ? a : b;
      s = scale(s, { factor }).sheet;
      product = times(product, exact(factor));
    }
    const grams = times(base.values.grams[1] ?? ONE, product);
    expect(s.lines[1]?.grams).toEqual(grams);
    expect(s.lines[2]?.grams).toEqual(fraction(3n));
    const again = sheet(toRecipe(s), starterFoods);
    expect(again.values.grams).toEqual(s.values.grams);
    expect(again.values.cooking).toEqual(s.values.cooking);
  });

  it("is refused where its factor is longer than any recipe could hold", () => {
    const long = `1${"0".repeat(50_000)}1/${"3".repeat(50_000)}`;
    const once = scale(base, { factor: long }).sheet;
    expect(() => scale(once, { factor: long })).toThrow(
      expect.objectContaining({ code: "number-too-long", hint: expect.stringContaining("one factor") }),
    );
  });
});
