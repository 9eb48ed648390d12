/** Nothing is lost at a boundary: every result of every function, held against what JSON and a clone make of it. */

import { describe, expect, it } from "vitest";
import { energyShares } from "../../src/sheet/energy.ts";
import { explain } from "../../src/sheet/explain.ts";
import * as face from "../everything.ts";
import { calls, good } from "../hostileCalls.ts";
import { lost } from "./lossless.ts";

const results: readonly (readonly [string, unknown])[] = Object.entries(calls).flatMap(([name, all]) => {
  const f = (face as unknown as { readonly [name: string]: (...given: readonly unknown[]) => unknown })[name];
  return all.map((given, i) => [`${name} ${i + 1}`, drained(f?.(...given))] as const);
});
const { bowl, lightweight, foods } = good;
const dal = face.sheet(
  {
    name: "Dal and rice",
    portions: 2,
    lines: [
      { key: "lentils", food: "lentils-red-dry", amount: "120 g" },
      { key: "rice", food: "rice-white-long-boiled", amount: "300 g", part: "starch" },
      { key: "oil", food: "olive-oil", amount: "10 g", added: "serving", scaling: "adjustable" },
    ],
    method: ["Boil {lentils}."],
  },
  foods,
);
const wants = (energy: number, protein: number): readonly face.Demand[] => [
  { of: "energy", exactly: energy },
  { of: "protein", exactly: protein },
];
const shared = face.portionPlan({
  meals: [{ id: "supper", dishes: dal }],
  people: [
    { id: "cox", person: lightweight, demands: wants(450, 18) },
    { id: "bow", demands: wants(620, 25) },
    { id: "seven", demands: wants(630, 26) },
  ],
  pots: { tolerance: "10 %" },
  kitchen: "metric",
});
const more: readonly (readonly [string, unknown])[] = [
  ["a plan of shared pots", shared],
  ["its schedule", face.cookingSchedule(shared, { days: ["Sun", "Mon"], cook: ["Sun"] })],
  [
    "a rounding out of reach",
    face.roundToKitchen(bowl, "metric", { demands: [{ of: "energy", exactly: "601.234 kcal", firm: true }] }),
  ],
  ["an explanation", explain(bowl, "protein", "portion")],
  ["an uncertainty", face.uncertainty(bowl, "iron", "portion")],
  ["energy shares", energyShares(bowl)],
  ["a cell of one's own", face.cellValue(bowl, "twice", "total")],
  ["a tally of one line", bowl.cell("tofu", "iodine")],
];
const constants = Object.entries(face).filter(([, each]) => typeof each !== "function");
/** A Decimal is another library's, for who asks for one: its own JSON is its text. */
/** Columns of doubles are for data frames and workers, and no JSON: a number that is none has no place there. */
const isJson = ([name]: readonly [string, unknown]): boolean => !/^portions(At|OfMany)/.test(name);
const all = [...results, ...more, ...constants].filter(
  ([name, each]) => typeof each === "object" && name !== "toDecimal 1",
);

/** What a generator gives in the end. */
function drained(result: unknown): unknown {
  if (typeof (result as Generator)?.next !== "function") return result;
  for (;;) {
    const { done, value } = (result as Generator).next();
    if (done) return value;
  }
}

describe("at a boundary", () => {
  it("has results of every kind", () => {
    expect(shared.portions.some(({ shared: cost }) => cost !== undefined)).toBe(true);
    expect(shared.portions.every(({ drift }) => drift !== undefined)).toBe(true);
    expect(shared.dish("supper").servings.some(({ weighed }) => weighed !== undefined)).toBe(true);
  });

  it.each(all.filter(isJson))("JSON of %s holds all that the result does", (_, result) => {
    const copy: unknown = JSON.parse(JSON.stringify(result));
    expect(lost(result, copy)).toEqual([]);
  });

  it.each(all)("a clone of %s is equal, or refused in words that say what to send", (_, result) => {
    let copy: unknown;
    try {
      copy = structuredClone(result);
    } catch (error) {
      expect(String(error)).toContain("toJSON");
      return;
    }
    expect(lost(result, copy)).toEqual([]);
  });
});
