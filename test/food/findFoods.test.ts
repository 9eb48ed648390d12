import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainWords } from "../../src/food/find/plainWords.ts";
import { findFoods } from "../../src/food/findFoods.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const first = (words: string): string | undefined => findFoods(starterFoods, words, { limit: 1 })[0]?.id;

describe("finding foods by a cook's words", () => {
  // What a bare word means: common practice, no source.
  it.each([
    ["rolled oats", "oats-rolled-dry"],
    ["red lentils", "lentils-red-dry"],
    ["eggs", "egg-raw"],
    ["egg yolks", "egg-yolk-raw"],
    ["flour", "wheat-flour-white"],
    ["peanut butter", "peanut-butter-unsalted"],
    ["yogurt", "yoghurt-plain-whole"],
    ["Greek yoghurt", "yoghurt-greek-fat-free"],
    ["coconut milk", "coconut-milk-canned"],
    ["milk", "milk-whole-vitamin-d"],
    ["butter", "butter-salted"],
    ["unsalted butter", "butter-unsalted"],
    ["sugar", "sugar-white"],
    ["tomatoes", "tomatoes-raw"],
    ["cherry tomatoes", "tomatoes-raw"],
    ["tinned tomatoes", "tomatoes-canned"],
    ["tomato purée", "tomato-paste"],
    ["spaghetti", "pasta-dry"],
    ["rice", "rice-white-long-dry"],
    ["brown rice", "rice-brown-long-dry"],
    ["zucchini", "courgette-raw"],
    ["eggplant", "aubergine-raw"],
    ["scallions", "spring-onions-raw"],
    ["red bell pepper", "peppers-red-raw"],
    ["pepper", "black-pepper"],
    ["garlic cloves", "garlic-raw"],
    ["ground beef", "beef-mince-10-fat-raw"],
    ["chicken breasts", "chicken-breast-raw"],
    ["roasted chicken breast", "chicken-breast-roasted"],
    ["salmon", "salmon-wild-raw"],
    ["chickpeas", "chickpeas-dry"],
    ["canned chickpeas", "chickpeas-canned-drained"],
    ["baking soda", "bicarbonate-of-soda"],
    ["salt", "salt"],
    ["cornstarch", "maize-starch"],
    ["dates", "dates-medjool"],
    ["corn", "sweetcorn-frozen"],
    ["fresh coriander", "coriander-leaf-fresh"],
    ["ground coriander", "coriander-seed"],
  ])("finds %s", (words, id) => {
    expect(first(words)).toBe(id);
  });

  it("puts raw before cooked unless the words or the state say otherwise", () => {
    const [raw] = findFoods(starterFoods, "spinach");
    expect(raw?.id).toBe("spinach-raw");
    expect(first("boiled spinach")).toBe("spinach-boiled-drained");
    const cooked = findFoods(starterFoods, "spinach", { state: "cooked" });
    expect(cooked.length).toBeGreaterThan(0);
    for (const { id } of cooked) expect(starterFoods.get(id).state).toBe("cooked");
  });

  it("finds every food by its own name, whatever the order of its words and their case", () => {
    fc.assert(
      fc.property(fc.constantFrom(...starterFoods), fc.infiniteStream(fc.nat()), (food, order) => {
        const words = food.name.split(/[\s,]+/).map((word) => [order.next().value, word] as const);
        const turned = words
          .sort(([a], [b]) => a - b)
          .map(([, word]) => word.toUpperCase())
          .join(" ");
        const found = findFoods(starterFoods, turned, { limit: 3 }).map(({ id }) => id);
        expect(found).toContain(food.id);
      }),
      { numRuns: runs(40) },
    );
  });

  it("forgives a slip of the pen, and words run together or apart", () => {
    expect(first("brocoli")).toBe("broccoli-raw");
    expect(first("chick peas")).toBe("chickpeas-dry");
    expect(first("sweet corn")).toBe("sweetcorn-frozen");
  });

  it("finds nothing where nothing is alike", () => {
    expect(findFoods(starterFoods, "zzzzqqq")).toEqual([]);
    expect(findFoods(starterFoods, "!!")).toEqual([]);
  });
});

describe("what narrows a search", () => {
  const bean = { group: "pulses", state: "raw", source: "made up" } as const;
  const table = foodTable([
    { ...bean, id: "a", name: "Beans, white", per100g: { protein: 20, iodine: 3 } },
    { ...bean, id: "b", name: "Beans, white, large", per100g: { protein: 21, iodine: 2, iron: 5, zinc: 2 } },
    { ...bean, id: "c", name: "Beans, white, small", per100g: { protein: 22, iron: 5, zinc: 2 } },
    { ...bean, id: "d", name: "Bean soup", group: "soups", per100g: {}, otherNames: ["Fasolada"] },
  ]);

  it("is what must be known, fullest data first", () => {
    expect(findFoods(table, "white beans").map(({ id }) => id)).toEqual(["a", "b", "c", "d"]);
    expect(findFoods(table, "white beans", { known: ["iodine"] }).map(({ id }) => id)).toEqual(["b", "a"]);
  });

  it("is a group, and how many", () => {
    expect(findFoods(table, "beans", { group: "soups" }).map(({ id }) => id)).toEqual(["d"]);
    expect(findFoods(table, "beans", { limit: 2 })).toHaveLength(2);
  });

  it("is no other name: those that a food carries find it too", () => {
    expect(findFoods(table, "fasolada")[0]?.id).toBe("d");
  });

  it("is refused where it is none, all at once", () => {
    const options = { states: "raw", known: ["protien"], limit: 0 } as never;
    expect(errorOf(() => findFoods(table, "beans", options)).faults.map(({ path }) => path)).toEqual([
      ["known", 0],
      ["limit"],
      ["states"],
    ]);
    expect(errorOf(() => findFoods([] as never, "beans")).code).toBe("food-malformed");
    expect(errorOf(() => findFoods(table, 3 as never)).code).toBe("format-malformed");
  });

  it("is no length: very long words are looked through quickly", () => {
    expect(findFoods(table, "white beans ".repeat(800)).length).toBeGreaterThan(0);
  });
});

describe("plain words", () => {
  it("are singular, without accents, in one spelling", () => {
    expect(plainWords("Purées, Chillies & loaves; radishes' tops: 3.25 %")).toEqual([
      "puree", "chili", "loaf", "radish", "top", "3.25",
    ]); // biome-ignore format: words
    expect(plainWords("pig's ears, molasses, asparagus, potatoes, cherries")).toEqual([
      "pig", "ear", "molasses", "asparagus", "potato", "cherry",
    ]); // biome-ignore format: words
  });
});
