import type { EnergyEquation } from "./equation.ts";

/**
 * Cunningham JJ. A reanalysis of the factors influencing basal metabolic rate in normal adults. Am J
 * Clin Nutr 1980; 33: 2372-2374.
 */
export const cunningham1980: EnergyEquation = {
  id: "cunningham-1980",
  name: "Cunningham 1980",
  source: "Cunningham 1980, Am J Clin Nutr 33:2372-2374",
  check: "copy",
  population: "223 adults of the Harris and Benedict study, fat-free mass estimated and not measured",
  ages: { from: 18 },
  lines: [{ constant: "500", lean: "22" }],
};
