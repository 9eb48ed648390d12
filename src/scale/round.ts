import type { Kitchen, KitchenName } from "../measure/kitchen.ts";
import { Sheet } from "../sheet/sheet.ts";
import type { Sheets } from "./fit/sheets.ts";
import { findRounding } from "./round/choose.ts";
import { type RoundOptions, readRounding } from "./round/read.ts";
import { Rounded, RoundedTogether, RoundingOutOfReach } from "./round/result.ts";

export type { KeptReason } from "./round/candidates.ts";
export type { RoundOptions } from "./round/read.ts";
export type { Drift, RoundedDemand, RoundedLine } from "./round/report.ts";
export { type RoundBound, Rounded, RoundedTogether, RoundingOutOfReach } from "./round/result.ts";

/**
 * Brings every amount to one that the kitchen can measure, all lines chosen together. What counts,
 * in this order:
 *
 * 1. Firm demands hold, and a line's own `least` and `most`.
 * 2. Each target that held before stays within its tolerance. Where not all can, the worst that one
 *    is off beyond it, as a share of what it asks, is least. What was missed before is not pursued at
 *    the cost of what held: `fit` first.
 * 3. The ratios drift least: Σ |amount ÷ (amount before × common) − 1| over the lines, with the common
 *    factor that makes it so. Where what is held does not fix the size of a portion from both sides
 *    (at least some of one thing and at most some of another) the common factor is 1.
 * 4. Amounts stay nearest to what they were, and lines earlier in the alphabet come out smaller.
 *
 * What is measured is the batch as the sheet stands: for one person's bowl, `scale` to one portion
 * first. Demands speak of one portion as eaten.
 *
 * - A line stays in its own family of units: what was weighed is weighed, spoons and cups become the
 *   kitchen's spoons and cups (`1/2 cup + 1 tbsp`), what was poured goes into the jug, pieces are
 *   counted whole or by halves. A wish wins (`lines: { flour: "weigh" }`). What the kitchen cannot
 *   measure so, such as chopped cups of another size, is weighed; without a scale it stays, and is reported.
 * - A nested recipe is weighed, unless its portions already come out measurable.
 * - Per-portion lines are never touched; one that cannot be measured is reported.
 * - No line is rounded to nothing. Some amounts on each side of the exact one are tried (`each`).
 *
 * Where no measurable amounts keep the firm demands, the answer is `out-of-reach`, not an error. The
 * best is proven, or the answer says how far from proven the search stopped (`stopped`, `bound`);
 * either way it is no worse than rounding each line for itself. It does not depend on the order of
 * lines, demands or sheets.
 *
 * Throws one error with every fault: `rounding-malformed`, `demand-malformed`, `kitchen-malformed`,
 * `fit-malformed` for what is no sheet, `line-unknown`, `energy-system-unknown` for a factor system, and
 * the codes of amounts for units that were wished for.
 *
 * Method: a choice of one candidate a line by branch and bound, in whole numbers.
 *
 * @example
 * ```ts
 * const bowl = sheet(
 *   {
 *     name: "Bowl",
 *     portions: 1,
 *     measures: "metric",
 *     lines: [
 *       { key: "oats", food: "oats-rolled-dry", amount: "53.3 g" },
 *       { key: "honey", food: "honey", amount: "1.84 tsp" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const rounded = roundToKitchen(bowl, "metric", { demands: [{ of: "energy", exactly: 244 }] });
 * if (rounded.status !== "out-of-reach") {
 *   console.log(rounded.sheet.lines.map((line) => formatAmount(line.amount, { measures: "metric" }))); // => [ '54 g', '1 3/4 tsp' ]
 * }
 * ```
 */
export function roundToKitchen(
  s: Sheet,
  kitchen: Kitchen | KitchenName,
  how?: RoundOptions,
): Rounded | RoundingOutOfReach;
export function roundToKitchen(
  s: Sheets,
  kitchen: Kitchen | KitchenName,
  how?: RoundOptions,
): RoundedTogether | RoundingOutOfReach;
export function roundToKitchen(
  s: Sheet | Sheets,
  kitchen: Kitchen | KitchenName,
  how: RoundOptions = {},
): Rounded | RoundedTogether | RoundingOutOfReach {
  const found = findRounding(readRounding(s, kitchen, how));
  if (!found.best) return new RoundingOutOfReach(found);
  return s instanceof Sheet ? new Rounded(found, found.best) : new RoundedTogether(found, found.best);
}
