import { fault } from "./error.ts";
import { type Exact, fraction, minus, over, sum, times } from "./exact.ts";
import { compareRatios, floor } from "./ratio.ts";

/**
 * Shares a whole number of units out in proportion to weights, so that the shares are whole and
 * add up to it: each gets the whole part of its exact share, and what is left goes one each to the
 * largest remainders, earlier ones first among equals.
 *
 * Method: largest remainder (Hamilton's method of apportionment).
 *
 * Throws `shares-impossible` for a negative weight, or weights that are all zero.
 *
 * @example
 * ```ts
 * apportion(100n, [fraction(1n), fraction(1n), fraction(1n)]); // => [ 34n, 33n, 33n ]
 * ```
 */
export function apportion(units: bigint, weights: readonly Exact[]): bigint[] {
  const total = sum(weights);
  if (weights.some((w) => w.n < 0n) || total.n === 0n || units < 0n) {
    throw fault(
      "shares-impossible",
      "shares need weights of 0 or more that are not all 0",
      "leave out what has no share",
    );
  }
  const ideal = weights.map((w) => times(fraction(units), over(w, total)));
  const shares = ideal.map(floor);
  const left = units - shares.reduce((a, b) => a + b, 0n);
  const byRemainder = ideal
    .map((share, i) => ({ i, remainder: minus(share, fraction(shares[i] ?? 0n)) }))
    .sort((a, b) => compareRatios(b.remainder, a.remainder) || a.i - b.i);
  for (const { i } of byRemainder.slice(0, Number(left))) shares[i] = (shares[i] ?? 0n) + 1n;
  return shares;
}

/** Splits a total exactly in proportion to weights: the parts add up to the total, literally. */
export function split(total: Exact, weights: readonly Exact[]): Exact[] {
  const whole = sum(weights);
  if (weights.some((w) => w.n < 0n) || whole.n === 0n) {
    throw fault(
      "shares-impossible",
      "shares need weights of 0 or more that are not all 0",
      "leave out what has no share",
    );
  }
  return weights.map((w) => times(total, over(w, whole)));
}
