import { describe, expect, it } from "vitest";
import { foodTable } from "../../../src/food/table.ts";
import { exactText } from "../../../src/number/digits.ts";
import { exact } from "../../../src/number/exact.ts";
import type { LineInput } from "../../../src/recipe/document.ts";
import type { Demand } from "../../../src/scale/demand.ts";
import { fit } from "../../../src/scale/fit.ts";
import { sheet } from "../../../src/sheet/build.ts";
import { food } from "./worlds.ts";

/**
 * Mixtures and rations that others have published. Their pounds and kilograms stand as grams here;
 * nothing but proportions is at stake.
 */

const free = { scaling: "adjustable", least: "0 g", most: "100000 g" } as const;

interface Ingredient {
  readonly name: string;
  readonly per100g: Parameters<typeof food>[1];
  readonly line?: Partial<LineInput>;
}

/** What a fit makes of a mixture, in grams by ingredient. */
function mixed(ingredients: readonly Ingredient[], demands: readonly Demand[]): { [name: string]: string } {
  const table = foodTable(ingredients.map(({ name, per100g }) => food(name, per100g)));
  const lines = ingredients.map(
    ({ name, line }): LineInput => ({ food: name, amount: "100 g", ...free, ...line }),
  );
  const fitted = fit(sheet({ name: "A mixture", portions: 1, lines }, table), demands);
  if (fitted.status !== "met") throw new Error(fitted.text);
  return Object.fromEntries(fitted.sheet.lines.map(({ key, grams }) => [key, exactText(grams)]));
}

const protein = (percent: string): Ingredient["per100g"] => ({ protein: percent });

describe("two ingredients to one percentage: the square method", () => {
  // Wagner & Stanton, Formulating Rations With the Pearson Square, Colorado State University
  // Extension fact sheet 1.618: 14 % crude protein from corn of 10 % and soybean meal of 45 %. The
  // square gives 31 parts of corn and 4 of meal (the parts are worked out here from its rule).
  it("corn and soybean meal to 14 % crude protein", () => {
    const grams = mixed(
      [
        { name: "corn", per100g: protein("10") },
        { name: "meal", per100g: protein("45") },
      ],
      [
        { of: "mass", exactly: 35 },
        { of: "protein", exactly: "4.9" },
      ],
    );
    expect(grams).toEqual({ corn: "31", meal: "4" });
  });

  // Van Emon, Pearson Square Examples, Montana State University Extension: 11 % from hay of 12.25 %
  // and silage of 10.8 %; 0.2 parts of hay and 1.25 of silage, 13.8 % and 86.2 %.
  it("chopped hay and corn silage to 11 %", () => {
    const grams = mixed(
      [
        { name: "hay", per100g: protein("12.25") },
        { name: "silage", per100g: protein("10.8") },
      ],
      [
        { of: "mass", exactly: "1.45" },
        { of: "protein", exactly: "0.1595" },
      ],
    );
    expect(grams).toEqual({ hay: "0.2", silage: "1.25" });
    expect(exactPercent(grams.hay ?? "", "1.45")).toBe("13.8");
    expect(exactPercent(grams.silage ?? "", "1.45")).toBe("86.2");
  });

  const fat = (percent: string): Ingredient["per100g"] => ({ fat: percent });
  const held = (amount: string): Partial<LineInput> => ({
    scaling: "held",
    amount,
    least: amount,
    most: amount,
  });

  // University of Guelph, Food Science, Dairy Science and Technology, "Standardization Problems", 1:
  // 160 kg of 40 % cream to 32 % takes 40 kg of skim milk.
  it("skim milk for 160 of cream, from 40 % fat to 32 %, by a ratio", () => {
    const grams = mixed(
      [
        { name: "cream", per100g: fat("40"), line: held("160 g") },
        { name: "skim", per100g: fat("0") },
      ],
      [{ ratioOf: ["fat", "mass"], exactly: "0.32" }],
    );
    expect(grams).toEqual({ cream: "160", skim: "40" });
  });

  // The same page, 2: 500 kg of milk of 4 % to cream of 10 % takes 120 kg of cream of 35 %.
  it("35 % cream for 500 of milk, from 4 % fat to 10 %", () => {
    const grams = mixed(
      [
        { name: "milk", per100g: fat("4"), line: held("500 g") },
        { name: "cream", per100g: fat("35") },
      ],
      [{ ratioOf: ["fat", "mass"], exactly: "0.1" }],
    );
    expect(grams).toEqual({ cream: "120", milk: "500" });
  });

  // Dairy laboratory manual and note book, rule 10 (the parallelogram of R. A. Pearson): 95 pounds of
  // 4 % milk from milk of 3 % and cream of 22 %; 18 parts and 1 part of 5 pounds each.
  it("95 of 4 % milk from 3 % milk and 22 % cream", () => {
    const grams = mixed(
      [
        { name: "milk", per100g: fat("3") },
        { name: "cream", per100g: fat("22") },
      ],
      [
        { of: "mass", exactly: 95 },
        { of: "fat", exactly: "3.8" },
      ],
    );
    expect(grams).toEqual({ cream: "5", milk: "90" });
  });

  // The rule itself, as the first source words it: a target outside the two cannot be mixed.
  it("refuses a target outside the two: barley of 12 % and corn of 10 % to 14 %", () => {
    const table = foodTable([food("barley", protein("12")), food("corn", protein("10"))]);
    const lines = ["barley", "corn"].map((name): LineInput => ({ food: name, amount: "100 g", ...free }));
    const missed = fit(sheet({ name: "Feed", portions: 1, lines }, table), [
      { ratioOf: ["protein", "mass"], exactly: "0.14" },
      { of: "mass", exactly: 100 },
    ]);
    expect(missed.status).toBe("out-of-reach");
  });
});

describe("a ration of two feeds to two nutrients", () => {
  // "Simultaneous Equations Diet Balancing", lecture slides (author not named on the copy read):
  // feed A 10 % protein and 80 % digestible nutrients, feed B 35 % and 50 %; 0.8 lb and 4.0 lb a day
  // are asked. B = 2.4 / 2.3 = 1.04 lb and, worked on with that rounded, A = 4.36 lb; exactly, 100/23.
  it("meets both to the figure", () => {
    const feed = (cp: string, digestible: string): Ingredient["per100g"] => ({
      protein: cp,
      carbohydrateByDifference: digestible,
    });
    const grams = mixed(
      [
        { name: "a", per100g: feed("10", "80") },
        { name: "b", per100g: feed("35", "50") },
      ],
      [
        { of: "protein", exactly: "0.8" },
        { of: "carbohydrateByDifference", exactly: "4" },
      ],
    );
    expect(grams).toEqual({ a: "100/23", b: "24/23" });
  });
});

function exactPercent(part: string, whole: string): string {
  const [{ n, d }, { n: by, d: under }] = [exact(part), exact(whole)];
  return (Number((n * under * 100_000n) / (d * by)) / 1000).toFixed(1);
}
