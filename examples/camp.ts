/**
 * The main job: one breakfast, written at the coach's size, for a cox, a lightweight and a
 * heavyweight. Ratios are held, doses are the same for everyone, and gaps in the data stay visible.
 * Then what to buy for it, by an invented shop's packs and prices, less what the camp has; and a card
 * for each of them, to print and hang on the kitchen wall.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  compare,
  personCard,
  portionPlan,
  referenceIntakes,
  sheet,
  shoppingList,
  toMarkdown,
  toText,
} from "steelyard";
import { crew } from "./crew.ts";
import { gingerShot, oatPot, seedTopping } from "./recipes.ts";
import { shopFoods } from "./shop.ts";

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
    { id: "cox", name: "Cox", demands: { energy: "450 kcal" } },
    { id: "lightweight", name: "Lightweight", demands: { energy: "620 kcal" } },
    { id: "heavyweight", name: "Heavyweight", demands: { energy: "900 kcal" } },
  ],
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
const members = { cox: crew.Cox, lightweight: crew.Lightweight, heavyweight: crew.Heavyweight };
for (const [id, person] of Object.entries(members)) {
  const day = compare(plan.portion(id, "breakfast").dishes, referenceIntakes("uk", person));
  const date = new Date().toISOString().slice(0, 10);
  writeFileSync(`${folder}${id}.html`, personCard(plan, id, { day, cautions: day.cautions, date }));
}
console.log(`\nThe shopping list and a card for each stand in ${folder}`);
