/** From pasted text to printed pages, and a figure made of all of it: every host has to print the same. */
import { openSheet, scale, sheet, uncertainty } from "steelyard";
import { portionsAt } from "steelyard/bulk";
import { cardPages, personCard } from "steelyard/card";
import { starterFoods } from "steelyard/foods";
import { recipeFromText, toJsonLd, workbook } from "steelyard/interchange";
import { compare, energyNeed, referenceIntakes } from "steelyard/person";
import { cookingSchedule, openPlan, portionPlan, shoppingList } from "steelyard/plan";
import { toRecords, toText } from "steelyard/show";

const read = recipeFromText(
  "Porridge\nServes 2\n\n120 g rolled oats\n400 ml whole milk\n1 banana\n1/2 tsp ground cinnamon\n\nMethod\nSimmer until thick.",
  starterFoods,
);
const s = sheet(read.recipe, starterFoods);
const person = { sex: "female", age: 30, mass: "61 kg", height: "1.70 m", activity: 1.8 };
const plan = portionPlan({
  meals: [{ id: "breakfast", dishes: { porridge: s } }],
  people: [
    { id: "a", demands: [{ of: "energy", exactly: "600 kcal" }] },
    { id: "b", demands: [{ of: "energy", exactly: "350 kcal" }] },
  ],
  kitchen: "metric",
});
const schedule = cookingSchedule(plan);
const out = [
  toText(s),
  toText(plan),
  toText(schedule),
  toText(shoppingList(schedule)),
  cardPages(schedule),
  personCard(plan, "a"),
  JSON.stringify(openPlan(JSON.parse(JSON.stringify(plan)))),
  JSON.stringify(openSheet(JSON.parse(JSON.stringify(s)))),
  `${energyNeed(person).total}`,
  toText(compare(s, referenceIntakes("eu", person))),
  JSON.stringify(toRecords(s)),
  JSON.stringify(toJsonLd(s)),
  `${workbook(s).length > 1000}`,
  String(portionsAt(s, { energy: Float64Array.of(300, 500) }, ["protein"]).columns?.protein?.value ?? ""),
  `${scale(s, { energy: 500 }).factor}`,
  `${uncertainty(s, "iron", "portion").standard}`,
];
let mark = 0;
for (const each of out.join("\n")) mark = (mark * 31 + (each.codePointAt(0) ?? 0)) | 0;
console.log(out.map((text) => text.length).join(" "), mark);
