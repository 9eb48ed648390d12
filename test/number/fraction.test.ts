import { Decimal } from "decimal.js";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decimalText, exactText, fixedText } from "../../src/number/digits.ts";
import {
  absolute,
  type Exact,
  equals,
  exact,
  fraction,
  greatest,
  isZero,
  least,
  minus,
  negate,
  ONE,
  over,
  plus,
  sum,
  times,
  toStep,
  ZERO,
} from "../../src/number/exact.ts";
import { gcd } from "../../src/number/gcd.ts";
import { ceiling, compareRatios, floor, lcm, magnitude, nearest } from "../../src/number/ratio.ts";
import { FACE_DIGITS, ratioToDecimal, toDecimal } from "../../src/number/toDecimal.ts";
import { runs } from "../runs.ts";
import { anyFraction, nonZero } from "./arbitraries.ts";

// The independent method for digits: decimal.js, whose division is correctly rounded to `precision`.
const Faced = Decimal.clone({ precision: FACE_DIGITS, rounding: Decimal.ROUND_HALF_UP, toExpPos: 9e15 });
const Precise = Decimal.clone({ precision: 400, rounding: Decimal.ROUND_HALF_UP });

const precisely = (a: Exact): Decimal => new Precise(a.n.toString()).div(a.d.toString());
const inLowestTerms = (a: Exact): boolean => a.d > 0n && gcd(absolute(a).n, a.d) === 1n;

describe("fractions form a field", () => {
  it("adds and multiplies in any order and grouping", () => {
    fc.assert(
      fc.property(anyFraction, anyFraction, anyFraction, (a, b, c) => {
        expect(plus(a, b)).toEqual(plus(b, a));
        expect(times(a, b)).toEqual(times(b, a));
        expect(plus(plus(a, b), c)).toEqual(plus(a, plus(b, c)));
        expect(times(times(a, b), c)).toEqual(times(a, times(b, c)));
        expect(times(a, plus(b, c))).toEqual(plus(times(a, b), times(a, c)));
        expect(sum([a, b, c])).toEqual(sum([c, a, b]));
      }),
    );
  });

  it("has a zero, a one, and an inverse for every operation", () => {
    fc.assert(
      fc.property(anyFraction, nonZero, (a, b) => {
        expect(plus(a, ZERO)).toEqual(a);
        expect(times(a, ONE)).toEqual(a);
        expect(minus(plus(a, b), b)).toEqual(a);
        expect(times(over(a, b), b)).toEqual(a);
        expect(over(b, b)).toEqual(ONE);
        expect(plus(a, negate(a))).toEqual(ZERO);
      }),
    );
  });

  it("keeps lowest terms with the sign above, so that equal values are equal data", () => {
    fc.assert(
      fc.property(anyFraction, nonZero, fc.bigInt(-1000n, 1000n), (a, b, k) => {
        for (const each of [plus(a, b), minus(a, b), times(a, b), over(a, b), negate(a), absolute(a)]) {
          expect(inLowestTerms(each)).toBe(true);
        }
        fc.pre(k !== 0n);
        expect(fraction(a.n * k, a.d * k)).toEqual(a);
      }),
    );
  });

  it("never changes what it was given", () => {
    const a = Object.freeze(fraction(2n, 3n));
    const b = Object.freeze(fraction(-5n, 7n));
    expect([plus(a, b), times(a, b), over(a, b), toStep(a, absolute(b))]).toHaveLength(4);
    expect([a, b]).toEqual([
      { n: 2n, d: 3n },
      { n: -5n, d: 7n },
    ]);
  });
});

describe("order", () => {
  it("agrees with decimal.js and with subtraction", () => {
    fc.assert(
      fc.property(anyFraction, anyFraction, (a, b) => {
        const difference = minus(a, b).n;
        expect(compareRatios(a, b)).toBe(difference < 0n ? -1 : difference > 0n ? 1 : 0);
        expect(compareRatios(a, b)).toBe(precisely(a).comparedTo(precisely(b)));
        expect(compareRatios(b, a)).toBe(compareRatios(a, b) === 0 ? 0 : -compareRatios(a, b));
        expect(equals(a, b)).toBe(compareRatios(a, b) === 0);
        expect(isZero(a)).toBe(equals(a, ZERO));
        expect(compareRatios(least(a, b), greatest(a, b))).toBeLessThanOrEqual(0);
        expect(sum([least(a, b), greatest(a, b)])).toEqual(plus(a, b));
      }),
    );
  });
});

describe("text", () => {
  it("reads back exactly what it wrote", () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        expect(exact(exactText(a))).toEqual(a);
      }),
    );
  });

  it("writes decimals where they end, and only there", () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        let rest = a.d;
        for (const p of [2n, 5n]) while (rest % p === 0n) rest /= p;
        expect(decimalText(a) !== undefined).toBe(rest === 1n);
        if (rest === 1n) expect(exact(new Precise(decimalText(a) ?? ""))).toEqual(a);
      }),
    );
  });

  it.each([
    ["3", "3"],
    ["0.250", "0.25"],
    ["2/6", "1/3"],
    ["-10/4", "-2.5"],
    ["1.5e2", "150"],
    ["+.5", "0.5"],
    ["5.", "5"],
    ["-0", "0"],
    ["  7/21 ", "1/3"],
    ["1e-7", "0.0000001"],
  ])("reads %j as %s", (written, shown) => {
    expect(exactText(exact(written))).toBe(shown);
  });

  it("takes a number for its shortest decimal text, not for the binary fraction beside it", () => {
    expect(exact(0.1)).toEqual({ n: 1n, d: 10n });
    expect(plus(exact(0.1), exact(0.2))).toEqual(exact(0.3));
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (x) => {
        const read = exact(x);
        expect(read).toEqual(exact(String(x)));
        expect(precisely(read).toNumber()).toBe(x + 0); // + 0: a zero without its sign
      }),
    );
  });

  it("takes numbers, bigints, text and Decimals of any copy of decimal.js alike", () => {
    const Other = Decimal.clone({ precision: 5, toExpNeg: 0, toExpPos: 0 });
    fc.assert(
      fc.property(fc.bigInt(-(10n ** 15n), 10n ** 15n), fc.nat(20), (n, places) => {
        const a = fraction(n, 10n ** BigInt(places));
        const written = `${n}e-${places}`;
        expect(exact(written)).toEqual(a);
        expect(exact(new Decimal(written))).toEqual(a);
        expect(exact(new Other(written))).toEqual(a);
        expect(exact(n)).toEqual(exact(String(n)));
        expect(exact(Number(n))).toEqual(exact(n));
      }),
    );
  });
});

describe("the decimal face", () => {
  it("is the correctly rounded decimal of 34 digits, by decimal.js", () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        const expected =
          a.d === 1n ? new Precise(a.n.toString()) : new Faced(a.n.toString()).div(a.d.toString());
        expect(toDecimal(a).toFixed()).toBe(expected.toFixed());
      }),
      { numRuns: runs(1000) },
    );
  });

  it("is exact wherever 34 digits hold the value", () => {
    fc.assert(
      fc.property(fc.bigInt(-(10n ** 34n) + 1n, 10n ** 34n - 1n), fc.nat(60), (n, places) => {
        const a = fraction(n, 10n ** BigInt(places));
        expect(exact(toDecimal(a))).toEqual(a);
      }),
    );
  });

  it("is the same for a ratio not in lowest terms, whatever ratio was asked for before", () => {
    const ratio = fc.tuple(
      fc.bigInt(-(10n ** 45n), 10n ** 45n),
      fc.oneof(
        fc.bigInt(1n, 10n ** 20n),
        fc.nat(40).map((places) => 10n ** BigInt(places)),
        fc.constantFrom(1n, 8n, 125n, 3n),
      ),
    );
    fc.assert(
      fc.property(fc.array(ratio, { minLength: 1, maxLength: 4 }), (ratios) => {
        for (const [n, d] of [...ratios, ...ratios]) {
          expect(ratioToDecimal(n, d).toFixed()).toBe(toDecimal(fraction(n, d)).toFixed());
        }
      }),
      { numRuns: runs(1000) },
    );
    const long = 12345678901234567890123456789012345n; // one digit more than are shown
    expect(ratioToDecimal(long, 10n).toFixed()).toBe("1234567890123456789012345678901235");
    expect(ratioToDecimal(3n, -4n).toFixed()).toBe("-0.75");
    // What neither 2 nor 5 divides in the denominator may go into the numerator.
    expect(ratioToDecimal(-63n, 70n).toFixed()).toBe("-0.9");
    expect(ratioToDecimal(0n, 7n).toFixed()).toBe("0");
    expect(() => ratioToDecimal(1n, 0n)).toThrow(
      expect.objectContaining({ code: "number-zero-denominator" }),
    );
  });

  it("carries where rounding adds a digit", () => {
    const nines = fraction(10n ** 40n - 1n, 10n ** 39n);
    expect(toDecimal(nines).toFixed()).toBe("10");
    expect(toDecimal(negate(nines)).toFixed()).toBe("-10");
  });

  it("rounds a half in the last place away from zero", () => {
    const half = fraction(2n * 10n ** 33n + 1n, 2n * 10n ** 33n); // 1.000…0005 at the 34th decimal
    expect(toDecimal(half).toFixed()).toBe("1.000000000000000000000000000000001");
    expect(toDecimal(negate(half)).toFixed()).toBe("-1.000000000000000000000000000000001");
  });

  it("does not heed how a caller has set decimal.js up", () => {
    const before = { precision: Decimal.precision, rounding: Decimal.rounding };
    try {
      Decimal.set({ precision: 3, rounding: Decimal.ROUND_DOWN });
      expect(toDecimal(fraction(2n, 3n)).toFixed()).toBe(`0.${"6".repeat(33)}7`);
    } finally {
      Decimal.set(before);
    }
  });
});

describe("rounding", () => {
  it("brackets the value between floor and ceiling, one apart unless it is whole", () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        expect(floor(a)).toBe(BigInt(precisely(a).floor().toFixed()));
        expect(ceiling(a)).toBe(BigInt(precisely(a).ceil().toFixed()));
        expect(ceiling(a) - floor(a)).toBe(a.d === 1n ? 0n : 1n);
      }),
    );
  });

  it("takes the nearest whole number, a half away from zero", () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        expect(nearest(a)).toBe(BigInt(precisely(a).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toFixed()));
        expect(nearest(negate(a))).toBe(-nearest(a));
      }),
    );
    expect([1n, 3n, 5n, -1n, -3n].map((n) => nearest(fraction(n, 2n)))).toEqual([1n, 2n, 3n, -1n, -2n]);
  });

  it("lands on the step nearest the value", () => {
    fc.assert(
      fc.property(anyFraction, nonZero.map(absolute), (a, step) => {
        const stepped = toStep(a, step);
        expect(over(stepped, step).d).toBe(1n);
        expect(compareRatios(absolute(minus(a, stepped)), over(step, fraction(2n)))).toBeLessThanOrEqual(0);
        expect(toStep(stepped, step)).toEqual(stepped);
      }),
    );
    expect(exactText(toStep(exact("0.375"), exact("0.25")))).toBe("0.5");
  });

  it("writes as many places as asked, by decimal.js", () => {
    fc.assert(
      fc.property(anyFraction, fc.integer({ min: 0, max: 40 }), (a, places) => {
        const written = fixedText(a, places);
        expect(written.replace(/^-(?=[0.]+$)/, "")).toBe(written); // zero bears no sign
        expect(written).toBe(
          precisely(a)
            .toFixed(places, Decimal.ROUND_HALF_UP)
            .replace(/^-(?=[0.]+$)/, ""),
        );
      }),
    );
  });

  it("rounds to tens and hundreds with places below zero", () => {
    expect(fixedText(exact("1250"), -2)).toBe("1300");
    expect(fixedText(exact("-1249.9"), -2)).toBe("-1200");
    expect(fixedText(exact("4"), -1)).toBe("0");
  });
});

describe("magnitude", () => {
  it("is the exponent of the first significant digit, by decimal.js", () => {
    fc.assert(
      fc.property(nonZero, (a) => {
        expect(magnitude(a)).toBe(precisely(a).e);
      }),
    );
    expect(
      [exact("0"), exact("1"), exact("9.99"), exact("10"), exact("0.1"), exact("-0.099")].map(magnitude),
    ).toEqual([0, 0, 0, 1, -1, -2]);
  });
});

describe("gcd and lcm", () => {
  it("divide and multiply as they should", () => {
    const positive = fc.bigInt(1n, 10n ** 18n);
    fc.assert(
      fc.property(positive, positive, (a, b) => {
        const g = gcd(a, b);
        expect([a % g, b % g]).toEqual([0n, 0n]);
        expect(gcd(a / g, b / g)).toBe(1n);
        expect(lcm(a, b) * g).toBe(a * b);
      }),
    );
  });
});
