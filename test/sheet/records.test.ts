import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { listedIds } from "../../src/food/components.ts";
import { markKinds } from "../../src/food/figure.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { exact, sum } from "../../src/number/exact.ts";
import { sheet } from "../../src/sheet/build.ts";
import { withColumn } from "../../src/sheet/columns.ts";
import type { Tally } from "../../src/sheet/tally.ts";
import { type TidyRecord, toRecords } from "../../src/show/records.ts";
import { arbitraryRecipe } from "../arbitraries.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const bowl = withColumn(
  sheet(
    {
      name: "Bowl",
      portions: 2,
      lines: [
        { key: "oats", food: "oats-rolled-dry", amount: "1 lb 2 oz", part: "grain" },
        { key: "kale", food: "kale-raw", amount: "90 g" },
      ],
    },
    starterFoods,
  ),
  "share",
  (at) => at.get("protein").over(at.total("protein")),
);

/** What a record must say of a tally, literally. */
function says(record: TidyRecord | undefined, tally: Tally): void {
  const end = (value: Tally["least"]): string | null => (value === undefined ? null : exactText(value));
  expect(record).toMatchObject({
    amount: tally.bound === "unknown" ? null : exactText(tally.value),
    unit: tally.unit,
    bound: tally.bound,
    least: end(tally.least),
    most: end(tally.most),
    coverage: exactText(tally.coverage),
    marks: markKinds.filter((kind) => tally[kind].length > 0).join(" "),
    silent: tally.missing.join(", "),
  });
}

describe("the records of a sheet", () => {
  it("say of every line and sum what its tally says, for every component", () => {
    fc.assert(
      fc.property(arbitraryRecipe, ({ recipe, table }) => {
        const s = sheet(recipe, table);
        const records = toRecords(s, { figures: "exact" }).filter(({ what }) => what === "eaten");
        const by = new Map(records.map((r) => [`${r.row} ${r.line} ${r.component}`, r]));
        for (const id of listedIds) {
          for (const { key } of s.lines) says(by.get(`line ${key} ${id}`), s.cell(key, id));
          says(by.get(`total null ${id}`), s.total(id));
          says(by.get(`portion null ${id}`), s.portion(id));
          if (s.masses.cooked.n !== 0n) says(by.get(`per100g null ${id}`), s.per100g(id));
        }
      }),
      { numRuns: runs(15) },
    );
  });

  it("weigh what went in, line by line and in all, and say amounts as they were written", () => {
    const records = toRecords(bowl, { components: ["mass", "amount", "portions"], figures: "exact" });
    const raw = records.filter(({ row, what }) => row === "line" && what === "raw");
    const total = records.find(({ row, what }) => row === "total" && what === "raw");
    expect(exactText(sum(raw.map(({ amount }) => exact(String(amount)))))).toBe(total?.amount);
    const written = records.filter(({ component, line }) => component === "amount" && line === "oats");
    expect(written.map(({ amount, unit }) => [amount, unit])).toEqual([
      ["1", "lb"],
      ["2", "oz"],
    ]);
    expect(records.find(({ component }) => component === "portions")?.amount).toBe("2");
  });

  it("have the source of each figure, the food, and columns of one's own", () => {
    const oats = toRecords(bowl).filter(({ line }) => line === "oats");
    expect(oats.find(({ component }) => component === "protein")).toMatchObject({
      food: "oats-rolled-dry",
      part: "grain",
      source: "USDA SR28, NDB 08120",
    });
    const silent = oats.find(({ component }) => component === "iodine");
    expect(silent).toMatchObject({ amount: null, bound: "unknown", marks: "missing", source: null });
    const shares = toRecords(bowl, { components: ["share"] });
    expect(shares.map(({ row, line }) => line ?? row)).toEqual([
      "oats",
      "kale",
      "total",
      "portion",
      "per100g",
    ]);
    expect(Number(shares[0]?.amount) + Number(shares[1]?.amount)).toBeCloseTo(1, 12);
  });

  it("are refused for what no row could be of", () => {
    const error = errorOf(() => toRecords(bowl, { components: ["energy", "protien"] }));
    expect([error.code, error.path]).toEqual(["component-unknown", ["components", 1]]);
    expect(error.hint).toContain("protein");
    expect(toRecords(bowl, { components: [] })).toEqual([]);
  });
});
