/** What happens to results where data leave the program: JSON, and a structured clone. */

import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { analysedRetention, starterFoods } from "../../src/foods.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { explain } from "../../src/sheet/explain.ts";

const soup = sheet(
  { name: "Lentil soup", portions: 3, lines: [{ key: "lentils", food: "lentils-red-dry", amount: "150 g" }] },
  starterFoods,
);

describe("a boundary", () => {
  it("gives every food back from JSON, figures and retention factors literally", () => {
    const back = foodTable(JSON.parse(JSON.stringify(starterFoods)));
    expect(back.ids).toEqual(starterFoods.ids);
    expect(back.retention).toEqual(analysedRetention);
    expect(JSON.parse(JSON.stringify(back))).toEqual(JSON.parse(JSON.stringify(starterFoods)));
    const again = sheet(soup.origin, back);
    expect(again.portion("iron").toJSON()).toEqual(soup.portion("iron").toJSON());
  });

  it("refuses what is stored otherwise", () => {
    const of = (given: unknown) => (): unknown => foodTable(given as never);
    expect(of({ format: "steelyard-foods/9", foods: [] })).toThrow("newer than this library");
    expect(of({ format: "steelyard-foods/1" })).toThrow("give a list");
    expect(of({ format: "steelyard-foods/1", foods: [], retention: { source: "x" } })).toThrow("retention");
  });

  it.each([
    ["a tally", soup.portion("iron")],
    ["a sheet", soup],
    ["a table of foods", starterFoods],
    ["a difference", explain(soup, "iron", "portion")],
  ])("refuses a clone of %s in words that say what to send", (_, thing) => {
    expect(() => structuredClone(thing)).toThrow("toJSON");
  });

  it("takes back the factor that a scaling gave, from JSON and from a clone, literally", () => {
    const { factor, sheet: scaled } = scale(soup, { energy: "700 kcal" });
    expect(factor.d).not.toBe(1n);
    for (const given of [factor, JSON.parse(JSON.stringify(factor)), structuredClone(factor)])
      expect(scale(soup, { factor: given }).sheet.portion("iron").toJSON()).toEqual(
        scaled.portion("iron").toJSON(),
      );
  });
});
