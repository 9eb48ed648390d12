import { describe, expect, it } from "vitest";
import { personCard } from "../../src/card/personCard.ts";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { LineInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { toText } from "../../src/show/text.ts";

// Refuse of raw kale is 28 %, of bananas 36 %: USDA SR28, NDB 11233 and 09040.
const lines: readonly LineInput[] = [
  { key: "kale", food: "kale-raw", amount: "200 g", weighed: "as-purchased" },
  { key: "beans", food: "chickpeas-boiled", amount: "300 g" },
  {
    key: "banana",
    food: "bananas-raw",
    amount: "300 g",
    weighed: "as-purchased",
    added: "serving",
    prep: "sliced",
  },
];

function planned(kitchen?: "metric", amount = "200 g", people: readonly string[] = ["cox", "bow"]): Plan {
  const [kale, ...others] = lines;
  const recipe = {
    name: "Stew",
    portions: 2,
    measures: "us" as const,
    lines: [{ ...(kale as LineInput), amount }, ...others],
    method: ["Simmer {kale} with {beans}."],
  };
  return portionPlan({
    meals: [{ id: "dinner", dishes: sheet(recipe, starterFoods) }],
    people: people.map((id) => ({ id })),
    ...(kitchen && { kitchen }),
  });
}

const plain = (html: string): string =>
  html
    .replace(/<[^>]+>/g, " ")
    .replace(/ +/g, " ")
    .trim();

describe("a line that was written as purchased", () => {
  it("says so in the recipe's own table, where its grams are of what is eaten", () => {
    const recipe = { name: "Stew", portions: 2, lines };
    const shown = toText(sheet(recipe, starterFoods), { width: 160 });
    expect(shown).toMatch(/Kale, raw +raw +200 g as purchased +144/);
    expect(shown).toMatch(/Chickpeas.* +300 g +300/);
  });

  it("says so in the plan's amounts, its pot and what is added, with what of it is eaten", () => {
    const shown = toText(planned(), { parts: "all", width: 200 });
    const [amounts = "", pot = "", served = ""] = shown.split("dinner: ");
    expect(amounts).toMatch(
      /Kale, raw +100 g as purchased \(72 g edible\).* 200 g as purchased \(144 g edible\)/,
    );
    expect(pot).toMatch(/Kale, raw +200 g as purchased \(144 g edible\)/);
    expect(served).toContain("Bananas, raw 150 g as purchased (96 g edible)");
    expect(pot).toMatch(/Chickpeas, boiled +300 g\n/);
  });

  it("is told in pounds as it was written", () => {
    const shown = toText(planned(undefined, "1/2 lb"), { parts: "all", width: 200 });
    // 226.796185 g, of which 72 % are eaten.
    expect(shown).toContain("1/2 lb as purchased (163 g edible)");
  });

  it("says so on the card, and in the method", () => {
    const card = plain(personCard(planned(undefined, "200 g", ["cox"]), "cox"));
    expect(card).toContain("Kale as purchased, 72 g of it edible 100 g");
    expect(card).toContain("sliced · as purchased, 96 g of it edible 150 g");
    expect(card).toContain("Simmer 100 g (as purchased) kale with 150 g chickpeas");
  });

  it("says so where a kitchen measures it, by what the author wrote", () => {
    const plan = planned("metric");
    const [pot] = plan.dish("dinner").pots;
    expect(pot?.sheet.lines[0]?.amount.value.toString()).toBe("200");
    expect(toText(plan, { parts: "all", width: 200 })).toContain("200 g as purchased (144 g edible)");
    expect(plain(personCard(planned("metric", "200 g", ["cox"]), "cox"))).toContain(
      "100 g (as purchased) kale",
    );
  });

  it("says so where it is cooked, and is bought by what was written", () => {
    const plan = planned();
    const schedule = toText(cookingSchedule(plan), { width: 200 });
    expect(schedule).toContain("200 g as purchased (144 g edible)");
    expect(schedule).toContain("200 g (as purchased) kale");
    const kale = shoppingList(plan).lines.find(({ food }) => food === "kale-raw");
    expect(kale?.asPurchased?.toString()).toBe("200");
  });

  it("is told apart among additions by what the amount is of", () => {
    const [banana] = planned().dish("dinner").serving("cox").additions;
    expect([banana?.amount.value.toString(), banana?.weighed]).toEqual(["150", "as-purchased"]);
    expect(banana && exactText(banana.grams)).toBe("96");
    const plans = planned("metric").dish("dinner").serving("bow").additions;
    expect(plans.map(({ weighed }) => weighed)).toEqual(["as-purchased"]);
  });
});
