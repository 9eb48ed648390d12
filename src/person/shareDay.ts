import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import { byName, once, type Schema } from "../document/schema.ts";
import { isComponentId } from "../food/components.ts";
import { figure } from "../measure/figure.ts";
import { readShare, share } from "../measure/share.ts";
import { exactText } from "../number/digits.ts";
import { fault, quote, SteelyardError, together, within } from "../number/error.ts";
import { type Exact, equals, exact, ONE, sum, times, type Value } from "../number/exact.ts";
import type { Demand, Quantity } from "../scale/demand.ts";
import { readDemands } from "../scale/fit/demands.ts";
import { unitOf } from "../scale/linear.ts";

/** One meal's part of a day. */
export interface MealShare {
  readonly meal: string;
  readonly share: Exact;
  readonly demands: readonly Demand[];
}

/**
 * Shares a day's demands among its meals. Amounts are split exactly, in whatever unit they were written:
 * a meal's figures add up to the day's, literally. Shares of energy and ratios hold for the day as for each meal, and stay.
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
  const { byMeal } = together({
    demands: () => readDemands(demands),
    byMeal: () => read(sharesSchema(), shares, "shares-impossible", isRecord(shares) ? [] : ["shares"]),
  });
  const parts = Object.entries(byMeal).map(([meal, share]) => ({ meal, share }));
  const total = sum(parts.map((part) => part.share));
  if (!equals(total, ONE)) {
    throw fault(
      "shares-impossible",
      `the meals' shares total ${exactText(total)}, not 1`,
      "let the shares add up to 1, or to 100 %",
    );
  }
  return parts.map(({ meal, share }) => ({
    meal,
    share,
    demands: demands.map((demand, i) => within([i], () => demandPart(demand, share))),
  }));
}

/**
 * A meal's demands from a day's: amounts times the meal's share.
 *
 * Throws `shares-impossible`, `demand-malformed`.
 */
export function mealDemands(demands: readonly Demand[], share: Value): readonly Demand[] {
  readDemands(demands);
  const part = readShare(share, "shares-impossible");
  return demands.map((demand, i) => within([i], () => demandPart(demand, part)));
}

const sharesSchema: () => Schema<{ readonly [meal: string]: Exact }> = /* @__PURE__ */ once(() =>
  byName(share(), { like: '{ breakfast: "1/4", lunch: "3/4" }' }),
);

function demandPart(demand: Demand, share: Exact): Demand {
  if (demand.of === undefined) return demand;
  return withFigures(demand, (value) => partOf(demand.of, value, share));
}

/** The same demand with each of its figures changed. */
export function withFigures(demand: Demand, change: (value: Value) => Value): Demand {
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

/** One number, and the unit that it was written with. */
const PLAIN = /^\s*(\d+(?:\.\d+)?(?:\/\d+)?)\s*([^\d\s.,/]*)\s*$/;

/** Part of a figure: in the unit that it was written with where that is one, else in the quantity's own. */
function partOf(of: Quantity, value: Value, share: Exact): Value {
  const whole = figureOf(of, value);
  const [, number, unit = ""] = typeof value === "string" ? (PLAIN.exec(value) ?? []) : [undefined, "", ""];
  const own = number === undefined ? unitOf(of) : unit;
  const amount = number === undefined || number === "" ? whole : exact(number);
  const part = exactText(times(amount, share));
  return own === "" ? part : `${part} ${own}`;
}

/**
 * A demand's figure in the quantity's own unit: a bare number is in it already, and text may carry any
 * unit of the kind, as a cook writes it (`"2 g"` of sodium, `"1 lb 4 oz"`).
 *
 * Throws `demand-malformed`.
 */
export function figureOf(of: Quantity, value: Value): Exact {
  try {
    return figure(value, unitOf(of));
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    throw fault(
      "demand-malformed",
      error.faults[0]?.message ?? `${quote(value)} is not an amount`,
      error.hint,
    );
  }
}

/** Whether a name is something that can be weighed out: a component, or the portion's mass. */
export function isQuantity(name: string): name is Quantity {
  return name === "mass" || isComponentId(name);
}
