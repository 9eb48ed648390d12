import { type ComponentId, components, exact } from "steelyard";
import { foodsFromFdc } from "steelyard/interchange";
import { describe, expect, it } from "vitest";
import { errorOf } from "../number/errorOf.ts";
import { isHere, sharedJson } from "./shared.ts";

const nutrient = (number: string, name: string, unitName: string) => ({ number, name, unitName });
/** Made up, in the form of FoodData Central's JSON. */
const kale = {
  fdcId: 7,
  description: "Kale, raw",
  dataType: "Foundation",
  foodCategory: { description: "Vegetables and Vegetable Products" },
  nutrientConversionFactors: [
    { type: ".CalorieConversionFactor", proteinValue: 2.44, fatValue: 8.37, carbohydrateValue: 3.57 },
    { type: ".ProteinConversionFactor", value: 6.25 },
  ],
  foodNutrients: [
    { nutrient: nutrient("957", "Energy (Atwater General Factors)", "kcal"), amount: 43 },
    { nutrient: nutrient("958", "Energy (Atwater Specific Factors)", "kcal"), amount: 35 },
    { nutrient: nutrient("268", "Energy", "kJ"), amount: 146 },
    {
      nutrient: nutrient("303", "Iron, Fe", "mg"),
      amount: 1.6,
      dataPoints: 8,
      min: 1.2,
      max: 2,
      median: 1.5,
      foodNutrientDerivation: { code: "A", foodNutrientSource: { code: "1" } },
    },
    {
      nutrient: nutrient("291", "Fiber, total dietary", "g"),
      amount: 4.1,
      foodNutrientDerivation: { code: "NC", foodNutrientSource: { code: "4" } },
    },
    { nutrient: nutrient("269.3", "Sugars, Total NLEA", "g"), amount: 0.8 },
    { nutrient: nutrient("205.2", "Carbohydrate, by summation", "g"), amount: 5 },
    { nutrient: nutrient("324", "Vitamin D, International Units", "IU"), amount: 4 },
    {
      nutrient: nutrient("601", "Cholesterol", "mg"),
      amount: 0,
      foodNutrientDerivation: { code: "Z", foodNutrientSource: { code: "7" } },
    },
    { nutrient: nutrient("401", "Vitamin C", "mg") },
  ],
  foodPortions: [
    { measureUnit: { name: "cup", abbreviation: "cup" }, modifier: "chopped", amount: 2, gramWeight: 42.5 },
    {
      measureUnit: { name: "undetermined", abbreviation: "undetermined" },
      modifier: "1 leaf",
      gramWeight: 9,
    },
  ],
};
const csv = {
  "food.csv":
    '"fdc_id","data_type","description","food_category_id","publication_date"\n"7","foundation_food","Kale, raw","11","2019-04-01"\n',
  "food_category.csv": '"id","code","description"\n"11","1100","Vegetables and Vegetable Products"\n',
  "nutrient.csv":
    '"id","name","unit_name","nutrient_nbr","rank"\n"2047","Energy (Atwater General Factors)","KCAL","957",""\n"1089","Iron, Fe","MG","303",""\n"1063","Sugars, Total NLEA","G","269.3",""\n',
  "food_nutrient.csv":
    '"id","fdc_id","nutrient_id","amount","data_points","derivation_id","min","max","median"\n"1","7","2047","43","","49","","",""\n"2","7","1089","1.6","8","1","1.2","2","1.5"\n"3","7","1063","0.8","","","","",""\n',
  "food_nutrient_derivation.csv":
    '"id","code","description","source_id"\n"1","A","Analytical","1"\n"49","NC","Calculated","2"\n',
  "food_portion.csv":
    '"id","fdc_id","seq_num","amount","measure_unit_id","portion_description","modifier","gram_weight"\n"1","7","1","2","1000","","chopped","42.5"\n"2","7","2","1","9999","","leaf","9"\n',
  "measure_unit.csv": '"id","name"\n"1000","cup"\n"9999","undetermined"\n',
};

describe("foods of FoodData Central", () => {
  it("are read from JSON, each figure in its component or counted", () => {
    const { foods, figures, leftOut } = foodsFromFdc({ FoundationFoods: [kale] });
    expect(foods.get("fdc-7")).toEqual({
      id: "fdc-7",
      name: "Kale, raw",
      state: "raw",
      group: "Vegetables and Vegetable Products",
      source: "USDA FoodData Central, Foundation, FDC 7",
      measures: [
        { name: "cup, chopped", grams: "21.25" },
        { name: "portion, 1 leaf", grams: "9" },
      ],
      measuredWith: "us",
      energyFactors: { protein: "2.44", fat: "8.37", carbohydrate: "3.57" },
      per100g: {
        energy: "35",
        iron: { value: "1.6", count: 8, least: "1.2", most: "2", sourceCode: "1 A" },
        fibre: { value: "4.1", calculated: "from other figures of the food", sourceCode: "4 NC" },
        sugars: "0.8",
        cholesterol: { value: "0", presumed: true, sourceCode: "7 Z" },
        // 4 IU, at 40 to the microgram: Institute of Medicine (2011).
        vitaminD: "0.1",
      },
    });
    expect(figures).toBe(6);
    expect(leftOut.map(({ code, why }) => [code, why])).toEqual([
      ["205.2", "no-component"],
      ["957", "told-elsewhere"],
      ["268", "told-elsewhere"],
    ]);
    expect(foodsFromFdc(JSON.stringify([kale])).foods.get("fdc-7")).toEqual(foods.get("fdc-7"));
  });

  it("are read from CSV, columns by name", () => {
    const { foods } = foodsFromFdc(csv);
    expect(foods.get("fdc-7")).toMatchObject({
      name: "Kale, raw",
      state: "raw",
      group: "Vegetables and Vegetable Products",
      measures: [
        { name: "cup, chopped", grams: "21.25" },
        { name: "leaf", grams: "9" },
      ],
      per100g: {
        energy: { value: "43", calculated: "from other figures of the food", sourceCode: "NC" },
        iron: { value: "1.6", count: 8, least: "1.2", most: "2", sourceCode: "A" },
        sugars: "0.8",
      },
    });
  });

  it("tell what does not read, with the food", () => {
    const faults = (given: unknown) =>
      errorOf(() => foodsFromFdc(given as never)).faults.map(({ code, message }) => `${code} ${message}`);
    expect(faults("{")).toEqual(["foods-unreadable this text is no JSON"]);
    expect(faults({})[0]).toContain("no foods of FoodData Central");
    expect(faults([kale, kale])).toEqual(["foods-unreadable Kale, raw: two foods have the number 7"]);
    expect(
      faults([{ ...kale, foodNutrients: [{ nutrient: nutrient("303", "Iron, Fe", "mg"), amount: "lots" }] }]),
    ).toEqual(['foods-unreadable Kale, raw: Iron, Fe: "lots" is no figure']);
    expect(faults({ ...csv, "nutrient.csv": "id\n1" })).toEqual([
      "foods-unreadable nutrient.csv has no column name, unit_name",
    ]);
    expect(faults({ ...csv, "nutrients.csv": "id\n1" })[0]).toContain("no file of these is called");
  });
});

interface Published {
  readonly FoundationFoods: readonly {
    readonly fdcId: number;
    readonly foodNutrients: readonly {
      readonly nutrient: { readonly number: string; readonly unitName: string };
      readonly amount: number;
    }[];
    readonly foodPortions: readonly unknown[];
  }[];
}

// USDA FoodData Central, Foundation Foods (2019-04), nine foods.
describe.skipIf(!isHere)("nine Foundation Foods", () => {
  it("have each figure in its component, equal to the published one, or counted", () => {
    const published = sharedJson("fdc_foundation_sample.json") as Published;
    const { foods, figures, leftOut } = foodsFromFdc(published as never);
    const all = published.FoundationFoods.flatMap(({ foodNutrients }) => foodNutrients);
    expect(figures + leftOut.reduce((sum, { count }) => sum + count, 0)).toBe(all.length);
    expect(foods.ids).toHaveLength(9);
    const tags = (
      sharedJson("../standards/infoods_tagnames.json") as {
        numbers: { sr: string; id: string; idStatus: string }[];
      }
    ).numbers;
    const left = new Set(leftOut.map(({ code }) => code));
    let same = 0;
    for (const { fdcId, foodNutrients } of published.FoundationFoods) {
      for (const {
        nutrient: { number, unitName },
        amount,
      } of foodNutrients) {
        const id = tags.find(({ sr, idStatus }) => sr === number && idStatus === "registry")?.id as
          | ComponentId
          | undefined;
        if (!id || left.has(number)) continue;
        const figure = foods.get(`fdc-${fdcId}`).per100g[id] as { value: string };
        const factor = components[id].unit === unitName ? 1 : 1000;
        expect([number, exact(figure.value).times(factor).eq(amount)]).toEqual([number, true]);
        same += 1;
      }
    }
    expect(same).toBeGreaterThan(200);
    expect(foods.get("fdc-321358").measures).toEqual([{ name: "tbsp", grams: "33.9" }]);
  });
});
