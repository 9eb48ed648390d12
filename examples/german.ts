/**
 * A day at the camp in German: the coach's summary, and the page that the lightweight takes home. The language is
 * in examples/german, complete by the list that `phrases()` gives.
 */
import { sheet } from "steelyard";
import { personCard } from "steelyard/card";
import { starterFoods } from "steelyard/foods";
import { portionPlan } from "steelyard/plan";
import { summary, toText } from "steelyard/show";
import { german } from "./german/german.ts";

const porridge = sheet(
  {
    name: "Haferbrei",
    portions: 4,
    measures: "metric",
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "240 g" },
      { key: "milk", food: "milk-whole", amount: "1 l" },
      { key: "banana", food: "bananas-raw", amount: "2 medium" },
      {
        key: "yoghurt",
        food: "yoghurt-greek-fat-free",
        amount: "320 g",
        scaling: "adjustable",
        added: "serving",
      },
      { key: "cinnamon", food: "cinnamon-ground", amount: "2 tsp", scaling: "per-portion", added: "serving" },
    ],
    method: [
      "{oats} in {milk} bei kleiner Hitze 10 min quellen lassen.",
      "{banana} zerdrücken und unterrühren.",
    ],
  },
  starterFoods,
);
const stew = sheet(
  {
    name: "Linseneintopf",
    portions: 4,
    measures: "metric",
    yieldFactor: "0.9",
    lines: [
      { key: "lentils", food: "lentils-dry", amount: "300 g" },
      { key: "water", food: "water-tap", amount: "1 l" },
      { key: "carrots", food: "carrots-raw", amount: "400 g" },
      { key: "potatoes", food: "potatoes-raw", amount: "600 g" },
      { key: "oil", food: "rapeseed-oil", amount: "3 tbsp" },
    ],
    method: ["{lentils}, {carrots} und {potatoes} in {water} 35 min kochen.", "{oil} unterrühren."],
  },
  starterFoods,
);

const plan = portionPlan({
  meals: [
    { id: "breakfast", name: "Frühstück", dishes: porridge },
    { id: "supper", name: "Abendessen", dishes: stew },
  ],
  people: [
    {
      id: "lightweight",
      name: "Leichtgewicht",
      person: { sex: "female", age: 24, mass: "57 kg", height: "1.70 m", activity: "active" },
      daily: [
        { of: "energy", exactly: "1500 kcal" },
        { of: "protein", least: "60 g" },
      ],
      avoid: ["peanut"],
    },
    {
      id: "heavyweight",
      name: "Schwergewicht",
      person: { sex: "male", age: 27, mass: "92 kg", height: "1.93 m", activity: "vigorous" },
      daily: [
        { of: "energy", exactly: "2400 kcal" },
        { of: "protein", least: "90 g" },
      ],
    },
  ],
  kitchen: "metric",
  authority: "eu",
});

console.log(toText(summary(plan, { language: german })));

// The page's words without its markup; in an app it is shown and printed as it is.
const page = personCard(plan, "lightweight", { language: german });
const [, body = ""] = /<body[^>]*>([\s\S]*)<\/body>/.exec(page) ?? [];
const words = body
  .replace(/<(svg|style)[\s\S]*?<\/\1>/g, "")
  .replace(/<\/(li|tr|h\d|caption|p)>/g, "\n")
  .replace(/<\/(td|th|span)>/g, " ")
  .replace(/<[^>]+>/g, "")
  .replaceAll("&nbsp;", " ")
  .replaceAll("&#39;", "'");
console.log(
  words
    .replace(/ +/g, " ")
    .replace(/\s*\n\s*/g, "\n")
    .trim(),
);
