import type { RecipeInput } from "steelyard";

/** Breakfast at the rowing club's winter training camp, written at the coach's own size. */
export const oatPot: RecipeInput = {
  name: "Oat pot",
  portions: 2,
  measures: "metric",
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "1 1/2 cups", part: "starch" },
    { key: "milk", food: "milk-whole", amount: "300 ml" },
    {
      key: "yoghurt",
      food: "yoghurt-greek-fat-free",
      amount: "300 g",
      scaling: "adjustable",
      added: "serving",
    },
    { key: "banana", food: "bananas-raw", amount: "1 medium", prep: "sliced", added: "serving" },
    { key: "topping", recipe: "seed-topping", amount: "2 portions", added: "serving" },
    { key: "cinnamon", food: "cinnamon-ground", amount: "1 tsp", scaling: "per-portion", added: "serving" },
  ],
  cookedMass: "410 g",
  method: [
    "Warm {oats} and {milk} gently until thick.",
    "Serve with {yoghurt}, {banana}, {topping} and {cinnamon}.",
  ],
};

export const seedTopping: RecipeInput = {
  name: "Seed topping",
  portions: 8,
  measures: "metric",
  lines: [
    { key: "pumpkin", food: "pumpkin-seeds", amount: "60 g" },
    { key: "hemp", food: "hemp-seeds-hulled", amount: "40 g" },
    { key: "honey", food: "honey", amount: "1 1/2 tbsp" },
  ],
};

export const gingerShot: RecipeInput = {
  name: "Ginger and lemon shot",
  portions: 4,
  measures: "metric",
  lines: [
    { key: "lemon", food: "lemon-juice-raw", amount: "120 ml" },
    { key: "ginger", food: "ginger-root-raw", amount: "4 tsp", prep: "grated" },
    { key: "honey", food: "honey", amount: "2 tsp" },
    { key: "water", food: "water-tap", amount: "160 ml" },
    { key: "cayenne", food: "cayenne", amount: "1/2 tsp", scaling: "per-portion", added: "serving" },
  ],
};
