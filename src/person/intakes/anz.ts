import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Nutrient Reference Values for Australia and New Zealand (NHMRC and New Zealand Ministry of Health 2006, version
 * 1.2 of September 2017, with the fluoride and sodium of 2017): recommended dietary intakes (RDI), adequate
 * intakes (AI) and upper levels (UL) in summary tables 4 to 9 (pages 276 to 291), suggested dietary targets (SDT)
 * in table 1 on chronic disease (page 250). The issuer's pages were not read, but a transcription of them; adults
 * and the young from 14 stand in a second one besides, which `test/reference/seconds` holds.
 *
 * Missing here: energy, average requirements, infants, protein per kilogram, targets of carotenes and folate.
 */
const check: Check = "copy";
const NHMRC =
  "NHMRC (Australia) and Ministry of Health (New Zealand) 2006, Nutrient Reference Values, version 1.2 of 2017";

export const anzReferences: IntakeTable = {
  source: NHMRC,
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-8", "M 9-13", "M 14-18", "F 9-13", "F 14-18", "M 19-30", "M 31-50", "M 51-70", "M 71+", "F 19-30", "F 31-50", "F 51-70", "F 71+", "P 14-18", "P 19-30", "P 31-50", "L 14-18", "L 19-30", "L 31-50"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["thiamin"], kind: "RDI", values: "0.5 0.6 0.9 1.2 0.9 1.1 1.2 1.2 1.2 1.2 1.1 1.1 1.1 1.1 1.4 1.4 1.4 1.4 1.4 1.4", check },
    { of: ["riboflavin"], kind: "RDI", values: "0.5 0.6 0.9 1.3 0.9 1.1 1.3 1.3 1.3 1.6 1.1 1.1 1.1 1.3 1.4 1.4 1.4 1.6 1.6 1.6", check },
    { of: ["niacinEquivalents"], kind: "RDI", basis: "NE", values: "6 8 12 16 12 14 16 16 16 16 14 14 14 14 18 18 18 17 17 17", check },
    { of: ["vitaminB6"], kind: "RDI", values: "0.5 0.6 1.0 1.3 1.0 1.2 1.3 1.3 1.7 1.7 1.3 1.3 1.5 1.5 1.9 1.9 1.9 2.0 2.0 2.0", check },
    { of: ["vitaminB12"], kind: "RDI", values: "0.9 1.2 1.8 2.4 1.8 2.4 2.4 2.4 2.4 2.4 2.4 2.4 2.4 2.4 2.6 2.6 2.6 2.8 2.8 2.8", check },
    { of: ["folateDfe"], kind: "RDI", basis: "DFE", values: "150 200 300 400 300 400 400 400 400 400 400 400 400 400 600 600 600 500 500 500", note: "without the folic acid that is advised besides before and early in a pregnancy", check },
    { of: ["pantothenicAcid"], kind: "AI", values: "3.5 4.0 5.0 6.0 4.0 4.0 6.0 6.0 6.0 6.0 4.0 4.0 4.0 4.0 5.0 5.0 5.0 6.0 6.0 6.0", check },
    { of: ["biotin"], kind: "AI", values: "8 12 20 30 20 25 30 30 30 30 25 25 25 25 30 30 30 35 35 35", check },
    { of: ["vitaminARe"], kind: "RDI", basis: "RE", values: "300 400 600 900 600 700 900 900 900 900 700 700 700 700 700 800 800 1100 1100 1100", check },
    { of: ["vitaminC"], kind: "RDI", values: "35 35 40 40 40 40 45 45 45 45 45 45 45 45 55 60 60 80 85 85", check },
    { of: ["vitaminD"], kind: "AI", values: "5 5 5 5 5 5 5 5 10 15 5 5 10 15 5 5 5 5 5 5", check },
    { of: ["vitaminE"], kind: "AI", basis: "alpha-tocopherol equivalents", values: "5 6 9 10 8 8 10 10 10 10 7 7 7 7 8 7 7 12 11 11", check },
    { of: ["vitaminK"], kind: "AI", values: "25 35 45 55 45 55 70 70 70 70 60 60 60 60 60 60 60 60 60 60", check },
    { of: ["choline"], kind: "AI", values: "200 250 375 550 375 400 550 550 550 550 425 425 425 425 415 440 440 525 550 550", check },
    { of: ["phosphorus"], kind: "RDI", values: "460 500 1250 1250 1250 1250 1000 1000 1000 1000 1000 1000 1000 1000 1250 1000 1000 1250 1000 1000", check },
    { of: ["zinc"], kind: "RDI", values: "3 4 6 13 6 7 14 14 14 14 8 8 8 8 10 11 11 11 12 12", check },
    { of: ["iron"], kind: "RDI", values: "9 10 8 11 8 15 8 8 8 8 18 18 8 8 27 27 27 10 9 9", check },
    { of: ["magnesium"], kind: "RDI", values: "80 130 240 410 240 360 400 420 420 420 310 320 320 320 400 350 360 360 310 320", check },
    { of: ["iodine"], kind: "RDI", values: "90 90 120 150 120 150 150 150 150 150 150 150 150 150 220 220 220 270 270 270", check },
    { of: ["selenium"], kind: "RDI", values: "25 30 50 70 50 60 70 70 70 70 60 60 60 60 65 65 65 75 75 75", check },
    { of: ["molybdenum"], kind: "RDI", values: "17 22 34 43 34 43 45 45 45 45 45 45 45 45 50 50 50 50 50 50", check },
    { of: ["copper"], kind: "AI", values: "0.7 1.0 1.3 1.5 1.1 1.1 1.7 1.7 1.7 1.7 1.2 1.2 1.2 1.2 1.2 1.3 1.3 1.4 1.5 1.5", check },
    { of: ["chromium"], kind: "AI", values: "11 15 25 35 21 24 35 35 35 35 25 25 25 25 30 30 30 45 45 45", check },
    { of: ["manganese"], kind: "AI", values: "2.0 2.5 3.0 3.5 2.5 3.0 5.5 5.5 5.5 5.5 5.0 5.0 5.0 5.0 5.0 5.0 5.0 5.0 5.0 5.0", check },
    { of: ["fluoride"], kind: "AI", values: "0.6 1.1 2.0 3.0 2.0 3.0 4.0 4.0 4.0 4.0 3.0 3.0 3.0 3.0 3.0 3.0 3.0 3.0 3.0 3.0", note: "of 2017 to 8 years", check },
    { of: ["sodium"], kind: "AI", values: "200-400 300-600 400-800 460-920 400-800 460-920 460-920 460-920 460-920 460-920 460-920 460-920 460-920 460-920 460-920 460-920 460-920 460-920 460-920 460-920", check },
    { of: ["potassium"], kind: "AI", values: "2000 2300 3000 3600 2500 2600 3800 3800 3800 3800 2800 2800 2800 2800 2800 2800 2800 3200 3200 3200", check },
    { of: ["omega6"], kind: "AI", values: "5 8 10 12 8 8 13 13 13 13 8 8 8 8 10 10 10 12 12 12", note: "all omega-6 fatty acids", check },
    { of: ["omega3"], kind: "AI", values: "0.5 0.8 1.0 1.2 0.8 0.8 1.3 1.3 1.3 1.3 0.8 0.8 0.8 0.8 1.0 1.0 1.0 1.2 1.2 1.2", note: "all omega-3 fatty acids", check },
    { of: ["epa", "dpa", "dha"], kind: "AI", unit: "mg", values: "40 55 70 125 70 85 160 160 160 160 90 90 90 90 110 115 115 140 145 145", check },
    { of: ["fibre"], kind: "AI", values: "14 18 24 28 20 22 30 30 30 30 25 25 25 25 25 28 28 27 30 30", check },
    { of: ["water"], kind: "AI", values: "1400 1600 2200 2700 1900 2200 3400 3400 3400 3400 2800 2800 2800 2800 2400 3100 3100 2900 3500 3500", note: "all water, of food and drink, printed in litres", check },
  ],
  // biome-ignore format: one nutrient a line
  uppers: [
    { of: ["retinol"], kind: "UL", basis: "retinol", covers: "preformed, all sources", values: "600 900 1700 2800 1700 2800 3000 3000 3000 3000 3000 3000 3000 3000 2800 3000 3000 2800 3000 3000", check },
    { of: ["vitaminD"], kind: "UL", covers: "all sources", values: "80 80 80 80 80 80 80 80 80 80 80 80 80 80 80 80 80 80 80 80", check },
    { of: ["vitaminE"], kind: "UL", basis: "alpha-tocopherol equivalents", covers: "all sources", values: "70 100 180 250 180 250 300 300 300 300 300 300 300 300 300 300 300 300 300 300", check },
    { of: ["niacin"], kind: "UL", basis: "nicotinic acid", covers: "supplements and fortified food", values: "10 15 20 30 20 30 35 35 35 35 35 35 35 35 30 35 35 30 35 35", check },
    { of: ["niacin"], kind: "UL", basis: "nicotinamide", covers: "supplements", values: "150 250 500 750 500 750 900 900 900 900 900 900 900 900 - - - - - -", check },
    { of: ["vitaminB6"], kind: "UL", covers: "all sources", values: "15 20 30 40 30 40 50 50 50 50 50 50 50 50 40 50 50 40 50 50", note: "as pyridoxine", check },
    { of: ["folicAcid"], kind: "UL", basis: "folic acid", covers: "added folic acid", values: "300 400 600 800 600 800 1000 1000 1000 1000 1000 1000 1000 1000 800 1000 1000 800 1000 1000", check },
    { of: ["choline"], kind: "UL", covers: "all sources", values: "1000 1000 1000 3000 1000 3000 3500 3500 3500 3500 3500 3500 3500 3500 3000 3500 3500 3000 3500 3500", check },
    { of: ["calcium"], kind: "UL", covers: "all sources", values: "2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500 2500", check },
    { of: ["phosphorus"], kind: "UL", covers: "all sources", values: "3000 3000 4000 4000 4000 4000 4000 4000 4000 3000 4000 4000 4000 3000 3500 3500 3500 4000 4000 4000", check },
    { of: ["zinc"], kind: "UL", covers: "all sources", values: "7 12 25 35 25 35 40 40 40 40 40 40 40 40 35 40 40 35 40 40", check },
    { of: ["iron"], kind: "UL", covers: "all sources", values: "20 40 40 45 40 45 45 45 45 45 45 45 45 45 45 45 45 45 45 45", check },
    { of: ["magnesium"], kind: "UL", covers: "supplements", values: "65 110 350 350 350 350 350 350 350 350 350 350 350 350 350 350 350 350 350 350", note: "counts supplements only, never food", check },
    { of: ["iodine"], kind: "UL", covers: "all sources", values: "200 300 600 900 600 900 1100 1100 1100 1100 1100 1100 1100 1100 900 1100 1100 900 1100 1100", check },
    { of: ["selenium"], kind: "UL", covers: "all sources", values: "90 150 280 400 280 400 400 400 400 400 400 400 400 400 400 400 400 400 400 400", check },
    { of: ["molybdenum"], kind: "UL", covers: "all sources", values: "300 600 1100 1700 1100 1700 2000 2000 2000 2000 2000 2000 2000 2000 1700 2000 2000 1700 2000 2000", check },
    { of: ["copper"], kind: "UL", covers: "all sources", values: "1 3 5 8 5 8 10 10 10 10 10 10 10 10 8 10 10 8 10 10", check },
    { of: ["fluoride"], kind: "UL", covers: "all sources", values: "2.4 4.4 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10", note: "of 2017 to 8 years", check },
    { of: ["sodium"], kind: "UL", covers: "all sources", values: "1000 1400 2000 2300 2000 2300 - - - - - - - - 2300 - - 2300 - -", note: "of 2006; that of adults was withdrawn in 2017", check },
    { of: ["epa", "dpa", "dha"], kind: "UL", unit: "mg", covers: "all sources", values: "3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000 3000", check },
  ],
};

/** Summary table 4: protein of the report's reference bodies; what pregnancy adds begins with its second trimester. */
export const anzProtein: IntakeTable = {
  source: NHMRC,
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-8", "M 9-13", "M 14-18", "F 9-13", "F 14-18", "M 19-70", "M 71+", "F 19-70", "F 71+", "P1 14-50", "P23 14-18", "P23 19-50", "L 14-18", "L 19-50"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["protein"], kind: "RDI", values: "14 20 40 65 35 45 64 81 46 57 = 58 60 63 67", note: "for a reference body", check },
  ],
};

/** Summary table 7: calcium, which parts the years from 9 to 13. */
export const anzCalcium: IntakeTable = {
  source: NHMRC,
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-8", "9-11", "12-18", "M 19-70", "M 71+", "F 19-50", "F 51+", "P 14-18", "P 19-50", "L 14-18", "L 19-50"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["calcium"], kind: "RDI", values: "500 700 1000 1300 1000 1300 1000 1300 1300 1000 1300 1000", check },
  ],
};

/** Suggested dietary targets: intakes that lower the risk of chronic disease, besides those that nobody goes short on. */
export const anzTargets: IntakeTable = {
  source: NHMRC,
  stages: ["M 19+", "F 19+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminARe"], kind: "SDT", basis: "RE", values: "1500 1220", check },
    { of: ["vitaminC"], kind: "SDT", values: "220 190", check },
    { of: ["vitaminE"], kind: "SDT", basis: "alpha-tocopherol equivalents", values: "19 14", check },
    { of: ["potassium"], kind: "SDT", values: "4700 4700", check },
    { of: ["fibre"], kind: "SDT", values: "38 28", check },
    { of: ["epa", "dpa", "dha"], kind: "SDT", unit: "mg", values: "610 430", check },
  ],
  // biome-ignore format: one nutrient a line
  uppers: [
    { of: ["sodium"], kind: "SDT", covers: "all sources", values: "2000 2000", note: "a target to lower the risk of disease, and no level of harm", check },
  ],
};
