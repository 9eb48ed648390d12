import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { personCard } from "../../src/card/personCard.ts";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import { starterFoods } from "../../src/foods.ts";
import type { PersonInput, PlanInput } from "../../src/plan/input.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import type { Plan } from "../../src/plan/planned.ts";
import { sheet } from "../../src/sheet/build.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

// What a plan is for someone who is not there is what it is without them: that is the outside measure here.

const porridge = sheet(
  {
    name: "Porridge",
    portions: 1,
    measures: "metric",
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "60 g", part: "grain" },
      { key: "milk", food: "milk-whole", amount: "250 ml" },
      {
        key: "yoghurt",
        food: "yoghurt-greek-fat-free",
        amount: "80 g",
        scaling: "adjustable",
        added: "serving",
      },
      {
        key: "cinnamon",
        food: "cinnamon-ground",
        amount: "1/2 tsp",
        scaling: "per-portion",
        added: "serving",
      },
    ],
  },
  starterFoods,
);
const rice = sheet(
  {
    name: "Rice and tofu",
    portions: 2,
    lines: [
      { key: "rice", food: "rice-white-long-boiled", amount: "400 g" },
      { key: "tofu", food: "tofu-firm", amount: "200 g", scaling: "adjustable" },
    ],
  },
  starterFoods,
);
const meals = [
  { id: "breakfast", name: "Breakfast", dishes: porridge },
  { id: "supper", name: "Supper", dishes: rice },
];
const crew: readonly PersonInput[] = [
  { id: "cox", name: "Cox", demands: { energy: 450 } },
  {
    id: "bow",
    demands: [
      { of: "energy", exactly: "620 kcal" },
      { of: "protein", least: "27 g" },
    ],
  },
  {
    id: "stroke",
    demands: [
      { of: "energy", exactly: "800 kcal" },
      { of: "protein", least: "38 g" },
    ],
  },
];

/** Everything that is cooked for a meal and what everyone in it gets. */
function ofMeal(plan: Plan, meal: string, people: readonly string[]): unknown {
  const [dish] = plan.meals.find(({ id }) => id === meal)?.dishes.values() ?? [];
  return {
    batch: dish?.batch.lines.map((line) => line.grams),
    pots: dish?.pots.map((pot) => pot.sheet.lines.map((line) => line.grams)),
    portions: people.map((person) => {
      const { status, factor, dishes, drift } = plan.portion(person, meal);
      const lines = [...dishes.values()].flatMap((s) => s.lines.map((line) => line.grams));
      return { status, factor, lines, off: drift?.demands.map(({ off }) => off) };
    }),
  };
}

describe("someone who is away for a meal", () => {
  it("leaves that meal as it is without them, and other meals as they are with them", () => {
    const ways: readonly Partial<PlanInput>[] = [
      {},
      { kitchen: "metric" },
      { pots: { tolerance: "5 %" } },
      { pots: { tolerance: "5 %" }, kitchen: "metric" },
    ];
    const who = fc.subarray(["cox", "bow", "stroke"], { minLength: 1, maxLength: 2 });
    fc.assert(
      fc.property(
        who,
        fc.constantFrom("breakfast", "supper"),
        fc.constantFrom(...ways),
        (gone, meal, way) => {
          const people = crew.map((each) => (gone.includes(each.id) ? { ...each, away: [meal] } : each));
          const there = crew.map(({ id }) => id).filter((id) => !gone.includes(id));
          const [plan, all] = [
            portionPlan({ meals, people, ...way }),
            portionPlan({ meals, people: crew, ...way }),
          ];
          const without = portionPlan({ meals, people: crew.filter(({ id }) => there.includes(id)), ...way });
          expect(ofMeal(plan, meal, there)).toEqual(ofMeal(without, meal, there));
          const other = meal === "breakfast" ? "supper" : "breakfast";
          const everyone = crew.map(({ id }) => id);
          expect(ofMeal(plan, other, everyone)).toEqual(ofMeal(all, other, everyone));
          for (const person of gone) {
            const portion = plan.portion(person, meal);
            expect([portion.status, portion.dishes.size, portion.factor.n]).toEqual(["away", 0, 0n]);
          }
          expect(plan.unmet.map(({ status }) => status)).not.toContain("away");
        },
      ),
      { numRuns: runs(24) },
    );
  });

  it("has nothing bought or cooked for them", () => {
    const one = meals.filter(({ id }) => id === "supper");
    const away = portionPlan({
      meals: one,
      people: crew.map((p) => (p.id === "bow" ? { ...p, away: ["supper"] } : p)),
    });
    const without = portionPlan({ meals: one, people: crew.filter(({ id }) => id !== "bow") });
    expect(toRecords(shoppingList(away))).toEqual(toRecords(shoppingList(without)));
    expect(shoppingList(away).portions).toEqual(shoppingList(without).portions);
    const days = { days: ["Mon", "Tue"] };
    expect(toText(cookingSchedule(away, days))).toBe(toText(cookingSchedule(without, days)));
  });

  it("is said where amounts are shown, and on their card", () => {
    const plan = portionPlan({
      meals,
      people: crew.map((p) => (p.id === "cox" ? { ...p, away: ["supper"] } : p)),
    });
    expect(toText(plan, { parts: "all" })).toMatch(/^as eaten +away +\d+ g +\d+ g +\d+ g$/m);
    expect(personCard(plan, "cox")).toContain("Away.");
    expect(personCard(plan, "bow")).not.toContain("Away.");
  });

  it("may be everyone", () => {
    const plan = portionPlan({ meals, people: crew.map((p) => ({ ...p, away: ["supper"] })) });
    expect(plan.holds("supper", "energy").value.toString()).toBe("0");
    expect(plan.dish("supper").pots).toEqual([]);
  });

  it("is not served what they avoid", () => {
    const allergic: PersonInput = { id: "cox", avoid: ["milk"], away: ["breakfast"] };
    expect(portionPlan({ meals, people: [allergic] }).portion("cox", "breakfast").status).toBe("away");
    expect(errorOf(() => portionPlan({ meals, people: [{ ...allergic, away: [] }] })).code).toBe(
      "allergen-served",
    );
  });

  it("is away from meals that there are", () => {
    const wrong = (away: unknown) =>
      errorOf(() => portionPlan({ meals, people: [{ id: "cox", away } as PersonInput] })).faults;
    expect(wrong(["super"])).toMatchObject([
      { code: "plan-malformed", path: ["people", 0, "away", 0], hint: "did you mean supper?" },
    ]);
    expect(wrong([3, "supper", null]).map(({ path }) => path.at(-1))).toEqual([0, 2]);
    expect(wrong("supper")).toMatchObject([{ path: ["people", 0, "away"], hint: 'give a list: ["dinner"]' }]);
  });
});
