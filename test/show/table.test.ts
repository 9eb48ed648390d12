import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SteelyardError } from "../../src/number/error.ts";
import { table } from "../../src/show/table.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { tables } from "./hostile.ts";

const columns = [
  { key: "line", heading: "Line" },
  { key: "grams", heading: "Amount", unit: "g", align: "end" },
] as const;

/** The faults of something that is not a table, as `path: message`. */
function faultsOf(input: unknown): string[] {
  try {
    table(input as Parameters<typeof table>[0]);
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    expect(error.faults.every((f) => f.code === "table-malformed" && f.hint !== "")).toBe(true);
    return error.faults.map((f) => `${f.path.join(".")}: ${f.message}`);
  }
  return [];
}

const figure = (change: object): unknown => ({
  columns,
  rows: [["Oats", { text: "40", value: "40", tone: "known", ...change }]],
});

describe("table", () => {
  it("makes rows of bare cells, and aligns at the start what does not say", () => {
    const t = table({ columns, rows: [["Oats", { text: "40", value: "40", tone: "known" }]] });
    expect(t).toEqual({
      columns: [
        { key: "line", heading: "Line", align: "start" },
        { key: "grams", heading: "Amount", unit: "g", align: "end" },
      ],
      rows: [{ kind: "body", cells: ["Oats", { text: "40", value: "40", tone: "known" }] }],
      notes: [],
    });
  });

  it("takes its own result, unchanged by a journey through JSON", () => {
    fc.assert(
      fc.property(tables(), (t) => {
        expect(table(t)).toEqual(t);
        expect(table(JSON.parse(JSON.stringify(t)))).toEqual(t);
      }),
    );
  });

  it.each([
    ["no columns", { columns: [], rows: [] }, ["columns: a table without columns"]],
    [
      "a repeated key",
      { columns: [columns[0], columns[0]], rows: [] },
      ['columns.1.key: a second column keyed "line"'],
    ],
    [
      "a key that is a prototype",
      JSON.parse('{"columns":[{"key":"__proto__","heading":"x"}],"rows":[]}'),
      ['columns.0.key: a column keyed "__proto__"'],
    ],
    [
      "an empty key",
      { columns: [{ key: "", heading: "x" }], rows: [] },
      ['columns.0.key: a column keyed ""'],
    ],
    [
      "an odd alignment",
      { columns: [{ key: "a", heading: "x", align: "left" }], rows: [] },
      ["columns.0.align: an unknown alignment"],
    ],
    [
      "a column that is none",
      { columns: [null, 3], rows: [] },
      [
        "columns.0.key: this is not text",
        "columns.0.heading: this is not text",
        "columns.1.key: this is not text",
        "columns.1.heading: this is not text",
        'columns.1.key: a second column keyed "undefined"',
      ],
    ],
    [
      "ragged rows, each named",
      { columns, rows: [["Oats"], ["a", "b"], ["a", "b", "c"]] },
      ["rows.0: 1 cells under 2 columns", "rows.2: 3 cells under 2 columns"],
    ],
    [
      "a row of a kind unheard of",
      { columns, rows: [{ kind: "foot", cells: [] }] },
      ["rows.0: this is not a row"],
    ],
    ["no row at all", { columns, rows: [null] }, ["rows.0: this is not a row"]],
    ["a group without words", { columns, rows: [{ kind: "group" }] }, ["rows.0.heading: this is not text"]],
    [
      "a bare number as a cell",
      { columns, rows: [["Oats", 40]] },
      ["rows.0.cells.1: this is neither words nor a figure"],
    ],
    [
      "nothing as a cell",
      { columns, rows: [["Oats", null]] },
      ["rows.0.cells.1: this is neither words nor a figure"],
    ],
    ["a title that is not text", { columns, rows: [], title: 3 }, ["title: this is not text"]],
    ["a note that is not text", { columns, rows: [], notes: ["a", {}] }, ["notes.1: this is not text"]],
    ["notes that are no list", { columns, rows: [], notes: "a" }, ["notes: notes are not a list"]],
    ["nothing", undefined, [": this is not a table"]],
    ["null", null, [": this is not a table"]],
    ["columns that are no list", { columns: "ab", rows: [] }, [": this is not a table"]],
    [
      "a figure that shows nothing",
      figure({ text: " " }),
      ["rows.0.cells.1.text: a figure that shows nothing"],
    ],
    ["an unknown tone", figure({ tone: "guessed" }), ["rows.0.cells.1.tone: an unknown tone"]],
    ["a binary float", figure({ value: 40 }), ["rows.0.cells.1.value: a value that is not exact text"]],
    [
      "a value of words",
      figure({ value: "forty" }),
      ["rows.0.cells.1.value: a value that is not exact text"],
    ],
    ["a value in powers", figure({ value: "4e1" }), ["rows.0.cells.1.value: a value that is not exact text"]],
    [
      "a value over nothing",
      figure({ value: "4/0" }),
      ["rows.0.cells.1.value: a value that is not exact text"],
    ],
    [
      "a value without end",
      figure({ value: "9".repeat(30_000) }),
      ["rows.0.cells.1.value: a value that is not exact text"],
    ],
    [
      "an unknown that looks like a number",
      figure({ text: "0", value: null, tone: "unknown" }),
      ['rows.0.cells.1.text: an unknown shown as "0"'],
    ],
    [
      "an unknown that claims to be known",
      figure({ text: "?", value: null }),
      ["rows.0.cells.1.tone: a figure without a value"],
    ],
    [
      "a known called unknown",
      figure({ tone: "unknown" }),
      ["rows.0.cells.1.value: an unknown with a value"],
    ],
  ])("refuses %s", (_, input, faults) => {
    expect(faultsOf(input)).toEqual(faults);
  });

  it("lists the faults of 100,000 ragged rows in bounded time", () => {
    const start = performance.now();
    expect(faultsOf({ columns, rows: Array(100_000).fill(["a"]) })).toHaveLength(100_000);
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});

describe("tablesOf", () => {
  const good = table({ columns, rows: [] });

  it("takes a table, a list of them, or what says its tables", () => {
    expect(tablesOf(good)).toEqual([good]);
    expect(tablesOf([good, good])).toEqual([good, good]);
    expect(tablesOf({ toTables: () => [good] })).toEqual([good]);
    expect(tablesOf([])).toEqual([]);
  });

  it("names the table that is at fault", () => {
    const bad = { ...good, columns: [] };
    expect(() => tablesOf([good, bad])).toThrow(expect.objectContaining({ path: [1, "columns"] }));
    expect(() => tablesOf({ toTables: () => [bad] })).toThrow(
      expect.objectContaining({ path: [0, "columns"] }),
    );
    expect(() => tablesOf(bad)).toThrow(expect.objectContaining({ path: ["columns"] }));
    expect(() => tablesOf(null as never)).toThrow(expect.objectContaining({ code: "table-malformed" }));
  });
});
