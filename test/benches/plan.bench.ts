import { bench, describe } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { sheet } from "../../src/sheet/build.ts";

/**
 * A camp of 500 for a week: 14 recipes of 30 lines, one factor for each person and recipe. The plan
 * itself, then with all that can be read off it.
 */

const { ids } = starterFoods;
const meals = Array.from({ length: 14 }, (_, r) => ({
  id: `meal-${r}`,
  dishes: sheet(
    {
      name: `Recipe ${r}`,
      portions: 4,
      yieldFactor: "0.93",
      lines: Array.from({ length: 30 }, (_, i) => ({
        key: `line-${i}`,
        food: ids[(r * 30 + i * 7) % ids.length] ?? "salt",
        amount: `${((i * 37) % 91) + 1}.${i} g`,
        scaling:
          i % 10 === 9
            ? ("per-portion" as const)
            : i % 10 === 8
              ? ("adjustable" as const)
              : ("held" as const),
        added: i % 10 === 7 ? ("serving" as const) : ("cooking" as const),
      })),
    },
    starterFoods,
  ),
}));
const people = Array.from({ length: 500 }, (_, p) => ({
  id: `person-${p}`,
  demands: { energy: `${400 + p * 1.37} kcal` },
}));
const input = { meals, people, silent: "accept" as const };
const budget = { iterations: 5, time: 0, warmupIterations: 1, warmupTime: 0 };

describe("500 people × 14 recipes × 30 lines", () => {
  bench("portionPlan", () => void portionPlan(input), budget);

  bench(
    "portionPlan, its pots, shares and questions",
    () => {
      const plan = portionPlan(input);
      for (const { dishes } of plan.meals) for (const dish of dishes.values()) void dish.servings;
      void plan.questions;
    },
    budget,
  );

  bench(
    "portionPlan, every portion's sheet and its energy",
    () => {
      const plan = portionPlan(input);
      for (const { dishes } of plan.portions) for (const s of dishes.values()) void s.total("energy").value;
    },
    budget,
  );
});

describe("100 people fitted to 3 demands each, 30 lines", () => {
  const fitted = Array.from({ length: 100 }, (_, p) => ({
    id: `person-${p}`,
    demands: [
      { of: "energy", least: 400 + 3 * p, most: 420 + 3 * p },
      { of: "protein", least: 18 + p / 10 },
      { of: "sodium", most: 4000 },
    ] as readonly Demand[],
  }));
  bench("portionPlan", () => void portionPlan({ meals: meals.slice(0, 1), people: fitted }), budget);
});
