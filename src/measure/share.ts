import { isValue, NUMBER } from "../document/leaves.ts";
import { leaf, type Schema } from "../document/schema.ts";
import { type ErrorCode, fault, quote } from "../number/error.ts";
import { type Exact, exact, fraction, ONE, over, type Value } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { wholeNumber } from "./amountData.ts";
import { hinting } from "./figure.ts";

/**
 * Reads a share of a whole: `0.25`, `"1/4"` or `"25 %"`. A bare number above 1 is refused, since
 * 25 could be meant as per cent.
 *
 * Throws `code`, and the codes of numbers.
 */
export function readShare(value: Value, code: ErrorCode): Exact {
  const share = shareOf(value);
  if (isShare(share)) return share;
  throw fault(code, `${quote(value)} is not a share of a whole`, HINT);
}

/** @internal The schema of a share of a whole. */
export function share(): Schema<Exact> {
  const json = { type: ["number", "string"], minimum: 0, maximum: 1 };
  return leaf(`a share: ${NUMBER}`, json, isValue, (given, refuse) => {
    const share = shareOf(given);
    if (!isShare(share)) refuse(`${quote(given)} is not a share of a whole`, HINT);
    return share;
  });
}

const HINT = 'write 0 to 1, or per cent: "25 %"';

function isShare(share: Exact): boolean {
  return share.n >= 0n && compareRatios(share, ONE) <= 0;
}

function shareOf(value: Value): Exact {
  const percent = typeof value === "string" ? /^\s*([^%]*?)\s*%\s*$/.exec(value) : null;
  return hinting(HINT, () => {
    if (percent) return over(wholeNumber(percent[1] ?? ""), fraction(100n));
    return typeof value === "string" ? wholeNumber(value) : exact(value);
  });
}
