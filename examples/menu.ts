/** The week's recipes at the camp, and its menu. What dishes weigh when cooked is the example's, no one's measurement. */
import { type RecipeInput, revise, type Sheet, sheet } from "steelyard";
import type { DayInput } from "steelyard/plan";
import { oatPot, seedTopping } from "./recipes.ts";
import { shopFoods } from "./shop.ts";

const tomatoSauce: RecipeInput = {
  name: "Tomato sauce",
  portions: 6,
  measures: "metric",
  lines: [
    { key: "tomatoes", food: "tomatoes-canned", amount: "800 g" },
    { key: "onion", food: "onions-raw", amount: "2 medium", prep: "chopped" },
    { key: "garlic", food: "garlic-raw", amount: "3 clove", prep: "crushed" },
    { key: "oil", food: "olive-oil", amount: "2 tbsp" },
  ],
  cookedMass: "840 g",
  method: ["Soften {onion} and {garlic} in {oil}.", "Add {tomatoes} and simmer for 25 minutes."],
  notes: [{ kind: "storage", text: "Cool quickly and keep cold.", days: 3 }],
};

const make = (recipe: RecipeInput): Sheet =>
  sheet({ measures: "metric", ...recipe }, shopFoods, {
    recipes: { "seed-topping": seedTopping, "tomato-sauce": tomatoSauce },
  });

export const porridge = make(oatPot);
const eggToast = make({
  name: "Eggs on toast",
  portions: 2,
  normalPortion: "250 g",
  lines: [
    { key: "bread", food: "bread-wholemeal", amount: "5 slice", added: "serving" },
    { key: "eggs", food: "egg-hard-boiled", amount: "4 large", scaling: "adjustable", added: "serving" },
    { key: "tomatoes", food: "tomatoes-raw", amount: "2 medium", added: "serving" },
  ],
});
const muffins = make({
  name: "Oat muffins",
  portions: 12,
  piece: { name: "muffin", mass: "65 g" },
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "300 g" },
    { key: "eggs", food: "egg-raw", amount: "3 large" },
    { key: "banana", food: "bananas-raw", amount: "3 medium", prep: "mashed" },
    { key: "oil", food: "olive-oil", amount: "60 g" },
    { key: "powder", food: "baking-powder", amount: "3 tsp" },
  ],
  cookedMass: "780 g",
  method: [
    "Stir {eggs}, {banana} and {oil} together.",
    "Fold in {oats} and {powder}.",
    "Bake at 190 °C for 20 minutes.",
  ],
  notes: [{ kind: "storage", text: "Keep in a tin.", days: 2 }],
});
const fruit = make({
  name: "Fruit and nuts",
  portions: 4,
  lines: [
    { key: "apple", food: "apples-raw", amount: "4 medium", added: "serving" },
    { key: "walnuts", food: "walnuts", amount: "100 g", scaling: "adjustable", added: "serving" },
  ],
});
const lentilSoup = make({
  name: "Lentil soup",
  portions: 6,
  normalPortion: "500 g",
  lines: [
    { key: "lentils", food: "lentils-red-dry", amount: "500 g" },
    { key: "carrots", food: "carrots-raw", amount: "400 g" },
    { key: "sauce", recipe: "tomato-sauce", amount: "2 portions" },
    { key: "kale", food: "kale-raw", amount: "240 g" },
    { key: "water", food: "water-tap", amount: "1500 g" },
    { key: "oil", food: "olive-oil", amount: "60 g", scaling: "adjustable" },
    { key: "yoghurt", food: "yoghurt-greek-fat-free", amount: "180 g", added: "serving" },
  ],
  cookedMass: "2700 g",
  method: [
    "Simmer {lentils} and {carrots} in {water} for 20 minutes.",
    "Stir in {sauce}, {kale} and {oil}, and cook for 5 minutes more.",
    "Serve with {yoghurt}.",
  ],
  notes: [{ kind: "storage", text: "Cool quickly, keep cold, reheat until piping hot.", days: 2 }],
});
const beanBowl = make({
  name: "Bean bowl",
  portions: 4,
  normalPortion: "400 g",
  lines: [
    { key: "beans", food: "kidney-beans-red-canned-drained", amount: "640 g" },
    { key: "rice", food: "rice-brown-long-dry", amount: "280 g" },
    { key: "water", food: "water-tap", amount: "650 g" },
    { key: "peppers", food: "peppers-red-raw", amount: "3 medium" },
    { key: "oil", food: "olive-oil", amount: "40 g", scaling: "adjustable", added: "serving" },
  ],
  cookedMass: "1700 g",
  method: [
    "Cook {rice} in {water} until tender.",
    "Add {beans} and {peppers}, and heat through. Serve with {oil}.",
  ],
});
const chickenRice = make({
  name: "Chicken and rice",
  portions: 6,
  normalPortion: "450 g",
  lines: [
    { key: "rice", food: "rice-white-long-dry", amount: "480 g" },
    { key: "water", food: "water-tap", amount: "850 g" },
    { key: "sauce", recipe: "tomato-sauce", amount: "4 portions" },
    {
      key: "chicken",
      food: "chicken-breast-roasted",
      amount: "720 g",
      scaling: "adjustable",
      added: "serving",
    },
  ],
  cookedMass: "1760 g",
  method: [
    "Cook {rice} in {water}, covered, until it is taken up.",
    "Stir in {sauce}; serve with {chicken}.",
  ],
});
const salmonPotatoes = make({
  name: "Salmon and potatoes",
  portions: 4,
  normalPortion: "500 g",
  lines: [
    { key: "potatoes", food: "potatoes-boiled", amount: "1200 g" },
    { key: "kale", food: "kale-raw", amount: "300 g" },
    { key: "salmon", food: "salmon-farmed-baked", amount: "480 g", scaling: "adjustable", added: "serving" },
    { key: "oil", food: "olive-oil", amount: "30 g", scaling: "adjustable", added: "serving" },
  ],
  cookedMass: "1450 g",
  method: ["Warm {potatoes} with {kale}.", "Serve with {salmon} and {oil}."],
});
const tofuCurry = make({
  name: "Tofu curry",
  portions: 4,
  normalPortion: "450 g",
  lines: [
    { key: "rice", food: "rice-white-long-dry", amount: "320 g" },
    { key: "water", food: "water-tap", amount: "560 g" },
    { key: "sauce", recipe: "tomato-sauce", amount: "3 portions" },
    { key: "spinach", food: "spinach-raw", amount: "200 g" },
    { key: "tofu", food: "tofu-firm", amount: "500 g", scaling: "adjustable", added: "serving" },
  ],
  cookedMass: "1450 g",
  method: ["Cook {rice} in {water}.", "Heat {sauce} with {spinach}; serve over the rice with {tofu}."],
});
const pasta = make({
  name: "Pasta and peas",
  portions: 4,
  normalPortion: "450 g",
  lines: [
    { key: "pasta", food: "pasta-wholewheat-cooked", amount: "900 g" },
    { key: "peas", food: "peas-frozen", amount: "300 g" },
    { key: "sauce", recipe: "tomato-sauce", amount: "3 portions" },
    { key: "parmesan", food: "parmesan", amount: "60 g", scaling: "adjustable", added: "serving" },
  ],
  cookedMass: "1600 g",
  method: ["Heat {pasta} and {peas} in {sauce}. Serve with {parmesan}."],
});

const suppers: readonly (readonly [id: string, name: string, lunch: Sheet, supper: Sheet])[] = [
  ["mon", "Monday", lentilSoup, chickenRice],
  ["tue", "Tuesday", beanBowl, pasta],
  ["wed", "Wednesday", lentilSoup, salmonPotatoes],
  ["thu", "Thursday", beanBowl, tofuCurry],
  ["fri", "Friday", lentilSoup, chickenRice],
  ["sat", "Saturday", pasta, tofuCurry],
  ["sun", "Sunday", lentilSoup, salmonPotatoes],
];

const nameOf = (s: Sheet): string => s.name.toLowerCase();

/** Four meals on seven days. */
export const days: readonly DayInput[] = suppers.map(([id, name, lunch, supper], i) => ({
  id,
  name,
  meals: [
    {
      id: "breakfast",
      name: "Breakfast",
      dishes: i < 5 ? { "oat pot": porridge } : { "eggs on toast": eggToast },
    },
    { id: "lunch", name: "Lunch", dishes: { [nameOf(lunch)]: lunch } },
    { id: "tea", name: "Tea", dishes: { "oat muffins": muffins, fruit } },
    { id: "supper", name: "Supper", dishes: { [nameOf(supper)]: supper } },
  ],
}));

const soyaPot = (name: string, seeds: RecipeInput["lines"]): Sheet =>
  make({
    name,
    portions: 2,
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "1 1/2 cups" },
      { key: "drink", food: "soya-drink-unsweetened-fortified", amount: "300 g" },
      { key: "banana", food: "bananas-raw", amount: "1 medium", prep: "sliced", added: "serving" },
      ...seeds,
    ],
    method: ["Warm {oats} in {drink} until thick. Serve with {banana} and the seeds."],
  });

/** Nothing of an animal: soya, tofu and peanut butter stand in for milk, eggs, honey, chicken and fish. */
export const vegan = {
  "oat pot": soyaPot("Oat pot with soya", [
    { key: "seeds", food: "pumpkin-seeds", amount: "30 g", added: "serving" },
  ]),
  "eggs on toast": make({
    name: "Peanut toast",
    portions: 2,
    normalPortion: "250 g",
    lines: [
      { key: "bread", food: "bread-wholemeal", amount: "6 slice", added: "serving" },
      {
        key: "peanut",
        food: "peanut-butter-unsalted",
        amount: "80 g",
        scaling: "adjustable",
        added: "serving",
      },
      { key: "tomatoes", food: "tomatoes-raw", amount: "2 medium", added: "serving" },
    ],
  }),
  "oat muffins": make({
    name: "Oat and date slices",
    portions: 12,
    piece: { name: "slice", mass: "55 g" },
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "300 g" },
      { key: "dates", food: "dates-deglet-noor", amount: "200 g", prep: "mashed" },
      { key: "banana", food: "bananas-raw", amount: "2 medium", prep: "mashed" },
      { key: "oil", food: "olive-oil", amount: "60 g" },
    ],
    cookedMass: "660 g",
    method: [
      "Mash {dates}, {banana} and {oil}; press into a tin with {oats}.",
      "Bake at 180 °C for 25 minutes.",
    ],
    notes: [{ kind: "storage", text: "Keep in a tin.", days: 5 }],
  }),
  "chicken and rice": revise(chickenRice, { swap: { chicken: "tofu-firm" }, name: "Tofu and rice" }),
  "salmon and potatoes": revise(salmonPotatoes, { swap: { salmon: "tofu-firm" }, name: "Tofu and potatoes" }),
};

/** No milk, but honey, eggs and fish. */
export const withoutMilk = {
  "oat pot": soyaPot("Oat pot with soya and seeds", [
    { key: "topping", recipe: "seed-topping", amount: "2 portions", added: "serving" },
  ]),
};
