/**
 * A week of the winter training camp as the coach plans it: seven days, a crew of different people, one
 * vegan, one who avoids milk, one who leaves on Friday. Each day is fitted as one; what it comes to stands
 * beside what it was to bring. The crew is invented; a licensed practitioner decides what a person eats.
 */

import { type RecipeInput, revise, type Sheet, sheet } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { type DayInput, type PersonInput, type Plan, planDifference, portionPlan } from "steelyard/plan";
import { table, toText } from "steelyard/show";
import { crew } from "./crew.ts";
import { oatPot, seedTopping } from "./recipes.ts";

const tomatoSauce: RecipeInput = {
  name: "Tomato sauce",
  portions: 6,
  lines: [
    { key: "tomatoes", food: "tomatoes-canned", amount: "800 g" },
    { key: "onion", food: "onions-raw", amount: "150 g" },
    { key: "oil", food: "olive-oil", amount: "2 tbsp" },
  ],
  cookedMass: "780 g",
  measures: "metric",
};

const make = (recipe: Omit<RecipeInput, "measures">): Sheet =>
  sheet({ measures: "metric", ...recipe }, starterFoods, {
    recipes: { "seed-topping": seedTopping, "tomato-sauce": tomatoSauce },
  });

const porridge = make(oatPot);
const muffins = make({
  name: "Oat muffins",
  portions: 12,
  normalPortion: "75 g",
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "300 g" },
    { key: "eggs", food: "egg-raw", amount: "3 large" },
    { key: "banana", food: "bananas-raw", amount: "3 medium" },
    { key: "oil", food: "olive-oil", amount: "60 g" },
  ],
  cookedMass: "780 g",
});
const lentilSoup = make({
  name: "Lentil soup",
  portions: 6,
  normalPortion: "350 g",
  lines: [
    { key: "lentils", food: "lentils-boiled", amount: "900 g" },
    { key: "sauce", recipe: "tomato-sauce", amount: "2 portions" },
    { key: "kale", food: "kale-raw", amount: "240 g" },
    { key: "yoghurt", food: "yoghurt-greek-fat-free", amount: "180 g", added: "serving" },
  ],
});
const chickenRice = make({
  name: "Chicken and rice",
  portions: 6,
  normalPortion: "450 g",
  lines: [
    { key: "rice", food: "rice-white-long-boiled", amount: "1200 g" },
    {
      key: "chicken",
      food: "chicken-breast-roasted",
      amount: "720 g",
      scaling: "adjustable",
      added: "serving",
    },
    { key: "sauce", recipe: "tomato-sauce", amount: "3 portions" },
  ],
});
const salmonPotatoes = make({
  name: "Salmon and potatoes",
  portions: 4,
  normalPortion: "450 g",
  lines: [
    { key: "potatoes", food: "potatoes-boiled", amount: "1000 g" },
    { key: "salmon", food: "salmon-farmed-baked", amount: "480 g", scaling: "adjustable", added: "serving" },
    { key: "kale", food: "kale-raw", amount: "300 g" },
    { key: "oil", food: "olive-oil", amount: "30 g", scaling: "adjustable", added: "serving" },
  ],
});
const tofuCurry = make({
  name: "Tofu curry",
  portions: 4,
  normalPortion: "400 g",
  lines: [
    { key: "tofu", food: "tofu-firm", amount: "500 g", scaling: "adjustable" },
    { key: "sauce", recipe: "tomato-sauce", amount: "3 portions" },
    { key: "rice", food: "rice-white-long-boiled", amount: "800 g" },
  ],
});
const beanBowl = make({
  name: "Bean bowl",
  portions: 4,
  normalPortion: "350 g",
  lines: [
    { key: "beans", food: "kidney-beans-red-boiled", amount: "700 g" },
    { key: "rice", food: "rice-brown-long-boiled", amount: "600 g" },
    { key: "oil", food: "olive-oil", amount: "30 g", scaling: "adjustable", added: "serving" },
  ],
});
const fruit = make({
  name: "Fruit and nuts",
  portions: 4,
  lines: [
    { key: "banana", food: "bananas-raw", amount: "4 medium", added: "serving" },
    { key: "walnuts", food: "walnuts", amount: "100 g", scaling: "adjustable", added: "serving" },
  ],
});

const suppers: readonly (readonly [string, string, Sheet])[] = [
  ["mon", "Monday", chickenRice],
  ["tue", "Tuesday", lentilSoup],
  ["wed", "Wednesday", salmonPotatoes],
  ["thu", "Thursday", tofuCurry],
  ["fri", "Friday", chickenRice],
  ["sat", "Saturday", beanBowl],
  ["sun", "Sunday", salmonPotatoes],
];
const days: readonly DayInput[] = suppers.map(([id, name, supper], i) => ({
  id,
  name,
  meals: [
    { id: "breakfast", name: "Breakfast", dishes: { porridge } },
    {
      id: "lunch",
      name: "Lunch",
      dishes: i % 2 === 0 ? { "bean bowl": beanBowl } : { "lentil soup": lentilSoup },
    },
    { id: "tea", name: "Tea", dishes: { muffins, fruit } },
    { id: "supper", name: "Supper", dishes: { [supper.name.toLowerCase()]: supper } },
  ],
}));

const shares = { breakfast: "25 %", lunch: "25 %", tea: "15 %", supper: "35 %" };
const aim = { weight: "hold", protein: { perKg: { least: "1.2" } } } as const;
const without = (s: Sheet, swap: Record<string, string>): Sheet => revise(s, { swap });
/** Nothing of an animal: plants stand in for milk, yoghurt, honey, eggs, chicken and fish. */
const vegan: PersonInput["instead"] = {
  porridge: sheet(
    {
      ...oatPot,
      name: "Oat pot with soya",
      lines: [
        { key: "oats", food: "oats-rolled-dry", amount: "1 1/2 cups" },
        { key: "drink", food: "soya-drink-unsweetened-fortified", amount: "300 g" },
        { key: "seeds", food: "pumpkin-seeds", amount: "30 g", added: "serving" },
      ],
      method: [],
    },
    starterFoods,
  ),
  muffins: fruit,
  "chicken and rice": without(chickenRice, { chicken: "tofu-firm" }),
  "salmon and potatoes": without(salmonPotatoes, { salmon: "tofu-firm" }),
};

const people: readonly PersonInput[] = Object.entries(crew).map(([id, person], i) => {
  const own: PersonInput = { id, person, aim, shares };
  if (i === 0) return { ...own, leaveOut: ["lentil soup/yoghurt"], instead: vegan ?? {} };
  if (i === 1)
    return {
      ...own,
      leaveOut: ["porridge/milk", "porridge/yoghurt", "lentil soup/yoghurt"],
      besides: [{ name: "Calcium tablet", brings: { calcium: "500 mg" } }],
    };
  return i === 2 ? { ...own, away: ["fri/supper", "sat", "sun"] } : own;
});

const week = (of: readonly PersonInput[]): Plan =>
  portionPlan({ days, people: of, authority: "uk", kitchen: "metric", silent: "accept" });
const plan = week(people);

console.log(
  toText(
    table({
      title: "The week, by the mean of whole days",
      columns: [
        { key: "who", heading: "Who" },
        { key: "days", heading: "Days", align: "end" },
        { key: "energy", heading: "Energy", unit: "kcal", align: "end" },
        { key: "protein", heading: "Protein", unit: "g", align: "end" },
        { key: "least", heading: "Least day" },
        { key: "off", heading: "Days off target", align: "end" },
      ],
      rows: plan.people.map(({ id, name }) => {
        const mean = plan.mean(id);
        const off = plan.days.filter(({ id: day }) => plan.day(id, day).drift?.status === "off-target");
        return [
          name,
          String(mean.days.length),
          mean.brings("energy").value.toFixed(0),
          mean.brings("protein").value.toFixed(0),
          mean.least("energy").day ?? "not proven",
          String(off.length),
        ];
      }),
    }),
  ),
);
for (const { id, name } of plan.people) {
  const levels = plan.levels(id) ?? [];
  const groups = plan.mean(id).variety.map(({ group, days: on }) => `${group} ${on.length}`);
  console.log(`\n${name} eats of: ${groups.join(", ")} (days)`);
  for (const { of, verdict, days: above } of levels.filter(({ verdict: v }) => v === "past"))
    console.log(`  above the upper level of ${of.join(", ")}: ${verdict}, days ${above.join(", ")}`);
}
const pots = plan.meals.flatMap(({ name, dishes }) =>
  [...dishes.values()]
    .filter(({ versions }) => versions.length > 0)
    .map((dish) => `${name}, ${dish.name}: ${dish.why}`),
);
console.log(`\nPots for those who eat otherwise:\n${pots.slice(0, 4).join("\n")}`);
const large = plan.portions.flatMap(({ person, meal, sizes }) =>
  sizes
    .filter(({ flag }) => flag !== undefined)
    .map(({ dish, text }) => `${person}, ${meal}, ${dish}: ${text}`),
);
console.log(`\nPortions to look at:\n${large.slice(0, 6).join("\n")}`);
const next = week(
  people.map((person, i) =>
    i === 2 ? { ...person, shares: { ...shares, breakfast: "30 %", lunch: "20 %" } } : person,
  ),
);
console.log(`\nNext week ${planDifference(plan, next).amounts.length} amounts are other ones`);
