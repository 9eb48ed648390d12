/**
 * For the coach: one script from the recipe to everybody's portion, and what changed since last week.
 */
import { portionPlan, sheet, toMarkdown } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { oatPot, seedTopping } from "./recipes.ts";

const people = [
  { id: "cox", name: "Cox", demands: { protein: "15 g" } },
  { id: "lightweight", name: "Lightweight", demands: { protein: "22 g" } },
  { id: "heavyweight", name: "Heavyweight", demands: { protein: "30 g" } },
];
const how = { recipes: { "seed-topping": seedTopping } };
const lastWeek = sheet(oatPot, starterFoods, how);
const thisWeek = lastWeek.edit({ milk: "400 ml", yoghurt: "100 g" });

for (const [week, pot] of Object.entries({ "last week": lastWeek, "this week": thisWeek })) {
  const plan = portionPlan({ meals: [{ id: "pot", name: `Oat pot, ${week}`, dishes: pot }], people });
  console.log(toMarkdown(plan));
}
