/**
 * The camp, person by person: what each one's day takes, breakfast and supper fitted to their part of it
 * without passing an upper level, and how the two stand against the day, with cautions where they
 * apply. The crew is invented; a licensed practitioner decides what a person eats.
 */

import { type RecipeInput, SteelyardError, sheet } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { allergensOf, compare, demandsFor, energyNeed, proteinQuality } from "steelyard/person";
import { type Plan, portionPlan } from "steelyard/plan";
import { table, tablesOf, toText } from "steelyard/show";
import { crew } from "./crew.ts";
import { oatPot, seedTopping } from "./recipes.ts";

/** Supper, with whatever goes on top of it when it is served. */
const broth = (topping: string): RecipeInput => ({
  name: "Lentil broth",
  portions: 4,
  measures: "metric",
  lines: [
    { key: "lentils", food: "lentils-boiled", amount: "800 g", part: "pulses" },
    { key: "kale", food: "kale-raw", amount: "200 g" },
    { key: "rice", food: "rice-white-long-boiled", amount: "600 g" },
    { key: "topping", food: topping, amount: "320 g", scaling: "adjustable", added: "serving" },
    { key: "wakame", food: "wakame-raw", amount: "20 g", scaling: "per-portion", added: "serving" },
  ],
});

const breakfast = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });

/**
 * A day for all of the crew, each with 30 % of what an aim asks in each meal, and at most half of each
 * upper level, so that the two meals together pass none.
 */
function dayWith(topping: string): Plan {
  const aim = { weight: "hold", protein: { perKg: { least: "1.4" } } } as const;
  return portionPlan({
    meals: [
      { id: "breakfast", name: "Breakfast", dishes: breakfast },
      { id: "supper", name: "Supper", dishes: sheet(broth(topping), starterFoods) },
    ],
    people: Object.entries(crew).map(([id, person]) => {
      const { demands } = demandsFor(person, "uk", { aim, share: "30 %", limits: "1/2" });
      return { id, person, demands };
    }),
    authority: "uk",
  });
}

console.log(
  toText(
    table({
      title: "What a day takes, by Mifflin and St Jeor or as noted",
      columns: [
        { key: "who", heading: "Who" },
        { key: "need", heading: "Energy", unit: "kcal", align: "end" },
        { key: "range", heading: "By all equations", unit: "kcal", align: "end" },
        { key: "cautions", heading: "Cautions" },
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

try {
  dayWith("salmon-farmed-baked");
} catch (error) {
  if (!(error instanceof SteelyardError) || error.code !== "allergen-served") throw error;
  console.log(`\nNot with salmon: ${error.message}`);
}
const plan = dayWith("egg-hard-boiled");

for (const { id } of plan.people) {
  console.log(`\n${id}`);
  const portions = plan.meals.map((meal) => plan.portion(id, meal.id));
  for (const { meal, status, dishes } of portions) {
    const grams = [...dishes.values()].map(({ mass }) => `${mass.portion.toFixed(0)} g`);
    console.log(`${meal}: ${grams}, ${status}`);
  }
  const day = plan.intakes(id);
  const eaten = new Map(portions.flatMap(({ dishes }) => [...dishes]));
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
  const [shares, levels] = day ? tablesOf(compare(eaten, day, { components })) : [];
  for (const each of [shares, levels]) if (each) console.log(toText(each));
  for (const { because, lines, text, source } of plan.cautions(id)) {
    const whom = because.length > 0 ? because.join(", ") : "everyone";
    const foods = lines.map((key) => key.slice(key.lastIndexOf("/") + 1)).join(", ");
    console.log(`${whom}, ${foods}: ${text} (${source})`);
  }
}

const dishes = plan.meals.flatMap(({ batch }) => [...batch.values()]);
console.log(toText(plan.avoided));
if (plan.doses) console.log(toText(plan.doses));
console.log(toText(allergensOf(dishes, { list: "eu" })));
console.log(toText(proteinQuality(dishes)));
