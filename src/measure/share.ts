import { type ErrorCode, fault, quote } from "../number/error.ts";
import { compare, exact, type Fraction, fraction, ONE, over, type Value } from "../number/fraction.ts";
import { wholeNumber } from "./amountData.ts";
import { hinting } from "./figure.ts";

/**
 * Reads a share of a whole: `0.25`, `"1/4"` or `"25 %"`. A bare number above 1 is refused, since
 * 25 could be meant as per cent.
 *
 * Throws `code`, and the codes of numbers.
 */
export function readShare(value: Value, code: ErrorCode): Fraction {
  const percent = typeof value === "string" ? /^\s*([^%]*?)\s*%\s*$/.exec(value) : null;
  const hint = 'write 0 to 1, or per cent: "25 %"';
  const share = hinting(hint, () => {
    if (percent) return over(wholeNumber(percent[1] ?? ""), fraction(100n));
    return typeof value === "string" ? wholeNumber(value) : exact(value);
  });
  if (share.n >= 0n && compare(share, ONE) <= 0) return share;
  throw fault(code, `${quote(value)} is not a share of a whole`, hint);
}
