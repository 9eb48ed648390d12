/** Exact numbers, held to bigint fractions worked by hand and to decimal.js at 400 digits. */

import { inspect } from "node:util";
import { Decimal } from "decimal.js";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Exact, exact, fraction, isDecimal, type Value } from "../../src/number/exact.ts";
import { toDecimal } from "../../src/number/toDecimal.ts";
import { runs } from "../runs.ts";
import { anyFraction, nonZero } from "./arbitraries.ts";
import { errorOf } from "./errorOf.ts";

const Precise = Decimal.clone({
  precision: 400,
  rounding: Decimal.ROUND_HALF_UP,
  toExpNeg: -9e15,
  toExpPos: 9e15,
});
const precisely = (a: Exact): Decimal => new Precise(a.n.toString()).div(a.d.toString());
/** Zero bears no sign with us. */
const unsigned = (text: string): string => text.replace(/^-(?=[0.]+$)/, "");

describe("arithmetic", () => {
  it("is that of fractions by hand", () => {
    fc.assert(
      fc.property(anyFraction, nonZero, (a, b) => {
        const cross = (made: Exact, n: bigint, d: bigint): void => expect(made.n * d).toBe(n * made.d);
        cross(a.plus(b), a.n * b.d + b.n * a.d, a.d * b.d);
        cross(a.minus(b), a.n * b.d - b.n * a.d, a.d * b.d);
        cross(a.times(b), a.n * b.n, a.d * b.d);
        cross(a.div(b), a.n * b.d, a.d * b.n);
        cross(a.neg(), -a.n, a.d);
        cross(a.abs(), a.n < 0n ? -a.n : a.n, a.d);
      }),
    );
  });

  it("is that of decimal.js to 300 digits", () => {
    fc.assert(
      fc.property(anyFraction, nonZero, (a, b) => {
        const [x, y] = [precisely(a), precisely(b)];
        const near = (made: Exact, by: Decimal): void => {
          const off = precisely(made).minus(by).abs();
          expect(off.lte(x.abs().plus(y.abs()).plus(by.abs()).times("1e-300"))).toBe(true);
        };
        near(a.plus(b), x.plus(y));
        near(a.minus(b), x.minus(y));
        near(a.times(b), x.times(y));
        near(a.div(b), x.div(y));
      }),
    );
  });

  it("keeps the laws that floats and decimals break", () => {
    expect(exact("1/3").times(3).eq(1)).toBe(true);
    expect(exact(1).div(3).times(3).toJSON()).toBe("1");
    expect(exact(0.1).plus(0.2).eq(0.3)).toBe(true);
    fc.assert(
      fc.property(anyFraction, nonZero, anyFraction, (a, b, c) => {
        expect(a.div(b).times(b).eq(a)).toBe(true);
        expect(a.plus(b).minus(b).eq(a)).toBe(true);
        expect(a.times(b.plus(c)).eq(a.times(b).plus(a.times(c)))).toBe(true);
      }),
    );
  });

  it("takes whatever an input takes", () => {
    const half = exact("1/2");
    const same: readonly Value[] = [
      "0.5",
      "1/2",
      " 5e-1 ",
      0.5,
      half,
      new Decimal("0.5"),
      structuredClone(half),
    ];
    for (const other of same) {
      expect([half.plus(other).toJSON(), half.times(other).toJSON(), half.div(other).toJSON()]).toEqual([
        "1",
        "0.25",
        "1",
      ]);
      expect([half.eq(other), half.lt(other), half.lte(other), half.gt(other), half.gte(other)]).toEqual([
        true,
        false,
        true,
        false,
        true,
      ]);
      expect(half.minus(other).isZero()).toBe(true);
    }
    expect(errorOf(() => half.plus("half")).code).toBe("number-malformed");
    expect(errorOf(() => half.div(0)).code).toBe("number-zero-denominator");
  });

  it("compares as decimal.js does", () => {
    fc.assert(
      fc.property(anyFraction, anyFraction, (a, b) => {
        const [x, y] = [precisely(a), precisely(b)];
        expect(a.comparedTo(b)).toBe(x.comparedTo(y));
        expect([a.eq(b), a.lt(b), a.lte(b), a.gt(b), a.gte(b)]).toEqual([
          x.eq(y),
          x.lt(y),
          x.lte(y),
          x.gt(y),
          x.gte(y),
        ]);
        expect(a.isZero()).toBe(x.isZero());
      }),
    );
  });
});

describe("rounding", () => {
  it("to decimals and to significant digits is that of decimal.js, a half away from zero", () => {
    fc.assert(
      fc.property(anyFraction, fc.nat(40), fc.integer({ min: 1, max: 40 }), (a, places, digits) => {
        const x = precisely(a);
        expect(a.toFixed(places)).toBe(unsigned(x.toFixed(places)));
        expect(a.toDecimalPlaces(places).eq(x.toDecimalPlaces(places))).toBe(true);
        expect(a.toSignificantDigits(digits).eq(x.toSignificantDigits(digits))).toBe(true);
      }),
      { numRuns: runs(500) },
    );
    expect([exact("2.5").toFixed(0), exact("-2.5").toFixed(0), exact("0.005").toFixed(2)]).toEqual([
      "3",
      "-3",
      "0.01",
    ]);
    expect([exact(1250).toSignificantDigits(2), exact("9.96").toSignificantDigits(2)].map(String)).toEqual([
      "1300",
      "10",
    ]);
    expect([exact("0.250").toFixed(), exact("1/3").toFixed()]).toEqual(["0.25", `${exact("1/3")}`]);
  });

  it.each([-1, 1.5, 401, Number.NaN, Number.POSITIVE_INFINITY, "2", null])("refuses %s places", (count) => {
    for (const name of ["toFixed", "toDecimalPlaces", "toSignificantDigits"] as const) {
      const error = errorOf(() => exact(1)[name](count as number));
      expect([error.code, error.hint]).toEqual(["number-malformed", expect.stringMatching(/whole number/)]);
    }
    expect(errorOf(() => exact(1).toSignificantDigits(0)).code).toBe("number-malformed");
  });
});

describe("as a float", () => {
  it("is the double it was made of, whatever double", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (x) => {
        expect(exact(x).toNumber()).toBe(x + 0); // + 0: a zero without its sign
      }),
      { numRuns: runs(2000) },
    );
    const edges = [Number.MAX_VALUE, Number.MIN_VALUE, 2 ** -1022, 1e21, 2 ** 53, 2 ** 53 + 2, 0.1];
    for (const x of edges) expect([exact(x).toNumber(), exact(-x).toNumber()]).toEqual([x, -x]);
    expect(exact("1e400").toNumber()).toBe(Number.POSITIVE_INFINITY);
  });

  it("is the nearest double, by the engine's own reading of 400 digits", () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        expect(a.toNumber()).toBe(Number(precisely(a).toFixed()) + 0);
      }),
      { numRuns: runs(1000) },
    );
  });

  it("goes to the even one of two as near, and off it by a hair", () => {
    // 2^53 + 1 lies between two doubles: IEEE 754-2019, 4.3.1, roundTiesToEven.
    const tie = 2n ** 53n + 1n;
    const hair = 10n ** 60n;
    expect(fraction(tie).toNumber()).toBe(2 ** 53);
    expect(fraction(tie * hair + 1n, hair).toNumber()).toBe(2 ** 53 + 2);
    expect(fraction(tie * hair - 1n, hair).toNumber()).toBe(2 ** 53);
    expect(fraction(tie + 2n).toNumber()).toBe(2 ** 53 + 4);
  });
});

describe("text", () => {
  // The independent method: decimal.js, rounded once to 20 digits from 400.
  it("for reading is exact where it ends within 20 significant digits, else rounded to those", () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        expect(a.toString()).toBe(precisely(a).toSignificantDigits(20).toString());
        if (precisely(a).precision() <= 20) expect(exact(String(a)).eq(a)).toBe(true);
      }),
      { numRuns: runs(1000) },
    );
    expect(
      ["1/3", "2/3", "-1/7", "0.25", "100", "1e19", "12345678901234567890123", "0"].map(
        (text) => `${exact(text)}`,
      ),
    ).toEqual([
      "0.33333333333333333333",
      "0.66666666666666666667",
      "-0.14285714285714285714",
      "0.25",
      "100",
      "10000000000000000000",
      "12345678901234567890000",
      "0",
    ]);
    // Rounded up to a whole one: no zeros are left at its end.
    expect(String(fraction(10n ** 30n - 1n, 10n ** 30n))).toBe("1");
    expect(String(fraction(10n ** 30n + 1n, 10n ** 30n))).toBe("1");
    expect(String(fraction(10n ** 40n - 1n))).toBe(String(10n ** 40n));
  });

  it("in JSON is exact, and every input takes it back", () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        const back: Value = JSON.parse(JSON.stringify(a));
        expect(exact(back)).toEqual(a);
        expect(exact(structuredClone(a))).toEqual(a);
        expect(exact(toDecimal(a)).minus(a).abs().lte(a.abs().times("1e-33"))).toBe(true);
      }),
    );
    expect(JSON.stringify({ third: exact("1/3"), quarter: exact("1/4"), ten: exact(10) })).toBe(
      '{"third":"1/3","quarter":"0.25","ten":"10"}',
    );
  });

  it("in a console reads", () => {
    expect(inspect({ a: exact("0.25"), b: [exact("1/3")] })).toBe(
      "{ a: 0.25, b: [ 0.33333333333333333333 ] }",
    );
  });
});

describe("where the language turns it into something else", () => {
  const a = exact("1/4");
  const b = exact("1/3");

  it("reads as text and counts as a double", () => {
    expect(`${a}`).toBe("0.25");
    expect([a, b].join(" ")).toBe("0.25 0.33333333333333333333");
    expect(Number(b)).toBe(1 / 3);
    expect(a < b && b > a && a <= b).toBe(true);
    expect(Math.max(Number(a), Number(b))).toBe(1 / 3);
    expect(new Intl.NumberFormat("en-GB").format(a as unknown as number)).toBe("0.25");
    expect([b, a].sort((x, y) => x.comparedTo(y)).map(String)).toEqual(["0.25", "0.33333333333333333333"]);
  });

  it("refuses + and ==, and names plus and eq", () => {
    const wrong: readonly (() => unknown)[] = [
      () => (a as unknown as number) + (b as unknown as number),
      () => (a as unknown as number) + 1,
      () => ["about "].reduce((text) => text + a, ""),
      // biome-ignore lint/suspicious/noDoubleEquals: what is tested
      () => (a as unknown as number) == 0.25,
    ];
    for (const step of wrong) {
      const error = errorOf(step);
      expect(error.code).toBe("number-operator");
      expect(error.hint).toMatch(/plus/);
      expect(error.hint).toMatch(/eq/);
    }
  });
});

describe("a number of another copy", () => {
  it("is read by what it holds", () => {
    class Exactly {
      readonly n = 2n;
      readonly d = 6n;
    }
    expect(exact(new Exactly() as Exact).toJSON()).toBe("1/3");
    expect(exact({ n: 2n, d: -6n }).toJSON()).toBe("-1/3");
    expect(exact(structuredClone(exact("5/6"))).toJSON()).toBe("5/6");
    expect(exact(exact("5/6"))).toBeInstanceOf(Exact);
  });

  it("is a Decimal by its tag and shape, whichever copy of decimal.js made it", () => {
    const made = [Decimal, Decimal.clone({ precision: 3, defaults: true })].map((D) => new D("12.5"));
    // As another copy has it: its own prototype, nothing shared.
    const foreign: unknown = Object.assign(
      Object.create({ toStringTag: "[object Decimal]", toString: () => "12.5" }),
      { s: 1, e: 1, d: [12, 5000000] },
    );
    for (const each of [...made, foreign]) {
      expect(isDecimal(each)).toBe(true);
      expect(exact(each as Decimal).toJSON()).toBe("12.5");
    }
    for (const other of [
      { toStringTag: "[object Decimal]" },
      Object.create({ toStringTag: "[object Decimal]" }),
      null,
      "1",
      1,
    ]) {
      expect(isDecimal(other)).toBe(false);
    }
  });
});
