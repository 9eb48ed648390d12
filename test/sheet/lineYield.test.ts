import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { portionsOfMany } from "../../src/bulk.ts";
import { analysedRetention, starterFoods } from "../../src/foods.ts";
import {
  cooking,
  fit,
  openSheet,
  type RecipeInput,
  revise,
  scale,
  sheet,
  toRecipe,
} from "../../src/index.ts";
import { exact } from "../../src/number/exact.ts";
import { errorOf } from "../number/errorOf.ts";

const stew: RecipeInput = {
  name: "Stew",
  portions: 2,
  lines: [
    { key: "peas", food: "chickpeas-dry", amount: "100 g", retention: "legumes-boiled", yieldFactor: "2.4" },
    { key: "greens", food: "spinach-raw", amount: "200 g", retention: "greens-boiled", yieldFactor: "0.9" },
    { key: "salt", food: "salt-table", amount: "2 g", scaling: "per-portion" },
    { key: "seeds", food: "chia-seeds-dry", amount: "10 g", added: "serving" },
  ],
};

const known = (recipe: RecipeInput): RecipeInput => ({
  ...recipe,
  lines: recipe.lines.filter(({ food = "" }) => starterFoods.has(food)),
});
const made = sheet(known(stew), starterFoods);

describe("a yield told by line", () => {
  it("makes the dish's own where the recipe gives none", () => {
    const salt = made.lines.find(({ key }) => key === "salt")?.grams.toNumber() ?? 0;
    const seeds = made.lines.find(({ key }) => key === "seeds")?.grams.toNumber() ?? 0;
    expect(made.mass.cooked.toNumber()).toBe(240 + 180 + salt + seeds);
    // Where ash goes with what is poured off, so much more of the cooked mass is water.
    const { water, ash } = { water: cooking(made).of("water"), ash: cooking(made).of("ash") };
    expect(water.gained.value.minus(water.lost.value).minus(ash.lost.value).toNumber()).toBe(140 - 20);
    expect(sheet({ ...known(stew), cookedMass: "400 g" }, starterFoods).mass.cooked.toNumber()).toBe(
      400 + seeds,
    );
    expect(sheet({ ...known(stew), yieldFactor: 1 }, starterFoods).mass.cooked.eq(made.mass.raw)).toBe(true);
  });

  it("survives JSON, revising and scaling, literally", () => {
    expect(openSheet(JSON.parse(JSON.stringify(made))).mass.cooked.eq(made.mass.cooked)).toBe(true);
    expect(toRecipe(made).lines[0]?.yieldFactor).toBe("2.4");
    expect(toRecipe(made)).not.toHaveProperty("yieldFactor");
    const twice = scale(made, { factor: 2 }).sheet;
    expect(twice.mass.cooked.eq(sheet(toRecipe(twice), starterFoods).mass.cooked)).toBe(true);
    expect(scale(twice, { factor: "1/2" }).sheet.mass.cooked.eq(made.mass.cooked)).toBe(true);
    const edited = made.edit({ greens: "100 g" });
    expect(edited.mass.cooked.eq(made.mass.cooked.minus(90))).toBe(true);
    const revised = revise(made, { lines: { peas: { yieldFactor: "2" } } });
    expect(revised.mass.cooked.eq(made.mass.cooked.minus(40))).toBe(true);
  });

  it("is what a fit reckons the mass and the water of a portion by", () => {
    const loose = sheet(
      {
        ...known(stew),
        lines: known(stew).lines.map((line) =>
          line.key === "greens" ? { ...line, scaling: "adjustable" as const } : line,
        ),
      },
      starterFoods,
    );
    for (const of of ["mass", "water"] as const) {
      const was = of === "mass" ? loose.mass.portion : loose.portion("water").value;
      const result = fit(loose, [
        { of, exactly: was.times("1.1") },
        { of: "protein", exactly: loose.portion("protein").value },
      ]);
      if (result.status !== "met") throw new Error("out of reach");
      const is = of === "mass" ? result.sheet.mass.portion : result.sheet.portion("water").value;
      expect(is.eq(was.times("1.1"))).toBe(true);
    }
  });

  it("weighs cooked what its lines weigh cooked, whatever the amounts", () => {
    const grams = fc.integer({ min: 1, max: 900 });
    const factor = fc.integer({ min: 1, max: 40 }).map((n) => `${n}/13`);
    fc.assert(
      fc.property(fc.array(fc.tuple(grams, factor), { minLength: 1, maxLength: 5 }), factor, (rows, by) => {
        const lines = rows.map(([g, yieldFactor], i) => ({
          key: `l${i}`,
          food: "spinach-raw",
          amount: `${g} g`,
          yieldFactor,
        }));
        const s = sheet({ name: "Greens", portions: 3, lines }, starterFoods);
        const all = rows.reduce((sum, [g, y]) => sum.plus(exact(y).times(g)), exact(0));
        expect(s.mass.cooked.eq(all)).toBe(true);
        expect(scale(s, { factor: by }).sheet.mass.cooked.eq(all.times(by))).toBe(true);
      }),
    );
  });

  it("moves what runs off with the juice", () => {
    const beef = (yieldFactor?: string): number =>
      sheet(
        {
          name: "Beef",
          portions: 1,
          lines: [
            {
              food: "beef-mince-10-fat-raw",
              amount: "100 g",
              retention: "beef-grilled",
              ...(yieldFactor !== undefined && { yieldFactor }),
            },
          ],
        },
        starterFoods,
      )
        .total("magnesium")
        .value.toNumber();
    const usual = analysedRetention.codes["beef-grilled"]?.[3] ?? "";
    expect(beef(usual)).toBe(beef());
    expect(beef("0.6")).toBeLessThan(beef());
  });

  it("is told alike in bulk", () => {
    const [one] = [...portionsOfMany([known(stew)], starterFoods, ["mass", "water", "iron"])];
    expect(one?.columns.mass?.value[0]).toBeCloseTo(made.mass.portion.toNumber(), 9);
    expect(one?.columns.water?.value[0]).toBeCloseTo(made.portion("water").value.toNumber(), 9);
  });

  it("is refused on what is added at serving, and where it is no figure above 0", () => {
    const at = (line: object): readonly (string | number)[] =>
      errorOf(() =>
        sheet({ ...stew, lines: [{ food: "spinach-raw", amount: "1 g", ...line }] } as never, starterFoods),
      ).path;
    expect(at({ yieldFactor: 0 })).toEqual(["lines", 0, "yieldFactor"]);
    expect(at({ yieldFactor: "0.9", added: "serving" })).toEqual(["lines", 0, "yieldFactor"]);
  });
});
