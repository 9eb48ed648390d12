/** What a figure says of itself in a template string, and a portion of a plan. */
import { execFileSync } from "node:child_process";
import { expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { root } from "../sources.ts";

const foods = foodTable([
  {
    id: "a",
    name: "A",
    source: "made up for a test",
    per100g: { iron: 4, zinc: { value: 5, low: 2, high: 9 } },
  },
  { id: "b", name: "B", source: "made up for a test", per100g: { zinc: 0 } },
]);
const lines = [
  { food: "a", amount: "50 g" },
  { food: "b", amount: "50 g" },
];
const s = sheet({ name: "Dish", portions: 1, lines }, foods);
const alone = sheet({ name: "Dish", portions: 1, lines: lines.slice(0, 1) }, foods);

it.each([
  [`${s.portion("iron")}`, "at least 2 mg"],
  [`${alone.portion("iron")}`, "2 mg"],
  [`${s.portion("zinc")}`, "1 to 4.5 mg"],
  [`${s.portion("iodine")}`, "not known"],
])("a figure reads as %s", (shown, expected) => {
  expect(shown).toBe(expected);
});

it("a portion says whose it is", () => {
  const plan = portionPlan({ meals: [{ id: "supper", dishes: { dish: s } }], people: [{ id: "cox" }] });
  expect(`${plan.portion("cox", "supper")}`).toBe("cox, supper: 100 g, met");
});

it("reads so on Node's console, where nobody asked for tables", () => {
  // In a process of its own: another test of the same one may have asked for them.
  const script = `import { foodTable, sheet } from "./src/index.ts";
    const foods = foodTable([{ id: "oats", name: "Oats", source: "own", per100g: { iron: 4 } }]);
    const s = sheet({ name: "Dish", portions: 1, lines: [{ food: "oats", amount: "50 g" }] }, foods);
    console.log({ iron: s.portion("iron") });`;
  const run = ["--import", "tsx", "--input-type=module", "--eval", script];
  expect(execFileSync(process.execPath, run, { cwd: root, encoding: "utf8" })).toBe("{ iron: 2 mg }\n");
});
