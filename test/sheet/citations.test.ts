/** Sources counted by hand on foods made up for it, and what a paper's paragraph says of them. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { usdaRetention } from "../../src/food/data/retentionUsdaR6.ts";
import { rankFoods } from "../../src/food/rankFoods.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { version } from "../../src/number/version.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { citations } from "../../src/sheet/citations.ts";
import { methods } from "../../src/sheet/methods.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";
import { root } from "../sources.ts";

const foods = foodTable([
  {
    id: "leaf",
    name: "Leaf",
    source: "USDA SR28, NDB 01234",
    per100g: { iron: 1, vitaminC: 20, iodine: { value: 3, source: "own analysis" } },
  },
  {
    id: "root",
    name: "Root",
    source: "USDA SR28, NDB 05678",
    per100g: {
      iron: { value: 2, borrowedFrom: "another root" },
      vitaminC: { value: 4, calculated: "by difference" },
    },
  },
  { id: "none", name: "None", source: "nobody", per100g: { iron: 1 } },
]).withRetention(usdaRetention);
const dish = sheet(
  {
    name: "Dish",
    portions: 1,
    yieldFactor: "0.8",
    lines: [
      { key: "leaf", food: "leaf", amount: "50 g", retention: "3004" },
      { key: "again", food: "leaf", amount: "5 g" },
      { key: "root", food: "root", amount: "50 g" },
      { key: "none", food: "none", amount: "0 g" },
    ],
  },
  foods,
);
const how = { components: ["iron", "vitaminC", "iodine"] } as const;

describe("citations", () => {
  const { sources } = citations(dish, how);

  it("count each figure once, by data set, release and licence", () => {
    expect(sources.map(({ kind, source, figures }) => [kind, source, figures])).toEqual([
      ["data", "USDA SR28", 4],
      ["retention", usdaRetention.source, 2],
      ["data", "own analysis", 1],
    ]);
    expect(sources[0]).toMatchObject({
      release: expect.stringContaining("28"),
      licence: expect.stringContaining("public domain"),
      foods: ["leaf", "root"],
      records: ["NDB 01234", "NDB 05678"],
    });
  });

  it("are of nested recipes, lists and plans too", () => {
    const around = sheet(
      { name: "Around", portions: 1, lines: [{ recipe: "in", amount: "1 portion" }] },
      starterFoods,
      {
        recipes: { in: { name: "In", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "10 g" }] } },
      },
    );
    expect(citations(around, { components: ["iron"] }).sources[0]?.records).toEqual(["NDB 08120"]);
    expect(citations([around, dish], { components: ["iodine"] }).sources.length).toBe(1);
    const plan = portionPlan({
      meals: [{ id: "supper", dishes: { dish: around } }],
      people: [{ id: "cox" }],
    });
    expect(citations(plan, { components: ["iron"] }).sources[0]?.figures).toBe(1);
  });

  it("are shown and recorded", () => {
    expect(toText(citations(dish, how))).toContain("own analysis");
    expect(toRecords(citations(dish, how)).map(({ figures }) => figures)).toEqual([4, 2, 1]);
  });
});

describe("methods", () => {
  it("say what was used, and what was missing", () => {
    const text = methods(dish, how);
    for (const said of [
      `with steelyard ${version} from 1 recipe as eaten`,
      "USDA National Nutrient Database for Standard Reference, release 28",
      "own analysis (1)",
      "borrowed from another food: 1; calculated by their source: 1",
      "reckoned by a yield factor for 1",
      usdaRetention.source.slice(0, 30),
      "lower bounds, since some ingredients say nothing of them, for iodine",
    ])
      expect(text).toContain(said);
  });

  it("name the factors behind energy, food by food, and what cooking took of it", () => {
    const wine = {
      id: "wine",
      name: "Wine",
      source: "own analysis",
      per100g: { energy: 85, alcohol: 10, availableCarbohydrate: 3 },
    };
    const oats = { food: "oats-rolled-dry", amount: "100 g" };
    const pot = sheet(
      {
        name: "Pot",
        portions: 1,
        lines: [oats, { food: "wine", amount: "100 g", retention: { alcohol: "0.4" } }],
      },
      starterFoods.with([wine]),
    );
    const text = methods(pot, { components: ["energy"] });
    expect(text).toContain(
      "Energy is that of the sources, by each food's own Atwater factors (Merrill & Watt (1973), Energy Value of Foods, USDA Agriculture Handbook 74) for 1 food; EU labelling factors (Regulation (EU) No 1169/2011, Annex XIV) for 1 food.",
    );
    expect(text).toContain("What cooking takes of its constituents was taken off it by the same factors.");
    expect(methods(dish, how)).not.toContain("Energy is");
    expect(methods(sheet({ name: "Oats", portions: 1, lines: [oats] }, starterFoods))).not.toContain(
      "taken off it",
    );
  });

  it("name the version of the manifest", () => {
    const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
    expect(version).toBe(manifest.version);
  });
});

describe("foods ranked", () => {
  it("are in the order of their figures, with the unknown apart", () => {
    const ranked = rankFoods(starterFoods, "iron", { per: "energy" });
    const values = ranked.foods.map(({ value }) => value.toNumber());
    expect(values).toEqual([...values].sort((a, b) => b - a));
    expect(ranked.foods.length + ranked.unknown.length).toBe(starterFoods.ids.length);
    const { per100g } = starterFoods.get("lentils-boiled");
    const of = (id: "iron" | "energy"): number =>
      Number((per100g[id] as { value?: string })?.value ?? per100g[id]);
    const lentils = ranked.foods.find(({ id }) => id === "lentils-boiled");
    expect(lentils?.value.toNumber()).toBeCloseTo((100 * of("iron")) / of("energy"), 10);
  });

  it("are of a group, the richest few, and what they are made of is said", () => {
    const { foods: all, unit } = rankFoods(foods, "iron", { most: 1 });
    expect(all).toMatchObject([{ id: "root", marks: ["borrowed"] }]);
    expect(unit).toBe("mg per 100 g");
    const grains = rankFoods(starterFoods, "fibre", { group: "grains" });
    expect(new Set(grains.foods.map(({ group }) => group))).toEqual(new Set(["grains"]));
    expect(toRecords(grains, { components: ["fibre"] }).length).toBe(grains.foods.length);
    expect(toText(grains)).toContain("richest foods first");
  });
});
