import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { amount, gramsOf } from "../../src/measure/amount.ts";
import { exactText } from "../../src/number/digits.ts";
import { exact, over, times, ZERO } from "../../src/number/exact.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { substitutes } from "../../src/scale/substitutes.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import { revise } from "../../src/sheet/revise.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";

const recipes = {
  dressing: {
    name: "Dressing",
    portions: 4,
    lines: [
      { food: "olive-oil", amount: "60 g" },
      { food: "lemon-juice-raw", amount: "40 g" },
    ],
  },
};

const salad = sheet(
  {
    name: "Boathouse salad",
    portions: 2,
    measures: "metric",
    lines: [
      { key: "beans", food: "chickpeas-boiled", amount: "300 g", least: "1/2 cup", most: "2 cup" },
      { key: "dressing", recipe: "dressing", amount: "2 portions", added: "serving" },
    ],
  },
  starterFoods,
  { recipes },
);

/** What is made of a sheet knows the recipes that it names: it can be revised and built again. */
function knowsItsRecipes(s: Sheet): void {
  const more = revise(s, { portions: 3 });
  expect(more.portions.toString()).toBe("3");
  expect(exactText(more.total("fat").value)).toBe(exactText(s.total("fat").value));
  const again = sheet(toRecipe(s), starterFoods, { recipes });
  expect(exactText(again.total("energy").value)).toBe(exactText(s.total("energy").value));
}

describe("a sheet made of another", () => {
  it("with a substitute knows the recipes that it names", () => {
    const [first] = substitutes(salad, "beans").found;
    if (!first) throw new Error("there are other pulses");
    knowsItsRecipes(first.sheet);
  });

  it("with a substitute keeps its bounds, in grams, whatever the food can be measured in", () => {
    const [first] = substitutes(salad, "beans", { among: ["tofu-firm"] }).found;
    const [line] = first ? toRecipe(first.sheet).lines : [];
    const [cup] = sheet(
      { ...toRecipe(salad), lines: [{ food: "chickpeas-boiled", amount: "1/2 cup" }] },
      starterFoods,
    ).lines;
    const grams = (written: unknown): string => exactText(gramsOf(amount(String(written))) ?? ZERO);
    // As far from the amount as they were.
    const half = times(cup?.grams ?? ZERO, over(first?.grams ?? ZERO, exact(300)));
    expect([grams(line?.least), grams(line?.most)]).toEqual([
      exactText(half),
      exactText(times(half, exact(4))),
    ]);
  });

  it("in a plan, of its pots and portions, knows them too", () => {
    const plan = portionPlan({
      meals: [{ id: "lunch", dishes: { salad } }],
      people: [
        { id: "cox", demands: { factor: "1" } },
        { id: "bow", demands: { factor: "1.5" } },
      ],
      kitchen: "metric",
    });
    const own = plan.portion("bow", "lunch").dishes.get("salad");
    if (!own) throw new Error("bow eats");
    knowsItsRecipes(own);
    for (const pot of plan.dish("lunch", "salad").pots) knowsItsRecipes(pot.sheet);
  });

  it("is made in one place", () => {
    const src = join(import.meta.dirname, "../../src");
    const made = readdirSync(src, { recursive: true, encoding: "utf8" }).filter(
      (file) => file.endsWith(".ts") && readFileSync(join(src, file), "utf8").includes("new SheetPlan("),
    );
    expect(made.sort()).toEqual(["sheet/build.ts", "sheet/plan.ts"]);
  });
});
