import { describe, expect, it } from "vitest";
import { amount, millilitresOf } from "../../src/measure/amount.ts";
import { measureSet, measureSetNames, measureSets } from "../../src/measure/measures.ts";
import { exactText } from "../../src/number/digits.ts";
import { exact } from "../../src/number/exact.ts";
import { errorOf } from "../number/errorOf.ts";

describe("sets of spoons and cups", () => {
  it("of one's own are frozen copies, in exact text", () => {
    const given = { name: "grandmother", ml: { cup: 200, tbsp: "40/3" }, source: "her kitchen drawer" };
    const set = measureSet(given);
    given.ml.cup = 1;
    expect(set).toEqual({
      name: "grandmother",
      ml: { cup: "200", tbsp: "40/3" },
      source: "her kitchen drawer",
    });
    expect(Object.isFrozen(set) && Object.isFrozen(set.ml)).toBe(true);
    expect(exactText(millilitresOf(amount("3 tbsp", { measures: set })) ?? exact(0))).toBe("40");
    expect(exactText(millilitresOf(amount("1 grandmother cup", { measures: set })) ?? exact(0))).toBe("200");
  });

  it("handed in as plain data are checked as they are used", () => {
    const measures = { name: "hers", ml: { cup: 210 } };
    expect(amount("1 cup", { measures }).measures).toEqual({ name: "hers", ml: { cup: "210" } });
    expect(errorOf(() => amount("1 cup", { measures: { name: "hers", ml: { cup: -1 } } })).path).toEqual([
      "measures",
      "ml",
      "cup",
    ]);
  });

  it("that are named may be handed in whole", () => {
    for (const name of measureSetNames)
      expect(amount("1 tsp", { measures: measureSets[name] }).measures).toBe(name);
  });

  const bad: [string, unknown, string[]][] = [
    ["nothing", undefined, [""]],
    ["no fields", {}, ["name", "ml"]],
    ["no name", { ml: { cup: 1 } }, ["name"]],
    ["a name that begins with a figure", { name: "2 mugs", ml: { cup: 1 } }, ["name"]],
    ["a name that is a set's", { name: "US label", ml: { cup: 1 } }, ["name"]],
    ["a name that is spelled like a set's", { name: "American", ml: { cup: 1 } }, ["name"]],
    ["no sizes", { name: "x", ml: {} }, ["ml"]],
    ["an unknown unit", { name: "x", ml: { mug: 300 } }, ["ml.mug"]],
    ["__proto__", { name: "x", ml: JSON.parse('{"__proto__": 5}') }, ["ml.__proto__"]],
    [
      "sizes out of range",
      { name: "x", ml: { cup: 0, tsp: -1, tbsp: 1e9, pint: 1e-9, quart: "1/99999999999999999999" } },
      ["ml.cup", "ml.tsp", "ml.tbsp", "ml.pint", "ml.quart"],
    ],
    [
      "sizes that are no numbers",
      { name: "x", ml: { cup: "big", tsp: Number.NaN, tbsp: null } },
      ["ml.cup", "ml.tsp", "ml.tbsp"],
    ],
  ];
  it.each(bad)("with %s are refused", (_, input, paths) => {
    const { faults } = errorOf(() => measureSet(input));
    expect(faults.map((f) => f.path.join("."))).toEqual(paths);
    for (const f of faults) expect(f.hint.length).toBeGreaterThan(5);
  });
});
