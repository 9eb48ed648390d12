import type { ErrorCode } from "../number/error.ts";
import { fault, quote } from "../number/error.ts";
import { compare, exact, type Fraction, fraction, ONE, over, type Value } from "../number/fraction.ts";

/**
 * Reads a share of a whole: `0.25`, `"1/4"` or `"25 %"`. A bare number above 1 is refused, since
 * 25 could be meant as per cent.
 *
 * Throws `code`.
 */
export function readShare(value: Value, code: ErrorCode): Fraction {
  const percent = typeof value === "string" ? /^\s*([^%]+?)\s*%\s*$/.exec(value) : null;
  const share = percent ? over(exact(percent[1] ?? ""), fraction(100n)) : exact(value);
  if (share.n < 0n || compare(share, ONE) > 0) {
    throw fault(code, `${quote(value)} is not a share of a whole`, 'write 0 to 1, or per cent: "25 %"');
  }
  return share;
}
