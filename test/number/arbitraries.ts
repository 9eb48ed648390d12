import * as fc from "fast-check";
import { type Exact, fraction } from "../../src/number/exact.ts";

const tens = (power: number): bigint => 10n ** BigInt(power);

/** Fractions of kitchen size and of sizes far beyond, ending and endless, of either sign. */
export const anyFraction: fc.Arbitrary<Exact> = fc.oneof(
  fc.tuple(fc.bigInt(-1000n, 1000n), fc.bigInt(1n, 60n)).map(([n, d]) => fraction(n, d)),
  fc.tuple(fc.bigInt(-tens(12), tens(12)), fc.nat(12)).map(([n, places]) => fraction(n, tens(places))),
  fc.tuple(fc.bigInt(-tens(60), tens(60)), fc.bigInt(1n, tens(60))).map(([n, d]) => fraction(n, d)),
);

export const nonZero: fc.Arbitrary<Exact> = anyFraction.filter((a) => a.n !== 0n);

export const notNegative: fc.Arbitrary<Exact> = anyFraction.map((a) => (a.n < 0n ? fraction(-a.n, a.d) : a));
