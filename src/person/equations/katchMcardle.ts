import type { EnergyEquation } from "./equation.ts";

/**
 * McArdle WD, Katch FI, Katch VL. Exercise Physiology (textbook). The figures are those of
 * Cunningham 1991; the edition that first prints them was not seen.
 */
export const katchMcardle: EnergyEquation = {
  id: "katch-mcardle",
  name: "Katch-McArdle",
  source: "McArdle, Katch & Katch, Exercise Physiology (textbook)",
  check: "unverified",
  population: "adults with a measured fat-free mass; the textbook's own sample is not stated",
  ages: { from: 18 },
  lines: [{ constant: "370", lean: "21.6" }],
};
