import { read } from "../../document/read.ts";
import { fields, once, optional, type Schema } from "../../document/schema.ts";
import type { ComponentId } from "../../food/components.ts";
import { exactText } from "../../number/digits.ts";
import { fault, kindOf } from "../../number/error.ts";
import type { Exact, Value } from "../../number/exact.ts";
import type { Demand } from "../../scale/demand.ts";
import { mealDemands } from "../shareDay.ts";
import { guidanceTaken, isFromHarm, isGuidance } from "./guidance.ts";
import { countsFood, isIntakes, type ReferenceIntakes } from "./referenceIntakes.ts";
import type { UpperFigure } from "./resolve.ts";

/**
 * Upper levels as firm limits for `fit`, so that no portion is fitted past one: those that count what
 * food brings. A level is of a day; `share` gives a meal its part of it, the whole unless told.
 *
 * Only levels that were set from evidence of harm are limits: tolerable upper intake levels (`"UL"`) and
 * the UK's safe upper levels (`"SUL"`). The EVM gives a guidance level where the evidence was too thin
 * for a safe upper level, and EFSA a safe level of intake where it could set no upper level: from where
 * more does harm is not known, and a day of wholegrain food can pass them, as oats do for manganese.
 * Guidance on retinol, iodine and caffeine is a limit all the same, since more of them has harmed people
 * who had it from food. Other guidance is one with `guidance: "limit"` alone; `demandsFor` names them in a caution, and `compare`
 * holds a portion against them. The CDRR, goals for a population, and tolerable and acceptable daily intakes,
 * which are of the mean of a life, are never limits.
 *
 * Levels of supplements alone make no limit, and neither does a nutrient without a level: that is no
 * proof that any amount is safe.
 *
 * Throws `shares-impossible`, and `comparison-malformed` for what are no intakes or no options.
 *
 * @example
 * ```ts
 * const limits = upperLimits(referenceIntakes("eu", { sex: "female", age: 30, mass: "61 kg" }), "0.4");
 * limits.find((limit) => limit.of === "selenium"); // => { of: 'selenium', most: '102', firm: true }
 * ```
 */
export function upperLimits(
  intakes: ReferenceIntakes,
  share: Value = 1,
  how: { readonly guidance?: "tell" | "limit" } = {},
): readonly Demand[] {
  if (!isIntakes(intakes)) {
    const hint = 'make them with referenceIntakes("uk", person)';
    throw fault("comparison-malformed", `expected reference intakes, got ${kindOf(intakes)}`, hint, [
      "intakes",
    ]);
  }
  const { guidance } = read(limitsHow(), how, "comparison-malformed");
  const isLimit = (upper: UpperFigure): boolean =>
    isFromHarm(upper) || (guidance === "limit" && isGuidance(upper));
  const limits = new Map<ComponentId, Exact>();
  for (const id of intakes.components) {
    for (const upper of intakes.get(id).uppers) {
      const [of, ...others] = upper.of;
      if (of === undefined || others.length > 0 || !countsFood(upper) || !isLimit(upper)) continue;
      const before = limits.get(of);
      if (before === undefined || upper.value.lt(before)) limits.set(of, upper.value);
    }
  }
  const demands = [...limits].map(([of, most]): Demand => ({ of, most: exactText(most), firm: true }));
  return mealDemands(demands, share);
}

const limitsHow: () => Schema<{ readonly guidance?: "tell" | "limit" }> = /* @__PURE__ */ once(() =>
  fields<{ readonly guidance?: "tell" | "limit" }>({ guidance: optional(guidanceTaken()) }),
);
