import type { Decimal } from "decimal.js";
import { isComponentId } from "../food/components.ts";
import { fault, quote, within } from "../number/error.ts";
import {
  equals,
  exact,
  type Fraction,
  ONE,
  sum,
  times,
  toDecimal,
  toText,
  type Value,
} from "../number/fraction.ts";
import type { Demand, Quantity } from "../scale/demand.ts";
import { readShare } from "./share.ts";

/** One meal's part of a day. */
export interface MealShare {
  readonly meal: string;
  readonly share: Decimal;
  readonly demands: readonly Demand[];
}

/**
 * Shares a day's demands among its meals. Amounts are split exactly: a meal's figures add up to the
 * day's, literally. Shares of energy and ratios hold for the day as for each meal, and stay.
 *
 * `shares` gives each meal its part, as `0.25`, `"1/4"` or `"25 %"`; together they are the whole.
 *
 * Throws `shares-impossible`, `demand-malformed`.
 *
 * @example
 * ```ts
 * const meals = shareDay([{ of: "protein", least: "98 g" }], { breakfast: "1/4", lunch: "35 %", supper: "0.4" });
 * meals[0].demands; // => [ { of: 'protein', least: '24.5 g' } ]
 * ```
 */
export function shareDay(
  demands: readonly Demand[],
  shares: { readonly [meal: string]: Value },
): readonly MealShare[] {
  const parts = Object.entries(shares).map(([meal, share]) => ({
    meal,
    share: within([meal], () => readShare(share, "shares-impossible")),
  }));
  const total = sum(parts.map((part) => part.share));
  if (!equals(total, ONE)) {
    throw fault(
      "shares-impossible",
      `the meals' shares total ${toText(total)}, not 1`,
      "let the shares add up to 1, or to 100 %",
    );
  }
  return parts.map(({ meal, share }) => ({
    meal,
    share: toDecimal(share),
    demands: demands.map((demand, i) => within([i], () => demandPart(demand, share))),
  }));
}

/**
 * A meal's demands from a day's: amounts times the meal's share.
 *
 * Throws `shares-impossible`, `demand-malformed`.
 */
export function mealDemands(demands: readonly Demand[], share: Value): readonly Demand[] {
  const part = readShare(share, "shares-impossible");
  return demands.map((demand, i) => within([i], () => demandPart(demand, part)));
}

function demandPart(demand: Demand, share: Fraction): Demand {
  if (demand.of === undefined) return demand;
  return withAmounts(demand, (value) => scaleValue(value, share));
}

/** The same demand with each of its figures changed. */
export function withAmounts(demand: Demand, change: (value: Value) => Value): Demand {
  if (demand.exactly !== undefined) return { ...demand, exactly: change(demand.exactly) };
  if (demand.least !== undefined) {
    return {
      ...demand,
      least: change(demand.least),
      ...(demand.most !== undefined && { most: change(demand.most) }),
    };
  }
  return { ...demand, most: change(demand.most) };
}

function scaleValue(value: Value, by: Fraction): Value {
  const { number, unit } = readFigure(value);
  const scaled = toText(times(number, by));
  return unit === "" ? scaled : `${scaled} ${unit}`;
}

/** A demand's figure: its number, and the unit where text carries one. */
export function readFigure(value: Value): { number: Fraction; unit: string } {
  const parts = typeof value === "string" ? /^\s*(.*?[\d.])\s*([^\d\s./]*)\s*$/.exec(value) : null;
  try {
    const number = exact(parts ? (parts[1] ?? "") : value);
    if (number.n < 0n) throw fault("demand-malformed", "below 0", "give 0 or more");
    return { number, unit: parts?.[2] ?? "" };
  } catch {
    throw fault(
      "demand-malformed",
      `${quote(value)} is not an amount`,
      'write a number in the component\'s unit, or with one: "60 g"',
    );
  }
}

/** Whether a name is something that can be weighed out: a component, or the portion's mass. */
export function isQuantity(name: string): name is Quantity {
  return name === "mass" || isComponentId(name);
}
