import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { listedIds } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { recipe } from "../../src/recipe/recipe.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cellValue, withColumn } from "../../src/sheet/columns.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { runs } from "../runs.ts";

/** Measured heap, after collection, of many sheets kept alive with all their totals read. */

setFlagsFromString("--expose-gc");
const collect: () => void = runInNewContext("gc");

const written = recipe({
  name: "Twenty lines",
  portions: 4,
  lines: starterFoods.ids
    .filter((_, i) => i % 10 === 0)
    .slice(0, 20)
    .map((food, i) => ({ key: `line-${i}`, food, amount: `${40 + i}.5 g` })),
});

const SO_MANY = runs(250);

function heapOnce(make: (i: number) => Sheet): number {
  collect();
  const before = process.memoryUsage().heapUsed;
  const kept = Array.from({ length: SO_MANY }, (_, i) => {
    const s = make(i);
    for (const id of listedIds) s.total(id);
    return s;
  });
  collect();
  const used = process.memoryUsage().heapUsed - before;
  expect(kept.length).toBe(SO_MANY);
  return used / SO_MANY;
}

/** The least of several rounds: what the engine itself keeps for a while (code it compiled, caches) only adds. */
function heapOf(make: (i: number) => Sheet): number {
  return Math.min(...[1, 2, 3].map(() => heapOnce(make)));
}

/** A WeakRef is let go between jobs, and not always at the first chance. */
async function letGo(seen: WeakRef<object>): Promise<boolean> {
  for (let tries = 0; tries < 20 && seen.deref() !== undefined; tries++) {
    await new Promise((done) => setTimeout(done, 20));
    collect();
  }
  return seen.deref() === undefined;
}

describe("very many versions", () => {
  it("cost a fraction of as many sheets: lines, foods, gaps and untouched totals are shared", () => {
    const base = withColumn(sheet(written, starterFoods), "x", (at) => at.get("protein").times(2));
    for (const id of listedIds) base.total(id);
    let last = base;
    const chained = heapOf((i) => {
      last = last.edit({ "line-3": `${i + 1} g` });
      return last;
    });
    const fresh = heapOf(() => sheet({ ...written }, starterFoods));
    console.log(
      `heap of a version ${Math.round(chained / 1024)} kB, of a sheet built afresh ${Math.round(fresh / 1024)} kB`,
    );
    // Measured at 45 kB of 71: sheets of one food table share its figures too. A version that shared neither
    // lines nor gaps would cost as much as a sheet.
    expect(chained / fresh).toBeLessThan(0.7);
  });

  it("are let go: the last of a long chain keeps no earlier one", async () => {
    let last = withColumn(sheet(written, starterFoods), "x", (at) => at.get("protein").times(2));
    const seen = new WeakRef(last);
    for (let i = 0; i < 200; i++) {
      last = last.edit({ "line-3": `${i + 1} g` });
      last.total("protein").value;
      cellValue(last, "x");
    }
    expect(await letGo(seen)).toBe(true);
    expect(last.lines.length).toBe(20);
  });
});
