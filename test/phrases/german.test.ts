/**
 * Holds the German of examples/german complete by what `phrases()` lists and what starter foods are called, reads
 * it as a German reader would, and tries languages that order and count otherwise.
 */
import { expect, it } from "vitest";
import { german } from "../../examples/german/german.ts";
import { cookCard, personCard } from "../../src/card.ts";
import { starterFoods } from "../../src/foods.ts";
import { amount, formatAmount, formatTally, type Language, sheet, type UnitWords } from "../../src/index.ts";
import { compare, referenceIntakes } from "../../src/person.ts";
import { phrases } from "../../src/phrases.ts";
import { cookingSchedule, portionPlan, shoppingList } from "../../src/plan.ts";
import { summary, toText } from "../../src/show.ts";

const all = phrases();
const foods = [...starterFoods].flatMap((food) => [
  food.kitchenName ?? food.name,
  ...(food.cautions ?? []).map(({ text }) => text),
  ...[food.group ?? "", food.aisle ?? ""].filter((word) => word !== ""),
]);
const named = [...all.notes.map(({ phrase }) => phrase), ...all.components];
const own = [...new Set([...starterFoods].flatMap(({ measures = [] }) => measures.map(({ name }) => name)))];

const porridge = sheet(
  {
    name: "Haferbrei",
    portions: 2,
    measures: "metric",
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "120 g" },
      { key: "milk", food: "milk-whole", amount: "1/2 l" },
      { key: "banana", food: "bananas-raw", amount: "3 medium" },
      { key: "wakame", food: "wakame-raw", amount: "1 tsp", scaling: "per-portion", added: "serving" },
    ],
    method: ["Kochen."],
  },
  starterFoods,
);
const person = { sex: "female", age: 24, mass: "57 kg", conditions: ["thyroid-disease"] } as const;
const plan = portionPlan({
  meals: [{ id: "frueh", name: "Frühstück", dishes: porridge }],
  people: [{ id: "leicht", name: "Leichtgewicht", person, demands: [{ of: "energy", exactly: "500 kcal" }] }],
  kitchen: "metric",
  authority: "eu",
});
const schedule = cookingSchedule(plan);
const levels = compare(porridge, referenceIntakes("eu", person));

/** All that a reader sees is asked for while pages and tables are made. */
function shownIn(language: Language): { readonly text: string; readonly pages: string } {
  const text = [
    ...[porridge, plan, schedule, shoppingList(schedule), levels].map((x) => toText(x, { language })),
    toText(summary(plan, { language })),
  ].join("\n");
  return { text, pages: personCard(plan, "leicht", { language }) + cookCard(schedule, { language }) };
}

it("has all phrases, components, units and measures, and keeps every gap", () => {
  const { phrases: said, words } = german;
  expect(named.filter((phrase) => !Object.hasOwn(said, phrase))).toEqual([]);
  const ours = new Set([...named, ...foods]);
  expect(Object.keys(said).filter((phrase) => !ours.has(phrase))).toEqual([]);
  // Names of foods are the table's own: most of the starter foods are said, those of the pages below among them.
  expect(foods.filter((food) => Object.hasOwn(said, food)).length).toBeGreaterThan(0.9 * foods.length);
  const gaps = (text: string): string => [...new Set(text.match(/\{\w+\}/g))].sort().join();
  expect(Object.entries(said).filter(([ours, theirs]) => gaps(ours) !== gaps(theirs))).toEqual([]);
  expect(all.units.filter((unit) => !Object.hasOwn(words?.units ?? {}, unit))).toEqual([]);
  expect(own.filter((unit) => Object.hasOwn(words?.units ?? {}, unit)).length).toBeGreaterThan(
    0.8 * own.length,
  );
  expect(all.measures.filter((set) => !Object.hasOwn(words?.sets ?? {}, set))).toEqual([]);
});

it("is asked for nothing that phrases() does not list but what callers wrote", () => {
  const asked = new Set<string>();
  const listening = new Proxy<Record<string, string>>(
    {},
    {
      getOwnPropertyDescriptor: (_, phrase) => {
        asked.add(String(phrase));
        return undefined;
      },
    },
  );
  shownIn({ tag: "en-GB", decimal: ".", group: ",", phrases: listening });
  expect(asked.size).toBeGreaterThan(150);
  const ours = new Set([...named, ...foods, ...[...starterFoods].map(({ name }) => name)]);
  const theirs = ["Haferbrei", "Frühstück", "Leichtgewicht", "leicht", "frueh", "Kochen."];
  expect(
    [...asked].filter(
      (phrase) =>
        !ours.has(phrase) && !theirs.includes(phrase) && !/^\d+ medium$|^\w$|^toStringTag$/.test(phrase),
    ),
  ).toEqual([]);
});

it("leaves no English in what a German reads", () => {
  const { text, pages } = shownIn(german);
  const english = /\b(the|of|and|with|from|not|than|each|per|is|are)\b/;
  const readable = text
    .split("\n")
    .filter((line) => !/USDA|EFSA|DGE|FAO|NHS|University|ANSES|iodine/.test(line));
  expect(readable.filter((line) => english.test(line))).toEqual([]);
  expect(pages).toContain("Verzehrfertig");
  expect(pages).toContain("Haferflocken");
});

it("counts and marks as German does", () => {
  const words = german.words as UnitWords;
  expect(formatAmount(amount("1/2 us cup"), { words, measures: "us" })).toBe("1/2 Tasse");
  expect(formatAmount(amount("1 1/2 us cup"), { words, measures: "us" })).toBe("1 1/2 Tassen");
  expect(formatAmount(amount("2.75 kg"), { words, decimal: "comma" })).toBe("2,75 kg");
  const two = formatAmount(amount("2 large leaf", { own: ["large leaf"] }), { words });
  expect(two).toBe("2 Blätter, groß");
  expect(() => amount(two, { own: ["large leaf"], words })).toThrow(/Blätter/);
  expect(formatTally(porridge.portion("iodine"), { language: german })).toMatch(/^mindestens \d+,?\d* µg/);
});

// 大さじ1, 小さじ2: spoons stand before their figure. CLDR 46 gives Arabic six plural categories: zero, one, two, few, many, other.
it("lets a language order and count otherwise: Japanese spoons, Arabic plurals", () => {
  const japanese: UnitWords = {
    units: { tbsp: "大さじ{figure}", tsp: "小さじ{figure}", cup: "カップ{figure}" },
  };
  expect(formatAmount(amount("1 1/2 metric tbsp"), { words: japanese, measures: "metric" })).toBe(
    "大さじ1 1/2",
  );
  expect(formatAmount(amount("200 g"), { words: japanese })).toBe("200 g");

  const plurals = new Intl.PluralRules("ar");
  const arabic: UnitWords = {
    units: { cup: { one: "كوب", two: "كوبان", few: "أكواب", many: "كوبًا", other: "كوب" } },
    category: (figure) => plurals.select(figure.toNumber()),
  };
  const cups = (count: number): string =>
    formatAmount(amount(`${count} us cup`), { words: arabic, measures: "us" });
  expect([1, 2, 3, 11, 100].map(cups)).toEqual(["1 كوب", "2 كوبان", "3 أكواب", "11 كوبًا", "100 كوب"]);
  expect(amount("3 أكواب", { words: arabic, measures: "us" }).value.toString()).toBe("3");
});
