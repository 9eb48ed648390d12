/** Records through data frames and back: arquero, Apache Arrow and DuckDB keep every column, value and gap. */
import { DuckDBInstance } from "@duckdb/node-api";
import { tableFromIPC, tableFromJSON, tableToIPC } from "apache-arrow";
import { from as frame, fromArrow } from "arquero";
import { describe, expect, it } from "vitest";
import { oatPot, seedTopping } from "../../examples/recipes.ts";
import { coefficients } from "../../src/bulk/coefficients.ts";
import { starterFoods } from "../../src/foods.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { fit } from "../../src/scale/fit.ts";
import { sweep } from "../../src/scale/sweep.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecords } from "../../src/show/records.ts";
import type { DataRecord } from "../../src/show/tableRecords.ts";

const s = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });
const plan = portionPlan({
  meals: [{ id: "breakfast", dishes: { pot: s } }],
  people: [{ id: "cox", demands: [{ of: "energy", exactly: 500 }] }, { id: "bow" }],
});
const results: readonly (readonly [string, readonly DataRecord[]])[] = [
  ["a sheet", toRecords(s)],
  ["a sheet, exactly", toRecords(s, { figures: "exact", components: ["iodine", "iron", "mass"] })],
  ["a plan", toRecords(plan, { components: ["energy", "iodine", "mass"] })],
  ["a fit", toRecords(fit(s, [{ of: "energy", exactly: 600 }]))],
  ["a sweep", toRecords(sweep(s, [{ target: "energy", values: [500, 600] }], { silent: "accept" }))],
  ["coefficients", toRecords(coefficients(s, ["energy", "water"]))],
];

const shared = [
  "sheet",
  "person",
  "day",
  "meal",
  "dish",
  "line",
  "food",
  "row",
  "what",
  "component",
  "amount",
];
const others = ["unit", "bound", "least", "most", "coverage", "marks", "silent", "source"];

/** The figures that the columns of a record hold, in their order. */
const plain = (records: Iterable<object>): DataRecord[] =>
  [...records].map((each) => ({ ...each }) as DataRecord);

describe.each(results)("records of %s", (_, records) => {
  it("have the same first columns, with names that every frame takes", () => {
    for (const each of records) expect(Object.keys(each).slice(0, 19)).toEqual([...shared, ...others]);
    expect(Object.keys(records[0] as DataRecord).filter((key) => !/^[a-z]\w*$/i.test(key))).toEqual([]);
  });

  it("come back from arquero", () => {
    expect(plain(frame(records as DataRecord[]).objects())).toEqual(records);
  });

  it("come back from Arrow's stream, and through it from arquero", () => {
    const stream = tableToIPC(tableFromJSON(records as unknown as Record<string, unknown>[]), "stream");
    // A column in which nothing stands has no type, and Arrow leaves it out.
    const blank = Object.fromEntries(Object.keys(records[0] as DataRecord).map((key) => [key, null]));
    const whole = (rows: Iterable<object>): DataRecord[] => plain(rows).map((row) => ({ ...blank, ...row }));
    expect(whole([...tableFromIPC(stream)].map((row) => row?.toJSON() ?? {}))).toEqual(records);
    expect(whole(fromArrow(stream).objects())).toEqual(records);
  });

  it("come back from DuckDB", async () => {
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    const columns = Object.keys(records[0] as DataRecord);
    const isNumber = (column: string): boolean => records.some((each) => typeof each[column] === "number");
    const typed = columns.map((column) => `"${column}" ${isNumber(column) ? "double" : "text"}`);
    await connection.run(`create table records (${typed.join(", ")})`);
    const rows = await connection.createAppender("records");
    for (const each of records) {
      for (const column of columns) {
        const value = each[column];
        if (value === null || value === undefined) rows.appendNull();
        else if (typeof value === "number") rows.appendDouble(value);
        else rows.appendVarchar(value);
      }
      rows.endRow();
    }
    rows.closeSync();
    const back = await connection.runAndReadAll("select * from records");
    connection.closeSync();
    expect(back.getRowObjects()).toEqual(records);
  });
});

it("keeps what is not known as rows without an amount", () => {
  const unknown = toRecords(s).filter(({ bound }) => bound === "unknown");
  expect(unknown.length).toBeGreaterThan(20);
  expect(unknown.every(({ amount, component }) => amount === null && component !== null)).toBe(true);
});
