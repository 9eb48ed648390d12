import type { EnergyEquation } from "./equation.ts";

/**
 * Schofield WN. Predicting basal metabolic rate, new standards and review of previous work. Hum Nutr
 * Clin Nutr 1985; 39 Suppl 1: 5-41; kcal forms as FAO/WHO/UNU 2004, Human energy requirements, prints
 * them in its table 5.2, read in a copy. Each is its MJ form over 4.184, to the last digit: so is 8.126,
 * where other copies print 8.3 for women of 30 to 60.
 */
export const schofield1985: EnergyEquation = {
  id: "schofield-1985",
  name: "Schofield",
  source: "Schofield 1985, as in FAO/WHO/UNU 2004, Human energy requirements, table 5.2",
  check: "copy",
  population: "7,173 measurements from 23 countries, nearly half of them from Italy; few from the tropics",
  ages: { from: 0 },
  lines: [
    { sex: "male", below: 3, constant: "-30.4", mass: "59.512" },
    { sex: "male", from: 3, below: 10, constant: "504.3", mass: "22.706" },
    { sex: "male", from: 10, below: 18, constant: "658.2", mass: "17.686" },
    { sex: "male", from: 18, below: 30, constant: "692.2", mass: "15.057" },
    { sex: "male", from: 30, below: 60, constant: "873.1", mass: "11.472" },
    { sex: "male", from: 60, constant: "587.7", mass: "11.711" },
    { sex: "female", below: 3, constant: "-31.1", mass: "58.317" },
    { sex: "female", from: 3, below: 10, constant: "485.9", mass: "20.315" },
    { sex: "female", from: 10, below: 18, constant: "692.6", mass: "13.384" },
    { sex: "female", from: 18, below: 30, constant: "486.6", mass: "14.818" },
    { sex: "female", from: 30, below: 60, constant: "845.6", mass: "8.126" },
    { sex: "female", from: 60, constant: "658.5", mass: "9.082" },
  ],
};
