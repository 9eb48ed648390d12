import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { sum } from "../../src/number/exact.ts";
import { sheet } from "../../src/sheet/build.ts";
import { explain } from "../../src/sheet/explain.ts";
import type { Explanation } from "../../src/sheet/explanation.ts";
import { toRecords } from "../../src/show/records.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { toText as shown } from "../../src/show/text.ts";

// SR28 carries no iodine: of lentils and spinach nothing is known; of milk another source prints a figure.
const dal = sheet(
  {
    name: "Dal",
    portions: 2,
    lines: [
      { key: "lentils", food: "lentils-dry", amount: "150 g" },
      { key: "spinach", food: "spinach-raw", amount: "200 g" },
    ],
  },
  starterFoods,
);
const supper = sheet(
  {
    name: "Supper",
    portions: 1,
    lines: [
      { key: "dal", recipe: "dal", amount: "1 portion" },
      { key: "milk", food: "milk-whole", amount: "244 g" },
    ],
  },
  starterFoods,
  { recipes: { dal: dal.origin } },
);

/** Cells of the shown table by label, the dots of depth taken off. */
function values(why: Explanation): ReadonlyMap<string, string> {
  const [table] = tablesOf(why);
  return new Map(
    (table?.rows ?? []).flatMap((row) => {
      if (row.kind === "group") return [];
      const [what = "", value = ""] = row.cells.map((cell) => (typeof cell === "string" ? cell : cell.text));
      return [[what.replaceAll("· ", "").split(":")[0] ?? "", value]] as const;
    }),
  );
}

describe("explanations of what is not known", () => {
  it("show it as unknown, never as 0", () => {
    const why = explain(dal, "iodine", "portion");
    expect([...values(why).values()]).toEqual(["?", "?", "?"]);
    expect(shown(why)).toContain("?: not known");
    expect(why.from.map(({ tally }) => tally.bound)).toEqual(["unknown", "unknown"]);
    expect(values(explain(dal, "iodine", { line: "spinach" })).get("spinach")).toBe("?");
  });

  it("say at least where some of it is known", () => {
    const why = explain(supper, "iodine", "portion");
    const cells = values(why);
    expect(cells.get("iodine of one portion of Supper")).toMatch(/^at least 83.6/); // 34.3 µg × 2.44
    expect([cells.get("dal"), cells.get("lentils"), cells.get("spinach")]).toEqual(["?", "?", "?"]);
  });

  it("keep adding up to the root", () => {
    const why = explain(supper, "iodine", "portion");
    expect(exactText(sum(why.leaves.map((leaf) => leaf.value)))).toBe(exactText(why.value));
  });

  it("stand in records as null, with line, unit, bound and source", () => {
    const records = toRecords(explain(supper, "iodine", "portion"));
    expect(
      records.map(({ level, line, amount, unit, bound, source }) => [
        level,
        line,
        amount,
        unit,
        bound,
        source,
      ]),
    ).toEqual([
      [0, null, 83.692, "µg", "at-least", null],
      [1, "dal", null, "µg", "unknown", null],
      [2, "dal/lentils", null, "µg", "unknown", "USDA SR28, NDB 16069"],
      [2, "dal/spinach", null, "µg", "unknown", "USDA SR28, NDB 11457"],
      [1, "milk", 83.692, "µg", "point", expect.stringContaining("Roseland et al. 2020")],
    ]);
    expect(new Set(records.map(({ component }) => component))).toEqual(new Set(["iodine"]));
    const foods = [null, null, "lentils-dry", "spinach-raw", "milk-whole"];
    expect(records.map(({ food }) => food)).toEqual(foods);
    expect(records.map(({ label }) => label).join()).not.toContain("·");
  });

  it("stand in JSON as unknown", () => {
    const read = JSON.parse(JSON.stringify(explain(dal, "iodine", "total")));
    const bounds = [read, ...read.from].map(({ tally }) => [tally.bound, tally.most]);
    expect(bounds).toEqual(Array(3).fill(["unknown", null]));
  });

  it("give a middle figure with its bound, and its ends among the steps", () => {
    const rice = sheet(
      {
        name: "Rice with kelp",
        portions: 1,
        lines: [
          { key: "rice", food: "rice-white-long-boiled", amount: "150 g" },
          { key: "kelp", food: "kelp-raw", amount: "1 g" },
        ],
      },
      starterFoods,
    );
    const why = explain(rice, "iodine", "portion");
    expect(toRecords(why).map(({ amount, bound }) => [amount, bound])).toEqual([
      [464.83, "between"],
      [null, "unknown"],
      [464.83, "between"],
    ]);
    expect(why.steps.join()).toMatch(/at least 44.3 µg: the figure is a middle one.*silent: rice/);
  });
});

describe("explanations as tables", () => {
  it("have the largest share first at each level, and what is unknown behind it by its mass", () => {
    const foods = foodTable([
      { id: "little", name: "Little", source: "own", per100g: { iron: 1 } },
      { id: "much", name: "Much", source: "own", per100g: { iron: 9 } },
      { id: "silent", name: "Silent", source: "own", per100g: {} },
    ]);
    const lines = (["little", "silent", "much"] as const).map((food) => ({
      key: food,
      food,
      amount: "10 g",
    }));
    const heavy = { key: "heavy", food: "silent", amount: "20 g" };
    const made = sheet({ name: "Pot", portions: 1, lines: [...lines, heavy] }, foods);
    const order = shown(explain(made, "iron", "portion")).match(/(?<=^· )\w+/gm);
    expect(order).toEqual(["much", "little", "heavy", "silent"]);
  });
});
