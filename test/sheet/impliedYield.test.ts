import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { fit } from "../../src/scale/fit.ts";
import { scale } from "../../src/scale/scale.ts";
import { substitutes } from "../../src/scale/substitutes.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import { revise } from "../../src/sheet/revise.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText as shown } from "../../src/show/text.ts";

/** 600 g go in, 500 g come out: a yield of 5/6. */
const stew: RecipeInput = {
  name: "Camp stew",
  portions: 2,
  cookedMass: "500 g",
  lines: [
    { key: "chicken", food: "chicken-thigh-raw", amount: "300 g" },
    { key: "carrots", food: "carrots-raw", amount: "300 g" },
    { key: "parsley", food: "parsley-fresh", amount: "10 g", added: "serving" },
  ],
};
const s = sheet(stew, starterFoods);

/** Grams of the pot as eaten, without the parsley; and what the document says of it. */
function toldOf(made: Sheet): readonly unknown[] {
  const { cookedMass, yieldFactor, yieldPresumed } = toRecipe(made);
  return [made.masses.pot.toString(), cookedMass, yieldFactor, yieldPresumed];
}

const byYield = (grams: string): unknown[] => [grams, undefined, "5/6", true];

describe("a cooked mass that was weighed", () => {
  it("becomes the yield that it implied when lines go, come, or weigh otherwise", () => {
    expect(toldOf(s)).toEqual(["500", "500 g", undefined, undefined]);
    expect(toldOf(revise(s, { remove: ["chicken"] }))).toEqual(byYield("250"));
    expect(toldOf(revise(s, { swap: { chicken: "tofu-firm" } }))).toEqual(byYield("500"));
    expect(toldOf(revise(s, { amounts: { carrots: "60 g" } }))).toEqual(byYield("300"));
    expect(toldOf(s.edit({ carrots: "60 g" }))).toEqual(byYield("300"));
    expect(toldOf(revise(s, { add: [{ food: "potatoes-raw", amount: "60 g" }] }))).toEqual(byYield("550"));
    expect(toldOf(revise(s, { lines: { carrots: { added: "serving" } } }))).toEqual(byYield("250"));
    const [first] = substitutes(s, "chicken", { among: ["tofu-firm"] }).found;
    expect(first && toldOf(first.sheet).slice(1)).toEqual([undefined, "5/6", true]);
  });

  it("stays where what is cooked stays", () => {
    const asWeighed = ["500", "500 g", undefined, undefined];
    expect(toldOf(revise(s, { portions: 4 }))).toEqual(asWeighed);
    expect(toldOf(revise(s, { remove: ["parsley"] }))).toEqual(asWeighed);
    expect(toldOf(s.edit({ parsley: "5 g" }))).toEqual(asWeighed);
    expect(toldOf(s.edit({ carrots: "300 g" }))).toEqual(asWeighed);
    expect(toldOf(revise(s, { order: ["parsley", "carrots"], name: "Stew" }))).toEqual(asWeighed);
    expect(toldOf(scale(s, { factor: 2 }).sheet)).toEqual(["1000", "1000 g", undefined, undefined]);
  });

  it("becomes it where a fit or a kitchen moves ratios, and is presumed from then on", () => {
    const adjustable = revise(s, { lines: { carrots: { scaling: "adjustable" } } });
    const demands = [
      { of: "protein" as const, exactly: adjustable.portion("protein").value },
      {
        of: "carbohydrateByDifference" as const,
        exactly: adjustable.portion("carbohydrateByDifference").value.times("0.8"),
      },
    ];
    const fitted = fit(adjustable, demands);
    if (fitted.status !== "met") throw new Error("carrots may be fewer");
    expect(toldOf(fitted.sheet).slice(1)).toEqual([undefined, "5/6", true]);
    expect(toldOf(scale(fitted.sheet, { factor: 2 }).sheet).slice(1)).toEqual([undefined, "5/6", true]);
    expect(fitted.sheet.per100g("energy").derived).toContain("carrots");
  });

  it("is what the caller says, where they weighed it again", () => {
    const again = revise(s, { remove: ["chicken"], cookedMass: "240 g" });
    expect(toldOf(again)).toEqual(["240", "240 g", undefined, undefined]);
    const presumed = revise(s, { remove: ["chicken"] });
    expect(toldOf(revise(presumed, { cookedMass: "240 g" }))).toEqual(["240", "240 g", undefined, undefined]);
    expect(toldOf(revise(presumed, { yieldFactor: "0.8" }))).toEqual(["240", undefined, "0.8", undefined]);
    expect(toldOf(revise(presumed, { amounts: { carrots: "600 g" } }))).toEqual(byYield("500"));
  });

  it("is told as presumed, and what is reckoned from it as derived, there and back", () => {
    const presumed = revise(s, { remove: ["chicken"] });
    for (const made of [presumed, sheet(toRecipe(presumed), starterFoods), s.edit({ carrots: "60 g" })]) {
      expect(made.per100g("protein").derived).toContain("carrots");
      expect(made.per100g("protein").derived).not.toContain("parsley");
      expect(made.portion("water").derived).toContain("carrots");
      expect(shown(made)).toContain("the yield is assumed");
    }
    expect(presumed.portion("protein").derived).toEqual([]);
    expect(s.per100g("protein").derived).toEqual([]);
    expect(shown(s)).not.toContain("the yield is assumed");
  });
});
