import type { Decimal } from "decimal.js";
import type { ComponentId } from "../../food/components.ts";
import { fault, kindOf } from "../../number/error.ts";
import type { Value } from "../../number/fraction.ts";
import type { Demand } from "../../scale/demand.ts";
import { mealDemands } from "../shareDay.ts";
import { countsFood, isIntakes, type ReferenceIntakes } from "./referenceIntakes.ts";
import type { UpperKind } from "./table.ts";

/** Levels set against harm; goals for a population and the CDRR are not, and guidance levels are rougher. */
const harmful: readonly UpperKind[] = ["UL", "SUL", "guidance level", "safe level of intake"];

/**
 * Upper levels as firm limits for `fit`, so that no portion is fitted past one: those that count what
 * food brings. A level is of a day; `share` gives a meal its part of it, the whole unless told.
 *
 * Levels of supplements alone make no limit, and neither does a nutrient without a level: that is no
 * proof that any amount is safe.
 *
 * Throws `shares-impossible`, and `comparison-malformed` for what are no intakes.
 *
 * @example
 * ```ts
 * const limits = upperLimits(referenceIntakes("eu", { sex: "female", age: 30, mass: "61 kg" }), "0.4");
 * limits.find((limit) => limit.of === "selenium"); // => { of: 'selenium', most: '102', firm: true }
 * ```
 */
export function upperLimits(intakes: ReferenceIntakes, share: Value = 1): readonly Demand[] {
  if (!isIntakes(intakes)) {
    const hint = 'make them with referenceIntakes("uk", person)';
    throw fault("comparison-malformed", `expected reference intakes, got ${kindOf(intakes)}`, hint, [
      "intakes",
    ]);
  }
  const limits = new Map<ComponentId, Decimal>();
  for (const id of intakes.components) {
    for (const upper of intakes.get(id).uppers) {
      const [of, ...others] = upper.of;
      if (of === undefined || others.length > 0 || !countsFood(upper) || !harmful.includes(upper.kind))
        continue;
      const before = limits.get(of);
      if (before === undefined || upper.value.lessThan(before)) limits.set(of, upper.value);
    }
  }
  const demands = [...limits].map(([of, most]): Demand => ({ of, most: most.toFixed(), firm: true }));
  return mealDemands(demands, share);
}
