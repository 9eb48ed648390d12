/**
 * The main job: one breakfast, written at the coach's size, for a cox, a lightweight and a
 * heavyweight. Each has an energy and a protein to meet, and limits on fibre and sodium that hold
 * whatever else does. Ratios are held as far as that goes: the yoghurt moves first, the starch where
 * it must. Doses are the same for everyone, gaps in the data stay visible, and amounts are such as the
 * camp's kitchen can measure, with what that costs in accuracy. Then what to buy for it, by an invented shop's packs and prices, less what the camp has; and a card
 * for each of them, to print and hang on the kitchen wall.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Demand, kitchen, sheet } from "steelyard";
import { personCard } from "steelyard/card";
import { portionPlan, shoppingList } from "steelyard/plan";
import { toMarkdown, toText } from "steelyard/show";
import { crew } from "./crew.ts";
import { gingerShot, oatPot, seedTopping } from "./recipes.ts";
import { shopFoods } from "./shop.ts";

/** What lies in the camp's drawer. Its scale shows steps of 5 g. */
const campKitchen = kitchen({
  name: "camp",
  measures: "metric",
  drawer: { cup: ["1/4", "1/3", "1/2"], tbsp: ["1/2"], tsp: ["1/8", "1/4", "1/2"] },
  scale: "5 g",
  jug: { step: "10 ml", least: "50 ml" },
  pieces: "half",
});

/** A target in energy and protein; the limits are firm. The figures are the example's, no one's advice. */
const bowl = (energy: string, protein: string): readonly Demand[] => [
  { of: "energy", exactly: energy },
  { of: "protein", exactly: protein },
  { of: "fibre", most: "16 g", firm: true },
  { of: "sodium", most: "400 mg", firm: true },
];

const recipes = { "seed-topping": seedTopping };
const plan = portionPlan({
  meals: [
    {
      id: "breakfast",
      name: "Breakfast",
      dishes: {
        pot: sheet(oatPot, shopFoods, { recipes }),
        shot: sheet(gingerShot, shopFoods),
      },
    },
  ],
  people: [
    { id: "cox", name: "Cox", person: crew.Cox, demands: bowl("450 kcal", "28 g") },
    { id: "lightweight", name: "Lightweight", person: crew.Lightweight, demands: bowl("620 kcal", "40 g") },
    { id: "heavyweight", name: "Heavyweight", person: crew.Heavyweight, demands: bowl("900 kcal", "45 g") },
  ],
  authority: "uk",
  kitchen: campKitchen,
});

console.log(toText(plan));

const list = shoppingList(plan, {
  cupboard: {
    honey: "1 cup",
    "oats-rolled-dry": "100 g",
    "cinnamon-ground": "enough",
    cayenne: "enough",
    "water-tap": "enough",
  },
  measures: "metric",
});
console.log("\nPacks and prices are invented.\n");
console.log(toText(list));

const folder = fileURLToPath(new URL("out/", import.meta.url));
mkdirSync(folder, { recursive: true });
writeFileSync(`${folder}shopping.md`, `${toMarkdown(list)}\n`);
const date = new Date().toISOString().slice(0, 10);
for (const { id } of plan.people) writeFileSync(`${folder}${id}.html`, personCard(plan, id, { date }));
console.log(`\nThe shopping list and a card for each stand in ${folder}`);
