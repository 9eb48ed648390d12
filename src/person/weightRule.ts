import type { Check } from "./check.ts";

/**
 * The rule that turns body mass per week into energy per day.
 *
 * Wishnofsky M. Caloric equivalents of gained or lost weight. Am J Clin Nutr 1958; 6: 542-546 gives
 * 3,500 kcal to the pound, in round figures 7,700 kcal to the kilogram. Its bias is measured by
 * Thomas et al. 2013 (PMC4024447) against seven supervised experiments.
 */
export const weightRule: {
  readonly kcalPerKg: string;
  readonly text: string;
  readonly source: string;
  readonly check: Check;
} = {
  kcalPerKg: "7700",
  text: "A steady 7,700 kcal is taken for each kilogram of body mass. Real bodies spend less as they shrink and more as they grow, so over months the change comes out smaller than this says.",
  source: "Wishnofsky 1958, Am J Clin Nutr 6:542-546; bias: Thomas et al. 2013, Int J Obes 37:1611-1613",
  check: "copy",
};
