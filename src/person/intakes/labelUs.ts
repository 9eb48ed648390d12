import type { Check } from "../check.ts";
import type { LabelTable } from "./table.ts";

/**
 * 21 CFR 101.9(c)(8)(iv) and (c)(9), Daily Values for adults and children of four years and more, at
 * 2,000 kcal (81 FR 33742, 27 May 2016). Potassium stands at 4,700 mg although the intake that it
 * rested on was lowered in 2019. There is none for total sugars or trans fat.
 */
const check: Check = {
  at: "copy",
  read: "a retailer's copy of the 2016 list; vitamins and minerals also at https://www.cspinet.org/article/vitamins-and-minerals-explained",
};

export const labelUs: LabelTable = {
  source: "21 CFR 101.9(c)(8)(iv) and (c)(9), Daily Values (81 FR 33742, 2016)",
  for: "adults and children of four years and more; energy of 2,000 kcal",
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["fat"], kind: "DV", values: "78", check },
    { of: ["saturatedFat"], kind: "DV", values: "20", check },
    { of: ["cholesterol"], kind: "DV", values: "300", check },
    { of: ["carbohydrateByDifference"], kind: "DV", values: "275", check },
    { of: ["sodium"], kind: "DV", values: "2300", check },
    { of: ["fibre"], kind: "DV", values: "28", check },
    { of: ["protein"], kind: "DV", values: "50", check },
    { of: ["addedSugars"], kind: "DV", values: "50", check },
    { of: ["vitaminARae"], kind: "DV", basis: "RAE", values: "900", check },
    { of: ["vitaminC"], kind: "DV", values: "90", check },
    { of: ["calcium"], kind: "DV", values: "1300", check },
    { of: ["iron"], kind: "DV", values: "18", check },
    { of: ["vitaminD"], kind: "DV", values: "20", check },
    { of: ["vitaminE"], kind: "DV", basis: "alpha-tocopherol", values: "15", check },
    { of: ["vitaminK"], kind: "DV", values: "120", check },
    { of: ["thiamin"], kind: "DV", values: "1.2", check },
    { of: ["riboflavin"], kind: "DV", values: "1.3", check },
    { of: ["niacinEquivalents"], kind: "DV", basis: "NE", values: "16", check },
    { of: ["vitaminB6"], kind: "DV", values: "1.7", check },
    { of: ["folateDfe"], kind: "DV", basis: "DFE", values: "400", check },
    { of: ["vitaminB12"], kind: "DV", values: "2.4", check },
    { of: ["biotin"], kind: "DV", values: "30", check },
    { of: ["pantothenicAcid"], kind: "DV", values: "5", check },
    { of: ["phosphorus"], kind: "DV", values: "1250", check },
    { of: ["iodine"], kind: "DV", values: "150", check },
    { of: ["magnesium"], kind: "DV", values: "420", check },
    { of: ["zinc"], kind: "DV", values: "11", check },
    { of: ["selenium"], kind: "DV", values: "55", check },
    { of: ["copper"], kind: "DV", values: "0.9", check },
    { of: ["manganese"], kind: "DV", values: "2.3", check },
    { of: ["chromium"], kind: "DV", values: "35", check },
    { of: ["molybdenum"], kind: "DV", values: "45", check },
    { of: ["chloride"], kind: "DV", values: "2300", check },
    { of: ["potassium"], kind: "DV", values: "4700", check },
    { of: ["choline"], kind: "DV", values: "550", check },
  ],
};
