import { existsSync, readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { readFigure } from "../../src/food/composition.ts";
import type { FoodInput, Origin, State } from "../../src/food/food.ts";
import { starterFoodInputs } from "../../src/food/starter/index.ts";

const food = (about: Partial<FoodInput> & { name: string }): FoodInput => ({
  ...{ id: "a", source: "made up for a test", per100g: {} },
  ...about,
});
const alcohol = (about: Partial<FoodInput> & { name: string }): string =>
  readFigure(food(about), "alcohol").kind;

describe("alcohol", () => {
  // Common practice, no source, but for the practice itself: FAO/INFOODS 2012, unverified.
  it.each<[string, string, State, Origin]>([
    ["Chia seeds", "seeds", "as sold", "plant"],
    ["Linseed oil", "oils", "as sold", "plant"],
    ["Lentils, red", "pulses", "dry", "plant"],
    ["Carrots", "vegetables", "raw", "plant"],
    ["Salmon", "fish", "raw", "animal"],
    ["Salt", "salt", "dry", "mineral"],
  ])("of %s is presumed zero, and says so", (name, group, state, origin) => {
    const figure = readFigure(food({ name, group, state, origin }), "alcohol");
    expect(figure).toMatchObject({ kind: "presumed", note: expect.stringMatching(/ferment/) });
  });

  it.each<[string, string, State, Origin]>([
    ["Wholemeal bread", "grains", "as sold", "plant"],
    ["Sourdough starter, dried", "grains", "dry", "plant"],
    ["Rice pudding", "grains", "cooked", "mixed"],
    ["Cider vinegar", "vinegar", "as sold", "plant"],
    ["Soy sauce", "soya", "as sold", "plant"],
    ["Kefir", "dairy", "as sold", "animal"],
    ["Grape juice", "fruit", "raw", "plant"],
    ["Mango, ripe", "fruit", "raw", "plant"],
    ["Vanilla extract", "spices", "as sold", "plant"],
    ["Vanilla extract", "spices", "dry", "plant"],
    ["Sauerkraut, fermented", "vegetables", "raw", "plant"],
    ["Kimchi", "vegetables", "raw", "plant"],
    ["Almonds in rum", "nuts", "as sold", "plant"],
    ["Risotto", "grains", "cooked", "plant"],
    ["Mussels in white wine", "fish", "cooked", "animal"],
  ])("of %s stays unknown", (name, group, state, origin) => {
    expect(alcohol({ name, group, state, origin })).toBe("missing");
  });

  it("stays unknown where nobody says what the food is, and is never read over a figure", () => {
    expect(alcohol({ name: "Chia seeds" })).toBe("missing");
    expect(alcohol({ name: "Chia seeds", group: "seeds", state: "as sold" })).toBe("missing");
    expect(alcohol({ name: "Trail mix", group: "nuts", state: "as sold", origin: "mixed" })).toBe("missing");
    const given = { name: "Seeds", group: "seeds", origin: "plant" as const, per100g: { alcohol: "0.2" } };
    expect(alcohol(given)).toBe("known");
  });

  it("is known or presumed of every starter food that does not ferment", () => {
    const silent = starterFoodInputs.filter((f) => readFigure(f, "alcohol").kind === "missing");
    expect(silent.map(({ id }) => id).sort()).toEqual([
      "bread-gluten-free-white",
      "bread-gluten-free-wholegrain",
      "chocolate-dark-70",
      "tempeh",
      "vinegar-balsamic",
      "vinegar-red-wine",
    ]);
  });
});

describe("vitamin B12 of what is no animal", () => {
  it("is presumed zero of land plants, and unknown of algae and what is fermented", () => {
    const b12 = (name: string, group: string): string =>
      readFigure(food({ name, group, origin: "plant" }), "vitaminB12").kind;
    expect([b12("Lentils", "pulses"), b12("Walnuts", "nuts")]).toEqual(["presumed", "presumed"]);
    for (const [name, group] of [
      ["Nori, dried", "seaweed"],
      ["Dulse", "vegetables"],
      ["Chlorella powder", "other"],
      ["Tempeh", "soya"],
      ["Yeast flakes", "other"],
    ] as const)
      expect([name, b12(name, group)]).toEqual([name, "missing"]);
  });
});

const folder = new URL("../../../shared/fooddata/sr28/", import.meta.url);
const here = existsSync(new URL("NUT_DATA.txt.gz", folder));

describe.skipIf(!here)("against all of SR28 (where ../shared/fooddata/sr28 is)", () => {
  const lines = (name: string): string[][] =>
    new TextDecoder("latin1")
      .decode(gunzipSync(readFileSync(new URL(`${name}.txt.gz`, folder))))
      .split("\n")
      .map((line) => line.split("^").map((field) => field.replace(/^~|~$/g, "")));

  it("presumes no food to have none that has some, whatever group and state it is put in", () => {
    const names = new Map(lines("FOOD_DES").map(([ndb = "", , name = ""]) => [ndb, name]));
    // 221 is "Alcohol, ethyl" in NUTR_DEF.
    const holds = lines("NUT_DATA").filter(([, number, value]) => number === "221" && Number(value) > 0);
    expect(holds.length).toBeGreaterThan(70);
    for (const [ndb = ""] of holds)
      for (const group of ["seeds", "grains", "spices", "vegetables"])
        for (const state of ["raw", "dry"] as const) {
          const name = names.get(ndb) ?? "";
          expect([name, alcohol({ name, group, state, origin: "plant" })]).toEqual([name, "missing"]);
        }
  });
});
