import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { exact } from "../../src/number/exact.ts";
import { substitutes } from "../../src/scale/substitutes.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText as shown } from "../../src/show/text.ts";
import { runs } from "../runs.ts";

/** A stew with something in it that says nothing of its fibre, or says it. */
const stew = (fibre?: number) => {
  const herb = {
    id: "herb",
    name: "Herb",
    source: "made up",
    per100g: { energy: 40, protein: 3, sodium: 4 },
  };
  const told = fibre === undefined ? herb : { ...herb, per100g: { ...herb.per100g, fibre } };
  const lines = [
    { key: "pulse", food: "kidney-beans-red-boiled", amount: "300 g" },
    { key: "herb", food: "herb", amount: "100 g" },
  ];
  return sheet({ name: "Stew", portions: 2, lines }, starterFoods.with([told]));
};
const asked = { components: ["protein", "fibre"] as const, among: ["lentils-boiled", "tofu-firm"] };
const swaps = (fibre?: number) => substitutes(stew(fibre), "pulse", asked);
const shares = (fibre?: number) =>
  toRecords(swaps(fibre), { figures: "exact" }).filter(
    ({ what, component }) => what === "share" && component === "fibre",
  );

describe("what a swap moves", () => {
  it("stands with the key of the line, and by how much is exact where only other lines are silent", () => {
    const records = toRecords(swaps());
    expect(new Set(records.map(({ line }) => line))).toEqual(new Set(["pulse"]));
    const moved = records.filter(({ what }) => what === "change");
    expect(moved.map(({ component, bound, unit }) => [component, bound, unit])).toEqual(
      moved.map(() => ["sodium", "point", "mg"]),
    );
  });

  it("is a share of what is known, and says how that bounds the truth, whatever a silent line turns out to hold", () => {
    const told = shares();
    expect(told.map(({ bound }) => bound)).toEqual(["at-most", "at-least"]);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), (fibre) => {
        for (const [i, { amount, food }] of shares(fibre).entries()) {
          expect(food).toBe(told[i]?.food);
          const above = exact(String(amount)).comparedTo(exact(String(told[i]?.amount)));
          expect(told[i]?.bound === "at-most" ? -above : above).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: runs(20) },
    );
    const none = shares(0).map(({ amount, bound }) => [amount, bound]);
    expect(none).toEqual(told.map(({ amount }) => [amount, "point"]));
    expect(exactText(exact(String(told[0]?.amount)))).toBe(
      exactText(swaps().found[0]?.changes.find(({ component }) => component === "fibre")?.share ?? exact(0)),
    );
  });

  it("is shown with that bound", () => {
    const row = (text: string): string => text.split("\n").find((each) => each.includes("Tofu")) ?? "";
    expect(row(shown(swaps(), { width: 200 }))).toContain("at least -85");
    expect(row(shown(swaps(0), { width: 200 }))).not.toContain("at least");
  });
});
