import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Dietary Reference Intakes: Tolerable Upper Intake Levels, Vitamins and Elements. Food and Nutrition
 * Board, Institute of Medicine, National Academies. Vitamin D and calcium are those of 2011: a copy at
 * NCBI (NBK278991) still prints 50 µg of 1997 for vitamin D. The sodium figure is the intake above
 * which the 2019 report expects less chronic disease from eating less, and not a UL. Where a nutrient
 * is absent no level could be set, which does not make any amount safe.
 */
const vitamins: Check = "copy";
const vitaminD: Check = "copy";
const elements: Check = "copy";
/** Appendix J, the table of chronic disease risk reduction intakes; pregnancy and breastfeeding go by their age there. */
const cdrr: Check = "issuer";

export const usUpper: IntakeTable = {
  source:
    "National Academies (US, Canada), Dietary Reference Intakes, summary tables (to 2019): tolerable upper intake levels",
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-8", "9-13", "14-18", "19-50", "51-70", "71+", "P 14-18", "P 19-50", "L 14-18", "L 19-50"],
  // biome-ignore format: one nutrient a line
  uppers: [
    { of: ["retinol"], kind: "UL", basis: "retinol", covers: "preformed, all sources", values: "600 900 1700 2800 3000 3000 3000 2800 3000 2800 3000", check: vitamins },
    { of: ["vitaminC"], kind: "UL", covers: "all sources", values: "400 650 1200 1800 2000 2000 2000 1800 2000 1800 2000", check: vitamins },
    { of: ["vitaminD"], kind: "UL", covers: "all sources", values: "63 75 100 100 100 100 100 100 100 100 100", check: vitaminD },
    { of: ["vitaminE"], kind: "UL", basis: "alpha-tocopherol", covers: "supplements and fortified food", values: "200 300 600 800 1000 1000 1000 800 1000 800 1000", check: vitamins },
    { of: ["niacin"], kind: "UL", covers: "supplements and fortified food", values: "10 15 20 30 35 35 35 30 35 30 35", check: vitamins },
    { of: ["vitaminB6"], kind: "UL", covers: "all sources", values: "30 40 60 80 100 100 100 80 100 80 100", check: vitamins },
    { of: ["folicAcid"], kind: "UL", basis: "folic acid", covers: "added folic acid", values: "300 400 600 800 1000 1000 1000 800 1000 800 1000", check: vitamins },
    { of: ["choline"], kind: "UL", unit: "g", covers: "all sources", values: "1.0 1.0 2.0 3.0 3.5 3.5 3.5 3.0 3.5 3.0 3.5", check: vitamins },
    { of: ["calcium"], kind: "UL", covers: "all sources", values: "2500 2500 3000 3000 2500 2000 2000 3000 2500 3000 2500", check: elements },
    { of: ["copper"], kind: "UL", unit: "µg", covers: "all sources", values: "1000 3000 5000 8000 10000 10000 10000 8000 10000 8000 10000", check: elements },
    { of: ["fluoride"], kind: "UL", covers: "all sources", values: "1.3 2.2 10 10 10 10 10 10 10 10 10", check: elements },
    { of: ["iodine"], kind: "UL", covers: "all sources", values: "200 300 600 900 1100 1100 1100 900 1100 900 1100", check: elements },
    { of: ["iron"], kind: "UL", covers: "all sources", values: "40 40 40 45 45 45 45 45 45 45 45", check: elements },
    { of: ["magnesium"], kind: "UL", covers: "supplements", values: "65 110 350 350 350 350 350 350 350 350 350", note: "counts pharmacological agents only, never food: the RDA lies above it", check: elements },
    { of: ["manganese"], kind: "UL", covers: "all sources", values: "2 3 6 9 11 11 11 9 11 9 11", check: elements },
    { of: ["molybdenum"], kind: "UL", covers: "all sources", values: "300 600 1100 1700 2000 2000 2000 1700 2000 1700 2000", check: elements },
    { of: ["phosphorus"], kind: "UL", unit: "g", covers: "all sources", values: "3 3 4 4 4 4 3 3.5 3.5 4 4", check: elements },
    { of: ["selenium"], kind: "UL", covers: "all sources", values: "90 150 280 400 400 400 400 400 400 400 400", check: elements },
    { of: ["zinc"], kind: "UL", covers: "all sources", values: "7 12 23 34 40 40 40 34 40 34 40", check: elements },
    { of: ["chloride"], kind: "UL", unit: "g", covers: "all sources", values: "2.3 2.9 3.4 3.6 3.6 3.6 3.6 3.6 3.6 3.6 3.6", check: elements },
    { of: ["sodium"], kind: "CDRR", covers: "all sources", values: "- - - 2300 2300 2300 2300 2300 2300 2300 2300", source: "National Academies 2019, DRI for Sodium and Potassium: chronic disease risk reduction intake", check: cdrr },
    { of: ["sodium"], kind: "CDRR", covers: "all sources", values: "1200 1500 1800 - - - - - - - -", source: "National Academies 2019, DRI for Sodium and Potassium: chronic disease risk reduction intake", check: cdrr },
  ],
};

/** Caffeine of mothers, of whom the Dietary Reference Intakes say nothing. */
export const usCaffeine: IntakeTable = {
  source:
    "American College of Obstetricians and Gynecologists 2010, Committee Opinion 462: caffeine in pregnancy",
  stages: ["P 10+", "L 10+"],
  // biome-ignore format: one row a line
  uppers: [
    { of: ["caffeine"], kind: "guidance level", covers: "all sources", values: "200 -", note: "less than this", check: "copy" },
    { of: ["caffeine"], kind: "guidance level", covers: "all sources", values: "- 300", note: "about this or less", source: "Dietary Guidelines for Americans 2020-2025, caffeine and lactation", check: "unverified" },
  ],
};
