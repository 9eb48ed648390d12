import { bench, describe } from "vitest";
import { componentIds } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { recipe } from "../../src/recipe/recipe.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";

const components = componentIds.slice(0, 80);
const document = {
  name: "Twenty lines",
  portions: 4,
  lines: starterFoods.ids
    .filter((_, i) => i % 10 === 0)
    .slice(0, 20)
    .map((food, i) => ({ key: `line-${i}`, food, amount: `${40 + i * 7.5} g` })),
};
const read = recipe(document);

function readTotals(s: Sheet): void {
  for (const id of components) s.total(id).value;
}

/** An edit is to cost at most a fifth of building the sheet afresh from its document. */
describe("20 lines × 80 components: one line's amount, then all totals read", () => {
  const base = sheet(read, starterFoods);
  readTotals(base);
  let i = 0;
  bench("edited", () => {
    i += 1;
    readTotals(base.edit({ "line-3": `${100 + (i % 50)} g` }));
  });
  bench("built afresh from the document", () => {
    readTotals(sheet(document, starterFoods));
  });
  bench("built afresh from a recipe already read", () => {
    readTotals(sheet(read, starterFoods));
  });
});
