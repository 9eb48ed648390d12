import { DuckDBInstance } from "@duckdb/node-api";
import Decimal from "decimal.js";
import { bench, describe } from "vitest";
import { oatPot, seedTopping } from "../../examples/recipes.ts";
import { coefficients } from "../../src/bulk/coefficients.ts";
import { portionsAt } from "../../src/bulk/portionsAt.ts";
import { portionsOfMany } from "../../src/bulk/portionsOfMany.ts";
import type { ComponentId } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import type { Recipe } from "../../src/recipe/document.ts";
import { recipe } from "../../src/recipe/recipe.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";

const components = [
  ...["energy", "protein", "fat", "carbohydrateByDifference", "fibre", "sodium", "potassium", "calcium"],
  ...["magnesium", "iron", "zinc", "vitaminC", "thiamin", "riboflavin", "folate"],
] as ComponentId[];

const pot = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });
const million = Float64Array.from({ length: 1_000_000 }, (_, i) => 400 + i / 2000);
const lines = coefficients(pot, components).rows.map(({ component, value }) => ({
  component,
  fixed: value?.fixed.toNumber() ?? Number.NaN,
  per: value?.perFactor.toNumber() ?? Number.NaN,
}));
const target = lines.find(({ component }) => component === "energy") ?? { fixed: 0, per: 1 };

const how = { iterations: 15, warmupIterations: 2, time: 0, warmupTime: 0 };

describe("a million portions × 15 components", async () => {
  bench("portionsAt", () => void portionsAt(pot, { energy: million }, components, { silent: "accept" }), how);
  bench(
    "a loop by hand over two scaled sheets",
    () => {
      // Kept until the end, as whoever asks for columns keeps them: a column let go is room for the next.
      const columns: Float64Array[] = [];
      const [a, b] = [400, 900].map((energy) => scale(pot, { energy }, { silent: "accept" }).sheet);
      for (const of of components) {
        const [low, high] = [a, b].map((s) => s?.portion(of).value.toNumber() ?? 0) as [number, number];
        const [per, made] = [(high - low) / 500, new Float64Array(million.length)];
        for (let i = 0; i < made.length; i += 1) made[i] = low + per * ((million[i] as number) - 400);
        columns.push(made);
      }
    },
    how,
  );
  bench(
    "the same loop in decimal.js, a hundredth of it",
    () => {
      for (const { fixed, per } of lines) {
        const [still, each] = [new Decimal(fixed), new Decimal(per)];
        for (let i = 0; i < million.length; i += 100)
          still.plus(each.times(new Decimal(million[i] as number).minus(target.fixed).div(target.per)));
      }
    },
    how,
  );
  const connection = await (await DuckDBInstance.create(":memory:", { threads: "2" })).connect();
  await connection.run("create table lines (component text, fixed double, per double)");
  for (const { component, fixed, per } of lines)
    await connection.run(`insert into lines values ('${component}', ${fixed}, ${per})`);
  bench(
    "DuckDB, into a table",
    async () => {
      await connection.run(`create or replace table portions as select i, component,
        fixed + (400 + i / 2000 - ${target.fixed}) / ${target.per} * per as amount
        from range(1000000) t(i), lines where component <> 'mass'`);
    },
    how,
  );
});

const chosen = starterFoods.ids.filter((_, i) => i % 10 === 0).slice(0, 20);
const recipes = Array.from(
  { length: 2000 },
  (_, r): Recipe =>
    recipe({
      name: `Recipe ${r}`,
      portions: 4,
      lines: chosen.map((food, i) => ({ food, amount: `${40 + ((r * 7 + i * 13) % 97) / 4} g` })),
    }),
);
const figures = new Map(
  chosen.map((food) => {
    const one = sheet({ name: "one", portions: 1, lines: [{ food, amount: "1 g" }] }, starterFoods);
    return [food, Float64Array.from(components, (of) => one.portion(of).value.toNumber())] as const;
  }),
);

describe("2,000 recipes × 20 lines × 15 components, read before", () => {
  bench(
    "portionsOfMany",
    () => {
      for (const _ of portionsOfMany(recipes, starterFoods, components));
    },
    how,
  );
  bench(
    "a typed loop by hand",
    () => {
      for (const { lines, portions } of recipes) {
        const sums = new Float64Array(components.length);
        for (const { food, amount } of lines) {
          const [grams, own] = [Number.parseFloat(amount as string), figures.get(food ?? "")];
          if (own)
            for (let c = 0; c < sums.length; c += 1)
              sums[c] = (sums[c] as number) + grams * (own[c] as number);
        }
        for (let c = 0; c < sums.length; c += 1) sums[c] = (sums[c] as number) / Number(portions);
      }
    },
    how,
  );
  bench(
    "a sheet of each",
    () => {
      for (const each of recipes) {
        const s = sheet(each, starterFoods);
        for (const of of components) s.portion(of).value;
      }
    },
    how,
  );
});
