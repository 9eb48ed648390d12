import type { EnergyEquation } from "./equation.ts";

/**
 * Roza AM, Shizgal HM. The Harris Benedict equation reevaluated: resting energy requirements and the
 * body cell mass. Am J Clin Nutr 1984; 40: 168-182. It adds 98 of Benedict's later subjects, of a
 * wider age range, to the 239 of Harris and Benedict 1919 (women of 15 to 74, men of 16 to 63).
 */
export const harrisBenedict1984: EnergyEquation = {
  id: "harris-benedict-1984",
  name: "Harris-Benedict, revised 1984",
  source: "Roza & Shizgal 1984, Am J Clin Nutr 40:168-182",
  check: "copy",
  population: "337 healthy adults, most of them measured before 1919 and of normal weight",
  ages: { from: 15, to: 74 },
  lines: [
    { sex: "male", constant: "88.362", mass: "13.397", heightCm: "4.799", age: "-5.677" },
    { sex: "female", constant: "447.593", mass: "9.247", heightCm: "3.098", age: "-4.330" },
  ],
};
