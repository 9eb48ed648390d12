/**
 * For the coach: a recipe pasted as the cox typed it, read against the starter foods, what is unclear
 * settled by hand, and three portions of it.
 */
import { sheet } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { recipeFromText } from "steelyard/interchange";
import { portionPlan } from "steelyard/plan";
import { toMarkdown } from "steelyard/show";

const pasted = `
Boathouse lentil pot
Serves 3

- 250 g red lentils
- 2 onions, chopped
- 3-4 garlic cloves, crushed
- 2 tbsp oil
- 1 can (400 g) chopped tomatoes
- 1 tsp each cumin and turmeric
- 1/2 tsp salt
- yoghurt to serve

Method
1. Fry the onions and the garlic.
2. Add the rest and simmer until the lentils are soft.
`;

// As it was pasted: what is not clear is told, and left out.
const first = recipeFromText(pasted, starterFoods, { measures: "metric" });
for (const { path, message, hint } of first.unclear) {
  const line = first.lines[Number(path[1])];
  console.log(`"${line?.text ?? ""}": ${message}; ${hint}`);
}

// The coach says which oil it is, and weighs the yoghurt once.
const mended = pasted.replace("- yoghurt to serve", "- 150 g yoghurt");
const { recipe, unclear } = recipeFromText(mended, starterFoods, {
  measures: "metric",
  means: { oil: "rapeseed-oil" },
});
console.log(`${unclear.length} lines are unclear now.\n`);
if (!recipe) throw new Error("no line of the recipe could be read");

const pot = sheet(recipe, starterFoods);
const people = [
  { id: "cox", name: "Cox", demands: { energy: "400 kcal" } },
  { id: "lightweight", name: "Lightweight", demands: { energy: "550 kcal" } },
  { id: "heavyweight", name: "Heavyweight", demands: { energy: "800 kcal" } },
];
console.log(toMarkdown(portionPlan({ meals: [{ id: "supper", dishes: pot }], people, kitchen: "metric" })));
