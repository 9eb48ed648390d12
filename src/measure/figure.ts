import { fault, quote } from "../number/error.ts";
import { exact, type Fraction, over, times, type Value } from "../number/fraction.ts";
import { amount } from "./amount.ts";
import { wholeNumber } from "./amountData.ts";
import { readUnit } from "./unitText.ts";

/** Nothing but a number: no letter but an exponent, no per cent sign. */
const BARE = /^[\s\d.,/¼½¾⅐-⅞⁄∕]+$|^\s*\d*\.?\d+e[+-]?\d+\s*$/i;

/**
 * Reads a figure for something measured in a unit: `"650 kcal"`, `"2.4 MJ"`, `"1500 mg"`, `"60 g"`,
 * or a bare number, which is in that unit already. Gives it in that unit, exactly.
 *
 * Throws `unit-kinds-differ` where the figure measures something else, `amount-negative`, and the
 * codes of `amount`.
 *
 * @example
 * ```ts
 * figure("1500 mg", "g"); // => 1.5
 * figure(650, "kcal"); // => 650
 * ```
 */
export function figure(value: Value, unit: string): Fraction {
  if (typeof value !== "string") return notNegative(exact(value), value);
  if (BARE.test(value)) return wholeNumber(value);
  const of = readUnit(unit, {});
  const read = amount(value);
  if (read.size === undefined || read.kind !== of.kind) {
    throw fault(
      "unit-kinds-differ",
      `${quote(value)} is not a figure in ${unit}`,
      `write it in ${unit}, or in a unit of the same kind`,
    );
  }
  return over(times(read.value, read.size), of.size);
}

function notNegative(figure: Fraction, written: Value): Fraction {
  if (figure.n >= 0n) return figure;
  throw fault("amount-negative", `${quote(written)} is below 0`, "give 0 or more");
}
