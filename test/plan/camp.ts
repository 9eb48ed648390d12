import type { CardDay } from "../../src/card/personCard.ts";
import { starterFoods } from "../../src/foods.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";

const seedTopping: RecipeInput = {
  name: "Seed topping",
  portions: 8,
  measures: "metric",
  lines: [
    { key: "pumpkin", food: "pumpkin-seeds", amount: "60 g" },
    { key: "hemp", food: "hemp-seeds-hulled", amount: "40 g" },
    { key: "honey", food: "honey", amount: "1 1/2 tbsp" },
  ],
};

const oatPot: RecipeInput = {
  name: "Oat pot",
  portions: 2,
  measures: "metric",
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "1 1/2 cups" },
    { key: "milk", food: "milk-whole", amount: "300 ml" },
    { key: "yoghurt", food: "yoghurt-plain-whole", amount: "150 g", added: "serving" },
    { key: "banana", food: "bananas-raw", amount: "1 medium", prep: "sliced", added: "serving" },
    { key: "topping", recipe: "seed-topping", amount: "2 portions", added: "serving" },
    { key: "cinnamon", food: "cinnamon-ground", amount: "1 tsp", scaling: "per-portion" },
  ],
  cookedMass: "410 g",
  method: [
    "Warm {oats}, {milk} and {cinnamon} gently until thick.",
    "Serve with {yoghurt}, {banana} and {topping}.",
  ],
};

const gingerShot: RecipeInput = {
  name: "Ginger and lemon shot",
  portions: 4,
  measures: "metric",
  lines: [
    { key: "lemon", food: "lemon-juice-raw", amount: "120 ml" },
    { key: "ginger", food: "ginger-root-raw", amount: "4 tsp", prep: "grated" },
    { key: "honey", food: "honey", amount: "2 tsp" },
    { key: "water", food: "water-tap", amount: "160 ml" },
    { key: "cayenne", food: "cayenne", amount: "1/2 tsp", scaling: "per-portion" },
  ],
};

/** A camp's breakfast for three. */
export function campPlan(): Plan {
  return portionPlan({
    meals: [
      {
        id: "breakfast",
        name: "Breakfast",
        dishes: {
          pot: sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } }),
          shot: sheet(gingerShot, starterFoods),
        },
      },
    ],
    people: [
      { id: "cox", name: "Cox", demands: { energy: "450 kcal" } },
      { id: "lightweight", name: "Lightweight", demands: { energy: "620 kcal" } },
      { id: "heavyweight", name: "Heavyweight", demands: { energy: "900 kcal" } },
    ],
  });
}

/** A day to hold it against: round figures of our own, no one's advice. */
export const campDay: readonly CardDay[] = [
  { of: "energy", reference: { value: 2400, source: "camp plan" } },
  { of: "protein", reference: { value: 80, source: "camp plan" } },
  { of: "fibre", reference: { value: 25, source: "camp plan" } },
  {
    of: "iron",
    reference: { value: 14, source: "camp plan" },
    upper: { value: 40, source: "camp plan, limits" },
  },
  {
    of: "iodine",
    reference: { value: 150, source: "camp plan" },
    upper: { value: 600, source: "camp plan, limits" },
  },
  { of: "vitaminD", reference: { value: 15, source: "camp plan" } },
];
