import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foodTable } from "../../../src/food/table.ts";
import { SteelyardError } from "../../../src/number/error.ts";
import type { Demand } from "../../../src/scale/demand.ts";
import { type FitOptions, fit } from "../../../src/scale/fit.ts";
import { sheet } from "../../../src/sheet/build.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";
import { errorOf } from "../../number/errorOf.ts";
import { runs } from "../../runs.ts";
import { food } from "./worlds.ts";

const s = sheet(
  {
    name: "Rice",
    portions: 1,
    lines: [
      { food: "rice", amount: "100 g" },
      { food: "beans", amount: "50 g", part: "top" },
    ],
  },
  foodTable([food("rice", { energy: 100, protein: 2 }), food("beans", { energy: 100, protein: 10 })]),
);

const faultsOf = (demands: unknown, how?: unknown): string[] =>
  errorOf(() => fit(s, demands as Demand[], how as FitOptions)).faults.map(
    ({ code, path, message, hint }) => `${code} ${path.join(".")}: ${message} (${hint})`,
  );

const faultOf = (demand: unknown): string => {
  const faults = faultsOf([demand]);
  expect(faults).toHaveLength(1);
  return faults[0] ?? "";
};

describe("demands that are refused", () => {
  it.each<[string, unknown, RegExp]>([
    [
      "an unknown component",
      { of: "protien", least: 1 },
      /malformed 0.of: .*"protien".*did you mean protein/,
    ],
    ["an unknown share", { energyShareOf: "fats", least: 0 }, /0.energyShareOf: .*did you mean fat/],
    ["no subject", { least: 1 }, /malformed 0: the demand does not say what it is about/],
    [
      "two subjects",
      { of: "energy", energyShareOf: "fat", least: 0 },
      /0.energyShareOf: both of and energyShareOf/,
    ],
    ["no amount", { of: "energy" }, /malformed 0: the demand does not say how much/],
    ["both exactly and least", { of: "energy", exactly: 1, least: 1 }, /0.least: both exactly and least/],
    ["both exactly and most", { of: "energy", exactly: 1, most: 1 }, /0.most: both exactly and most/],
    [
      "least above most",
      { of: "energy", least: 5, most: "4 kcal" },
      /0.most: least "5" is above most "4 kcal"/,
    ],
    ["not a number", { of: "energy", exactly: Number.NaN }, /0.exactly: NaN is not a finite number/],
    ["endless", { of: "energy", exactly: Number.POSITIVE_INFINITY }, /0.exactly: Infinity/],
    ["below 0", { of: "energy", exactly: -1 }, /0.exactly: "-1" is below 0/],
    ["below 0, with a unit", { of: "protein", most: "-3 g" }, /0.most: .*below 0/],
    [
      "the wrong kind of unit",
      { of: "energy", exactly: "60 g" },
      /0.exactly: "60 g" is not a figure in kcal/,
    ],
    ["an unknown unit", { of: "protein", exactly: "60 smidgens" }, /0.exactly: /],
    ["words", { of: "protein", exactly: "a lot" }, /0.exactly: /],
    [
      "words for energy",
      { of: "energy", exactly: "much" },
      /0.exactly: .*\(write a figure in kcal: "100 kcal"\)/,
    ],
    [
      "words for iodine",
      { of: "iodine", exactly: "some" },
      /0.exactly: .*\(write a figure in µg: "100 µg"\)/,
    ],
    [
      "words for a share",
      { energyShareOf: "fat", most: "much" },
      /0.most: .*\(write 0 to 1, or per cent: "25 %"\)/,
    ],
    ["words for a ratio", { ratioOf: ["omega6", "omega3"], most: "much" }, /0.most: .*\(write a number: 4\)/],
    ["nothing", { of: "protein", exactly: null }, /0.exactly: /],
    ["an object", { of: "protein", exactly: {} }, /0.exactly: /],
    ["a ratio with itself", { ratioOf: ["sodium", "sodium"], most: 1 }, /0.ratioOf: .*with itself/],
    ["a ratio of one", { ratioOf: ["sodium"], most: 1 }, /0.ratioOf: a list of 1 .*omega6/],
    [
      "a ratio of what is unknown",
      { ratioOf: ["sodium", "potasium"], most: 1 },
      /0.ratioOf.1: .*did you mean potassium/,
    ],
    ["a ratio with a unit", { ratioOf: ["sodium", "potassium"], most: "2 g" }, /0.most: /],
    ["a share above 1", { energyShareOf: "fat", most: 35 }, /0.most: "35" is not a share of a whole.*"25 %"/],
    ["a share above 100 %", { energyShareOf: "fat", most: "120 %" }, /0.most: "120 %" is not a share/],
    ["a share below 0", { energyShareOf: "fat", most: -0.1 }, /0.most: "-0.1" is not a share/],
    ["a share in grams", { energyShareOf: "fat", most: "20 g" }, /0.most: /],
    [
      "a misspelt field",
      { of: "energy", leest: 1, most: 2 },
      /0.leest: "leest" is not a field.*did you mean least/,
    ],
    ["firm in words", { of: "energy", most: 2, firm: "yes" }, /0.firm: expected true or false, got "yes"/],
    ["a text", "energy 650", /malformed 0: expected an object, got "energy 650"/],
    ["a list", [], /malformed 0: expected an object, got a list/],
    ["nothing at all", null, /malformed 0: expected an object, got null/],
    ["the prototype", { of: "__proto__", least: 1 }, /0.of: no component is called "__proto__"/],
    ["the constructor", { of: "constructor", least: 1 }, /0.of: no component is called "constructor"/],
    ["a component that is a list", { of: ["energy"], least: 1 }, /0.of: expected a component's id/],
  ])("%s", (_, demand, expected) => {
    expect(faultOf(demand)).toMatch(expected);
  });

  it("all at once, each where it stands", () => {
    const faults = faultsOf([
      { of: "enrgy", exactly: "1" },
      { of: "energy", exactly: 650 },
      { of: "protein", least: 9, most: "8 g", frim: true },
      { energyShareOf: "fat", least: "x", most: 2 },
    ]);
    expect(faults.map((fault) => fault.split(":")[0])).toEqual([
      "demand-malformed 0.of",
      "demand-malformed 2.frim",
      "demand-malformed 2.most",
      "demand-malformed 3.least",
      "demand-malformed 3.most",
    ]);
  });

  it("where they are no list, or a list beyond any person", () => {
    for (const demands of [undefined, null, { of: "energy", exactly: 1 }, "energy", 7]) {
      expect(faultsOf(demands)).toEqual([expect.stringMatching(/(missing|expected a list).*of: "energy"/)]);
    }
    const many = Array.from({ length: 100_000 }, () => ({ of: "energy", least: 1 }));
    expect(faultsOf(many)).toEqual([expect.stringMatching(/a list of 100000/)]);
  });

  it("with an answer or a SteelyardError, whatever is handed in", () => {
    const values = fc.oneof(
      fc.constantFrom("60 g", "1e400", "1/0", "=1+1", "<b>1</b>", "١٢", "20 %", "%", "", " ", "0x10"),
      fc.anything(),
      fc.double(),
    );
    const demand = fc.dictionary(
      fc.constantFrom("of", "energyShareOf", "ratioOf", "exactly", "least", "most", "firm", "__proto__"),
      fc.oneof(values, fc.constantFrom("energy", "protein", "mass", "fat", true)),
    );
    fc.assert(
      fc.property(fc.array(demand, { maxLength: 3 }), (demands) => {
        try {
          expect(["met", "out-of-reach"]).toContain(fit(s, demands as unknown as Demand[]).status);
        } catch (error) {
          if (!(error instanceof SteelyardError)) throw error;
          expect(error.code).toBe("demand-malformed");
        }
      }),
      { seed: 31, numRuns: runs(500) },
    );
  });
});

describe("figures huge and tiny", () => {
  it("are met exactly, or out of reach, in bounded time", () => {
    const huge = fit(s, [{ of: "energy", exactly: "1e300" }], { common: { most: "1e400" } });
    expect(huge.status).toBe("met");
    const far = fit(s, [
      { of: "energy", exactly: "1e-300" },
      { of: "protein", least: "1e300" },
    ]);
    expect(far.status).toBe("out-of-reach");
    if (far.status !== "met") expect(far.conflict.length).toBeGreaterThan(0);
  });
});

describe("options that are refused", () => {
  const demands = [{ of: "energy", exactly: 100 }];
  it.each<[string, unknown, RegExp]>([
    ["a misspelt one", { comon: {} }, /fit-malformed how.comon: .*did you mean common/],
    ["an empty range", { common: { least: 2, most: 1 } }, /how.common.most: least "2" is above most "1"/],
    ["a common factor of 0", { common: { least: 0 } }, /how.common.least: a common factor of 0/],
    ["a range below 0", { common: { most: -1 } }, /how.common.most: "-1" is below 0/],
    ["a range that is none", { common: 3 }, /how.common: expected an object, got 3 .*least, most/],
    ["an end that is none", { common: { lest: 1 } }, /how.common.lest: .*did you mean least/],
    ["not a number", { common: { most: "lots" } }, /how.common.most: /],
    ["an unknown part", { parts: { tpo: { most: 3 } } }, /how.parts.tpo: .*did you mean top/],
    ["a part's range", { parts: { top: { most: 0 } } }, /how.parts.top.most: a most of 0/],
    ["parts that are none", { parts: [] }, /how.parts: /],
    ["an unknown base", { base: "pot" }, /how.base: no sheet is called "pot"/],
    [
      "an unknown factor system",
      { system: "atwater" },
      /energy-system-unknown how.system: .*did you mean atwater/,
    ],
    ["steps", { pivots: 0 }, /how.pivots: expected a whole number of 1 or more, got 0/],
    ["tries", { tries: -1 }, /how.tries: expected a whole number of 0 or more, got -1/],
    ["a number", 7, /how: expected an object, got 7/],
  ])("%s", (_, how, expected) => {
    expect(faultsOf(demands, how).join()).toMatch(expected);
  });

  it("together with the demands' own faults", () => {
    expect(faultsOf([{ of: "x", least: 1 }], { pivots: 0.5 })).toHaveLength(2);
  });

  it("and sheets that are none", () => {
    for (const given of [undefined, null, {}, [], { pot: 3 }, "pot"]) {
      expect(errorOf(() => fit(given as unknown as Sheet, [])).code).toBe("fit-malformed");
    }
    expect(errorOf(() => fit({ pot: s, shot: {} as Sheet }, [])).path).toEqual(["shot"]);
  });

  it("but a sheet may have any name that data can have", () => {
    const named = (names: readonly string[]) => Object.fromEntries(names.map((name) => [name, s]));
    const refused = errorOf(() => fit(named(["__proto__", "pot"]), []));
    expect([refused.code, refused.path]).toEqual(["fit-malformed", ["__proto__"]]);
    const sheets = named(["valueOf", "constructor", "a/b"]);
    const fitted = fit(sheets, [{ of: "energy", exactly: 450 }]);
    if (fitted.status !== "met") throw new Error(fitted.text);
    expect(Object.keys(fitted.sheets).sort()).toEqual(["a/b", "constructor", "valueOf"]);
  });
});
