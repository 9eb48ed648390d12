import { describe, expect, it } from "vitest";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { formatAmount } from "../../src/measure/format.ts";
import type { Kitchen } from "../../src/measure/kitchen.ts";
import { fraction, sum, times } from "../../src/number/exact.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { recipe } from "../../src/recipe/recipe.ts";
import { roundToKitchen } from "../../src/scale/round.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { openSheet } from "../../src/sheet/openSheet.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { errorOf } from "../number/errorOf.ts";

const muffins: RecipeInput = {
  name: "Oat muffins",
  portions: 12,
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "300 g" },
    { key: "eggs", food: "egg-raw", amount: "3 large" },
    { key: "banana", food: "bananas-raw", amount: "3 medium" },
  ],
  cookedMass: "720 g",
  piece: { name: "muffin", mass: "60 g" },
};

function measured(s: Sheet, place: Kitchen | "metric"): Sheet {
  const made = roundToKitchen(s, place);
  if (made.status === "out-of-reach") throw new Error(made.text);
  return made.sheet;
}

const written = (s: Sheet): readonly string[] => s.lines.map(({ amount }) => formatAmount(amount));

function plan(of: RecipeInput, factors: readonly string[]): Plan {
  return portionPlan({
    meals: [{ id: "tea", dishes: { tea: sheet(of, starterFoods, { recipes: { muffins } }) } }],
    people: factors.map((factor, i) => ({ id: `p${i}`, demands: { factor } })),
    kitchen: "metric",
  });
}

describe("how foods divide", () => {
  // Eggs whole, bananas by halves, bread by slices: common practice, no source.
  it("rounds pieces as the food says, whatever else the kitchen halves", () => {
    const toast = { food: "bread-wholemeal", amount: "7 slice" };
    const made = sheet(
      { ...muffins, lines: [...muffins.lines, toast, { food: "oranges-raw", amount: "3 fruit" }] },
      starterFoods,
    );
    const rounded = measured(scale(made, { factor: "5/6" }).sheet, "metric");
    expect(["2 large", "3 large"]).toContain(written(rounded)[1]);
    expect(written(rounded).slice(2)).toEqual(["2 1/2 medium", "6 slices", "2 1/2 fruits"]);
  });

  it("cuts a loaf into slices, and a kitchen of whole pieces halves nothing", () => {
    const loaf = foodTable([
      {
        id: "loaf",
        name: "Loaf",
        source: "made up",
        measures: [
          { name: "loaf", grams: 800 },
          { name: "slice", grams: 40 },
        ],
        divides: { step: 1, by: "slice" },
        per100g: { energy: 250 },
      },
    ]);
    const half = sheet({ name: "Toast", portions: 4, lines: [{ food: "loaf", amount: "1/2 loaf" }] }, loaf);
    const rounded = measured(scale(half, { factor: "3/4" }).sheet, "metric");
    expect(written(rounded)).toEqual(["7 slices"]);
    const kept = openSheet(JSON.parse(JSON.stringify(half)));
    expect(written(measured(scale(kept, { factor: "3/4" }).sheet, "metric"))).toEqual(["7 slices"]);
    const whole = { name: "hut", measures: "metric", drawer: {}, pieces: "whole" } as const;
    const fruit = sheet(
      { name: "Fruit", portions: 1, lines: [{ food: "bananas-raw", amount: "3/2 medium" }] },
      starterFoods,
    );
    expect(["1 medium", "2 medium"]).toContain(written(measured(fruit, whole))[0]);
  });

  it("refuses a step that no knife cuts, and a measure that the food has not", () => {
    const of = (divides: unknown) =>
      errorOf(() =>
        foodTable([
          {
            id: "x",
            name: "X",
            source: "made up",
            per100g: {},
            measures: [{ name: "slice", grams: 30 }],
            divides,
          } as never,
        ]),
      );
    expect(of({ step: "2/3" })).toMatchObject({ code: "food-malformed" });
    expect(of({ step: 0 })).toMatchObject({ code: "food-malformed" });
    expect(of({ step: 1, by: "slices" })?.hint).toContain("slice");
    const bad = errorOf(() => recipe({ ...muffins, piece: { name: "portion", mass: "2 tbsp" } }));
    expect(bad?.faults.map(({ path }) => path.join("/"))).toEqual(["piece/mass", "piece/name"]);
  });
});

describe("a dish that is served in pieces", () => {
  const factors = ["1.3", "0.8", "2.2", "1", "1.6", "0.4", "1.1"];

  it("is made and shared out in whole ones, which together are all of the pot", () => {
    const made = plan(muffins, factors);
    const dish = made.meals[0]?.dishes.get("tea");
    const [pot] = dish?.pots ?? [];
    const eggs = pot?.sheet.lines.find(({ key }) => key === "eggs");
    expect(eggs?.amount.value.d).toBe(1n);
    expect(pot?.notes).toEqual([]);
    const shares = dish?.servings.map(({ weighed }) => weighed && formatAmount(weighed)) ?? [];
    expect(shares).toEqual([
      "1 muffin",
      "1 muffin",
      "2 muffins",
      "1 muffin",
      "1 muffin",
      "1 muffin",
      "1 muffin",
    ]);
    expect(sum(dish?.servings.map(({ share }) => share) ?? []).eq(1)).toBe(true);
    expect(dish?.servings.some(({ isRest }) => isRest)).toBe(false);
    // 8.4 of them were planned: 8 are made, each near the 60 g that its recipe tells.
    expect(pot?.sheet.mass.cooked.toNumber()).toBeCloseTo(8 * 60, -1.5);
  });

  it("is so where one person alone eats of it, and where it is cooked for two days", () => {
    const alone = plan(muffins, ["1.4"]).meals[0]?.dishes.get("tea")?.servings[0];
    expect(alone?.weighed && formatAmount(alone.weighed)).toBe("1 muffin");
    const schedule = cookingSchedule(plan(muffins, factors), {
      days: ["sat", "sun"],
      meals: { tea: { eaten: ["sat", "sun"], cook: ["sat"] } },
    });
    const weighed = schedule.servings.map(({ portion, count }) =>
      times(portion.weighed?.value ?? fraction(1n, 3n), count),
    );
    for (const each of weighed) expect(each.d).toBe(1n);
    expect(sum(weighed).toString()).toBe("16");
  });

  it("is enough for a whole one each, however little of it everyone was to have", () => {
    const dish = plan(muffins, ["0.3", "0.4", "0.3"]).meals[0]?.dishes.get("tea");
    const shares = dish?.servings.map(({ weighed }) => weighed && formatAmount(weighed));
    expect(shares).toEqual(["1 muffin", "1 muffin", "1 muffin"]);
  });

  it("is made in whole ones where one day's oven serves several days of a menu", () => {
    const sheetOf = sheet(muffins, starterFoods);
    const menu = ["mon", "tue"].map((id) => ({ id, meals: [{ id: "tea", dishes: { muffins: sheetOf } }] }));
    const people = ["0.6", "0.5"].map((factor, i) => ({ id: `p${i}`, demands: { factor } }));
    const schedule = cookingSchedule(portionPlan({ days: menu, people, kitchen: "metric" }), {
      cook: { muffins: ["mon"] },
    });
    const [pot] = schedule.sessions[0]?.pots ?? [];
    expect(pot?.sheet.lines.find(({ key }) => key === "eggs")?.amount.value.d).toBe(1n);
    expect(schedule.servings.map(({ portion }) => portion.weighed && formatAmount(portion.weighed))).toEqual(
      Array.from({ length: 4 }, () => "1 muffin"),
    );
  });

  it("is drawn on in whole ones where another dish names it", () => {
    const tea: RecipeInput = {
      name: "Tea",
      portions: 1,
      lines: [
        { key: "muffin", recipe: "muffins", amount: "1 portion", added: "serving" },
        { key: "milk", food: "milk-whole", amount: "200 g", added: "serving" },
      ],
    };
    const made = plan(tea, ["1.3", "2.2", "0.8"]);
    const drawn = made.portions.map(({ dishes }) => written(dishes.get("tea") as Sheet)[0]);
    expect(drawn).toEqual(["1 muffin", "2 muffins", "1 muffin"]);
    const [batch] = cookingSchedule(made).batches;
    expect(batch?.sheet.lines.find(({ key }) => key === "eggs")?.amount.value.d).toBe(1n);
    const taken = sum(batch?.draws.map(({ grams }) => grams) ?? []);
    expect(taken.eq(4 * 60)).toBe(true);
    expect(batch?.left.plus(taken).eq(batch.sheet.mass.cooked)).toBe(true);
  });

  it("tells what could not be divided", () => {
    // A tenth of an egg for someone is weighed, and said so.
    const small = plan(
      {
        ...muffins,
        lines: muffins.lines.map((line) => (line.key === "eggs" ? { ...line, amount: "1/4 large" } : line)),
      },
      ["1"],
    );
    const notes = small.meals[0]?.dishes.get("tea")?.pots[0]?.notes;
    expect(notes?.map(({ code, line }) => [code, line])).toEqual([["not-divided", "eggs"]]);
  });
});
