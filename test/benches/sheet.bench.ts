import Decimal from "decimal.js";
import { bench, describe } from "vitest";
import { componentIds } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { recipe } from "../../src/recipe/recipe.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";

const chosen = starterFoods.ids.filter((_, i) => i % 10 === 0).slice(0, 20);
const components = componentIds.slice(0, 80);
const document = recipe({
  name: "Twenty lines",
  portions: 4,
  lines: chosen.map((food, i) => ({ food, amount: `${40 + i * 7.5} g` })),
});

/** The same figures for the plain loop, as decimals read once, as our foods are. */
const figures = chosen.map((id) => {
  const { per100g } = starterFoods.get(id);
  return components.map((c) => {
    const figure = per100g[c];
    const value = typeof figure === "object" && figure !== null && "value" in figure ? figure.value : figure;
    return value === undefined || value === "trace" || typeof value === "object"
      ? undefined
      : new Decimal(value);
  });
});

describe("20 lines × 80 components: built, and all totals read", () => {
  bench("steelyard", () => {
    const s = sheet(document, starterFoods);
    for (const id of components) s.total(id).value;
  });
  bench("a plain decimal.js loop", () => {
    const totals = components.map(() => new Decimal(0));
    const missing: number[][] = components.map(() => []);
    document.lines.forEach((line, i) => {
      const grams = new Decimal(String(line.amount).replace(" g", ""));
      components.forEach((_, c) => {
        const figure = figures[i]?.[c];
        if (figure === undefined) missing[c]?.push(i);
        else totals[c] = (totals[c] ?? new Decimal(0)).plus(grams.times(figure).div(100));
      });
    });
  });
});

describe("scaling", () => {
  const s = sheet(document, starterFoods);
  bench("one sheet to an energy target", () => {
    scale(s, { energy: "650 kcal" });
  });
  bench("a plan for 100 people", () => {
    portionPlan({
      meals: [{ id: "meal", dishes: { dish: s } }],
      people: Array.from({ length: 100 }, (_, i) => ({ id: `p${i}`, demands: { energy: 400 + i * 5 } })),
    });
  });
});
