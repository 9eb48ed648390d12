import { describe, expect, it } from "vitest";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { compare } from "../../src/person/compare/compare.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Person } from "../../src/person/person.ts";
import { cautionsFor } from "../../src/person/portion/cautions.ts";
import { meetings } from "../../src/person/portion/meetings.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const rower: Person = { sex: "female", age: 24, mass: "60 kg" };

function plate(...foods: readonly string[]): Sheet {
  const lines = foods.map((food) => ({ key: food, food, amount: "50 g" }));
  return sheet({ name: "Plate", portions: 1, lines }, starterFoods);
}

const codes = (s: Sheet, person: Person): string[] =>
  cautionsFor(s, person)
    .filter(({ because }) => because.length > 0)
    .map(({ code, because }) => `${code}: ${because.join(" ")}`);

describe("a food that meets a person", () => {
  it.each<[string, string, Partial<Person>, string]>([
    ["seaweed", "kelp-raw", { conditions: ["thyroid-disease"] }, "seaweed-thyroid: thyroid-disease"],
    ["seaweed", "wakame-raw", { conditions: ["kidney-disease"] }, "seaweed-thyroid: kidney-disease"],
    ["seaweed", "kelp-raw", { pregnant: 1 }, "seaweed-growth: pregnant"],
    ["seaweed", "kelp-raw", { age: 15 }, "seaweed-growth: under-18"],
    ["greens", "kale-raw", { conditions: ["warfarin"] }, "warfarin-vitamin-k: warfarin"],
    ["grapefruit", "grapefruit-raw", { conditions: ["warfarin"] }, "warfarin-grapefruit: warfarin"],
    ["liver", "beef-liver-braised", { pregnant: 2 }, "liver-pregnancy: pregnant"],
    ["a banana", "bananas-raw", { conditions: ["kidney-disease"] }, "kidney-amounts: kidney-disease"],
    ["rice", "rice-white-long-boiled", { conditions: ["insulin"] }, "insulin-carbohydrate: insulin"],
    ["nori", "laver-raw", { conditions: ["thyroid-disease"] }, "seaweed-thyroid: thyroid-disease"],
    ["coffee", "coffee-brewed", { pregnant: 1 }, "caffeine-pregnancy: pregnant"],
    ["tea", "tea-black-brewed", { breastfeeding: true }, "caffeine-pregnancy: breastfeeding"],
    ["cocoa", "cocoa-powder", { pregnant: 1 }, "caffeine-pregnancy: pregnant"],
    ["tuna", "tuna-light-canned-water-drained", { pregnant: 1 }, "tuna-pregnancy: pregnant"],
    ["salmon", "salmon-farmed-baked", { pregnant: 1 }, "oily-fish-pregnancy: pregnant"],
    [
      "sardines",
      "sardines-canned-oil-drained",
      { breastfeeding: true },
      "oily-fish-pregnancy: breastfeeding",
    ],
    ["egg", "egg-raw", { pregnant: 3 }, "raw-egg-pregnancy: pregnant"],
    ["wheat", "pasta-dry", { conditions: ["coeliac-disease"] }, "coeliac-gluten: coeliac-disease"],
    ["barley", "barley-pearl-boiled", { conditions: ["coeliac-disease"] }, "coeliac-gluten: coeliac-disease"],
    ["bread", "bread-wholemeal", { conditions: ["coeliac-disease"] }, "coeliac-gluten: coeliac-disease"],
    ["oats", "oats-rolled-dry", { conditions: ["coeliac-disease"] }, "coeliac-oats: coeliac-disease"],
    ["raisins", "raisins", { conditions: ["coeliac-disease"] }, "coeliac-unknown: coeliac-disease"],
    ["pasta", "pasta-dry", { conditions: ["diabetes"] }, "diabetes-carbohydrate: diabetes"],
    ["salt", "salt", { conditions: ["hypertension"] }, "hypertension-salt: hypertension"],
    ["feta", "feta", { conditions: ["hypertension"] }, "hypertension-salt: hypertension"],
  ])("is told: %s (%s), %o", (_, food, traits, expected) => {
    expect(codes(plate(food), { ...rower, ...traits })).toContain(expected);
    expect(codes(plate(food), rower)).toEqual([]);
  });

  it("is told of just the lines that give cause, and of the amounts it speaks of", () => {
    const [first] = cautionsFor(plate("rice-white-long-boiled", "kale-raw"), {
      ...rower,
      conditions: ["warfarin"],
    });
    expect(first?.lines).toEqual(["kale-raw"]);
    expect(first?.amounts.map(({ of }) => of)).toEqual(["vitaminK"]);
    expect(first?.amounts[0]?.amount.value.toNumber()).toBeGreaterThan(100);
  });

  it("counts what a food may hold unsaid as present, and only for a food that may", () => {
    const food = (name: string, caffeine?: number): FoodInput => ({
      id: name,
      name,
      source: "made up for a test",
      per100g: { ...(caffeine !== undefined && { caffeine }) },
    });
    const drink = (...foods: FoodInput[]): Sheet =>
      sheet(
        { name: "Drink", portions: 1, lines: foods.map(({ id }) => ({ food: id, amount: "200 g" })) },
        foodTable(foods),
      );
    const mother: Person = { ...rower, breastfeeding: true };
    const caffeine = ["caffeine-pregnancy: breastfeeding"];
    expect(codes(drink(food("Water", 0)), mother)).toEqual([]);
    expect(codes(drink(food("Oat drink")), mother)).toEqual([]);
    expect(codes(drink(food("Cola")), mother)).toEqual(caffeine);
    expect(codes(drink(food("Cola, no caffeine")), mother)).toEqual([]);
    expect(codes(drink(food("Brew", 40)), mother)).toEqual(caffeine);
    // What is silent and no source of it leaves the figure of what is one alone.
    const [both] = cautionsFor(drink(food("Coffee", 40), food("Oat drink")), mother);
    expect(both?.lines).toEqual(["Coffee"]);
    expect(both?.amounts.map(({ amount }) => [amount.bound, amount.value.toNumber()])).toEqual([
      ["point", 80],
    ]);
  });

  it("names a body, and every code of a food that a rule looks for is one that starter foods carry", () => {
    const carried = new Set(
      starterFoods.ids.flatMap((id) => starterFoods.get(id).cautions?.map((c) => c.code) ?? []),
    );
    for (const { code, source, foods = [], kind, components = [], traits } of meetings) {
      expect(source.length, code).toBeGreaterThan(15);
      expect(foods.length + components.length + (kind ? 1 : 0), code).toBeGreaterThan(0);
      for (const food of kind?.codes ?? []) expect(carried, code).toContain(food);
      expect(traits.length, code).toBeGreaterThan(0);
      for (const food of foods) expect(carried, code).toContain(food);
    }
    expect(new Set(meetings.map(({ code }) => code)).size).toBe(meetings.length);
  });
});

describe("a food's own caution", () => {
  it("rides along for everyone, once, with all its lines, and is never crowded out", () => {
    const dry = plate("kidney-beans-red-dry", "grapefruit-raw", "brazil-nuts");
    for (const person of [rower, { ...rower, conditions: ["warfarin", "kidney-disease"] as const }]) {
      const found = cautionsFor(dry, person).filter(({ because }) => because.length === 0);
      expect(found.map(({ code, lines }) => [code, lines])).toEqual([
        ["beans-boil", ["kidney-beans-red-dry"]],
        ["grapefruit-medicines", ["grapefruit-raw"]],
        ["selenium-brazil-nuts", ["brazil-nuts"]],
      ]);
    }
    const two = cautionsFor({ lunch: plate("kelp-raw"), supper: plate("wakame-raw") }, rower);
    expect(two.map(({ code, lines }) => [code, lines])).toEqual([
      ["iodine-seaweed", ["lunch/kelp-raw", "supper/wakame-raw"]],
    ]);
  });

  it("comes out of nested recipes", () => {
    const outer = sheet(
      {
        name: "Bowl",
        portions: 1,
        lines: [
          {
            key: "broth",
            recipe: { name: "Broth", portions: 1, lines: [{ key: "kelp", food: "kelp-raw", amount: "5 g" }] },
            amount: "5 g",
          },
        ],
      },
      starterFoods,
    );
    expect(cautionsFor(outer, rower)[0]?.lines).toEqual(["broth/kelp"]);
  });

  it("stands in a comparison, with or without someone whom it meets", () => {
    const c = compare(plate("kelp-raw"), referenceIntakes("uk", { ...rower, pregnant: 1 }));
    expect(c.cautions.map(({ code }) => code)).toEqual(["pregnant", "seaweed-growth", "iodine-seaweed"]);
    expect(toText(c)).toContain("everyone");
  });
});

describe("input", () => {
  it("of another shape is refused", () => {
    expect(errorOf(() => cautionsFor({} as Sheet, rower)).code).toBe("comparison-malformed");
    expect(errorOf(() => cautionsFor(plate("kelp-raw"), { ...rower, age: "old" })).code).toMatch(
      /person-malformed|number/,
    );
  });
});
