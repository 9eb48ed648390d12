import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactText } from "../../src/number/digits.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { type Exact, fraction, isZero, minus, over, sum, times, ZERO } from "../../src/number/exact.ts";
import { ceiling, compareRatios, floor } from "../../src/number/ratio.ts";
import { apportion, split } from "../../src/number/share.ts";
import { anyFraction, notNegative } from "./arbitraries.ts";

const weights = fc
  .oneof(
    fc.array(notNegative, { minLength: 1, maxLength: 12 }),
    fc.array(
      fc.bigInt(0n, 3n).map((n) => fraction(n)),
      { minLength: 1, maxLength: 12 },
    ), // many equals
  )
  .filter((all) => all.some((w) => !isZero(w)));
const units = fc.bigInt(0n, 10n ** 20n);
const whole = (all: readonly (bigint | number)[]): Exact[] => all.map((w) => fraction(BigInt(w)));

/** What the weight at `i` is due exactly, and what of it is left beyond the whole part. */
const quota = (n: bigint, all: readonly Exact[], i: number): Exact =>
  over(times(fraction(n), all[i] ?? ZERO), sum(all));
const remainders = (n: bigint, all: readonly Exact[]): Exact[] =>
  all.map((_, i) => quota(n, all, i)).map((due) => minus(due, fraction(floor(due))));

describe("apportion", () => {
  it("adds up to what was shared out, and gives nothing for a weight of nothing", () => {
    fc.assert(
      fc.property(units, weights, (n, all) => {
        const shares = apportion(n, all);
        expect(shares.reduce((a, b) => a + b, 0n)).toBe(n);
        all.forEach((w, i) => {
          if (isZero(w)) expect(shares[i]).toBe(0n);
        });
      }),
    );
  });

  it("keeps each share within one of its exact share (the quota rule)", () => {
    fc.assert(
      fc.property(units, weights, (n, all) => {
        apportion(n, all).forEach((share, i) => {
          const due = quota(n, all, i);
          expect(share === floor(due) || share === ceiling(due)).toBe(true);
        });
      }),
    );
  });

  it("leaves the rest with the largest remainders, earlier ones first among equals", () => {
    fc.assert(
      fc.property(units, weights, (n, all) => {
        const shares = apportion(n, all);
        const left = remainders(n, all);
        const up = shares.map((share, i) => share !== floor(quota(n, all, i)));
        for (let i = 0; i < all.length; i++) {
          for (let j = 0; j < all.length; j++) {
            if (!up[i] || up[j]) continue;
            const order = compareRatios(left[i] ?? ZERO, left[j] ?? ZERO);
            expect(order > 0 || (order === 0 && i < j)).toBe(true);
          }
        }
      }),
    );
  });

  it("gives the same shares for the same weights, whatever their common factor", () => {
    const factors = notNegative.filter((f) => !isZero(f));
    fc.assert(
      fc.property(units, weights, factors, (n, all, factor) => {
        const shares = apportion(n, all);
        expect(apportion(n, all)).toEqual(shares);
        const multiplied = all.map((w) => times(w, factor));
        expect(apportion(n, multiplied)).toEqual(shares);
      }),
    );
  });

  it("heeds order among equal remainders only", () => {
    fc.assert(
      fc.property(units, weights, (n, all) => {
        const distinct = new Set(remainders(n, all).map(exactText)).size === all.length;
        fc.pre(distinct);
        expect(apportion(n, [...all].reverse())).toEqual(apportion(n, all).reverse());
      }),
    );
    expect(apportion(4n, whole([1, 1, 1]))).toEqual([2n, 1n, 1n]);
  });

  it("reproduces the Alabama paradox", () => {
    // Textbook illustration of the paradox (states of 6, 6 and 2; ten seats, then eleven), as in the
    // encyclopaedia article "Apportionment paradox"; unverified.
    expect(apportion(10n, whole([6, 6, 2]))).toEqual([4n, 4n, 2n]);
    expect(apportion(11n, whole([6, 6, 2]))).toEqual([5n, 5n, 1n]);
  });

  it("shares out nothing at all as nothing each", () => {
    expect(apportion(0n, whole([1, 2, 0]))).toEqual([0n, 0n, 0n]);
  });

  it("is exact where a binary float is not", () => {
    const n = 10n ** 17n + 1n;
    expect(apportion(n, whole([1, 1, 1])).reduce((a, b) => a + b, 0n)).toBe(n);
  });
});

describe("split", () => {
  it("gives parts that add up to the whole, literally, each in proportion", () => {
    fc.assert(
      fc.property(anyFraction, weights, (total, all) => {
        const parts = split(total, all);
        expect(sum(parts)).toEqual(total);
        expect(parts.map((part) => times(part, sum(all)))).toEqual(all.map((w) => times(total, w)));
      }),
    );
  });
});

describe("impossible shares", () => {
  const negative = fraction(-1n);
  it.each<[string, () => unknown]>([
    ["apportion without weights", () => apportion(3n, [])],
    ["apportion with weights of nothing", () => apportion(3n, [ZERO, ZERO])],
    ["apportion with a weight below nothing", () => apportion(3n, [fraction(2n), negative])],
    ["apportion of less than nothing", () => apportion(-3n, whole([1]))],
    ["split without weights", () => split(fraction(1n), [])],
    ["split with weights of nothing", () => split(fraction(1n), [ZERO])],
    ["split with a weight below nothing", () => split(fraction(1n), [fraction(2n), negative])],
  ])("%s is refused", (_, attempt) => {
    expect(attempt).toThrow(SteelyardError);
    expect(attempt).toThrow(expect.objectContaining({ code: "shares-impossible" }));
  });
});
