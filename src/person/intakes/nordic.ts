import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Nordic Nutrition Recommendations 2023 (Nordic Council of Ministers, Nord 2023:003), recommended (RI) and adequate
 * intakes (AI), as the Swedish Food Agency prints them on its pages of single nutrients (Livsmedelsverket, reviewed
 * March to May 2024). The report itself was not read, whose later edition parts some figures of pregnancy by
 * trimester; no ages are printed for mothers, and adults are meant.
 *
 * Missing here is the greater part: energy, protein, fats, carbohydrate and fibre; iron, copper, phosphorus, sodium
 * and the trace elements; vitamins A, C and K and the B vitamins but folate; the other upper levels; average
 * requirements and infants. `missing` in authority.ts says so to a reader.
 */
const check: Check = "copy";
const NNR = "Nordic Nutrition Recommendations 2023, as the Swedish Food Agency prints them (2024)";

export const nordicReferences: IntakeTable = {
  source: NNR,
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-10", "F 11-14", "F 15-17", "F 18-24", "F 25-50", "F 51-70", "F 71+", "M 11-14", "M 15-17", "M 18-24", "M 25-50", "M 51-70", "M 71+", "P 18+", "L 18+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["folate"], kind: "RI", basis: "folate", values: "120 140 200 280 310 330 330 330 330 260 320 330 330 330 330 600 490", note: "printed as µg of folate; without the folic acid that is advised besides before a pregnancy and in its first three months", check },
    { of: ["vitaminE"], kind: "AI", basis: "alpha-tocopherol equivalents", values: "7 8 9 10 11 10 10 9 9 11 12 11 11 11 11 11 12", check },
    { of: ["calcium"], kind: "RI", values: "450 800 800 1150 1150 1000 950 950 950 1150 1150 1000 950 950 950 950 950", check },
    { of: ["zinc"], kind: "RI", values: "4.5 5.8 7.7 10.8 12.2 9.7 9.7 9.5 9.3 11.1 14 12.7 12.7 12.4 12.1 11.3 12.6", note: "of a mixed diet; a quarter to three tenths more where it is vegetarian and of cereals", check },
    { of: ["potassium"], kind: "AI", unit: "g", values: "0.85 1.15 1.8 2.4 2.85 3.5 3.5 3.5 3.5 2.55 3.4 3.4 3.5 3.5 3.5 3.5 3.5", check },
    { of: ["iodine"], kind: "AI", values: "100 100 100 120 120 150 150 150 150 130 140 150 150 150 150 200 200", check },
    { of: ["selenium"], kind: "AI", values: "20 25 40 60 70 75 75 75 75 65 85 90 90 90 90 90 85", check },
  ],
  // biome-ignore format: one nutrient a line
  uppers: [
    { of: ["calcium"], kind: "UL", covers: "all sources", values: "- - - - - 2500 2500 2500 2500 - - 2500 2500 2500 2500 - -", check },
    { of: ["selenium"], kind: "UL", covers: "all sources", values: "- - - - - 255 255 255 255 - - 255 255 255 255 - -", check },
    { of: ["magnesium"], kind: "UL", covers: "supplements", values: "- - - - - 250 250 250 250 - - 250 250 250 250 - -", check },
  ],
};

/** Magnesium, of whose page mothers are not named. */
export const nordicMagnesium: IntakeTable = {
  source: NNR,
  mothers: "not read",
  stages: ["1-3", "4-10", "F 11-17", "F 18+", "M 11-17", "M 18+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["magnesium"], kind: "AI", values: "170 230 250 300 300 350", check },
  ],
};

/** Vitamin D, of everyone: more from 75. */
export const nordicVitaminD: IntakeTable = {
  source: NNR,
  stages: ["1-74", "75+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminD"], kind: "RI", values: "10 20", note: "20 µg where hardly any sun is had, too", check },
  ],
};
