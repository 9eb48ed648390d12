import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { exactText } from "../../src/number/digits.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { revise } from "../../src/sheet/revise.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";

/**
 * What is added at serving is weighed beside the pot: neither the cooked mass nor the yield factor
 * speaks of it (common practice, no source). Reckoned by hand.
 */
const foods = foodTable([
  { id: "rice", name: "Rice", source: "made up", per100g: { energy: 350 } },
  { id: "oil", name: "Oil", source: "made up", per100g: { energy: 900 } },
]);
const written = (cooked: { cookedMass?: string; yieldFactor?: string }) => ({
  name: "Rice",
  portions: 2,
  ...cooked,
  lines: [
    { key: "rice", food: "rice", amount: "400 g" },
    { key: "oil", food: "oil", amount: "20 g", added: "serving" as const },
  ],
});
const masses = (s: Sheet): string[] => [s.mass.raw, s.mass.cooked, s.mass.portion].map(String);

describe("what is added at serving", () => {
  it("comes on top of a pot that was weighed, and of one that a yield factor speaks of", () => {
    for (const cooked of [{ cookedMass: "1000 g" }, { yieldFactor: "2.5" }]) {
      const s = sheet(written(cooked), foods);
      // 400 g raw, 1,000 g cooked, and 20 g of oil: 420 in, 1,020 out, 510 to each of two.
      expect(masses(s)).toEqual(["420", "1020", "510"]);
      // 1,400 + 180 kcal in 1,020 g.
      expect(exactText(s.per100g("energy").value)).toBe("7900/51");
    }
  });

  it("has no mass lost or gained in cooking, however much of it there is", () => {
    const s = sheet(written({ yieldFactor: "2.5" }), foods).edit({ oil: "120 g" });
    expect(masses(s)).toEqual(["520", "1120", "560"]);
    const weighed = sheet(written({ cookedMass: "1000 g" }), foods).edit({ oil: "120 g" });
    expect(masses(weighed)).toEqual(["520", "1120", "560"]);
    expect(masses(revise(weighed, { cookedMass: null }))).toEqual(["520", "520", "260"]);
  });

  it("scales with the rest, in a pot that was weighed too", () => {
    for (const cooked of [{ cookedMass: "1000 g" }, { yieldFactor: "2.5" }])
      expect(masses(scale(sheet(written(cooked), foods), { factor: 2 }).sheet)).toEqual([
        "840",
        "2040",
        "1020",
      ]);
  });

  it("is not what a cooked mass of nothing else speaks of", () => {
    const served = { ...written({ cookedMass: "20 g" }), lines: [written({}).lines[1]] };
    expect(() => sheet(served as never, foods)).toThrow(/nothing is cooked/);
  });
});
