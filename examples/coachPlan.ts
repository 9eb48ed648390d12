/**
 * For the coach: one script from the recipe to everybody's portion, what changed since last week, what
 * to cook on Sunday and Wednesday in a 2-litre jug, measured in the club's kitchen, and what to buy.
 */
import { type RecipeInput, sheet } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { cookingSchedule, portionPlan, shoppingList } from "steelyard/plan";
import { toMarkdown } from "steelyard/show";
import { oatPot, seedTopping } from "./recipes.ts";

/** How long it keeps is this club's own rule, and invented: write down yours, and where it comes from. */
const keptPot: RecipeInput = {
  ...oatPot,
  notes: [
    {
      kind: "storage",
      text: "Covered in the cold for 2 days, then throw it away.",
      source: "the club's kitchen rules, invented",
      days: 2,
    },
  ],
};
const people = [
  { id: "cox", name: "Cox", demands: { protein: "15 g" } },
  { id: "lightweight", name: "Lightweight", demands: { protein: "22 g" } },
  { id: "heavyweight", name: "Heavyweight", demands: { protein: "30 g" } },
];
const how = { recipes: { "seed-topping": seedTopping } };
const lastWeek = sheet(keptPot, starterFoods, how);
const thisWeek = lastWeek.edit({ milk: "400 ml", yoghurt: "100 g" });
const planOf = (week: string, pot: typeof lastWeek) =>
  portionPlan({ meals: [{ id: "pot", name: `Oat pot, ${week}`, dishes: pot }], people, kitchen: "metric" });

const plan = planOf("this week", thisWeek);
console.log(toMarkdown(planOf("last week", lastWeek)));
console.log(toMarkdown(plan));

// The lightweight races on Monday and eats elsewhere; the cox has supper out on Thursday. Wednesday's pot has to last until Saturday, which
// is a day longer than it keeps: the schedule says so.
const schedule = cookingSchedule(plan, {
  days: ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"],
  cook: ["Sun", "Wed"],
  away: { lightweight: ["Mon"] },
  meals: { pot: { vessel: "2 l", away: { cox: ["Thu"] } } },
});
console.log(toMarkdown(schedule));

// All of it in one list, whatever was rounded on the way.
console.log(toMarkdown(shoppingList(schedule, { cupboard: { "water-tap": "enough" } })));
