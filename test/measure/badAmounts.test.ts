import { describe, expect, it } from "vitest";
import { type AmountInput, type AmountOptions, amount } from "../../src/measure/amount.ts";
import type { ErrorCode } from "../../src/number/error.ts";
import { errorOf } from "../number/errorOf.ts";

type Bad = readonly [text: string, code: ErrorCode, hint: string, how?: AmountOptions];

const us: AmountOptions = { measures: "us" };
const onion: AmountOptions = { own: ["medium", "large", "slice, thin"] };

/** What is wrong, what it is called, and what the cook is told to write instead. */
const bad: readonly Bad[] = [
  // nothing, or nothing to read
  ["", "amount-empty", '"100 g"'],
  ["  \t\n ", "amount-empty", '"100 g"'],
  ["\u00a0", "amount-empty", '"100 g"'],
  ["salt", "amount-no-number", "begin with a figure"],
  ["g", "amount-no-number", "begin with a figure"],
  ["cup", "amount-no-number", "begin with a figure"],
  ["a cup", "amount-no-number", '"1/2 cup"'],
  ["half a cup", "amount-no-number", "in digits"],
  ["two eggs", "amount-no-number", "in digits"],
  ["one", "amount-no-number", "in digits"],
  ["NaN g", "amount-no-number", "begin with a figure"],
  ["Infinity g", "amount-no-number", "begin with a figure"],
  ["=1+1", "amount-no-number", "begin with a figure"],
  ["<b>1</b> g", "amount-no-number", "begin with a figure"],
  ["£2", "amount-no-number", "begin with a figure"],
  ["+5 g", "amount-no-number", "begin with a figure"],
  ["٣ g", "amount-no-number", "0 to 9"],
  ["３ g", "amount-no-number", "0 to 9"],
  ["1 us cup +", "amount-no-number", "leave out the last sign"],
  ["1 lb and", "amount-no-number", "leave out the last sign"],
  // no unit
  ["2", "amount-no-unit", '"2 g"'],
  ["1 1/2", "amount-no-unit", '"1 1/2 g"'],
  ["½", "amount-no-unit", '"1/2 g"'],
  ["1 lb 4", "amount-no-unit", '"4 g"'],
  // ambiguous figures
  ["1,000 g", "amount-ambiguous", "write 1000 or 1"],
  ["12,345 g", "amount-ambiguous", "write 12345 or 12.345"],
  ["1,000,000 g", "amount-ambiguous", "write 1000000"],
  ["1.000,5 g", "amount-ambiguous", "write 1000.5"],
  ["1,000.5 g", "amount-ambiguous", "write 1000.5"],
  ["1 000 g", "amount-ambiguous", "write 1000"],
  ["1'000 g", "amount-ambiguous", "one number"],
  ["1,5 g", "amount-ambiguous", "write 1.5", { decimal: "point" }],
  ["1.5 g", "amount-ambiguous", "write 1,5", { decimal: "comma" }],
  ["1-1/2 tsp", "amount-ambiguous", '"1 1/2" with a space', us],
  ["2–1/2 tsp", "amount-ambiguous", '"2 1/2" with a space', us],
  ["1 3/2 g", "amount-ambiguous", '"2.5"'],
  ["1 2/2 g", "amount-ambiguous", '"2"'],
  ["0 2/2 g", "amount-ambiguous", '"1"'],
  ["1 2 g", "amount-ambiguous", "one number"],
  ["1 1.5 g", "amount-ambiguous", "one number"],
  ["2 x 400 g", "amount-ambiguous", "what it comes to"],
  ["2×400 g", "amount-ambiguous", "what it comes to"],
  ["2x400 g", "amount-ambiguous", "what it comes to"],
  ["about 2 g", "amount-ambiguous", "the one figure"],
  ["~2 g", "amount-ambiguous", "the one figure"],
  ["up to 5 g", "amount-ambiguous", "the one figure"],
  ["< 5 g", "amount-ambiguous", "the one figure"],
  ["ca. 5 g", "amount-ambiguous", "the one figure"],
  // ambiguous units
  ["1 T", "amount-ambiguous", '"tbsp"', us],
  ["1 t", "amount-ambiguous", '"tsp"', us],
  ["1 t.", "amount-ambiguous", '"tsp"', us],
  ["5 Mg", "amount-ambiguous", '"mg"'],
  ["5 mj", "amount-ambiguous", '"MJ"'],
  ["650 calories", "amount-ambiguous", '"kcal"'],
  ["650 Cal", "amount-ambiguous", '"kcal"'],
  ["5 gr", "amount-ambiguous", '"g"'],
  ["1 ton", "amount-ambiguous", '"kg"'],
  ["1 spoonful", "amount-ambiguous", '"tbsp"', us],
  ["2 cups 3 cups", "amount-ambiguous", '"+"', us],
  // ranges
  ["2-3 g", "amount-range", "least and most"],
  ["2 - 3 g", "amount-range", "least and most"],
  ["2–3 g", "amount-range", "least and most"],
  ["2 to 3 g", "amount-range", "least and most"],
  ["2 or 3 g", "amount-range", "least and most"],
  ["2…3 g", "amount-range", "least and most"],
  ["2...3 g", "amount-range", "least and most"],
  ["1/2-3/4 g", "amount-range", "least and most"],
  ["1 1/2 - 2 g", "amount-range", "least and most"],
  ["5 g - 10 g", "amount-range", "least and most"],
  ["5 g to 10 g", "amount-range", "least and most"],
  ["5g-10g", "amount-range", "least and most"],
  // below nothing
  ["-5 g", "amount-negative", "0 or more"],
  ["- 5 g", "amount-negative", "0 or more"],
  ["−5 g", "amount-negative", "0 or more"],
  ["-½ g", "amount-negative", "0 or more"],
  // numbers that are none
  ["1/0 g", "number-zero-denominator", "above 0"],
  ["1 1/0 g", "number-zero-denominator", "above 0"],
  ["1/2/3 g", "number-malformed", "one fraction"],
  ["1/2.5 g", "number-malformed", "one fraction"],
  ["1.5/2 g", "number-malformed", "one fraction"],
  ["1.2.3 g", "number-malformed", "one point"],
  ["1. g", "number-malformed", "one point"],
  ["1,,5 g", "number-malformed", "one point"],
  ["½½ g", "number-malformed", "one fraction"],
  // units unknown
  ["1 blob", "amount-unknown-unit", "or give the food a measure"],
  ["2 gramz", "amount-unknown-unit", '"grams"'],
  ["1 tbspn", "amount-unknown-unit", '"tbsp"'],
  ["1 medum", "amount-unknown-unit", '"medium"', onion],
  ["1 wedge", "amount-unknown-unit", 'this food has "medium", "large", "slice, thin"', onion],
  ["2 tbsp olive oil", "amount-unknown-unit", 'the unit alone: "tbsp"', us],
  ["2 cups, chopped", "amount-unknown-unit", 'the unit alone: "cup"', us],
  ["1 can (400 g)", "amount-unknown-unit", "measure of that name"],
  ["2 medium onions", "amount-unknown-unit", "this food has", onion],
  ["5 %", "amount-unknown-unit", "write grams"],
  ["1 __proto__", "amount-unknown-unit", "write grams"],
  ["1 constructor", "amount-unknown-unit", "write grams"],
  ["1e308 g", "number-malformed", "no exponent"],
  ["2.5E-3 kg", "number-malformed", "no exponent"],
  ["20 °C", "amount-unknown-unit", "write"],
  // sizes that nobody published
  ["a pinch", "amount-no-size", '"1/8 tsp"'],
  ["1 pinch", "amount-no-size", '"1/8 tsp"'],
  ["to taste", "amount-no-size", '"0.5 g"'],
  ["salt to taste", "amount-no-size", '"0.5 g"'],
  ["1 handful", "amount-no-size", '"0.5 g"'],
  ["2 dashes", "amount-no-size", '"0.5 g"'],
  ["1 heaped tbsp", "amount-no-size", '"0.5 g"', us],
  ["1 scant cup", "amount-no-size", '"0.5 g"', us],
  ["a few", "amount-no-size", '"0.5 g"'],
  // whose spoon
  ["1 tbsp", "measures-needed", '"metric tbsp"'],
  ["1 c", "measures-needed", '"metric cup"'],
  ["1 pint", "measures-needed", '"us pint"'],
  ["1 fl oz", "measures-needed", '"us fl oz"', { measures: "metric" }],
  ["1 metric fl oz", "measures-needed", '"us fl oz"'],
  ["1 cup", "measures-needed", '"metric cup"', { measures: "imperial" }],
  ["1 us dessertspoon", "measures-needed", '"metric dessertspoon"'],
  ["1 lb 2 tbsp", "measures-needed", '"metric tbsp"'],
  // sums of unlike things
  ["1 cup + 20 g", "amount-mixed-kinds", "two lines", us],
  ["1 lb 4 fl oz", "amount-mixed-kinds", "two lines", us],
  ["1 medium + 1 large", "amount-mixed-kinds", "two lines", onion],
  ["1 kcal + 1 g", "amount-mixed-kinds", "two lines"],
  // hidden characters
  ["1\u200b g", "amount-malformed", "by hand"],
  ["1 g\u202e", "amount-malformed", "by hand"],
  ["1\u0000 g", "amount-malformed", "by hand"],
  ["\ud800 1 g", "amount-malformed", "by hand"],
];

describe("bad amounts", () => {
  it("are many", () => {
    expect(bad.length).toBeGreaterThan(60);
    expect(new Set(bad.map(([text, , , how]) => text + JSON.stringify(how))).size).toBe(bad.length);
  });

  const cases = bad.map(([text, code, hint, how]) => ({ text, code, hint, how }));
  it.each(cases)("$text: $code, and a hint with $hint", ({ text, code, hint, how }) => {
    const error = errorOf(() => amount(text, how));
    expect(error.code, error.message).toBe(code);
    expect(error.hint).toContain(hint);
  });

  it("shows the whole range", () => {
    expect(errorOf(() => amount("2-3 g")).message).toContain('"2-3 g"');
    expect(errorOf(() => amount("2 to 3 g")).message).toContain('"2 to 3 g"');
  });

  it("says both readings of 1,000 and of 1-1/2", () => {
    expect(errorOf(() => amount("1,000 g")).message).toContain('"1,000" could be 1000 or 1');
    const hyphen = errorOf(() => amount("1-1/2 tsp", us)).message;
    expect(hyphen).toContain("1 and 1/2, or 1 to 1/2");
  });

  it("names the sizes that a spoon has in each set", () => {
    expect(errorOf(() => amount("1 tbsp")).message).toContain(
      "14.79 ml (us), 15 ml (metric, us-label, imperial), 20 ml (australian)",
    );
    expect(errorOf(() => amount("1 pint", { measures: "australian" })).message).toContain(
      "the australian measures have no pint; one is 473.2 ml (us), 568.3 ml (imperial)",
    );
  });

  it("lists every fault of a compound amount at once", () => {
    const { faults } = errorOf(() => amount("1 blob + 2 tbsp + 3 g"));
    expect(faults.map((f) => f.code)).toEqual(["amount-unknown-unit", "measures-needed"]);
    const later = errorOf(() => amount("1 blob + 2-3 g")).faults.map((f) => f.code);
    expect(later).toEqual(["amount-unknown-unit", "amount-range"]);
  });
});

type BadData = readonly [
  label: string,
  input: unknown,
  codes: readonly ErrorCode[],
  paths: readonly string[],
];

const badData: readonly BadData[] = [
  ["null", null, ["amount-malformed"], [""]],
  ["undefined", undefined, ["amount-malformed"], [""]],
  ["a number", 5, ["amount-malformed"], [""]],
  ["true", true, ["amount-malformed"], [""]],
  ["nothing in it", {}, ["amount-no-number", "amount-no-unit"], ["value", "unit"]],
  ["a list", [], ["amount-no-number", "amount-no-unit"], ["value", "unit"]],
  ["no unit", { value: 1 }, ["amount-no-unit"], ["unit"]],
  ["a blank unit", { value: 1, unit: " " }, ["amount-no-unit"], ["unit"]],
  ["a unit that is no text", { value: 1, unit: 5 }, ["amount-no-unit"], ["unit"]],
  ["an unknown unit", { value: 1, unit: "blob" }, ["amount-unknown-unit"], ["unit"]],
  ["NaN", { value: Number.NaN, unit: "g" }, ["number-not-finite"], ["value"]],
  ["Infinity", { value: Number.POSITIVE_INFINITY, unit: "g" }, ["number-not-finite"], ["value"]],
  ["a negative value", { value: -1, unit: "g" }, ["amount-negative"], ["value"]],
  ["a negative text", { value: "-1", unit: "g" }, ["amount-negative"], ["value"]],
  ["a value with a unit", { value: "1 g", unit: "g" }, ["number-malformed"], ["value"]],
  ["a value that is a list", { value: [1], unit: "g" }, ["number-malformed"], ["value"]],
  ["a null value", { value: null, unit: "g" }, ["number-malformed"], ["value"]],
  ["a range", { value: "1-2", unit: "g" }, ["number-malformed"], ["value"]],
  ["200,001 digits", { value: "9".repeat(200_001), unit: "g" }, ["number-too-long"], ["value"]],
  ["a power too far", { value: "1e999999", unit: "g" }, ["number-too-long"], ["value"]],
  ["unknown measures", { value: 1, unit: "cup", measures: "uss" }, ["measures-unknown"], ["measures"]],
  [
    "a set without sizes",
    { value: 1, unit: "cup", measures: { name: "x" } },
    ["measures-malformed"],
    ["measures.ml"],
  ],
  ["no parts", { parts: [] }, ["amount-empty"], [""]],
  [
    "a bad part",
    {
      parts: [
        { value: 1, unit: "g" },
        { value: 2, unit: "blob" },
      ],
    },
    ["amount-unknown-unit"],
    ["parts.1.unit"],
  ],
  ["a null part", { parts: [null] }, ["amount-malformed"], ["parts.0"]],
  [
    "unlike parts",
    {
      parts: [
        { value: 1, unit: "g" },
        { value: 2, unit: "ml" },
      ],
    },
    ["amount-mixed-kinds"],
    [""],
  ],
  [
    "too many parts",
    { parts: Array.from({ length: 101 }, () => ({ value: 1, unit: "g" })) },
    ["amount-too-long"],
    ["parts"],
  ],
];

describe("bad amounts as data", () => {
  it.each(badData)("%s", (_, input, codes, paths) => {
    const error = errorOf(() => amount(input as AmountInput));
    expect(error.faults.map((f) => f.code)).toEqual(codes);
    expect(error.faults.map((f) => f.path.join("."))).toEqual(paths);
    for (const f of error.faults) expect(f.hint.length).toBeGreaterThan(5);
  });

  it("refuses a decimal mark that is none, and measures that are none", () => {
    expect(errorOf(() => amount("1 g", { decimal: "dot" as "point" })).code).toBe("format-malformed");
    const unknown = errorOf(() => amount("1 g", { measures: "metrik" as "metric" }));
    expect([unknown.code, unknown.hint]).toEqual(["measures-unknown", "did you mean metric?"]);
    expect(errorOf(() => amount("1 g", { measures: null as unknown as "us" })).code).toBe(
      "measures-malformed",
    );
  });
});

describe("hostile text", () => {
  const long: [string, string][] = [
    ["10,000 digits in two numbers", `${"9".repeat(10_000)} 1/2 ${"9".repeat(10_000)} g`],
    ["a megabyte of spaces", `1${" ".repeat(1_000_000)}g`],
    ["a megabyte of slashes", "1/".repeat(500_000)],
    ["100,000 lines", "1 g\n".repeat(100_000)],
    ["1,001 characters beside the number", `1 ${"g".repeat(1000)}`],
  ];
  it.each(long)("%s is refused by its length at once", (_, text) => {
    const began = performance.now();
    expect(errorOf(() => amount(text)).code).toBe("amount-too-long");
    expect(performance.now() - began).toBeLessThan(5_000);
  });

  /** Shapes that trap a backtracking pattern, as long as is read at all. */
  const traps = [
    "1 ".repeat(500),
    "1,".repeat(500),
    "1.000".repeat(200),
    "1,000".repeat(200),
    "1/1 ".repeat(250),
    "½".repeat(1000),
    `1${" -".repeat(499)}`,
    `1 ${"a ".repeat(499)}`,
    `1 ${"+ 1 ".repeat(249)}`,
    `1${" and".repeat(249)}`,
    "1 g + ".repeat(166),
    "1 g 1 lb ".repeat(111),
    `1 ${"(".repeat(998)}`,
    `1 ${"cup ".repeat(249)}`,
    `1${".".repeat(999)}`,
    `${"9".repeat(996)} g`,
    `1/${"9".repeat(990)} g`,
  ];
  it.each(traps.map((text) => [text.slice(0, 12), text]))("%j… ends soon", (_, text) => {
    const own = Array.from({ length: 200 }, (__, i) => `cup ${"cup ".repeat(i % 40)}${i}`);
    // The best of three: what backtracks is slow every time, a busy machine only now and then.
    const took = [1, 2, 3].map(() => {
      const began = performance.now();
      try {
        amount(text, { measures: "us", own });
      } catch (error) {
        expect(error).toHaveProperty("code");
      }
      return performance.now() - began;
    });
    expect(Math.min(...took)).toBeLessThan(5_000);
  });

  it("reads a number as long as is allowed exactly", () => {
    const digits = "9".repeat(990);
    expect(amount(`${digits} g`).value.n).toBe(BigInt(digits));
    expect(amount(`1/${digits} g`).value.d).toBe(BigInt(digits));
  });

  it("shows no control or direction characters of the text in its message", () => {
    const { message } = errorOf(() => amount("1 \u202egnp.exe\u0007"));
    expect(message).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  });
});
