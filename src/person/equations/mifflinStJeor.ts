import type { EnergyEquation } from "./equation.ts";

/**
 * Mifflin MD, St Jeor ST, Hill LA, Scott BJ, Daugherty SA, Koh YO. A new predictive equation for
 * resting energy expenditure in healthy individuals. Am J Clin Nutr 1990; 51: 241-247. The rounded
 * form by sex, printed in the abstract; the unrounded one (9.99, 6.25, 4.92) differs by up to about
 * 10 kcal.
 */
export const mifflinStJeor: EnergyEquation = {
  id: "mifflin-st-jeor",
  name: "Mifflin-St Jeor",
  source: "Mifflin et al. 1990, Am J Clin Nutr 51:241-247, abstract",
  check: "copy",
  population: "498 healthy women and men in the United States, aged 19 to 78, of normal weight and obese",
  ages: { from: 19, to: 78 },
  lines: [
    { sex: "male", constant: "5", mass: "10", heightCm: "6.25", age: "-5" },
    { sex: "female", constant: "-161", mass: "10", heightCm: "6.25", age: "-5" },
  ],
};
