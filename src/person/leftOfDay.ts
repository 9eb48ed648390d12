import { figureWritten } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import { asFar, attemptAt, byName, once, type Refuse, type Schema } from "../document/schema.ts";
import { componentIds } from "../food/components.ts";
import { exactText } from "../number/digits.ts";
import { quote, together } from "../number/error.ts";
import { type Exact, greatest, minus, type Value, ZERO } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Demand, Quantity } from "../scale/demand.ts";
import { readDemands } from "../scale/fit/demands.ts";
import { figureOf, isQuantity, withFigures } from "./shareDay.ts";

/** What earlier meals bring: a number in the component's own unit, or text with a unit; `mass` in grams. */
export type Totals = { readonly [Q in Quantity]?: Value };

/** What is left of a day. */
export interface LeftOfDay {
  /** The demands on the meals still to come. */
  readonly demands: readonly Demand[];
  /** Where earlier meals alone bring more than the day's figure or upper limit: by how much, in the component's unit. */
  readonly over: readonly { readonly of: Quantity; readonly by: Exact }[];
  /** Demands on amounts that `eaten` says nothing of; they are left out of `demands`, since what is left is unknown. */
  readonly unknown: readonly Demand[];
  /** Shares of energy and ratios: they hold for the whole day, and are handed on unchanged. */
  readonly wholeDay: readonly Demand[];
}

/**
 * What is left of a day's demands after the meals already planned. Figures subtract exactly; a lower
 * limit already met drops out, and nothing goes below zero. What is left is in the component's own unit.
 *
 * Throws `demand-malformed` for demands that are none and for totals that are no amounts of a component.
 *
 * @example
 * ```ts
 * const day = leftOfDay([{ of: "protein", least: "98 g" }], { energy: "812.5", protein: 41 });
 * day.demands; // => [ { of: 'protein', least: '57' } ]
 * ```
 */
export function leftOfDay(demands: readonly Demand[], eaten: Totals): LeftOfDay {
  const { totals } = together({
    demands: () => readDemands(demands),
    totals: () => read(totalsSchema(), eaten, "demand-malformed", isRecord(eaten) ? [] : ["eaten"]),
  });
  const left: Demand[] = [];
  const over: { of: Quantity; by: Exact }[] = [];
  const unknown: Demand[] = [];
  const wholeDay: Demand[] = [];
  for (const demand of demands) {
    if (demand.of === undefined) {
      wholeDay.push(demand);
      continue;
    }
    const had = totals.get(demand.of);
    if (had === undefined) {
      unknown.push(demand);
      continue;
    }
    const limit = demand.exactly ?? demand.most;
    const room = limit === undefined ? undefined : minus(figureOf(demand.of, limit), had);
    if (room && room.n < 0n) over.push({ of: demand.of, by: minus(ZERO, room) });
    const rest = withoutMet(demand, had);
    if (!rest) continue;
    left.push(
      withFigures(rest, (value) => exactText(greatest(minus(figureOf(demand.of, value), had), ZERO))),
    );
  }
  return { demands: left, over, unknown, wholeDay };
}

/** Drops a lower limit that what was eaten meets; undefined where nothing else is asked. */
function withoutMet(demand: Demand & { readonly of: Quantity }, had: Exact): Demand | undefined {
  const { least, most, ...rest } = demand;
  if (least === undefined || compareRatios(figureOf(demand.of, least), had) > 0) return demand;
  return most === undefined ? undefined : ({ ...rest, most } as Demand);
}

const totalsSchema: () => Schema<ReadonlyMap<Quantity, Exact>> = /* @__PURE__ */ once(() => {
  const names = [...componentIds, "mass"];
  const check = (name: string, refuse: Refuse): void => {
    const hint = didYouMean(name, names, "use a component's id, or mass");
    if (!isQuantity(name)) refuse(`${quote(name)} is not a component`, hint, [], "component-unknown");
  };
  const like = "{ energy: 812, protein: 41 }";
  return asFar(byName(figureWritten(), { check, names, like }), (given, refuse) => {
    const totals = new Map<Quantity, Exact>();
    for (const [name, value] of Object.entries<Value | undefined>(given)) {
      if (value === undefined || !isQuantity(name)) continue;
      attemptAt(refuse, [name], () => totals.set(name, figureOf(name, value)));
    }
    return totals;
  });
});
