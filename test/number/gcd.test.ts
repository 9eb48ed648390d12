import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gcd } from "../../src/number/gcd.ts";
import { runs } from "../runs.ts";

/** Euclid's own steps, one by one (Elements VII, 2). */
function euclid(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

const upTo = (digits: number): fc.Arbitrary<bigint> =>
  fc.integer({ min: 1, max: digits }).chain((own) => fc.bigInt(0n, 10n ** BigInt(own)));

describe("gcd", () => {
  it("is what Euclid's steps come to, for numbers of a word, of many and of thousands", () => {
    for (const [digits, numRuns] of [
      [18, 400],
      [60, 300],
      [700, 100],
      [3000, 15],
    ] as const) {
      fc.assert(
        fc.property(upTo(digits), upTo(digits), upTo(digits), (a, b, shared) => {
          const [x, y] = [a * shared, b * shared];
          const found = gcd(x, y);
          expect(found).toBe(euclid(x, y));
          expect(gcd(y, x)).toBe(found);
        }),
        { numRuns: runs(numRuns) },
      );
    }
  });

  it("is right where leading digits mislead", () => {
    const large = 10n ** 5000n;
    // Neighbours, powers, what divides the other, what is far shorter, and Fibonacci numbers: every quotient is 1.
    let [f, g] = [1n, 1n];
    for (let i = 0; i < 20_000; i++) [f, g] = [g, f + g];
    for (const [a, b] of [
      [0n, 0n],
      [0n, large],
      [1n, large],
      [large, large],
      [large + 1n, large],
      [large * large, large],
      [large * 3n + 7n, 7n],
      [2n ** 20_000n, 2n ** 19_999n * 3n],
      [2n ** 53n, 2n ** 53n - 1n],
      [2n ** 52n, 2n ** 104n],
      [g, f],
    ] as const) {
      expect(gcd(a, b)).toBe(euclid(a, b));
      expect(gcd(b, a)).toBe(euclid(a, b));
    }
  });
});
