import { bench, describe } from "vitest";
import { componentIds } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecords } from "../../src/show/records.ts";

const components = componentIds.slice(0, 80);
const lines = starterFoods.ids
  .filter((_, i) => i % 10 === 0)
  .slice(0, 20)
  .map((food, i) => ({ food, amount: `${40 + i * 7.5} g` }));
const s = sheet({ name: "Twenty lines", portions: 4, lines }, starterFoods);

describe("20 lines × 80 components as records", () => {
  bench("of a sheet", () => void toRecords(s, { components }));
  bench("of a version made for it", () => void toRecords(s.scaled(s.portions, s.portions), { components }));
  bench("one component of it", () => void toRecords(s, { components: ["iron"] }));
});
