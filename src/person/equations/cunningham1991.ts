import type { EnergyEquation } from "./equation.ts";

/**
 * Cunningham JJ. Body composition as a determinant of energy expenditure: a synthetic review and a
 * proposed general prediction equation. Am J Clin Nutr 1991; 54: 963-969. Unverified.
 */
export const cunningham1991: EnergyEquation = {
  id: "cunningham-1991",
  name: "Cunningham 1991",
  source: "Cunningham 1991, Am J Clin Nutr 54:963-969",
  check: "unverified",
  population: "adults of several published studies, fat-free mass measured",
  ages: { from: 18 },
  lines: [{ constant: "370", lean: "21.6" }],
};
