import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import { listedIds } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { minus, over, sum } from "../../src/number/exact.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cellFeeds, cellValue, withColumn, withRow } from "../../src/sheet/columns.ts";
import { difference } from "../../src/sheet/difference.ts";
import { isFailure, type RowRef } from "../../src/sheet/own.ts";
import { Sheet } from "../../src/sheet/sheet.ts";
import { toRecords } from "../../src/show/records.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { toText as shown } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

/** Work is counted, not timed: a machine may be busy. */

const ids = starterFoods.ids.slice(0, 40);
const lines = (n: number) =>
  Array.from({ length: n }, (_, i) => ({
    key: `line-${i}`,
    food: ids[i % ids.length] ?? "",
    amount: `${1 + (i % 90)} g`,
  }));
const heap = (n: number): Sheet => sheet({ name: "Heap", portions: 4, lines: lines(n) }, starterFoods);

describe("a sheet of very many lines", () => {
  it("makes no rows that are not shown, and says how many those are", () => {
    const s = withColumn(heap(5000), "twice", (at) => at.get("grams").times(2));
    const made = vi.spyOn(Sheet.prototype, "lineAt");
    const text = shown(s, { rows: 20 });
    const calls = made.mock.calls.length;
    made.mockRestore();
    expect(calls).toBeLessThanOrEqual(3 * 20);
    expect(text).toContain("4983 more rows not shown"); // 4,980 lines and three sums
    for (const t of tablesOf(s, { rows: 20 })) expect(t.rows.length).toBeLessThan(200);
    expect(text.replace(/\s+/g, " ")).toMatch(/no [^:]* data: [^:]* and \d+ more/);
    expect(text.length).toBeLessThan(60_000);
  });

  it("shows the same first rows as if all had been made", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 14 }), (n, rows) => {
        const s = withColumn(heap(n), "twice", (at) => at.get("grams").times(2));
        const all = tablesOf(s).map((t) => t.rows);
        tablesOf(s, { rows }).forEach((t, k) => {
          const shownRows = t.rows.slice(0, rows);
          expect(shownRows).toEqual(all[k]?.slice(0, shownRows.length));
          expect(t.rows.length + (t.more ?? 0)).toBe(all[k]?.length);
        });
      }),
      { numRuns: runs(40) },
    );
  });

  it("is compared by food, not cell by cell", () => {
    const [before, after] = [heap(3000), heap(3000).edit({ "line-3": "500 g", "line-7": "0 g" })];
    const cells = vi.spyOn(Sheet.prototype, "cell");
    const moved = difference(before, after);
    for (const { change } of moved.components) change.toJSON();
    const calls = cells.mock.calls.length;
    cells.mockRestore();
    expect(moved.lines.map(({ key }) => key)).toEqual(["line-3", "line-7"]);
    expect(calls).toBe(0);
  });

  it("has records of every line and component, picked without the rest being made", () => {
    const s = heap(2000);
    const cells = vi.spyOn(Sheet.prototype, "cellAt");
    const protein = toRecords(s, { components: ["protein"] });
    const calls = cells.mock.calls.length;
    cells.mockRestore();
    expect(calls).toBe(2000);
    expect(protein).toHaveLength(2003);
    expect(toRecords(s).filter(({ row, what }) => row === "line" && what === "eaten")).toHaveLength(
      2000 * listedIds.length,
    );
  });
});

describe("a difference", () => {
  // The plain way: what each line brings to a portion after, less before.
  it("is what its lines bring more or less, one by one", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(120), { minLength: 12, maxLength: 12 }), (grams) => {
        const before = heap(12);
        const after = before.edit(Object.fromEntries(grams.map((g, i) => [`line-${i}`, `${g} g`])));
        for (const { component, change } of difference(before, after).components) {
          const each = before.lines.map(({ key }) =>
            minus(after.cell(key, component).value, before.cell(key, component).value),
          );
          expect(exactText(over(sum(each), before.values.portions))).toBe(exactText(change.value));
        }
      }),
      { numRuns: runs(25) },
    );
  });
});

describe("very many columns that read each other", () => {
  const N = 5000;
  const two = sheet({ name: "Two", portions: 1, lines: lines(2) }, starterFoods);
  let calls = 0;
  const chain = (s: Sheet, n: number): Sheet => {
    let at = withColumn(s, "c0", (row) => row.get("grams"));
    for (let i = 1; i < n; i++)
      at = withColumn(at, `c${i}`, (row) => {
        calls += 1;
        return row.get(`c${i - 1}`).plus(row.get("grams"));
      });
    return at;
  };

  it("are each worked out once for each row, and again only where an edit reaches", () => {
    calls = 0;
    const s = chain(two, N);
    // Two lines, the batch, a portion and 100 g.
    expect(calls).toBe((N - 1) * 5);
    const last = cellValue(s, `c${N - 1}`, { line: "line-0" });
    expect(isFailure(last) ? last.message : exactText(last.value)).toBe(String(N)); // 1 g, N times
    calls = 0;
    const edited = cellValue(s.edit({ "line-0": "3 g" }), `c${N - 1}`, { line: "line-0" });
    expect(isFailure(edited) ? edited.message : exactText(edited.value)).toBe(String(3 * N));
    // What is settled first is begun once more for each stretch of the chain: no more than a tenth on top.
    expect(calls).toBeLessThan(N * 1.1);
    calls = 0;
    cellValue(s.edit({ "line-0": "3 g" }), `c${N - 1}`, { line: "line-1" });
    expect(calls).toBe(0);
  });

  it("are refused as a circle, however long", () => {
    const error = errorOf(() => withColumn(chain(two, 1000), "c0", (row) => row.get("c999")));
    expect(error.code).toBe("column-cycle");
    expect(error.message).toMatch(/c0 of line-0 → c999 of line-0 → .*more → c1 of line-0 → c0 of line-0/);
  });

  it("leave the sheets that they were defined on as they were, whatever is defined beside them", () => {
    const base = chain(two, 3);
    const one = withColumn(base, "x", (row) => row.get("c2"));
    const other = withRow(
      withColumn(base, "x", (row) => row.get("c1")),
      "half",
      (at) => at.total().over(2),
    );
    const plain = withRow(base, "half", (at) => at.total().over(3));
    const text = (s: Sheet, column: string, row: RowRef): string => {
      const value = cellValue(s, column, row);
      return isFailure(value) ? value.code : exactText(value.value);
    };
    const of = (s: Sheet): string[] => [text(s, "x", "total"), text(s, "x", { row: "half" })];
    expect(of(base)).toEqual(["column-unknown", "column-unknown"]);
    expect(of(plain)).toEqual(["column-unknown", "column-unknown"]);
    expect([of(one)[0], of(other)]).toEqual(["9", ["6", "3"]]);
    expect(of(withColumn(plain, "x", () => 30))).toEqual(["30", "10"]);
    const feeds = (s: Sheet): string[] => cellFeeds(s, "c2", "total").map(({ column }) => column);
    expect([feeds(one), feeds(base)].map((all) => all.includes("x"))).toEqual([true, false]);
    expect(of(base)).toEqual(["column-unknown", "column-unknown"]);
  });
});
