import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactText } from "../../src/number/digits.ts";
import { exact, fraction } from "../../src/number/exact.ts";
import { figureCell } from "../../src/show/figure.ts";
import { toRecords } from "../../src/show/records.ts";
import { type Table, type Tone, table } from "../../src/show/table.ts";
import { runs } from "../runs.ts";
import { anyFraction, tables } from "./hostile.ts";

const columns = [
  { key: "line", heading: "Line" },
  { key: "grams", heading: "Amount", unit: "g", align: "end" },
] as const;
const t = table({
  columns,
  rows: [
    { kind: "group", heading: "Pot" },
    ["Oats", figureCell(exact("40"))],
    { kind: "group", heading: "Jar" },
    ["Seeds", figureCell(null)],
    ["Honey", figureCell(exact("1/3"), { tone: "at-least" })],
    { kind: "subtotal", cells: ["Jar", figureCell(exact("1/3"))] },
    { kind: "total", cells: ["All", figureCell(exact("121/3"))] },
  ],
});

describe("toRecords", () => {
  it("gives tidy rows: groups as a column, no totals, unknowns null", () => {
    expect(toRecords(t)).toEqual([
      { group: "Pot", line: "Oats", grams: 40, gramsBound: "point" },
      { group: "Jar", line: "Seeds", grams: null, gramsBound: "unknown" },
      { group: "Jar", line: "Honey", grams: 1 / 3, gramsBound: "at-least" },
    ]);
    expect(toRecords(t, { figures: "exact" }).map((r) => r.grams)).toEqual(["40", null, "1/3"]);
    expect(toRecords([])).toEqual([]);
  });

  it("never lets a bound pass for exact, and says nothing where all are", () => {
    const two = [columns[0], columns[1]] as const;
    const rows = (tone: Exclude<Tone, "unknown" | "between">) => [
      ["Oats", figureCell(fraction(40n))] as const,
      ["Seeds", figureCell(fraction(4n), { tone })] as const,
    ];
    const said = (tone: Exclude<Tone, "unknown" | "between">) =>
      toRecords(table({ columns: two, rows: rows(tone) })).map((r) => r.gramsBound);
    expect(said("at-least")).toEqual(["point", "at-least"]);
    expect(said("at-most")).toEqual(["point", "at-most"]);
    expect(said("trace")).toEqual(["point", "at-least"]);
    for (const tone of ["known", "derived", "presumed", "borrowed"] as const) {
      expect(said(tone)).toEqual([undefined, undefined]);
    }
    // A column that is called so already keeps its words.
    const taken = [...two, { key: "gramsBound", heading: "Own" }] as const;
    const own = rows("at-least").map((cells) => [...cells, "mine"]);
    expect(toRecords(table({ columns: taken, rows: own })).map((r) => r.gramsBound)).toEqual([
      "mine",
      "mine",
    ]);
  });

  it("round-trips: exact text is the fraction put in, a number the nearest double to it", () => {
    fc.assert(
      fc.property(anyFraction, (f) => {
        const one = table({ columns: [columns[1]], rows: [[figureCell(f)]] });
        expect(toRecords(one, { figures: "exact" })[0]?.grams).toBe(exactText(f));
        // Both halves are below 2^53 and so exact; IEEE 754 division rounds to the nearest.
        expect(toRecords(one)[0]?.grams).toBe(f.n === 0n ? 0 : Number(f.n) / Number(f.d));
      }),
      { numRuns: runs(500) },
    );
  });

  it("keeps words exactly as they were, and every row and key in its place", () => {
    fc.assert(
      fc.property(tables(), (any) => {
        const records = toRecords(any, { figures: "exact" });
        const bodies = any.rows.flatMap((row) => (row.kind === "body" ? [row.cells] : []));
        expect(records.map((r) => any.columns.map((c) => r[c.key]))).toEqual(
          bodies.map((cells) => cells.map((c) => (typeof c === "string" ? c : c.value))),
        );
        const copy = JSON.parse(JSON.stringify(records));
        expect(copy).toEqual(records);
      }),
    );
  });

  it("makes plain objects of their own keys, whatever the keys", () => {
    const odd = table({
      columns: ["constructor", "toString", "hasOwnProperty", "0"].map((key) => ({ key, heading: key })),
      rows: [["a", "b", "c", "d"]],
    });
    const [record] = toRecords(odd);
    expect(Object.entries(record ?? {}).sort()).toEqual([
      ["0", "d"],
      ["constructor", "a"],
      ["hasOwnProperty", "c"],
      ["toString", "b"],
    ]);
    expect(Object.getPrototypeOf(record)).toBe(Object.prototype);
    const proto: Table = {
      ...odd,
      columns: odd.columns.map((c, i) => (i === 0 ? { ...c, key: "__proto__" } : c)),
    };
    expect(() => toRecords(proto)).toThrow(expect.objectContaining({ code: "table-malformed" }));
  });

  it("leaves a column named group alone", () => {
    const own = table({
      columns: [{ key: "group", heading: "Group" }],
      rows: [{ kind: "group", heading: "Pot" }, ["allergens"]],
    });
    expect(toRecords(own)).toEqual([{ group: "allergens" }]);
  });

  it("keeps as text what no double can hold, and never makes nothing of something", () => {
    const of = (value: Parameters<typeof figureCell>[0]): unknown =>
      toRecords(table({ columns: [columns[1]], rows: [[figureCell(value)]] }))[0]?.grams;
    const huge = fraction(10n ** 400n);
    expect(of(huge)).toBe(`1${"0".repeat(400)}`);
    expect(of(fraction(1n, 10n ** 400n))).toMatch(/^0\.0+1$/);
    expect(of(fraction(1n, 3n * 10n ** 400n))).toBe(`1/3${"0".repeat(400)}`);
    expect(of(exact("0"))).toBe(0);
  });

  it("gives the tidy rows of what has them, and no others than are asked for", () => {
    const figure = { amount: fraction(1n, 4n), unit: "g", bound: "point" };
    const rows = [
      { line: "oats", component: "protein", ...figure, own: { verdict: "part" } },
      { head: { sheet: "Oats", own: { verdict: "whole" } }, row: "total", component: "fat", ...figure },
      { what: "note" },
    ];
    const tidy = { toTables: () => [t], toRows: () => ({ own: ["verdict"], rows }) };
    const columns = [
      ...["sheet", "person", "day", "meal", "dish", "line", "food", "row", "what", "component", "amount"],
      ...["unit", "bound", "least", "most", "coverage", "marks", "silent", "source", "verdict"],
    ];
    const records = toRecords(tidy);
    for (const record of records) expect(Object.keys(record)).toEqual(columns);
    expect(records.map((r) => [r.sheet, r.line, r.row, r.component, r.amount, r.verdict])).toEqual([
      [null, "oats", null, "protein", 0.25, "part"],
      ["Oats", null, "total", "fat", 0.25, "whole"],
      [null, null, null, null, null, null],
    ]);
    expect(toRecords(tidy, { figures: "exact", components: ["fat"] }).map((r) => r.amount)).toEqual(["0.25"]);
    expect(toRecords({ toTables: () => [t] })).toEqual(toRecords(t));
  });

  it("refuses components that are no list of names", () => {
    for (const components of ["protein", [1], [undefined], {}])
      expect(() => toRecords(t, { components } as never)).toThrow(
        expect.objectContaining({ code: "table-malformed", path: expect.arrayContaining(["components"]) }),
      );
  });

  it("gives 100,000 rows in bounded time", () => {
    const start = performance.now();
    const rows = Array.from({ length: 100_000 }, (_, i) => [
      `Line ${i}`,
      figureCell(fraction(BigInt(i), 7n)),
    ]);
    expect(toRecords(table({ columns, rows }))[99_999]).toEqual({ line: "Line 99999", grams: 99_999 / 7 });
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
