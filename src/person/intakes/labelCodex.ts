import type { Check } from "../check.ts";
import type { LabelTable } from "./table.ts";

/**
 * Codex Alimentarius, Guidelines on Nutrition Labelling (CXG 2-1985), Annex: nutrient reference values
 * for requirements (NRV-R) and for noncommunicable diseases (NRV-NCD), for people above 36 months. The
 * annex was not found: all is unverified and may predate the latest amendment, and the values for 6 to 36 months are missing. An authority chooses
 * vitamin D within 5 to 15 µg, and iron and zinc by how well the usual diet lets them be absorbed: the higher absorption is taken here.
 */
const check: Check = "unverified";

export const labelCodex: LabelTable = {
  source: "Codex Alimentarius, Guidelines on Nutrition Labelling CXG 2-1985, Annex",
  for: "people above 36 months",
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminARae"], kind: "NRV-R", basis: "RAE", values: "800", note: "in retinol activity equivalents or retinol equivalents, which the label names", check },
    { of: ["vitaminD"], kind: "NRV-R", values: "5-15", check },
    { of: ["vitaminC"], kind: "NRV-R", values: "100", check },
    { of: ["vitaminK"], kind: "NRV-R", values: "60", check },
    { of: ["vitaminE"], kind: "NRV-R", basis: "alpha-tocopherol", values: "9", check },
    { of: ["thiamin"], kind: "NRV-R", values: "1.2", check },
    { of: ["riboflavin"], kind: "NRV-R", values: "1.2", check },
    { of: ["niacinEquivalents"], kind: "NRV-R", basis: "NE", values: "15", check },
    { of: ["vitaminB6"], kind: "NRV-R", values: "1.3", check },
    { of: ["folateDfe"], kind: "NRV-R", basis: "DFE", values: "400", check },
    { of: ["vitaminB12"], kind: "NRV-R", values: "2.4", check },
    { of: ["pantothenicAcid"], kind: "NRV-R", values: "5", check },
    { of: ["biotin"], kind: "NRV-R", values: "30", check },
    { of: ["calcium"], kind: "NRV-R", values: "1000", check },
    { of: ["magnesium"], kind: "NRV-R", values: "310", check },
    { of: ["iron"], kind: "NRV-R", values: "14", note: "at 15 % absorption; 22 mg at 10 %", check },
    { of: ["zinc"], kind: "NRV-R", values: "11", note: "at 30 % absorption; 14 mg at 22 %", check },
    { of: ["iodine"], kind: "NRV-R", values: "150", check },
    { of: ["copper"], kind: "NRV-R", unit: "µg", values: "900", check },
    { of: ["selenium"], kind: "NRV-R", values: "60", check },
    { of: ["manganese"], kind: "NRV-R", values: "3", check },
    { of: ["molybdenum"], kind: "NRV-R", values: "45", check },
    { of: ["phosphorus"], kind: "NRV-R", values: "700", check },
    { of: ["protein"], kind: "NRV-R", values: "50", check },
    { of: ["saturatedFat"], kind: "NRV-NCD", values: "20", check },
    { of: ["sodium"], kind: "NRV-NCD", values: "2000", check },
    { of: ["potassium"], kind: "NRV-NCD", values: "3500", check },
  ],
};
