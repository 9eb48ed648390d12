import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { sheet } from "../../src/sheet/build.ts";
import { withColumn } from "../../src/sheet/columns.ts";
import { difference } from "../../src/sheet/difference.ts";
import { revise } from "../../src/sheet/revise.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const foods = foodTable([
  { id: "oats", name: "Oats", state: "dry", source: "table A", per100g: { energy: 400 } },
  { id: "milk", name: "Milk", source: "table B", density: "1.03", per100g: { energy: 60 } },
]);
const heap = sheet(
  { name: "Heap", portions: 1, lines: [{ key: "oats", food: "oats", amount: "12345 g" }] },
  foods,
);

describe("a difference in figures", () => {
  it("shows before and after with what tells them apart, and gives numbers as records", () => {
    const moved = difference(heap, heap.edit({ oats: "12346.6 g" }));
    expect(toText(moved)).toMatch(/Oats, dry +moved +12345 +12346\.6 +1\.6/);
    const of = toRecords(moved).filter(({ line }) => line === "oats");
    expect(of.map(({ what, amount, unit }) => [what, amount, unit])).toEqual([
      ["before", 12345, "g"],
      ["after", 12346.6, "g"],
      ["change", 1.6, "g"],
    ]);
    expect(of.every((r) => r.moved === "moved" && r.food === "oats" && r.name === "Oats, dry")).toBe(true);
  });

  it("counts a line that is not there as none", () => {
    const added = difference(heap, revise(heap, { add: [{ key: "milk", food: "milk", amount: "30 g" }] }));
    expect(toText(added)).toMatch(/Milk +added +none +30 +30/);
    const milk = toRecords(added).filter(({ line }) => line === "milk");
    expect(milk.map(({ what, amount }) => [what, amount])).toEqual([
      ["before", 0],
      ["after", 30],
      ["change", 30],
    ]);
  });

  it("lists the mass of a portion, where only the yield has changed", () => {
    const boiled = difference(heap, revise(heap, { yieldFactor: 2 }));
    expect(boiled.lines).toEqual([]);
    expect(boiled.none).toBe(false);
    expect([boiled.mass?.before, boiled.mass?.after, boiled.mass?.by].map(String)).toEqual([
      ...["12345", "24690", "12345"],
    ]);
    expect(toText(boiled)).toMatch(/mass +g +12345 +24690 +12345/);
    const mass = toRecords(boiled, { components: ["mass"] });
    expect(mass.map(({ row, what, amount }) => [row, what, amount])).toEqual([
      ["portion", "before", 12345],
      ["portion", "after", 24690],
      ["portion", "change", 12345],
    ]);
    expect(difference(heap, heap).mass).toBeUndefined();
    expect(difference(heap, heap).none).toBe(true);
  });
});

describe("a sheet of no mass", () => {
  it("is shown, with 100 g of it as unknown", () => {
    const empty = heap.edit({ oats: "0 g" });
    expect(errorOf(() => empty.per100g("energy")).code).toBe("sheet-empty");
    expect(toText(empty)).toMatch(/energy +kcal +0 +\? +0/);
    expect(toText(withColumn(empty, "double", (at) => at.get("energy").times(2)))).toContain("own columns");
  });
});
