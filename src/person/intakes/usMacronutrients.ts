import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Dietary Reference Intakes: Recommended Dietary Allowances and Adequate Intakes, Total Water and
 * Macronutrients. Institute of Medicine, 2002/2005 reports on macronutrients and 2005 report on water.
 * Water is printed in litres, and taken at 1,000 g to the litre. No figure is set for total fat above
 * one year. Protein is set per kilogram of body mass; the grams are those of a reference body. In
 * pregnancy it is 25 g a day on top, or 1.1 g per kilogram; breastfeeding 25 g on top, or 1.3 g (chapter
 * 10, RDA summaries). The first way comes first: at the reference body's 57 kg it gives the table's 71 g.
 */
const check: Check = "issuer";

/** The child of 1 to 3 and the milk's 25 g were not read, nor that both ways hold when breastfeeding. */
const US_PROTEIN_SEEN = [
  ...["4-8", "M 9-13", "M 14-18", "M 19-30", "M 31-50", "M 51-70", "M 71+"],
  ...["F 9-13", "F 14-18", "F 19-30", "F 31-50", "F 51-70", "F 71+", "P 14-18", "P 19-30", "P 31-50"],
  "adds pregnant",
] as const;

export const usMacronutrients: IntakeTable = {
  source: "Institute of Medicine (US, Canada) 2002/2005, DRI summary table: total water and macronutrients",
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-8", "M 9-13", "M 14-18", "M 19-30", "M 31-50", "M 51-70", "M 71+", "F 9-13", "F 14-18", "F 19-30", "F 31-50", "F 51-70", "F 71+", "P 14-18", "P 19-30", "P 31-50", "L 14-18", "L 19-30", "L 31-50"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["protein"], kind: "RDA", per: "kg", values: "1.05 0.95 0.95 0.85 0.8 0.8 0.8 0.8 0.95 0.85 0.8 0.8 0.8 0.8 0.85 0.8 0.8 0.85 0.8 0.8", adds: { pregnant: "25", breastfeeding: "25" }, check: "copy", seen: US_PROTEIN_SEEN },
    { of: ["protein"], kind: "RDA", per: "kg", values: "- - - - - - - - - - - - - - 1.1 1.1 1.1 1.3 1.3 1.3", note: "the report's other way to put it, per kilogram for all ages; the average requirement is 0.88 g in pregnancy, and 1.05 g when breastfeeding", check: "copy", seen: ["P 14-18", "P 19-30", "P 31-50"] },
    { of: ["protein"], kind: "RDA", values: "13 19 34 52 56 56 56 56 34 46 46 46 46 46 71 71 71 71 71 71", note: "for a reference body", check },
    { of: ["water"], kind: "AI", values: "1300 1700 2400 3300 3700 3700 3700 3700 2100 2300 2700 2700 2700 2700 3000 3000 3000 3800 3800 3800", note: "all water, of food and drink", check },
    { of: ["availableCarbohydrate"], kind: "RDA", values: "130 130 130 130 130 130 130 130 130 130 130 130 130 130 175 175 175 210 210 210", check },
    { of: ["fibre"], kind: "AI", values: "19 25 31 38 38 38 30 30 26 26 25 25 21 21 28 28 28 29 29 29", check },
    { of: ["linoleicAcid"], kind: "AI", values: "7 10 12 16 17 17 14 14 10 11 12 12 11 11 13 13 13 13 13 13", check },
    { of: ["alphaLinolenicAcid"], kind: "AI", values: "0.7 0.9 1.2 1.6 1.6 1.6 1.6 1.6 1.0 1.1 1.1 1.1 1.1 1.1 1.4 1.4 1.4 1.3 1.3 1.3", check },
  ],
};

/** Dietary Guidelines for Americans 2025-2030 (2026): what they serve of protein, besides what nobody goes short on. */
export const usGuidelines: IntakeTable = {
  source: "Dietary Guidelines for Americans 2025-2030, page 3",
  stages: ["19+", "P 10+", "L 10+"],
  references: [
    {
      of: ["protein"],
      kind: "dietary guideline",
      per: "kg",
      values: "1.2-1.6 - -",
      note: "a goal of what is served; the guidelines name no age, and adults are taken",
      check: "copy",
    },
  ],
};
