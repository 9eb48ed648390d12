/**
 * The main job: one breakfast, written at the coach's size, for a cox, a lightweight and a
 * heavyweight. Ratios are held, doses are the same for everyone, and gaps in the data stay visible.
 */
import { portionPlan, sheet, toText } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { gingerShot, oatPot, seedTopping } from "./recipes.ts";

const recipes = { "seed-topping": seedTopping };
const plan = portionPlan({
  meals: [
    {
      id: "breakfast",
      name: "Breakfast",
      dishes: {
        pot: sheet(oatPot, starterFoods, { recipes }),
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

console.log(toText(plan));
