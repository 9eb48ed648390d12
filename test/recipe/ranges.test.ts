import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { type AmountData, amount } from "../../src/measure/amount.ts";
import { equals, exact } from "../../src/number/exact.ts";
import { recipe } from "../../src/recipe/recipe.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { openSheet } from "../../src/sheet/openSheet.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const of = (amount: string, food = "oats-rolled-dry"): Sheet =>
  sheet({ name: "Bowl", portions: 2, measures: "us", lines: [{ key: "one", food, amount }] }, starterFoods);
const ends = (s: Sheet): readonly string[] => {
  const { value, unit, range } = s.lineAt(0).amount;
  return [`${value}`, unit, ...(range ? [`${range.least}`, `${range.most}`] : [])];
};

describe("a range where an amount stands", () => {
  it.each([
    ["2-3 tbsp", ["2.5", "tbsp", "2", "3"]],
    ["30 g to 70 g", ["50", "g", "30", "70"]],
    ["30g–0.07 kg", ["0.05", "kg", "0.03", "0.07"]],
    ["1 or 2 us cups", ["1.5", "cup", "1", "2"]],
    ["1 1/2 - 2 tbsp", ["1.75", "tbsp", "1.5", "2"]],
    ["2-2 tbsp", ["2", "tbsp"]],
  ])("%s counts by its middle and carries its ends", (text, expected) => {
    expect(ends(of(text))).toEqual(expected);
  });

  it("tells what is wrong with its ends, and not that it is a range", () => {
    const oil = { name: "Pot", portions: 1, lines: [{ food: "olive-oil", amount: "2-3 tbsp" }] };
    const { code, hint } = errorOf(() => sheet(oil, starterFoods));
    expect([code, hint]).toEqual([
      errorOf(() => amount("2 tbsp")).code,
      expect.stringContaining("say whose"),
    ]);
  });

  it("may be of a food's own pieces", () => {
    expect(ends(of("2-3 medium", "onions-raw"))).toEqual(["2.5", "medium", "2", "3"]);
  });

  it("weighs as much as its middle", () => {
    expect(equals(of("30-70 g").masses.raw, exact(50))).toBe(true);
  });

  it.each([
    ["3-2 tbsp", "amount-range", "smaller end first"],
    ["30 g to 1 tbsp", "amount-mixed-kinds", "both ends"],
    ["1-1/2 cups", "amount-ambiguous", "space"],
  ])("%s is refused", (text, code, hint) => {
    const error = errorOf(() => of(text));
    expect(error.code).toBe(code);
    expect(error.hint).toContain(hint);
    expect(error.path).toEqual(["lines", 0, "amount"]);
  });

  it("is refused where one figure is meant", () => {
    const line = { food: "oats-rolled-dry", amount: "50 g" };
    const bounds = {
      name: "Bowl",
      portions: 1,
      lines: [{ ...line, least: "10-20 g" }],
      cookedMass: "1-2 kg",
    };
    expect(errorOf(() => recipe(bounds)).faults.map(({ code }) => code)).toEqual([
      "amount-range",
      "amount-range",
    ]);
    expect(errorOf(() => amount("2-3 g")).code).toBe("amount-range");
  });

  it("keeps a food's own measure whose name looks like one", () => {
    const sold = {
      id: "beans",
      name: "Beans",
      source: "made up",
      per100g: {},
      measures: [{ name: "can of 14-16 oz", grams: 425 }],
    };
    const s = sheet(
      { name: "B", portions: 1, lines: [{ key: "one", food: "beans", amount: "2 can of 14-16 oz" }] },
      foodTable([sold]),
    );
    expect(equals(s.masses.raw, exact(850))).toBe(true);
  });
});

describe("a range that travels", () => {
  const number = fc.tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 16 }));
  const ranges = fc
    .record({ a: number, more: number, unit: fc.constantFrom("g", "tbsp", "cup", "oz") })
    .map(({ a, more, unit }) => {
      const least = exact(`${a[0]}/${a[1]}`);
      const most = least.plus(exact(`${more[0]}/${more[1]}`));
      return {
        least,
        most,
        text: `${JSON.parse(JSON.stringify(least))} to ${JSON.parse(JSON.stringify(most))} ${unit}`,
      };
    });

  it("has its ends scaled with it, and comes back by the inverse, literally", () => {
    fc.assert(
      fc.property(
        ranges,
        fc.integer({ min: 1, max: 50 }),
        fc.integer({ min: 1, max: 50 }),
        ({ least, most, text }, n, d) => {
          const before = of(text);
          const factor = `${n}/${d}`;
          const { sheet: scaled } = scale(before, { factor });
          const { range } = scaled.lineAt(0).amount;
          expect(range && equals(range.least, least.times(exact(factor)))).toBe(true);
          expect(range && equals(range.most, most.times(exact(factor)))).toBe(true);
          const { sheet: back } = scale(scaled, { factor: `${d}/${n}` });
          expect(toRecipe(back)).toEqual(toRecipe(before));
        },
      ),
      { numRuns: runs(40) },
    );
  });

  it("is the same sheet again from its recipe, from its JSON and from its amount's", () => {
    fc.assert(
      fc.property(ranges, fc.integer({ min: 1, max: 50 }), ({ text }, n) => {
        const { sheet: scaled } = scale(of(text), { factor: `${n}/7` });
        const again = sheet(toRecipe(scaled), starterFoods);
        const opened = openSheet(JSON.parse(JSON.stringify(scaled)));
        expect(ends(again)).toEqual(ends(scaled));
        expect(ends(opened)).toEqual(ends(scaled));
        const data = JSON.parse(JSON.stringify(scaled.lineAt(0).amount)) as AmountData;
        expect(JSON.stringify(amount(data))).toBe(JSON.stringify(data));
      }),
      { numRuns: runs(40) },
    );
  });

  it("is refused as data with its ends the wrong way round", () => {
    expect(
      errorOf(() => amount({ value: 2, unit: "g", range: { least: "3", most: "1" } } as never)).code,
    ).toBe("amount-range");
  });
});
