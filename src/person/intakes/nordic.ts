import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Nordic Nutrition Recommendations 2023 (Nordic Council of Ministers, Nord 2023:003): recommended intakes (RI)
 * and adequate intakes (AI) in tables 11 to 16, upper levels of adults in table 21, fibre and fatty acids in
 * boxes 2 to 8. The issuer's pages were not read: figures were read in two copies, the tables of the web edition
 * as a script took them from it, and a transcription of the PDF (pages 58 to 82), which is the later one. It parts
 * pregnancy by trimester, where the web edition has one figure; breastfeeding women differ in vitamin E (12 mg),
 * phosphorus (530 mg) and fluoride (3.1 mg). The later stand here. "70 years" and over begins above 70; no ages
 * are printed for mothers, and adults are meant.
 *
 * Missing here: energy (tables 8 to 10), average requirements, fibre of children, and infants.
 */
const check: Check = "copy";
const NNR = "Nordic Nutrition Recommendations 2023";
const BOXES = "Nordic Nutrition Recommendations 2023, boxes 2 to 8";

export const nordicReferences: IntakeTable = {
  source: NNR,
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-10", "F 11-14", "F 15-17", "F 18-24", "F 25-50", "F 51-70", "F 71+", "P1 18+", "P2 18+", "P3 18+", "L 18+", "M 11-14", "M 15-17", "M 18-24", "M 25-50", "M 51-70", "M 71+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminARe"], kind: "RI", basis: "RE", values: "300 350 450 650 650 700 700 700 650 750 750 750 1400 700 750 800 800 800 750", check },
    { of: ["thiamin"], kind: "RI", per: "MJ", values: "0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1", check },
    { of: ["riboflavin"], kind: "RI", values: "0.6 0.7 1.0 1.4 1.6 1.6 1.6 1.6 1.6 1.6 1.7 1.8 2.0 1.3 1.6 1.6 1.6 1.6 1.6", check },
    { of: ["niacinEquivalents"], kind: "RI", basis: "NE", per: "MJ", values: "1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6", check },
    { of: ["vitaminB6"], kind: "RI", values: "0.6 0.7 1.0 1.3 1.5 1.6 1.6 1.6 1.6 1.6 1.8 2.0 1.7 1.5 1.8 1.8 1.8 1.8 1.7", check },
    { of: ["folate"], kind: "RI", basis: "folate", values: "120 140 200 280 310 330 330 330 330 - - - 490 260 320 330 330 330 330", note: "printed as µg of folate", check },
    { of: ["folate"], kind: "AI", basis: "folate", values: "- - - - - - - - - 600 600 600 - - - - - - -", note: "most of the countries advise 400 µg of folic acid besides, from when a pregnancy is planned through its first three months", check },
    { of: ["vitaminC"], kind: "RI", values: "25 35 55 75 90 95 95 95 95 105 105 105 155 80 105 110 110 110 110", check },
    { of: ["vitaminE"], kind: "AI", basis: "alpha-tocopherol equivalents", values: "7 8 9 10 11 10 10 9 9 10 11 12 11 11 12 11 11 11 11", note: "where 5 % of energy comes from polyunsaturated fatty acids", check },
    { of: ["vitaminK"], kind: "AI", values: "15 20 30 45 60 65 65 60 60 65 70 75 65 50 65 75 75 70 70", note: "1 µg per kg of body mass", check },
    { of: ["pantothenicAcid"], kind: "AI", values: "4 4 4 5 5 5 5 5 5 5 5 5 7 5 5 5 5 5 5", check },
    { of: ["biotin"], kind: "AI", values: "20 25 25 35 35 40 40 40 40 40 40 40 45 35 35 40 40 40 40", check },
    { of: ["vitaminB12"], kind: "AI", values: "1.5 1.7 2.5 3.5 4 4 4 4 4 4.5 4.5 4.5 5.5 3 4 4 4 4 4", check },
    { of: ["choline"], kind: "AI", values: "150 170 250 350 390 400 400 400 400 410 430 470 520 330 400 400 400 400 400", check },
    { of: ["calcium"], kind: "RI", values: "450 800 800 1150 1150 1000 950 950 950 950 950 950 950 1150 1150 1000 950 950 950", check },
    { of: ["iron"], kind: "RI", values: "7 7 9 13 15 15 15 - 7 24 25 26 15 11 11 9 9 9 9", note: "with about 600 mg of phytic acid a day; 15 mg for girls who menstruate before 15", check },
    { of: ["iron"], kind: "RI", when: "premenopausal", values: "- - - - - - - 15 - - - - - - - - - - -", check },
    { of: ["iron"], kind: "RI", when: "postmenopausal", values: "- - - - - - - 8 - - - - - - - - - - -", check },
    { of: ["zinc"], kind: "RI", values: "4.5 5.8 7.7 10.8 12.2 9.7 9.7 9.5 9.3 9.7 12.1 12.1 12.6 11.1 14.0 12.7 12.7 12.4 12.1", note: "with about 600 mg of phytic acid a day", check },
    { of: ["copper"], kind: "RI", unit: "µg", values: "340 400 570 780 880 900 900 900 900 1000 1000 1000 1300 740 900 900 900 900 900", check },
    { of: ["phosphorus"], kind: "AI", values: "250 440 440 640 640 550 520 520 520 520 520 520 520 640 640 550 520 520 520", note: "with the recommended calcium", check },
    { of: ["potassium"], kind: "AI", values: "850 1150 1800 2400 2850 3500 3500 3500 3500 3500 3500 3500 3500 2550 3400 3500 3500 3500 3500", check },
    { of: ["magnesium"], kind: "AI", values: "170 230 230 250 250 300 300 300 300 300 300 300 300 300 300 350 350 350 350", check },
    { of: ["iodine"], kind: "AI", values: "100 100 100 120 120 150 150 150 150 175 200 200 200 130 140 150 150 150 150", check },
    { of: ["selenium"], kind: "AI", values: "20 25 40 60 70 75 75 75 75 80 85 90 85 65 85 90 90 90 85", check },
    { of: ["fluoride"], kind: "AI", values: "0.7 1.0 1.5 2.3 2.9 3.2 3.2 3.1 3.0 3.2 3.2 3.2 3.2 2.4 3.3 3.8 3.7 3.7 3.5", note: "0.05 mg per kg, of bodies of the report's reference mass", check },
    { of: ["manganese"], kind: "AI", values: "0.5 1 1.5 2 3 3 3 3 3 3 3 3 3 2 2.5 3 3 3 3", check },
    { of: ["molybdenum"], kind: "AI", values: "15 20 30 50 60 65 65 65 65 65 65 65 65 45 60 65 65 65 65", check },
    { of: ["fibre"], kind: "RI", values: "- - - - - 25 25 25 25 - - - - - - 35 35 35 35", note: "at least this, and 3 g per MJ", source: BOXES, check },
    { of: ["dha"], kind: "RI", unit: "mg", values: "- - - - - - - - - 200 200 200 200 - - - - - -", note: "of at least 1 % of energy from omega-3 fatty acids", source: BOXES, check },
  ],
  // biome-ignore format: one nutrient a line
  uppers: [
    { of: ["sodium"], kind: "CDRR", unit: "g", covers: "all sources", values: "1.1 1.4 1.7 2.0 2.3 2.3 2.3 2.3 2.3 2.3 2.3 2.3 2.3 2.0 2.3 2.3 2.3 2.3 2.3", note: "the intake above which eating less lowers the risk of disease", check },
  ],
};

/** Table 11: protein, g per kg of body mass. */
export const nordicProtein: IntakeTable = {
  source: NNR,
  stages: ["1-3", "4-6", "7-10", "F 11-14", "F 15-17", "M 11-14", "M 15-17", "18+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["protein"], kind: "RI", per: "kg", values: "1.05 0.86 0.91 0.88 0.84 0.90 0.87 0.83", adds: { pregnant: ["1", "9", "28"], breastfeeding: { first: "19", later: "13", fromMonth: 6 } }, note: "breastfeeding adds more in the first six months", check },
  ],
};

/** Table 12: vitamin D, whose higher figure a footnote gives from 75. */
export const nordicVitaminD: IntakeTable = {
  source: NNR,
  stages: ["1-74", "75+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminD"], kind: "RI", values: "10 20", check },
  ],
};

/**
 * Table 21: upper levels of adults. What the forms of niacin and magnesium count is taken from EFSA's opinions,
 * whose figures these are.
 */
export const nordicUpper: IntakeTable = {
  source: NNR,
  stages: ["18+"],
  // biome-ignore format: one nutrient a line
  uppers: [
    { of: ["calcium"], kind: "UL", covers: "all sources", values: "2500", check },
    { of: ["copper"], kind: "UL", covers: "all sources", values: "5", check },
    { of: ["iodine"], kind: "UL", covers: "all sources", values: "600", check },
    { of: ["iron"], kind: "UL", covers: "all sources", values: "60", check },
    { of: ["magnesium"], kind: "UL", covers: "supplements and fortified food and water", values: "250", note: "readily dissolved salts that were added; not the magnesium of food", check },
    { of: ["molybdenum"], kind: "UL", unit: "mg", covers: "all sources", values: "0.6", check },
    { of: ["phosphorus"], kind: "UL", covers: "all sources", values: "3000", check },
    { of: ["selenium"], kind: "UL", covers: "all sources", values: "255", check },
    { of: ["zinc"], kind: "UL", covers: "all sources", values: "25", check },
    { of: ["fluoride"], kind: "UL", covers: "all sources", values: "7", check },
    { of: ["folicAcid"], kind: "UL", basis: "folic acid", covers: "added folic acid", values: "1000", check },
    { of: ["niacin"], kind: "UL", basis: "nicotinamide", covers: "supplements and fortified food", values: "900", check },
    { of: ["niacin"], kind: "UL", basis: "nicotinic acid", covers: "supplements and fortified food", values: "10", check },
    { of: ["retinol"], kind: "UL", basis: "RE", covers: "preformed, all sources", values: "3000", check },
    { of: ["vitaminB6"], kind: "UL", covers: "all sources", values: "12", check },
    { of: ["vitaminD"], kind: "UL", covers: "all sources", values: "100", check },
    { of: ["vitaminE"], kind: "UL", basis: "alpha-tocopherol", covers: "all sources", values: "300", check },
  ],
};
