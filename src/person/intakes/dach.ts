import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * The reference values of Germany, Austria and Switzerland (D-A-CH; DGE, ÖGE, SGE): recommended intakes, estimated
 * values and guiding values. Read in the table that the DGE's own tool hands out, as someone kept it about 2024;
 * it has everyone but mothers. Of them vitamin A was read at the SGE (values of 2020), vitamin C, folate and selenium in
 * copies; what else they need was not read, and every figure that leaves them out says so. Pregnancy counts from its
 * fourth month.
 *
 * Missing here: other figures of mothers, energy, water, upper levels, infants, and what was revised since.
 */
const check: Check = "copy";
const DACH =
  "DGE, ÖGE and SGE, D-A-CH reference values for nutrient intake, the DGE's table as of about 2024";

export const dachReferences: IntakeTable = {
  source: DACH,
  mothers: "not read",
  // biome-ignore format: the columns of the table
  stages: ["M 1-3", "M 4-6", "M 7-9", "M 10-12", "M 13-14", "M 15-18", "M 19-24", "M 25-50", "M 51-64", "M 65+", "F 1-3", "F 4-6", "F 7-9", "F 10-12", "F 13-14", "F 15-18", "F 19-24", "F 25-50", "F 51-64", "F 65+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["protein"], kind: "RI", per: "kg", values: "1.0 0.9 0.9 0.9 0.9 0.9 0.8 0.8 0.8 - 1.0 0.9 0.9 0.9 0.9 0.8 0.8 0.8 0.8 -", check },
    { of: ["protein"], kind: "estimated value", per: "kg", values: "- - - - - - - - - 1.0 - - - - - - - - - 1.0", check },
    { of: ["vitaminD"], kind: "estimated value", values: "20 20 20 20 20 20 20 20 20 20 20 20 20 20 20 20 20 20 20 20", note: "where the skin makes none", check },
    { of: ["vitaminE"], kind: "estimated value", values: "6 8 10 13 14 15 15 14 13 12 5 8 9 11 12 12 12 12 12 11", check },
    { of: ["vitaminK"], kind: "estimated value", values: "15 20 30 40 50 70 70 70 80 80 15 20 30 40 50 60 60 60 65 65", check },
    { of: ["thiamin"], kind: "RI", values: "0.6 0.7 0.9 1.0 1.2 1.4 1.3 1.2 1.2 1.1 0.6 0.7 0.8 0.9 1.0 1.1 1.0 1.0 1.0 1.0", check },
    { of: ["riboflavin"], kind: "RI", values: "0.7 0.8 1.0 1.1 1.4 1.6 1.4 1.4 1.3 1.3 0.7 0.8 0.9 1.0 1.1 1.2 1.1 1.1 1.0 1.0", check },
    { of: ["niacinEquivalents"], kind: "RI", basis: "NE", values: "8 9 11 13 15 17 16 15 15 14 8 9 10 11 13 13 13 12 11 11", check },
    { of: ["vitaminB6"], kind: "RI", values: "0.6 0.7 1.0 1.2 1.5 1.6 1.6 1.6 1.6 1.6 0.6 0.7 1.0 1.2 1.4 1.4 1.4 1.4 1.4 1.4", check },
    { of: ["pantothenicAcid"], kind: "estimated value", values: "4 4 4 5 5 5 5 5 5 5 4 4 4 5 5 5 5 5 5 5", check },
    { of: ["biotin"], kind: "estimated value", values: "20 25 25 35 35 40 40 40 40 40 20 25 25 35 35 40 40 40 40 40", check },
    { of: ["vitaminB12"], kind: "estimated value", values: "1.5 2.0 2.5 3.5 4.0 4.0 4.0 4.0 4.0 4.0 1.5 2.0 2.5 3.5 4.0 4.0 4.0 4.0 4.0 4.0", check },
    { of: ["sodium"], kind: "estimated value", values: "400 500 750 1100 1400 1500 1500 1500 1500 1500 400 500 750 1100 1400 1500 1500 1500 1500 1500", check },
    { of: ["chloride"], kind: "estimated value", values: "600 750 1150 1700 2150 2300 2300 2300 2300 2300 600 750 1150 1700 2150 2300 2300 2300 2300 2300", check },
    { of: ["potassium"], kind: "estimated value", values: "1100 1300 2000 2900 3600 4000 4000 4000 4000 4000 1100 1300 2000 2900 3600 4000 4000 4000 4000 4000", check },
    { of: ["calcium"], kind: "RI", values: "600 750 900 1100 1200 1200 1000 1000 1000 1000 600 750 900 1100 1200 1200 1000 1000 1000 1000", check },
    { of: ["phosphorus"], kind: "RI", values: "500 600 800 1250 1250 1250 700 700 700 700 500 600 800 1250 1250 1250 700 700 700 700", check },
    { of: ["magnesium"], kind: "estimated value", values: "170 190 240 260 280 330 350 350 350 350 170 190 240 230 240 260 300 300 300 300", check },
    { of: ["iron"], kind: "RI", values: "8 8 10 12 12 12 10 10 10 10 8 8 10 15 15 15 15 15 10 10", check },
    { of: ["iodine"], kind: "RI", values: "100 120 140 180 200 200 200 200 180 180 100 120 140 180 200 200 200 200 180 180", check },
    { of: ["fluoride"], kind: "guiding value", values: "0.7 1.1 1.1 2.0 3.2 3.2 3.8 3.8 3.8 3.8 0.7 1.1 1.1 2.0 2.9 2.9 3.1 3.1 3.1 3.1", check },
    { of: ["copper"], kind: "estimated value", values: "0.5-1.0 0.5-1.0 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5 0.5-1.0 0.5-1.0 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5 1.0-1.5", check },
    { of: ["manganese"], kind: "estimated value", values: "1.0-1.5 1.5-2.0 2.0-3.0 2.0-5.0 2.0-5.0 2.0-5.0 2.0-5.0 2.0-5.0 2.0-5.0 2.0-5.0 1.0-1.5 1.5-2.0 2.0-3.0 2.0-5.0 2.0-5.0 2.0-5.0 2.0-5.0 2.0-5.0 2.0-5.0 2.0-5.0", check },
    { of: ["chromium"], kind: "estimated value", values: "20-60 20-80 20-100 20-100 20-100 30-100 30-100 30-100 30-100 30-100 20-60 20-80 20-100 20-100 20-100 30-100 30-100 30-100 30-100 30-100", check },
    { of: ["molybdenum"], kind: "estimated value", values: "25-50 30-75 40-80 50-100 50-100 50-100 50-100 50-100 50-100 50-100 25-50 30-75 40-80 50-100 50-100 50-100 50-100 50-100 50-100 50-100", check },
    { of: ["linoleicAcid"], kind: "RI", per: "% energy", values: "3.0 2.5 2.5 2.5 2.5 2.5 2.5 2.5 2.5 2.5 3.0 2.5 2.5 2.5 2.5 2.5 2.5 2.5 2.5 2.5", check },
    { of: ["alphaLinolenicAcid"], kind: "estimated value", per: "% energy", values: "0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5", check },
    { of: ["epa", "dha"], kind: "estimated value", unit: "mg", values: "250 250 250 250 250 250 250 250 250 250 250 250 250 250 250 250 250 250 250 250", check },
    { of: ["fibre"], kind: "guiding value", values: "- - - - - - 30 30 30 30 - - - - - - 30 30 30 30", note: "at least this", check },
  ],
};

/** Zinc, of adults by low, medium and high phytate, taken for 300, 600 and 900 mg a day and more. */
export const dachZinc: IntakeTable = {
  source: DACH,
  mothers: "not read",
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-9", "M 10-12", "M 13-14", "M 15-18", "F 10-12", "F 13-14", "F 15-18", "M 19+", "F 19+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["zinc"], kind: "RI", values: "3 4 6 9 12 14 8 10 11 - -", check },
    { of: ["zinc"], kind: "RI", when: { phytate: "300" }, values: "- - - - - - - - - 11 7", check },
    { of: ["zinc"], kind: "RI", when: { phytate: "600" }, values: "- - - - - - - - - 14 8", check },
    { of: ["zinc"], kind: "RI", when: { phytate: "900" }, values: "- - - - - - - - - 16 10", check },
    { of: ["zinc"], kind: "RI", when: { phytate: "1200" }, values: "- - - - - - - - - 16 10", check },
  ],
};

export const dachVitaminA: IntakeTable = {
  source: "SGE, D-A-CH reference values 2020, vitamin A",
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-9", "10-12", "M 13-14", "M 15-18", "M 19-64", "M 65+", "F 13-14", "F 15-18", "F 19+", "P1 10+", "P23 10+", "L 10+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminARae"], kind: "RI", basis: "RAE", values: "300 350 450 600 800 950 850 800 700 800 700 = 800 1300", note: "the figure of pregnancy is of its fourth month and after", check: "issuer" },
  ],
};

export const dachVitaminC: IntakeTable = {
  source: DACH,
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-9", "10-12", "13-14", "M 15-18", "M 19+", "F 15-18", "F 19+", "P1 10+", "P23 10+", "L 10+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminC"], kind: "RI", values: "20 30 45 65 85 105 110 90 95 = 105 125", note: "the figure of pregnancy is of its fourth month and after; more for people who smoke", check },
  ],
};

export const dachFolate: IntakeTable = {
  source: DACH,
  mothers: "not read",
  stages: ["1-3", "4-6", "7-9", "10-12", "13+", "P 10+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["folateDfe"], kind: "RI", basis: "DFE", values: "120 140 180 240 300 550", check },
  ],
};

export const dachSelenium: IntakeTable = {
  source: DACH,
  mothers: "not read",
  stages: ["1-3", "4-6", "7-9", "10-12", "M 13-14", "M 15+", "F 13+", "L 10+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["selenium"], kind: "estimated value", values: "15 20 30 45 60 70 60 75", check },
  ],
};
