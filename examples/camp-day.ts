/**
 * The camp, person by person: what each one's day takes, breakfast and supper fitted to their part of it
 * without passing an upper level, and how the two stand against the day, with cautions where they
 * apply. The crew is invented; a licensed practitioner decides what a person eats.
 */
import {
  allergenCheck,
  allergensOf,
  cautionsFor,
  compare,
  demandsFor,
  doseCheck,
  energyNeed,
  fit,
  type Person,
  proteinQuality,
  type RecipeInput,
  type ReferenceIntakes,
  type Sheet,
  SteelyardError,
  sheet,
  table,
  toText,
} from "steelyard";
import { starterFoods } from "steelyard/foods";
import { crew } from "./crew.ts";
import { oatPot, seedTopping } from "./recipes.ts";

const broth: RecipeInput = {
  name: "Lentil broth",
  portions: 4,
  measures: "metric",
  lines: [
    { key: "lentils", food: "lentils-boiled", amount: "800 g", part: "pulses" },
    { key: "kale", food: "kale-raw", amount: "200 g" },
    { key: "rice", food: "rice-white-long-boiled", amount: "600 g" },
    { key: "salmon", food: "salmon-farmed-baked", amount: "320 g", scaling: "adjustable", added: "serving" },
    { key: "wakame", food: "wakame-raw", amount: "20 g", scaling: "per-portion", added: "serving" },
  ],
};

const meals = {
  breakfast: sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } }),
  supper: sheet(broth, starterFoods),
};

console.log(
  toText(
    table({
      title: "What a day takes, by Mifflin and St Jeor or as noted",
      columns: [
        { key: "who", heading: "Who" },
        { key: "need", heading: "Energy", unit: "kcal", align: "end" },
        { key: "range", heading: "By all equations", unit: "kcal", align: "end" },
        { key: "cautions", heading: "To heed" },
      ],
      rows: Object.entries(crew).map(([who, person]) => {
        const { total, range, cautions, equation } = energyNeed(person);
        const heed = cautions.map(({ code }) => code).join(", ");
        const need = `${total.toFixed(0)}${equation === "mifflin-st-jeor" ? "" : ` (${equation})`}`;
        return [who, need, `${range.least.toFixed(0)} to ${range.most.toFixed(0)}`, heed];
      }),
    }),
  ),
);

const intakes: Record<string, ReferenceIntakes> = {};
for (const [who, person] of Object.entries(crew)) {
  console.log(`\n${who}`);
  const aim = { weight: "hold", protein: { perKg: { least: "1.4" } } } as const;
  const { demands, intakes: day } = demandsFor(person, "uk", { aim, share: "30 %" });
  intakes[who] = day;
  const eaten: Record<string, Sheet> = {};
  for (const [meal, dish] of Object.entries(meals)) {
    if (!mayEat(dish, person)) continue;
    const fitted = fit(dish, demands);
    const portion = fitted.status === "met" ? fitted.sheet : fitted.nearest;
    if (portion) eaten[meal] = portion;
    console.log(
      `${meal}: ${portion?.mass.portion.toFixed(0)} g, every demand met: ${fitted.status === "met"}`,
    );
  }
  const components = [
    "energy",
    "protein",
    "fibre",
    "iron",
    "iodine",
    "vitaminK",
    "vitaminARe",
    "retinol",
  ] as const;
  const [shares, levels] = compare(eaten, day, { components }).toTables();
  for (const each of [shares, levels]) if (each) console.log(toText(each));
  for (const { because, lines, text, source } of cautionsFor(eaten, person)) {
    if (because.length > 0) console.log(`${because.join(", ")}: ${lines.join(", ")}. ${text} (${source})`);
  }
}

/** Says why not, where a dish holds what someone has declared. */
function mayEat(dish: Sheet, person: Person): boolean {
  try {
    const { unknown } = allergenCheck(dish, person);
    const lines = unknown.map(({ line }) => line).join(", ");
    if (lines !== "") console.log(`${dish.name}: ask before serving, nothing is known of ${lines}`);
    return true;
  } catch (error) {
    if (!(error instanceof SteelyardError) || error.code !== "allergen-served") throw error;
    console.log(`${dish.name}: not served. ${error.message}`);
    return false;
  }
}

console.log(toText(doseCheck(meals, intakes)));
console.log(toText(allergensOf(meals, { list: "eu" })));
console.log(toText(proteinQuality(meals)));
