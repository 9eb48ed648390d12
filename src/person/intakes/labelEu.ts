import type { Check } from "../check.ts";
import type { LabelTable } from "./table.ts";

/**
 * Regulation (EU) No 1169/2011 on the provision of food information to consumers, Annex XIII: part A,
 * nutrient reference values of vitamins and minerals; part B, reference intakes of energy and other
 * nutrients. "Folic acid" there means folate of all forms. Read in the Official Journal's Portuguese
 * text (L 304, 22.11.2011, page 61) and in the Spanish one.
 */
const check: Check = "copy";

export const labelEu: LabelTable = {
  source: "Regulation (EU) No 1169/2011, Annex XIII",
  for: "adults; energy of 8,400 kJ or 2,000 kcal",
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminARe"], kind: "NRV", basis: "RE", values: "800", check },
    { of: ["vitaminD"], kind: "NRV", values: "5", check },
    { of: ["vitaminE"], kind: "NRV", basis: "alpha-tocopherol equivalents", values: "12", check },
    { of: ["vitaminK"], kind: "NRV", values: "75", check },
    { of: ["vitaminC"], kind: "NRV", values: "80", check },
    { of: ["thiamin"], kind: "NRV", values: "1.1", check },
    { of: ["riboflavin"], kind: "NRV", values: "1.4", check },
    { of: ["niacinEquivalents"], kind: "NRV", basis: "NE", values: "16", check },
    { of: ["vitaminB6"], kind: "NRV", values: "1.4", check },
    { of: ["folate"], kind: "NRV", basis: "folate", values: "200", check },
    { of: ["vitaminB12"], kind: "NRV", values: "2.5", check },
    { of: ["biotin"], kind: "NRV", values: "50", check },
    { of: ["pantothenicAcid"], kind: "NRV", values: "6", check },
    { of: ["potassium"], kind: "NRV", values: "2000", check },
    { of: ["chloride"], kind: "NRV", values: "800", check },
    { of: ["calcium"], kind: "NRV", values: "800", check },
    { of: ["phosphorus"], kind: "NRV", values: "700", check },
    { of: ["magnesium"], kind: "NRV", values: "375", check },
    { of: ["iron"], kind: "NRV", values: "14", check },
    { of: ["zinc"], kind: "NRV", values: "10", check },
    { of: ["copper"], kind: "NRV", values: "1", check },
    { of: ["manganese"], kind: "NRV", values: "2", check },
    { of: ["fluoride"], kind: "NRV", values: "3.5", check },
    { of: ["selenium"], kind: "NRV", values: "55", check },
    { of: ["chromium"], kind: "NRV", values: "40", check },
    { of: ["molybdenum"], kind: "NRV", values: "50", check },
    { of: ["iodine"], kind: "NRV", values: "150", check },
    { of: ["energy"], kind: "NRV", values: "2000", check },
    { of: ["fat"], kind: "NRV", values: "70", check },
    { of: ["saturatedFat"], kind: "NRV", values: "20", check },
    { of: ["availableCarbohydrate"], kind: "NRV", values: "260", check },
    { of: ["sugars"], kind: "NRV", values: "90", check },
    { of: ["protein"], kind: "NRV", values: "50", check },
    { of: ["salt"], kind: "NRV", values: "6", check },
  ],
};
