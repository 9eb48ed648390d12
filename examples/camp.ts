/**
 * The main job: a week of the winter training camp as the coach plans it. Four meals on seven days, ten
 * recipes with a sauce that is made ahead and muffins by the piece, for a crew of different sizes: one
 * vegan, one who avoids milk, one who leaves on Friday. Each day is fitted as one to what that person's body
 * and aim ask for, in amounts that the camp's kitchen can measure. Then what is cooked on which day, the
 * cook's pages, a page for each person, and what to buy. The crew, packs and prices are invented; a licensed
 * practitioner decides what a person eats.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { kitchen } from "steelyard";
import { cardPages } from "steelyard/card";
import { cookingSchedule, type PersonInput, portionPlan, shoppingList } from "steelyard/plan";
import { summary, toMarkdown, toText } from "steelyard/show";
import { crew } from "./crew.ts";
import { days, vegan, withoutMilk } from "./menu.ts";

/** What lies in the camp's drawer. Its scale shows steps of 5 g. */
const campKitchen = kitchen({
  name: "camp",
  measures: "metric",
  drawer: { cup: ["1/4", "1/3", "1/2"], tbsp: ["1/2"], tsp: ["1/8", "1/4", "1/2"] },
  scale: "5 g",
  jug: { step: "10 ml", least: "50 ml" },
  pieces: "half",
});

const usual = {
  aim: { weight: "hold", protein: { perKg: { least: "1.2" } } },
  shares: { breakfast: "25 %", lunch: "25 %", tea: "15 %", supper: "35 %" },
} as const;

const people: readonly PersonInput[] = [
  {
    ...usual,
    id: "cox",
    name: "Cox",
    person: crew.Cox,
    avoid: [{ origin: "animal" }],
    instead: vegan,
    leaveOut: ["lentil soup/yoghurt", "pasta and peas/parmesan"],
    besides: [{ name: "Vitamin B12 tablet", brings: { vitaminB12: "10 µg" } }],
  },
  {
    ...usual,
    id: "lightweight",
    name: "Lightweight",
    person: crew.Lightweight,
    avoid: ["milk"],
    instead: withoutMilk,
    leaveOut: ["lentil soup/yoghurt", "pasta and peas/parmesan"],
  },
  {
    ...usual,
    id: "heavyweight",
    name: "Heavyweight",
    person: crew.Heavyweight,
    away: ["fri/supper", "sat", "sun"],
  },
  { ...usual, id: "coach", name: "Coach", person: crew.Coach },
];

const plan = portionPlan({ days, people, authority: "uk", kitchen: campKitchen, silent: "accept" });
console.log(toText(summary(plan)));

const schedule = cookingSchedule(plan, {
  cook: { "lentil soup": ["mon", "wed", "fri", "sun"], "oat muffins": ["mon", "wed", "fri", "sun"] },
});
const list = shoppingList(schedule, { cupboard: { "cinnamon-ground": "enough" }, measures: "metric" });

const folder = fileURLToPath(new URL("out/", import.meta.url));
mkdirSync(folder, { recursive: true });
const date = new Date().toISOString().slice(0, 10);
writeFileSync(`${folder}pages.html`, cardPages(schedule, { date }));
writeFileSync(`${folder}shopping.md`, `${toMarkdown(list)}\n`);
console.log(`\nThe cook's pages, a page for each person and the shopping list stand in ${folder}`);
