import type { Sheet } from "../sheet/sheet.ts";
import type { Demand } from "./demand.ts";
import { solveTask } from "./engine/solveTask.ts";
import type { FitMet, FitMetTogether } from "./fit/met.ts";
import type { FitOutOfReach, FitOutOfReachTogether } from "./fit/missed.ts";
import { type FitOptions, readTask } from "./fit/read.ts";
import { resultOf } from "./fit/result.ts";
import type { Sheets } from "./fit/sheets.ts";

export type { FitAlone } from "./fit/alone.ts";
export type { FitFactor, FitOutcome, NotProven } from "./fit/answer.ts";
export { FitBinding, type FitEasing } from "./fit/binding.ts";
export { FitMet, FitMetTogether } from "./fit/met.ts";
export { type FitConflict, FitOutOfReach, FitOutOfReachTogether } from "./fit/missed.ts";
export type { FitOptions, FitRange } from "./fit/read.ts";
export type { Sheets } from "./fit/sheets.ts";
export type { FitSuggestion } from "./waysOut/suggestion.ts";

/**
 * Brings a portion to many demands at once while holding the dish together.
 *
 * Held lines of the base (the lines without a part, else the first part by name) share the common
 * factor. Each further part and each adjustable line has a factor of its own; how far it leaves the
 * common factor, `factor / common − 1`, is its departure. The answer is the one whose departures sum
 * to the least, a fall counted twice, so that halving costs what doubling costs; among equal ones
 * the one whose common factor is nearest 1, and then the one in which lines earlier in the
 * alphabet keep their ratio. It does not depend on the order of demands, lines or sheets.
 *
 * Of several sheets eaten together each has a factor of its own, its base's, and its parts and lines
 * depart from that: `(factor − its dish's factor) / common factor`. The common factor is that of the
 * first sheet by name that has held lines, or of `how.base`: the one that sizes are measured by. How far a
 * further sheet's factor is from it counts like any departure, so that dishes share it where nothing asks
 * them apart, and none is swollen or left out to spare a line of another.
 *
 * - An adjustable line stays between half and double its ratio; its own `least` and `most`, grams of
 *   one portion, replace that. It vanishes only where its `least` is 0. Parts stay between half and
 *   double too, unless `how.parts` says otherwise. A line's or part's ratio is to its dish's factor. The
 *   common factor stays within 1/10 to 10, unless `how.common` does, and so does each further sheet's;
 *   beside the common factor that has no range unless `how.parts` gives one. Every moving line keeps its
 *   `least` and `most`.
 * - Per-portion lines are the same for everyone.
 * - A line that says nothing of what `exactly` or `least` asks keeps its dish's factor, with the part
 *   it is in: it cannot be relied on to reach a figure. Under a `most` alone, such as a limit, it
 *   moves as it may, and what is known keeps to the limit. Either way the demand is listed in
 *   `notProven`, with the lines that are silent; so is one that a trace, a food under a limit of
 *   detection (`loose`) or a middle figure of a wide range (`ranged`) may break.
 * - Under a firm limit on an amount, figures published as a range count with their high ends.
 * - A `least` of 0 asks nothing.
 *
 * Where not everything can be met the answer says so (`out-of-reach`), with the nearest sheet that
 * keeps every firm demand and bound: the total of what amounts are missed by, each as a share of the
 * figure asked, is least, then that of amounts of which none is asked, then that of shares of energy,
 * then that of ratios, those to the same amount together. So a dish does not shrink for a share that
 * it cannot have, and how large the recipe was written has no say. It names demands and bounds that
 * cannot stand together, and changes that would help, each tried by solving again.
 *
 * Figures are exact: 60 g asked is 60 g. Nobody's need is judged here; demands come from the caller,
 * and a licensed practitioner decides on them.
 *
 * Throws one error with every fault: `demand-malformed`, `fit-malformed`, `energy-system-unknown` for a
 * factor system, and `fit-stopped` where the steps allowed run out.
 *
 * Method: a linear programme over ratios to the common factor, solved in exact fractions. Dividing by one
 * factor is what keeps it linear, so a departure counts in its own recipe's amounts: where two dishes
 * could depart in each other's stead, one that was written twice as large has its departures counted half.
 *
 * @example
 * ```ts
 * const bowl = sheet(
 *   {
 *     name: "Rice and tofu",
 *     portions: 1,
 *     lines: [
 *       { key: "rice", food: "rice-white-long-boiled", amount: "200 g" },
 *       { key: "tofu", food: "tofu-firm", amount: "100 g", scaling: "adjustable" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const fitted = fit(bowl, [
 *   { of: "energy", exactly: "600 kcal" },
 *   { of: "protein", least: "30 g" },
 * ]);
 * if (fitted.status === "met") console.log(fitted.sheet.portion("energy").value.toString()); // => 600
 * ```
 */
export function fit(s: Sheet, demands: readonly Demand[], how?: FitOptions): FitMet | FitOutOfReach;
export function fit(
  s: Sheets,
  demands: readonly Demand[],
  how?: FitOptions,
): FitMetTogether | FitOutOfReachTogether;
export function fit(
  s: Sheet | Sheets,
  demands: readonly Demand[],
  how: FitOptions = {},
): FitMet | FitMetTogether | FitOutOfReach | FitOutOfReachTogether {
  return resultOf(solveTask(readTask(s, demands, how)));
}
