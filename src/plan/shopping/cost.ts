import type { Decimal } from "decimal.js";
import {
  compare,
  type Fraction,
  floor,
  fraction,
  minus,
  nearest,
  over,
  sum,
  times,
  toDecimal,
} from "../../number/fraction.ts";
import { minorUnits } from "../data/minorUnits.ts";

/** An amount of money. */
export interface Cost {
  /** ISO 4217 code. */
  readonly currency: string;
  /** In whole minor units (pence, cents): parts are rounded so that they add up to their whole. */
  readonly value: Decimal;
  /** Before rounding. */
  readonly exact: Fraction;
  /** `at-least` where something that it pays for has no price. */
  readonly bound: "exact" | "at-least";
}

/** What one unit of a currency is divided into: 100, unless ISO 4217 says otherwise. */
function minorsIn(currency: string): Fraction {
  return fraction(10n ** BigInt(minorPlaces(currency)));
}

/** The decimals of a currency's minor unit. */
export function minorPlaces(currency: string): number {
  return (Object.hasOwn(minorUnits, currency) ? minorUnits[currency] : undefined) ?? 2;
}

/** A cost by itself, rounded to the nearest minor unit, a half up. */
export function costOf(currency: string, exact: Fraction, bound: Cost["bound"]): Cost {
  const minors = minorsIn(currency);
  return { currency, exact, bound, value: toDecimal(over(fraction(nearest(times(exact, minors))), minors)) };
}

/**
 * Parts of one cost in whole minor units, which add up to the whole in whole minor units: each loses
 * what it has beyond them, and as many as the whole then wants get one more, largest remainder first,
 * earlier ones first among equals. A part that is in whole minor units stays as it is, which sharing
 * the rounded whole in proportion would not ensure.
 *
 * Method: largest remainder (Hamilton's).
 */
export function costParts(
  currency: string,
  parts: readonly Pick<Cost, "exact" | "bound">[],
): readonly Cost[] {
  const minors = minorsIn(currency);
  const ideal = parts.map(({ exact }) => times(exact, minors));
  const whole = ideal.map(floor);
  const wanted = nearest(sum(ideal)) - whole.reduce((a, b) => a + b, 0n);
  const byRemainder = ideal
    .map((each, i) => ({ i, remainder: minus(each, fraction(whole[i] ?? 0n)) }))
    .sort((a, b) => compare(b.remainder, a.remainder) || a.i - b.i);
  for (const { i } of byRemainder.slice(0, Number(wanted))) whole[i] = (whole[i] ?? 0n) + 1n;
  return parts.map(({ exact, bound }, i) => ({
    currency,
    exact,
    bound,
    value: toDecimal(over(fraction(whole[i] ?? 0n), minors)),
  }));
}
