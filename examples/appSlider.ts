/**
 * For the developer of an app: a slider from small to large. Each position is a scaled sheet turned
 * into plain JSON for the screen; what a figure does not know travels with it.
 */
import { formatAmount, reach, type Sheet, SteelyardError, scale, sheet } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { oatPot, seedTopping } from "./recipes.ts";

const base = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });

/** What the screen needs for one position of the slider. */
function view(s: Sheet) {
  const iron = s.portion("iron");
  return {
    lines: s.lines.map((line) => ({
      name: line.name,
      amount: formatAmount(line.amount, { significant: 3, measures: "metric" }),
      grams: line.grams.toFixed(0),
      fixed: line.scaling === "per-portion",
    })),
    kcal: s.portion("energy").value.toFixed(0),
    protein: s.portion("protein").value.toFixed(1),
    iron: { mg: iron.value.toFixed(1), bound: iron.bound, silent: iron.missing },
  };
}

const { least } = reach(base, "energy");
console.log(`The slider starts above ${least.toFixed(1)} kcal, which the doses alone bring.`);

for (const energy of [400, 600, 800]) {
  const { sheet: scaled, factor } = scale(base, { energy, portions: 1 });
  console.log(JSON.stringify({ energy, factor: factor.toFixed(3), ...view(scaled) }, null, 1));
}

// Below what the doses bring there is no such portion, and the error says what there is.
try {
  scale(base, { energy: 1 });
} catch (error) {
  if (!(error instanceof SteelyardError)) throw error;
  console.log(`${error.code}: ${error.hint}`);
}
