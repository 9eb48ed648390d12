import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact, fraction } from "../../src/number/exact.ts";
import { toFloat } from "../../src/number/ratio.ts";
import { runs } from "../runs.ts";

describe("a number below the least normal double (IEEE 754-2019, 3.3)", () => {
  it("is the double that its text is, by the language's own reader", () => {
    expect(toFloat(exact("-3.5567098715359e-309"))).toBe(-3.5567098715359e-309);
    fc.assert(
      fc.property(fc.bigInt(1n, 10n ** 17n), fc.integer({ min: 290, max: 345 }), (digits, power) => {
        const text = `${digits}e-${power}`;
        expect(toFloat(exact(text))).toBe(Number(text));
      }),
      { numRuns: runs(3000) },
    );
  });

  it("goes to the even one of two equally near, and to nothing below half of the least", () => {
    const step = fraction(1n, 2n ** 1074n);
    const of = (halves: bigint): number => toFloat(fraction(halves, 2n ** 1075n));
    expect([of(1n), of(2n), of(3n), of(5n)]).toEqual([0, 5e-324, 1e-323, 1e-323]);
    expect(toFloat(step)).toBe(Number.MIN_VALUE);
  });
});
