/** What the stored documents in this folder were made from. They are never written again: each opens as it was. */

import {
  type ComponentId,
  components,
  exact,
  type FoodTable,
  foodTable,
  kitchen,
  type Sheet,
  scale,
  sheet,
} from "steelyard";
import { type Plan, portionPlan } from "steelyard/plan";
import { cellValue, withColumn, withConstant, withRow } from "../../src/sheet/columns.ts";

/** Foods with figures of every kind; all of them made up. */
export const foods: FoodTable = foodTable([
  {
    id: "oats",
    name: "Oats",
    state: "dry",
    origin: "plant",
    source: "made up",
    density: "0.4",
    measures: [{ name: "cup", grams: 81 }],
    measuredWith: "us",
    allergens: ["gluten"],
    energyFactors: { protein: "3.46", fat: "8.37", carbohydrate: "4.12" },
    per100g: {
      energy: { value: "379", calculated: "from other figures of the food" },
      protein: "13.15",
      fat: { value: "6.50", low: "6", high: "7" },
      carbohydrateByDifference: 67.7,
      water: "1/3",
      iron: { value: "4.25", source: "another laboratory" },
      sodium: { below: "2", source: "limit of quantification" },
      iodine: "trace",
      vitaminC: { value: "0", presumed: true },
      folate: "32",
    },
    meta: { shelf: 3 },
  },
  {
    id: "greens",
    name: "Greens",
    state: "raw",
    source: "made up",
    edibleShare: "0.8",
    cautions: [{ code: "wash", text: "Wash well.", source: "the camp's cook" }],
    packs: [{ name: "bag", edible: 250, price: "1.20" }],
    price: { currency: "GBP" },
    per100g: {
      energy: 25,
      protein: { value: "2.5", borrowedFrom: "Cabbage" },
      iron: 2,
      folate: { value: "150", derived: "sum of forms" },
      vitaminC: 60,
    },
  },
  {
    id: "salt",
    name: "Salt",
    origin: "mineral",
    source: "made up",
    per100g: { sodium: 38758, iodine: 2000 },
  },
  { id: "unused", name: "Unused", source: "made up", per100g: { energy: 1 } },
]).withRetention({
  source: "made up",
  columns: [["iron"], ["folate", "vitaminC"]],
  codes: { 1: ["greens, boiled", "95 60"], 2: ["greens, fried", "100 80"] },
});

const seasoning = {
  name: "Seasoned greens",
  portions: 4,
  yieldFactor: "0.9",
  lines: [
    { key: "leaves", food: "greens", amount: "500 g", weighed: "as-purchased", retention: "1" },
    { key: "salt", food: "salt", amount: "1/4 tsp", scaling: "per-portion", added: "serving" },
  ],
  measures: { name: "the camp's", ml: { tsp: "4.9" } },
} as const;

/** A sheet with all that one can hold. */
export const made: () => Sheet = () =>
  withRow(
    withColumn(
      withConstant(
        scale(
          sheet(
            {
              name: "Savoury oats",
              portions: 3,
              measures: "us",
              lines: [
                { key: "oats", food: "oats", amount: "1 1/3 cup", part: "base", least: "20 g", most: "90 g" },
                {
                  key: "greens",
                  recipe: "seasoned",
                  amount: "2 portions",
                  scaling: "adjustable",
                  prep: "hot",
                },
                { key: "more", food: "greens", amount: "30 g", retention: { vitaminC: "0.5" } },
              ],
              cookedMass: "900 g",
              method: ["Boil {oats}.", "Stir in {greens} and {more}."],
              notes: [{ kind: "storage", text: "Keep cold.", days: 1 }],
              meta: { season: "winter" },
            },
            foods.with([{ ...foods.get("salt"), density: "1.2" }]),
            { recipes: { seasoned: seasoning, other: seasoning } },
          ),
          { factor: "7/3" },
        ).sheet,
        "price",
        "0.1",
        "GBP",
      ),
      "cost",
      (at) => at.get("grams").times(at.constant("price").value),
    ),
    "spread",
    (at) => at.total().minus(at.portion()),
  );

/** The figures that a reader would look at: masses, grams by line, and all of a portion that is known. */
export function figuresOf(s: Sheet): unknown {
  const portion = componentIds.flatMap((id) =>
    s.portion(id).bound === "unknown" ? [] : [[id, s.portion(id)]],
  );
  const grams = s.lines.map(({ key, grams: each }) => [key, each]);
  const all = {
    name: s.name,
    portions: s.portions,
    mass: s.mass,
    grams,
    portion,
    price: cellValue(s, "price"),
  };
  return JSON.parse(JSON.stringify(all));
}

const componentIds = Object.keys(components) as ComponentId[];

/** A plan with all that one can hold. */
export const madePlan: () => Plan = () => {
  const savoury = made();
  const greens = sheet(seasoning, foods.with([{ ...foods.get("salt"), density: "1.2" }]));
  return portionPlan({
    meals: [
      { id: "early", name: "Early", dishes: savoury, meta: ["hut"] },
      {
        id: "meals",
        dishes: { oats: savoury, greens: { sheet: greens, density: "1.1" } },
        fit: { common: { least: "1/5", most: 8 }, tries: 3 },
      },
    ],
    people: [
      {
        id: "cox",
        name: "Cox",
        person: {
          sex: "female",
          age: "24",
          mass: "52 kg",
          height: "1.6 m",
          activity: "active",
          allergens: ["gluten"],
        },
        aim: { weight: "hold" },
        avoid: [{ food: "unused" }, { allergen: "gluten", override: "the camp's doctor" }],
        demands: { mass: exact("1000/3") },
        away: ["meals"],
      },
      {
        id: "bow",
        meta: "two",
        demands: { factor: 2 },
        byMeal: { meals: [{ of: "mass", exactly: "700 g" }] },
        kitchen: "us",
      },
    ],
    authority: "eu",
    meta: { camp: 7 },
    silent: "accept",
    pots: { tolerance: "5 %", tries: 100 },
    kitchen: kitchen({
      name: "camp",
      measures: "metric",
      drawer: { tbsp: ["1/2"] },
      scale: "5 g",
      pieces: "half",
    }),
    lines: { more: "g" },
  });
};

/** A menu of days with all that one can hold. */
export const madeWeek: () => Plan = () => {
  const savoury = made();
  const greens = sheet(seasoning, foods.with([{ ...foods.get("salt"), density: "1.2" }]));
  const plain = sheet(
    { name: "Plain oats", portions: 2, lines: [{ key: "oats", food: "oats", amount: "150 g" }] },
    foods.with([{ ...foods.get("salt"), density: "1.2" }]),
  );
  return portionPlan({
    days: ["mon", "tue"].map((id) => ({
      id,
      ...(id === "mon" && { name: "Monday", meta: { shift: 1 } }),
      meals: [
        { id: "early", dishes: plain },
        { id: "late", name: "Late", dishes: { oats: savoury, greens: { sheet: greens, density: "1.1" } } },
      ],
    })),
    people: [
      {
        id: "cox",
        daily: [
          { of: "mass", least: "200 g" },
          { of: "energy", exactly: "1800 kcal" },
        ],
        shares: { early: "2/5", "tue/early": "45 %" },
        shareBand: "20 %",
        limits: { late: [{ of: "protein", least: 5 }] },
        instead: { greens: plain },
        leaveOut: ["oats/more"],
        besides: [
          { name: "Tablet", brings: { vitaminC: "80 mg" }, days: ["mon"] },
          { name: "More oats", sheet: plain, meal: "early" },
        ],
      },
      {
        id: "bow",
        byMeal: { early: { factor: 2 }, "tue/early": { factor: "1/2" } },
        keep: { "mon/late": { greens: { leaves: "100", salt: 1 } } },
        away: ["tue/late"],
      },
      { id: "stroke", away: ["tue"] },
    ],
    silent: "accept",
    meta: { camp: 8 },
  });
};
