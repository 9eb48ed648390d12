import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Tolerable upper intake levels of the Scientific Committee on Food and of EFSA, read in EFSA's Overview on
 * Tolerable Upper Intake Levels, version 11 (August 2025): minerals in table 1 (page 2), safe levels of intake
 * in table 2 (page 3), vitamins in table 3 (page 4). Caffeine was read in the abstract of its opinion, vitamin
 * E in that of its review of 2024 besides, which kept every figure. Lower figures that replaced older ones:
 * vitamin B6 (25 to 12 mg), selenium (300 to 255 µg), fluoride (7 to 3.3 mg).
 */
const read: Check = "issuer";
const scf = "SCF and EFSA, overview of tolerable upper intake levels, version 11, 2025";

export const euUpper: IntakeTable = {
  source: scf,
  stages: ["1-3", "4-6", "7-10", "11-14", "15-17", "18+", "P 18+", "L 18+"],
  // biome-ignore format: one nutrient a line
  uppers: [
    { of: ["retinol"], kind: "UL", basis: "RE", covers: "preformed, all sources", values: "800 1100 1500 2000 2600 3000 3000 3000", note: "does not look after the bones of women past menopause, for whom 1,500 µg is advised; liver at most once a month, and none in pregnancy", source: "EFSA Journal 2024;22(6):8814", check: read },
    { of: ["vitaminD"], kind: "UL", covers: "all sources", values: "50 50 50 100 100 100 100 100", source: "EFSA Journal 2023;21(8):8145", check: read },
    { of: ["vitaminE"], kind: "UL", basis: "alpha-tocopherol", covers: "all sources", values: "100 120 160 220 260 300 300 300", source: "EFSA Journal 2024;22(8):8953", check: read },
    { of: ["niacin"], kind: "UL", basis: "nicotinic acid", covers: "supplements and fortified food", values: "2 3 4 6 8 10 - -", check: read },
    { of: ["niacin"], kind: "UL", basis: "nicotinamide", covers: "supplements and fortified food", values: "150 220 350 500 700 900 - -", check: read },
    { of: ["vitaminB6"], kind: "UL", covers: "all sources", values: "3.2 4.5 6.1 8.6 10.7 12 12 12", source: "EFSA Journal 2023;21(5):8006", check: read },
    { of: ["folicAcid"], kind: "UL", basis: "folic acid", covers: "added folic acid", values: "200 300 400 600 800 1000 1000 1000", note: "folic acid and the permitted 5-methyl-folate salts together; not the folate of food", source: "EFSA Journal 2023;21(11):8353", check: read },
    { of: ["calcium"], kind: "UL", covers: "all sources", values: "- - - - - 2500 2500 2500", source: "EFSA Journal 2012;10(7):2814", check: read },
    { of: ["copper"], kind: "UL", covers: "all sources", values: "1 2 3 4 4 5 - -", check: read },
    { of: ["copper"], kind: "ADI", covers: "all sources", per: "kg", values: "- - - - - 0.07 - -", note: "of adults, from an intake of 5 mg at which the body keeps no copper back", source: "EFSA Scientific Committee 2023, copper from all sources, EFSA Journal 21(1):7728", check: read },
    { of: ["fluoride"], kind: "UL", covers: "all sources", values: "1.6 - - - - - - -", source: "EFSA Journal 2025;23(7):9478", check: read },
    { of: ["iodine"], kind: "UL", covers: "all sources", values: "200 250 300 450 500 600 600 600", check: read },
    { of: ["iron"], kind: "safe level of intake", covers: "all sources", values: "10 15 20 30 35 40 40 40", note: "weaker than a UL; not for people treated for deficiency", source: "EFSA Journal 2024;22(6):8819", check: read },
    { of: ["magnesium"], kind: "UL", covers: "supplements and fortified food and water", values: "- 250 250 250 250 250 250 250", note: "readily dissolved salts that were added; not the magnesium of food", check: read },
    { of: ["molybdenum"], kind: "UL", unit: "mg", covers: "all sources", values: "0.1 0.2 0.25 0.4 0.5 0.6 0.6 0.6", check: read },
    { of: ["selenium"], kind: "UL", covers: "all sources", values: "70 95 130 180 230 255 255 255", source: "EFSA Journal 2023;21(1):7704", check: read },
    { of: ["caffeine"], kind: "safe level of intake", covers: "all sources", values: "- - - - - 400 200 200", note: "200 mg at one time, less than 2 hours before hard exercise too; 100 mg near bedtime can delay sleep", source: "EFSA Journal 2015;13(5):4102", check: read },
    { of: ["caffeine"], kind: "safe level of intake", covers: "all sources", per: "kg", values: "3 3 3 3 3 - - -", note: "too little is known of children: what gives no concern for adults at one time is taken for a day", source: "EFSA Journal 2015;13(5):4102", check: read },
    { of: ["zinc"], kind: "UL", covers: "all sources", values: "7 10 13 18 22 25 25 25", check: read },
  ],
};

/** EFSA Journal 2025;23(7):9478: fluoride above three years, whose bands differ. */
export const euFluoride: IntakeTable = {
  source: "EFSA Scientific Committee 2025, fluoride in food and drinking water, EFSA Journal 23(7):9478",
  stages: ["4-8", "9+"],
  // biome-ignore format: one row a line
  uppers: [
    { of: ["fluoride"], kind: "UL", covers: "all sources", values: "2 -", check: read },
    { of: ["fluoride"], kind: "safe level of intake", covers: "all sources", values: "- 3.3", check: read },
  ],
};

/** EFSA Journal 2023;21(12):8413: manganese, whose bands differ. */
export const euManganese: IntakeTable = {
  source: "EFSA NDA Panel 2023, tolerable upper intake level for manganese, EFSA Journal 21(12):8413",
  stages: ["1-2", "3-6", "7-13", "14-17", "18+", "P 18+", "L 18+"],
  // biome-ignore format: one row a line
  uppers: [
    { of: ["manganese"], kind: "safe level of intake", covers: "all sources", values: "4 5 6 7 8 8 8", note: "weaker than a UL; a day of oats, nuts, tea and wholegrain can reach it", check: read },
  ],
};
