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
