import fc from "fast-check";
import type { Recipe as SchemaOrgRecipe, WithContext } from "schema-dts";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { minutesOf } from "../../src/interchange/jsonLd/duration.ts";
import { plainText } from "../../src/interchange/jsonLd/plainText.ts";
import { recipeFromJsonLd } from "../../src/interchange/recipeFromJsonLd.ts";
import { type JsonLd, toJsonLd } from "../../src/interchange/toJsonLd.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";
import { notOfVocabulary } from "./vocabulary.ts";

const oats = {
  "@context": "https://schema.org",
  "@type": "Recipe",
  name: "Overnight oats",
  recipeYield: "2 servings",
  recipeIngredient: ["160 g rolled oats", "400 ml whole milk", "a pinch of salt"],
  recipeInstructions: "Stir.\nLeave overnight.",
  prepTime: "PT5M",
  totalTime: "PT8H5M",
};
const foodsOf = (json: unknown): readonly (string | undefined)[] | undefined =>
  recipeFromJsonLd(json, starterFoods).recipe?.lines.map(({ food }) => food);

describe("a recipe in JSON-LD", () => {
  it("is read: name, yield, ingredients, steps, times", () => {
    const { recipe, times, unclear, lines } = recipeFromJsonLd(oats, starterFoods);
    expect(recipe).toMatchObject({
      name: "Overnight oats",
      portions: "2",
      lines: [
        { food: "oats-rolled-dry", amount: "160 g" },
        { food: "milk-whole-vitamin-d", amount: "400 ml" },
      ],
      method: ["Stir.", "Leave overnight."],
    });
    expect([`${times.preparation}`, times.cooking, `${times.total}`]).toEqual(["5", undefined, "485"]);
    expect(unclear.map(({ code, path }) => [code, path[1]])).toEqual([["amount-no-size", 2]]);
    expect(lines).toHaveLength(3);
  });

  // Shapes that JSON-LD 1.1 (W3C, 2020) allows for one and the same thing.
  it.each<[string, unknown]>([
    ["text", JSON.stringify(oats)],
    ["a list", [{ "@type": "WebSite", name: "x" }, oats]],
    ["a graph", { "@context": "https://schema.org", "@graph": [{ "@type": "Person", name: "Cox" }, oats] }],
    ["a graph in a list", [{ "@graph": [oats] }]],
    ["inside a page", { "@type": "WebPage", mainEntity: oats }],
    ["several types", { ...oats, "@type": ["NewsArticle", "Recipe"] }],
    ["a type as an address", { ...oats, "@type": "http://schema.org/Recipe" }],
    [
      "the older name of ingredients",
      { ...oats, recipeIngredient: undefined, ingredients: oats.recipeIngredient },
    ],
    ["one text of ingredients", { ...oats, recipeIngredient: oats.recipeIngredient.join("\n") }],
    [
      "an item list",
      { ...oats, recipeIngredient: { "@type": "ItemList", itemListElement: oats.recipeIngredient } },
    ],
    [
      "value objects",
      { ...oats, recipeIngredient: oats.recipeIngredient.map((text) => ({ "@value": text })) },
    ],
    ["no type", { name: "x", recipeYield: 2, recipeIngredient: oats.recipeIngredient }],
    [
      "named values",
      {
        ...oats,
        recipeIngredient: [
          { "@type": "PropertyValue", name: "rolled oats", value: 160, unitText: "g" },
          { "@type": "PropertyValue", name: "whole milk", value: "400", unitText: "ml" },
        ],
      },
    ],
  ])("is read as %s", (_, json) => {
    expect(foodsOf(json)).toEqual(["oats-rolled-dry", "milk-whole-vitamin-d"]);
  });

  it.each([
    ["4", "4"],
    [4, "4"],
    ["4 servings", "4"],
    ["Serves 4", "4"],
    [["4", "4 servings"], "4"],
    [{ "@type": "QuantitativeValue", value: 4, unitText: "servings" }, "4"],
    ["Makes 1 loaf", "1"],
    ["4-6", undefined],
    ["plenty", undefined],
  ])("has the yield %j", (recipeYield, portions) => {
    const { recipe, unclear } = recipeFromJsonLd({ ...oats, recipeYield }, starterFoods);
    expect(recipe?.portions).toBe(portions);
    if (portions === undefined) expect(unclear.at(-1)?.path).toEqual(["portions"]);
  });

  it("has steps as text, things and sections, in order", () => {
    const recipeInstructions = [
      {
        "@type": "HowToSection",
        name: "Evening",
        itemListElement: [{ "@type": "HowToStep", text: "Stir." }],
      },
      {
        "@type": "HowToSection",
        name: "Morning",
        itemListElement: [{ "@type": "HowToStep", name: "Eat." }, "Wash up."],
      },
    ];
    expect(recipeFromJsonLd({ ...oats, recipeInstructions }, starterFoods).recipe?.method).toEqual([
      "Evening:", "Stir.", "Morning:", "Eat.", "Wash up.",
    ]); // biome-ignore format: steps
  });

  // ISO 8601:2004, 4.4.3, from memory.
  it.each([
    ["PT30M", "30"],
    ["PT1H30M", "90"],
    ["P0Y0M0DT0H35M0.000S", "35"],
    ["P1DT2H", "1560"],
    ["P1W", "10080"],
    ["PT0.5H", "30"],
    ["PT90S", "1.5"],
    ["P1M", undefined],
    ["PT", undefined],
    ["P", undefined],
    ["30M", undefined],
    ["1 hour", undefined],
  ])("has the duration %s", (text, minutes) => {
    expect(minutesOf(text)?.toString()).toBe(minutes);
  });
});

describe("JSON-LD that means harm", () => {
  it("runs no script, and keeps none", () => {
    const name = 'Oats<script>alert("x")</script> <b>bold</b> &amp; &lt;script&gt;&#49;';
    const { recipe } = recipeFromJsonLd({ ...oats, name }, starterFoods);
    expect(recipe?.name).toBe("Oats bold & <script>1");
    expect(plainText("<script>never closed")).toBe("");
    expect(plainText("a\u0000b\u202Ec")).toBe("abc");
  });

  it("gives all faults at once where it is of the wrong types", () => {
    const wrong = {
      "@type": "Recipe",
      name: { a: 1 },
      recipeYield: true,
      recipeIngredient: ["160 g rolled oats", 5, true, { x: 1 }],
      recipeInstructions: [false],
      totalTime: "soon",
    };
    const { faults } = errorOf(() => recipeFromJsonLd({ "@graph": [wrong] }, starterFoods));
    expect(faults.map(({ code }) => code)).toEqual(faults.map(() => "json-ld-malformed"));
    expect(faults.map(({ path }) => path.slice(2).join("."))).toEqual([
      "name",
      "recipeIngredient.2",
      "recipeIngredient.3",
      "recipeInstructions.0",
      "totalTime",
      "recipeYield",
      "recipeYield",
    ]);
  });

  it.each<[string, unknown]>([
    ["no JSON", "<html>"],
    ["no recipe", { "@type": "Person" }],
    ["nothing", null],
    ["a number", 5],
    ["an empty list", []],
    ["10 MB", "[".repeat(10_000_000)],
    ["a text of 10 MB", { ...oats, name: "x".repeat(10_000_000) }],
    ["depth", JSON.parse(`${'{"@graph":['.repeat(5000)}${"]}".repeat(5000)}`)],
    ["__proto__", JSON.parse('{"@type":"Recipe","__proto__":{"name":"x"}}')],
  ])("is refused: %s", (_, json) => {
    expect(errorOf(() => recipeFromJsonLd(json, starterFoods)).code).toBe("json-ld-malformed");
  });

  it("is refused where it contains itself", () => {
    const cycle: Record<string, unknown> = { ...oats };
    cycle.mainEntity = cycle;
    expect(errorOf(() => recipeFromJsonLd(cycle, starterFoods)).code).toBe("json-ld-malformed");
  });

  it("answers or refuses whatever JSON it is", () => {
    const value = fc.jsonValue({ maxDepth: 3 });
    fc.assert(
      fc.property(
        fc.record({ name: value, recipeYield: value, recipeIngredient: value, recipeInstructions: value }),
        (fields) => {
          try {
            recipeFromJsonLd({ ...fields, "@type": "Recipe" }, starterFoods);
          } catch (error) {
            expect(errorOf(() => { throw error; }).faults.every(({ hint }) => hint !== "")).toBe(true); // biome-ignore format: one call
          }
        },
      ),
      { numRuns: runs(60) },
    );
  });
});

describe("a sheet as JSON-LD", () => {
  const porridge = sheet(
    {
      name: "Porridge",
      portions: 2,
      measures: "metric",
      lines: [
        { key: "oats", food: "oats-rolled-dry", amount: "90-110 g", prep: "soaked" },
        { key: "milk", food: "milk-whole", amount: "300 ml", scaling: "adjustable", least: "100 ml" },
        { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion" },
      ],
      method: ["Simmer {oats} in {milk}."],
      cookedMass: "380 g",
    },
    starterFoods,
  );

  it("is what schema.org calls a Recipe", () => {
    // Compiled against the vocabulary's own types (package schema-dts, generated from schema.org's definitions).
    const asTheirs = (json: JsonLd): WithContext<SchemaOrgRecipe> => json;
    expect(asTheirs(toJsonLd(porridge))).toMatchObject({
      "@context": "https://schema.org",
      "@type": "Recipe",
      name: "Porridge",
      recipeYield: "2 portions",
      recipeIngredient: [
        "90-110 g Oats, rolled, dry (soaked)",
        "300 ml Milk, whole, 3.25 % fat, not fortified",
        "1 g Salt, table",
      ],
      recipeInstructions: [
        { "@type": "HowToStep", text: "Simmer Oats, rolled, dry in Milk, whole, 3.25 % fat, not fortified." },
      ],
    });
  });

  it("has no word that schema.org's vocabulary lacks, and no value outside a property's range", () => {
    const weekend = { ...porridge.origin, name: "Porridge for the boathouse", portions: 1 };
    const plain = { name: "Oil", portions: 3, lines: [{ food: "olive-oil", amount: "30 g" }] };
    for (const s of [porridge, sheet(weekend, starterFoods), sheet(plain, starterFoods)]) {
      const json = JSON.parse(JSON.stringify(toJsonLd(scale(s, { factor: "7/3" }).sheet)));
      expect(notOfVocabulary(json)).toEqual([]);
      expect(notOfVocabulary({ ...json, recipeServing: "2" })).toEqual([
        "/recipeServing: no property of Recipe",
      ]);
      expect(notOfVocabulary({ ...json, recipeYield: json.nutrition })).toHaveLength(1);
      expect(notOfVocabulary({ ...json, nutrition: { ...json.nutrition, fatContent: "some" } })).toHaveLength(
        1,
      );
    }
  });

  it("tells one portion's nutrition, and leaves out what is not known of every line", () => {
    const { nutrition } = toJsonLd(porridge);
    expect(nutrition.servingSize).toBe("190 g");
    const [energy] = (nutrition.calories ?? "").split(" ");
    expect(Number(energy)).toBeCloseTo(porridge.portion("energy").value.toNumber(), 2);
    expect(nutrition.proteinContent).toMatch(/^[\d.]+ g$/);
    for (const [field, id] of [
      ["transFatContent", "transFat"],
      ["sugarContent", "sugars"],
    ] as const)
      expect(nutrition[field] !== undefined).toBe(porridge.portion(id).bound === "point");
  });

  it("comes back as the same recipe, scaled or not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }), (n, d) => {
        const { sheet: scaled } = scale(porridge, { factor: `${n}/${d}` });
        const back = recipeFromJsonLd(JSON.stringify(toJsonLd(scaled)), starterFoods);
        expect(back.recipe).toEqual(toRecipe(scaled));
        expect(back.unclear).toEqual([]);
      }),
      { numRuns: runs(20) },
    );
  });

  it("comes back by its lines of text alone: the same foods and amounts", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...starterFoods.ids), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 900 }),
        (ids, grams) => {
          const before = sheet(
            { name: "Any", portions: 3, lines: ids.map((food) => ({ food, amount: `${grams} g` })) },
            starterFoods,
          );
          const { encoding: _, ...json } = toJsonLd(before);
          expect(recipeFromJsonLd(json, starterFoods).recipe).toEqual(toRecipe(before));
        },
      ),
      { numRuns: runs(40) },
    );
  });

  it("is read by its lines where they were changed since", () => {
    const json = { ...toJsonLd(porridge), recipeIngredient: ["200 g rolled oats"] };
    expect(foodsOf(json)).toEqual(["oats-rolled-dry"]);
  });

  it("is refused where it is no sheet", () => {
    expect(errorOf(() => toJsonLd({} as never)).code).toBe("sheet-malformed");
  });
});
