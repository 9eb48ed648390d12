/** Columns in Apache Arrow's own library: opened where they stand, and whole after its interchange format. */
import { makeVector, Table, tableFromIPC, tableToIPC } from "apache-arrow";
import { describe, expect, it } from "vitest";
import { oatPot, seedTopping } from "../../examples/recipes.ts";
import { portionsAt } from "../../src/bulk/portionsAt.ts";
import { starterFoods } from "../../src/foods.ts";
import { sheet } from "../../src/sheet/build.ts";

const s = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });
const energy = Float64Array.from({ length: 1000 }, (_, i) => 100 + i);
const { columns, factor, status } = portionsAt(s, { energy }, ["protein", "iron"], { silent: "accept" });

describe("columns in Arrow", () => {
  const { protein } = columns;
  const made = new Table({
    energy: makeVector(energy),
    factor: makeVector(factor),
    status: makeVector(status),
    protein: makeVector(protein.value),
    bound: makeVector(protein.bound),
  });

  it("are the same memory", () => {
    expect(made.numRows).toBe(1000);
    expect(made.getChild("protein")?.data[0]?.values.buffer).toBe(protein.value.buffer);
    expect(made.getChild("bound")?.data[0]?.values.buffer).toBe(protein.bound.buffer);
  });

  it("come back from its stream format, which other data frames open, to the last bit", () => {
    const back = tableFromIPC(tableToIPC(made, "stream"));
    expect(back.getChild("protein")?.toArray()).toEqual(protein.value);
    expect(back.getChild("status")?.toArray()).toEqual(status);
  });
});
