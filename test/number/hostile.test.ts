import { Decimal } from "decimal.js";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decimalText, exactText } from "../../src/number/digits.ts";
import { type ErrorCode, SteelyardError } from "../../src/number/error.ts";
import { exact, fraction, isDecimal, over, type Value, ZERO } from "../../src/number/exact.ts";
import { toDecimal } from "../../src/number/toDecimal.ts";
import { runs } from "../runs.ts";
import { errorOf } from "./errorOf.ts";

/** What a caller without a compiler might hand in. */
const read = (value: unknown): unknown => exact(value as Value);

const refused: readonly [unknown, ErrorCode, RegExp][] = [
  [Number.NaN, "number-not-finite", /finite/],
  [Number.POSITIVE_INFINITY, "number-not-finite", /finite/],
  [Number.NEGATIVE_INFINITY, "number-not-finite", /finite/],
  [new Decimal("NaN"), "number-not-finite", /finite/],
  [new Decimal("-Infinity"), "number-not-finite", /finite/],
  ["", "number-malformed", /digits/],
  ["   ", "number-malformed", /digits/],
  [".", "number-malformed", /digits/],
  ["+", "number-malformed", /digits/],
  ["-", "number-malformed", /digits/],
  ["e5", "number-malformed", /digits/],
  ["1e", "number-malformed", /digits/],
  ["--1", "number-malformed", /digits/],
  ["1-", "number-malformed", /digits/],
  ["1.2.3", "number-malformed", /point/],
  ["1,5", "number-malformed", /point/],
  ["1 000", "number-malformed", /digits/],
  ["1_000", "number-malformed", /digits/],
  ["0x10", "number-malformed", /digits/],
  ["0b11", "number-malformed", /digits/],
  ["10n", "number-malformed", /digits/],
  ["NaN", "number-malformed", /digits/],
  ["Infinity", "number-malformed", /digits/],
  ["ten", "number-malformed", /digits/],
  ["١٢", "number-malformed", /digits/],
  ["１２", "number-malformed", /digits/],
  ["½", "number-malformed", /digits/],
  ["−5", "number-malformed", /digits/], // a minus sign, not a hyphen
  ["1\u202e2", "number-malformed", /digits/],
  ["1\u00002", "number-malformed", /digits/],
  ["=1+1", "number-malformed", /digits/],
  ["<b>1</b>", "number-malformed", /digits/],
  ["__proto__", "number-malformed", /digits/],
  ["constructor", "number-malformed", /digits/],
  ["1/", "number-malformed", /digits/],
  ["/2", "number-malformed", /digits/],
  ["1/2/3", "number-malformed", /digits/],
  ["1/-2", "number-malformed", /digits/],
  ["1.5/2", "number-malformed", /digits/],
  ["1/0", "number-zero-denominator", /above 0/],
  ["0/0", "number-zero-denominator", /above 0/],
  ["1e401", "number-too-long", /unit/],
  ["1e-401", "number-too-long", /unit/],
  ["1e999999999999", "number-too-long", /unit/],
  [`1e${"9".repeat(500)}`, "number-too-long", /unit/],
  [new Decimal("1e100000"), "number-too-long", /unit/],
  ["9".repeat(200_001), "number-too-long", /at most/],
  [`0.${"0".repeat(200_000)}1`, "number-too-long", /at most/],
  [`1/${"9".repeat(200_000)}`, "number-too-long", /at most/],
  [undefined, "number-malformed", /give a number/],
  [null, "number-malformed", /give a number/],
  [true, "number-malformed", /give a number/],
  [Symbol("1"), "number-malformed", /give a number/],
  [() => 1, "number-malformed", /give a number/],
  [{}, "number-malformed", /give a number/],
  [[], "number-malformed", /give a number/],
  [[1], "number-malformed", /give a number/],
  [new String("1"), "number-malformed", /give a number/],
  [Object.create(null), "number-malformed", /give a number/],
  [{ n: 1n, d: 0n }, "number-zero-denominator", /above 0/],
  [{ n: 1, d: 2 }, "number-malformed", /give a number/],
  [{ n: 1n, d: 2 }, "number-malformed", /give a number/],
  [Object.create({ n: 1n, d: 2n }), "number-malformed", /give a number/],
  [{ valueOf: () => 1, toString: () => "1" }, "number-malformed", /give a number/],
  [{ toStringTag: "[object Decimal]" }, "number-malformed", /give a number/],
  [JSON.parse('{"__proto__": 1}'), "number-malformed", /give a number/],
];

describe("a bad number", () => {
  it.each(refused)("%# %o is refused with %s and a way out", (value, code, hint) => {
    const error = errorOf(() => read(value));
    expect(error.code).toBe(code);
    expect(error.hint).toMatch(hint);
    expect(error.faults).toHaveLength(1);
    expect(error.message.length).toBeLessThan(400);
  });

  it("is refused or read, and never anything else, whatever the text", () => {
    const texts = fc.oneof(
      fc.string({ unit: "binary", maxLength: 40 }),
      fc.string({ unit: fc.constantFrom(..."0123456789.,/eE+-_ x\u0661\u202e"), maxLength: 12 }),
    );
    fc.assert(
      fc.property(texts, (text) => {
        try {
          expect(exact(exactText(exact(text)))).toEqual(exact(text));
        } catch (error) {
          expect(error).toBeInstanceOf(SteelyardError);
        }
      }),
      { numRuns: runs(2000) },
    );
  });

  it("is refused or read, whatever the value", () => {
    fc.assert(
      fc.property(fc.anything({ withBigInt: true, withNullPrototype: true, withDate: true }), (value) => {
        try {
          expect(read(value)).toHaveProperty("n");
        } catch (error) {
          expect(error).toBeInstanceOf(SteelyardError);
        }
      }),
      { numRuns: runs(1000) },
    );
  });
});

describe("a number at the edge", () => {
  it("is read exactly however large or small a double is", () => {
    expect(exact(1e308)).toEqual(fraction(10n ** 308n));
    expect(exact(Number.MAX_VALUE).d).toBe(1n);
    expect(exact(Number.MIN_VALUE)).toEqual(fraction(5n, 10n ** 324n));
    expect(exact(-0)).toEqual(ZERO);
    expect(toDecimal(exact("1e400")).toString()).toBe("1e+400");
  });

  it("ignores white space at its ends only", () => {
    expect(exact("\t 12 \n")).toEqual(fraction(12n));
    expect(errorOf(() => exact("1\t2")).code).toBe("number-malformed");
  });

  it("is refused over zero", () => {
    expect(errorOf(() => fraction(1n, 0n)).code).toBe("number-zero-denominator");
    expect(errorOf(() => over(fraction(1n), ZERO)).code).toBe("number-zero-denominator");
  });
});

describe("a Decimal", () => {
  it("is known by its making, not by its tag", () => {
    expect(isDecimal(new Decimal(1))).toBe(true);
    expect(isDecimal(new (Decimal.clone({ precision: 3 }))(1))).toBe(true);
    for (const other of [1, "1", null, undefined, {}, { toStringTag: "[object Decimal]" }]) {
      expect(isDecimal(other)).toBe(false);
    }
  });
});

describe("time is bounded", () => {
  const quickly = (step: () => unknown): void => {
    const start = performance.now();
    step();
    expect(performance.now() - start).toBeLessThan(10_000); // a busy machine is slow; what grows with the square takes hours
  };

  it("for the longest text refused and the longest read", () => {
    quickly(() => errorOf(() => exact("9".repeat(5_000_000))));
    quickly(() => errorOf(() => exact(`${" ".repeat(5_000_000)}x`)));
    quickly(() => errorOf(() => exact(`1${" ".repeat(900)}x`)));
    quickly(() => toDecimal(exact(`1.${"7".repeat(199_990)}e400`)));
    quickly(() => exactText(exact(`${"9".repeat(99_999)}/${"7".repeat(99_999)}`)));
    quickly(() => decimalText(exact(`1/5${"0".repeat(199_990)}`)));
  });

  it("for a hundred thousand small ones", () => {
    quickly(() => {
      for (let i = 0; i < 100_000; i++) exact("12.5");
    });
  });
});
