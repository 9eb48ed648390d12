import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { equals, minus, negate, plus, sum, ZERO } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { fit } from "../../src/scale/fit.ts";
import { scale } from "../../src/scale/scale.ts";
import { between } from "../../src/sheet/between.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cooking } from "../../src/sheet/cooking.ts";
import { explain } from "../../src/sheet/explain.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText as shown } from "../../src/show/text.ts";
import { arbitraryFactor, arbitraryRecipe } from "../arbitraries.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

/**
 * Clarified butter keeps about three quarters of its mass (common practice, no source), and butter
 * is 17.94 % water (USDA SR28, NDB 01145): milk solids are lost too.
 */
const clarified: RecipeInput = {
  name: "Clarified butter",
  portions: 2,
  yieldFactor: "0.75",
  lines: [{ key: "butter", food: "butter-unsalted", amount: "100 g" }],
};
const made = (more: Partial<RecipeInput> = {}): Sheet => sheet({ ...clarified, ...more }, starterFoods);
const greens = { key: "greens", food: "spinach-raw", amount: "50 g", added: "serving" as const };

describe("a pot that loses more than its water", () => {
  it("does not know what water is left, and never shows less than none", () => {
    const water = made().total("water");
    expect([water.bound, water.missing, water.value]).toEqual(["unknown", ["butter"], ZERO]);
    expect(water.coverage.toString()).toBe("0");
    expect(shown(made())).not.toMatch(/^\s*water\s/m);
  });

  it("says so with both figures", () => {
    const note = /cooking takes off 25 g, more than the 17\.9 g of water that went into the pot/;
    expect(shown(made())).toMatch(note);
    expect(shown(cooking(made()))).toMatch(note);
    expect(
      explain(made(), "water", "total")
        .leaves.flatMap(({ steps }) => steps)
        .join(),
    ).toMatch(note);
    expect(shown(made({ yieldFactor: "0.9" }))).not.toMatch(/cooking takes off/);
  });

  it("balances: all its water is lost, and the rest of the loss stands apart", () => {
    const balance = cooking(made());
    const { raw, retained, lost } = balance.of("water");
    expect([raw, retained, lost].map((t) => t.value.toString())).toEqual(["17.94", "0", "17.94"]);
    // What went in is known; how much of the loss was water is not.
    expect([raw, retained, lost].map((t) => t.bound)).toEqual(["point", "unknown", "unknown"]);
    expect(balance.beyondWater.toString()).toBe("7.06");
    expect(balance.mass.lost.value.toString()).toBe("25");
  });

  it("keeps the water that is added at serving, as the least there is", () => {
    // Spinach is 91.4 % water: USDA SR28, NDB 11457.
    const water = made({ lines: [...clarified.lines, greens] }).total("water");
    expect([water.bound, water.value.toString(), water.missing]).toEqual(["at-least", "45.7", ["butter"]]);
  });

  it("dries out whole without a word: the yield that dry matter allows is known", () => {
    const water = made({ yieldFactor: "0.8206" }).total("water");
    expect([water.bound, water.value.toString()]).toEqual(["point", "0"]);
  });

  it("is silent on water in the dish that it goes into", () => {
    const outer = sheet(
      { name: "Sauce", portions: 1, lines: [{ key: "ghee", recipe: clarified, amount: "30 g" }] },
      starterFoods,
    );
    expect(outer.total("water").missing).toEqual(["ghee/butter"]);
    expect(outer.total("water").bound).toBe("unknown");
    expect(outer.total("fat").bound).toBe("point");
  });

  it("may hold all of its water still, and may hold none", () => {
    const { least, most } = between(made(), "water");
    expect([least.toString(), most?.toString()]).toEqual(["0", "17.94"]);
  });

  it("is no target for water, unless silence is accepted, and then by what serving adds", () => {
    expect(errorOf(() => scale(made(), { water: 100 })).code).toBe("target-silent");
    const s = made({ lines: [...clarified.lines, greens] });
    expect(scale(s, { water: 100 }, { silent: "accept" }).sheet.portion("water").value.toString()).toBe(
      "100",
    );
    // A dose of water in the pot: of so much butter it would no longer do, so the factor would not be true.
    const dose = { key: "broth", food: "water-tap", amount: "20 g", scaling: "per-portion" as const };
    const wet = made({ portions: 1, lines: [...clarified.lines, dose, greens] });
    expect(wet.total("water").bound).toBe("point");
    expect(errorOf(() => scale(wet, { water: 400 })).code).toBe("target-unreachable");
  });

  it("leaves a demand on water not proven in a fit", () => {
    const result = fit(made({ lines: [...clarified.lines, greens] }), [
      { of: "water", least: 10, firm: true },
    ]);
    expect(result.status === "met" && result.notProven.map(({ silent }) => silent)).toEqual([["butter"]]);
  });

  it("shows no component below zero, whatever the recipe, and loses no gram of the balance", () => {
    fc.assert(
      fc.property(arbitraryRecipe, arbitraryFactor, ({ table, recipe }, factor) => {
        const s = scale(sheet(recipe, table), { factor }).sheet;
        const water = s.total("water");
        const { raw, gained, retained, lost } = cooking(s).of("water");
        expect(water.value.n >= 0n).toBe(true);
        expect(equals(plus(raw.value, gained.value), plus(retained.value, lost.value))).toBe(true);
        // Independent of the sheet's own sums: of lines in the pot, what a yield leaves of their water.
        const pot = s.lines.filter((line) => line.added === "cooking");
        const served = s.lines.filter((line) => line.added === "serving");
        const of = (lines: typeof pot) => sum(lines.map((line) => s.cell(line.key, "water").value));
        const left = plus(of(pot), minus(s.masses.cooked, s.masses.raw));
        const isDried = left.n < 0n;
        expect(exactText(water.value)).toBe(exactText(plus(isDried ? ZERO : left, of(served))));
        expect(cooking(s).beyondWater.toJSON()).toBe(exactText(isDried ? negate(left) : ZERO));
        if (isDried) expect(water.bound).not.toBe("point");
        const { least, most } = between(s, "water");
        expect(least.n >= 0n && compareRatios(least, water.value) <= 0).toBe(true);
        if (most) expect(compareRatios(water.value, most)).toBeLessThanOrEqual(0);
      }),
      { numRuns: runs(300) },
    );
  });
});

describe("water where other constituents are lost", () => {
  const PROXIMATES = ["water", "protein", "fat", "carbohydrateByDifference", "ash", "alcohol"] as const;
  // USDA SR28, NDB 14096: red table wine.
  const foods = starterFoods.with([
    {
      id: "wine",
      name: "Red wine",
      source: "USDA SR28, NDB 14096",
      per100g: {
        water: "86.49",
        protein: "0.07",
        fat: 0,
        carbohydrateByDifference: "2.61",
        ash: "0.28",
        alcohol: "10.6",
      },
    },
  ]);
  const share = fc.integer({ min: 0, max: 20 }).map((n) => `${n}/20`);
  const stew = (
    shares: Readonly<Record<string, string>>,
    yieldFactor: string,
    line?: string,
  ): RecipeInput => ({
    name: "Stew",
    portions: 2,
    ...(line === undefined && { yieldFactor }),
    lines: [
      {
        key: "mince",
        food: "beef-mince-10-fat-raw",
        amount: "300 g",
        retention: shares,
        ...(line && { yieldFactor: line }),
      },
      { key: "wine", food: "wine", amount: "100 g", retention: { alcohol: "0.4" } },
      { key: "beans", food: "chickpeas-dry", amount: "50 g", retention: "legumes-boiled" },
    ],
  });
  const mass = (s: Sheet): ReturnType<typeof sum> => sum(PROXIMATES.map((id) => s.total(id).value));

  it("makes up what the cooked mass and they leave, literally", () => {
    fc.assert(
      fc.property(fc.record({ fat: share, ash: share, protein: share }), (shares) => {
        for (const told of [stew(shares, "0.9"), stew(shares, "0.9", "0.8")]) {
          const s = sheet(told, foods);
          const raw = sheet({ ...told, lines: told.lines.map(({ retention: _, ...line }) => line) }, foods);
          expect(s.mass.cooked.eq(raw.mass.cooked)).toBe(true);
          expect(mass(s).eq(mass(raw))).toBe(true);
          expect(s.total("water").derived).toContain("wine");
          const nested = sheet(
            { name: "N", portions: 1, lines: [{ key: "in", recipe: told, amount: "1 batch" }] },
            foods,
          );
          expect(mass(nested).eq(mass(raw))).toBe(true);
        }
      }),
      { numRuns: runs(6) },
    );
  });

  it("says what it takes the place of, and leaves a share that is named for it alone", () => {
    const steps = (retention: RecipeInput["lines"][number]["retention"]): string =>
      explain(
        sheet(
          {
            name: "B",
            portions: 1,
            lines: [{ key: "b", food: "chickpeas-dry", amount: "1 g", ...(retention && { retention }) }],
          },
          foods,
        ),
        "water",
        { line: "b" },
      ).steps.join("; ");
    // SR28 16056: 2.85 g of ash in 100 g; the analysed table leaves 85 %.
    expect(steps("legumes-boiled")).toMatch(
      /takes the place of 0\.428 g of ash lost in cooking: code legumes-boiled/,
    );
    expect(steps({ ash: "0.5", water: "0.5" })).not.toMatch(/takes the place/);
  });
});
