/** A user's program: the main job, in strict mode, with nothing but the package and its types. */
import {
  amount,
  convert,
  type Fault,
  formatAmount,
  type RecipeInput,
  recipe,
  type Scaled,
  SteelyardError,
  scale,
  sheet,
  type Tally,
  toRecipe,
} from "steelyard";
import { starterFoods } from "steelyard/foods";
import { portionPlan } from "steelyard/plan";
import { toCsv, toHtml, toMarkdown, toText } from "steelyard/show";

// The types of the host are left out of the compilation: the package may not need them.
declare const console: { log(text: string): void };

const wrong: string[] = [];
function hold(what: string, actual: string, expected: string): void {
  if (actual !== expected) wrong.push(`${what}: ${actual}, not ${expected}`);
}

const porridge: RecipeInput = {
  name: "Porridge",
  portions: 2,
  lines: [
    { food: "oats-rolled-dry", amount: "100 g" },
    { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion" },
  ],
};

// A published factor (international avoirdupois pound) and a spoon.
hold("a pound", convert("1 lb", "g").value.toString(), "453.59237");
hold("cups", formatAmount(amount("1.5 cups", { measures: "us" }), { measures: "us" }), "1 1/2 cups");

const base = sheet(porridge, starterFoods);
const { sheet: larger, factor }: Scaled = scale(base, { factor: 3 });
hold("factor", factor.toString(), "3");
hold("oats", larger.lines[0]?.grams.toString() ?? "", "300");
hold("salt", larger.lines[1]?.grams.toString() ?? "", "1");

const energy: Tally = base.portion("energy");
const plan = portionPlan({
  meals: [{ id: "breakfast", dishes: base }],
  people: [
    { id: "cox", demands: { energy: "300 kcal" } },
    { id: "heavyweight", demands: { energy: "900 kcal" } },
  ],
});
hold("energy unit", energy.unit, "kcal");
hold("a portion", plan.brings("cox", "breakfast", "energy").value.toString(), "300");

for (const shown of [toText(plan), toMarkdown(plan), toHtml(plan), toCsv(larger)]) {
  if (shown.length < 100 || /undefined|NaN|\[object/.test(shown)) wrong.push(`badly shown: ${shown}`);
}
hold(
  "a round trip",
  JSON.stringify(recipe(JSON.parse(JSON.stringify(toRecipe(base))))),
  JSON.stringify(toRecipe(base)),
);

try {
  amount("2-3 tbsp");
  wrong.push("a range was read");
} catch (error) {
  if (!(error instanceof SteelyardError)) throw error;
  const [first]: readonly Fault[] = error.faults;
  hold("code", first?.code ?? "", "amount-range");
}

console.log(wrong.length === 0 ? "as it should be" : wrong.join("\n"));
