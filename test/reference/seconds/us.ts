import { boy, byAge, byBand, girl, type Second, type SecondAddition } from "./second.ts";

/**
 * Powers, Howley & Quindry, Exercise Physiology (11th edition, 2021), appendix: DRI vitamins. Its vitamin D is
 * that of 1997, since replaced, and left out.
 */
export const usAllVitaminsAgain: readonly Second[] = byBand(
  // biome-ignore format: the columns of the copy
  ["vitaminARae", "vitaminC", "vitaminE", "vitaminK", "thiamin", "riboflavin", "niacinEquivalents", "vitaminB6", "folateDfe", "vitaminB12", "pantothenicAcid", "biotin", "choline"],
  [
    ["1-3", "300 15 6 30 0.5 0.5 6 0.5 150 0.9 2 8 200"],
    ["4-8", "400 25 7 55 0.6 0.6 8 0.6 200 1.2 3 12 250"],
    ["M 9-13", "600 45 11 60 0.9 0.9 12 1.0 300 1.8 4 20 375"],
    ["M 14-18", "900 75 15 75 1.2 1.3 16 1.3 400 2.4 5 25 550"],
    ["M 19-30", "900 90 15 120 1.2 1.3 16 1.3 400 2.4 5 30 550"],
    ["M 31-50", "900 90 15 120 1.2 1.3 16 1.3 400 2.4 5 30 550"],
    ["M 51-70", "900 90 15 120 1.2 1.3 16 1.7 400 2.4 5 30 550"],
    ["M 71+", "900 90 15 120 1.2 1.3 16 1.7 400 2.4 5 30 550"],
    ["F 9-13", "600 45 11 60 0.9 0.9 12 1.0 300 1.8 4 20 375"],
    ["F 14-18", "700 65 15 75 1.0 1.0 14 1.2 400 2.4 5 25 400"],
    ["F 19-30", "700 75 15 90 1.1 1.1 14 1.3 400 2.4 5 30 425"],
    ["F 31-50", "700 75 15 90 1.1 1.1 14 1.3 400 2.4 5 30 425"],
    ["F 51-70", "700 75 15 90 1.1 1.1 14 1.5 400 2.4 5 30 425"],
    ["F 71+", "700 75 15 90 1.1 1.1 14 1.5 400 2.4 5 30 425"],
    ["P 14-18", "750 80 15 75 1.4 1.4 18 1.9 600 2.6 6 30 450"],
    ["P 19-30", "770 85 15 90 1.4 1.4 18 1.9 600 2.6 6 30 450"],
    ["P 31-50", "770 85 15 90 1.4 1.4 18 1.9 600 2.6 6 30 450"],
    ["L 14-18", "1200 115 19 75 1.4 1.6 17 2.0 500 2.8 7 35 550"],
    ["L 19-30", "1300 120 19 90 1.4 1.6 17 2.0 500 2.8 7 35 550"],
    ["L 31-50", "1300 120 19 90 1.4 1.6 17 2.0 500 2.8 7 35 550"],
  ],
);

/** Office of Dietary Supplements, calcium and vitamin D, tables 1 and 2 (Institute of Medicine 2011), as a paediatric practice prints them. */
export const usCalciumAndVitaminDAgain: readonly Second[] = byBand(
  ["calcium", "vitaminD"],
  [
    ["1-3", "700 15"],
    ["4-8", "1000 15"],
    ["9-13", "1300 15"],
    ["14-18", "1300 15"],
    ["19-50", "1000 15"],
    ["M 51-70", "1000 15"],
    ["F 51-70", "1200 15"],
    ["71+", "1200 20"],
    ["P 14-18", "1300 15"],
    ["P 19-50", "1000 15"],
    ["L 14-18", "1300 15"],
    ["L 19-50", "1000 15"],
  ],
);

/** A course's summary tables (table 4, of the National Academies): total water, printed in litres, and macronutrients. */
export const usMacronutrientsAgain: readonly Second[] = byBand(
  ["water", "availableCarbohydrate", "fibre", "linoleicAcid", "alphaLinolenicAcid", "protein"],
  [
    ["1-3", "1300 130 19 7 0.7 13"],
    ["4-8", "1700 130 25 10 0.9 19"],
    ["M 9-13", "2400 130 31 12 1.2 34"],
    ["M 14-18", "3300 130 38 16 1.6 52"],
    ["M 19-30", "3700 130 38 17 1.6 56"],
    ["M 31-50", "3700 130 38 17 1.6 56"],
    ["M 51-70", "3700 130 30 14 1.6 56"],
    ["M 71+", "3700 130 30 14 1.6 56"],
    ["F 9-13", "2100 130 26 10 1.0 34"],
    ["F 14-18", "2300 130 26 11 1.1 46"],
    ["F 19-30", "2700 130 25 12 1.1 46"],
    ["F 31-50", "2700 130 25 12 1.1 46"],
    ["F 51-70", "2700 130 21 11 1.1 46"],
    ["F 71+", "2700 130 21 11 1.1 46"],
    ["P 14-18", "3000 175 28 13 1.4 71"],
    ["P 19-30", "3000 175 28 13 1.4 71"],
    ["P 31-50", "3000 175 28 13 1.4 71"],
    ["L 14-18", "3800 210 29 13 1.3 71"],
    ["L 19-30", "3800 210 29 13 1.3 71"],
    ["L 31-50", "3800 210 29 13 1.3 71"],
  ],
);

/**
 * A breastfeeding counsellor's table for mothers of 14 to 18, which prints what pregnancy and breastfeeding add
 * to the intake of a girl of their age (copper in µg there).
 */
export const usAdditionsAgain: readonly SecondAddition[] = (
  [
    ["vitaminARae", "50", "500"],
    ["vitaminE", "0", "4"],
    ["vitaminK", "0", "0"],
    ["biotin", "5", "10"],
    ["choline", "50", "150"],
    ["folateDfe", "200", "100"],
    ["niacinEquivalents", "4", "3"],
    ["pantothenicAcid", "1", "2"],
    ["riboflavin", "0.4", "0.6"],
    ["thiamin", "0.4", "0.4"],
    ["vitaminB6", "0.7", "0.8"],
    ["vitaminB12", "0.2", "0.4"],
    ["vitaminC", "15", "50"],
    ["calcium", "0", "0"],
    ["phosphorus", "0", "0"],
    ["magnesium", "40", "0"],
    ["chromium", "5", "20"],
    ["copper", "0.11", "0.41"],
    ["fluoride", "0", "0"],
    ["iodine", "70", "140"],
    ["iron", "12", "-5"],
    ["manganese", "0.4", "1"],
    ["molybdenum", "7", "7"],
    ["selenium", "5", "15"],
    ["zinc", "3", "4"],
  ] as const
).map(([of, pregnant, breastfeeding]) => ({ of, age: 16, pregnant, breastfeeding }));

/**
 * Powers, Howley & Quindry, Exercise Physiology (11th edition, 2021), appendix: DRI elements. Its
 * calcium, potassium, sodium and chloride are those of 1997 and 2005, since replaced, and left out.
 * Breastfeeding: National Academies 2001, Dietary Reference Intakes for Vitamin A and others, page 772, which has only the first five
 * of these and iron.
 */
export const usElementsAgain: readonly Second[] = byAge(
  // biome-ignore format: the columns of the copy
  ["chromium", "copper", "fluoride", "iodine", "iron", "magnesium", "manganese", "molybdenum", "phosphorus", "selenium", "zinc"],
  [
    [boy(2), "11 0.34 0.7 90 7 80 1.2 17 460 20 3"],
    [girl(3), "11 0.34 0.7 90 7 80 1.2 17 460 20 3"],
    [boy(4, 8), "15 0.44 1 90 10 130 1.5 22 500 30 5"],
    [boy(9, 13), "25 0.7 2 120 8 240 1.9 34 1250 40 8"],
    [boy(14, 18), "35 0.89 3 150 11 410 2.2 43 1250 55 11"],
    [boy(19, 30), "35 0.9 4 150 8 400 2.3 45 700 55 11"],
    [boy(31, 50), "35 0.9 4 150 8 420 2.3 45 700 55 11"],
    [boy(51, 70), "30 0.9 4 150 8 420 2.3 45 700 55 11"],
    [boy(71, 90), "30 0.9 4 150 8 420 2.3 45 700 55 11"],
    [girl(9, 13), "21 0.7 2 120 8 240 1.6 34 1250 40 8"],
    [girl(14, 18), "24 0.89 3 150 15 360 1.6 43 1250 55 9"],
    [girl(19, 30), "25 0.9 3 150 18 310 1.8 45 700 55 8"],
    [girl(31, 50), "25 0.9 3 150 18 320 1.8 45 700 55 8"],
    [girl(51, 70), "20 0.9 3 150 8 320 1.8 45 700 55 8"],
    [girl(71, 90), "20 0.9 3 150 8 320 1.8 45 700 55 8"],
    [["female", [16], "pregnant"], "29 1 3 220 27 400 2.0 50 1250 60 12"],
    [["female", [25], "pregnant"], "30 1 3 220 27 350 2.0 50 700 60 11"],
    [["female", [35], "pregnant"], "30 1 3 220 27 360 2.0 50 700 60 11"],
    [["female", [16], "breastfeeding"], "44 1.3 3 290 10"],
    [["female", [25, 35], "breastfeeding"], "45 1.3 3 290 9"],
  ],
);

/** National Academies 2001, Dietary Reference Intakes for Vitamin A and others, summary table. Its vitamin D is of 1997, and left out. */
export const usVitaminsAgain: readonly Second[] = byAge(
  ["vitaminARae", "vitaminC", "vitaminE", "vitaminK", "thiamin"],
  [
    [boy(1, 3), "300 15 6 30 0.5"],
    [girl(4, 8), "400 25 7 55 0.6"],
    [boy(9, 13), "600 45 11 60 0.9"],
    [boy(14, 18), "900 75 15 75 1.2"],
    [boy(19, 40, 60, 80), "900 90 15 120 1.2"],
    [girl(9, 13), "600 45 11 60 0.9"],
    [girl(14, 18), "700 65 15 75 1.0"],
    [girl(19, 40, 60, 80), "700 75 15 90 1.1"],
    [["female", [17], "pregnant"], "750 80 15 75 1.4"],
    [["female", [19, 50], "pregnant"], "770 85 15 90 1.4"],
    [["female", [17], "breastfeeding"], "1200 115 19 75 1.4"],
    [["female", [19, 50], "breastfeeding"], "1300 120 19 90 1.4"],
  ],
);

/** A medical manual's table of daily vitamin intakes: vitamin D in IU there (40 to the µg), and lactation. */
export const usManualAgain: readonly Second[] = byAge(
  ["vitaminD", "riboflavin", "niacinEquivalents", "folateDfe", "vitaminB6", "vitaminB12"],
  [
    [boy(2, 6, 11, 16, 25, 45, 65), "15"],
    [girl(2, 6, 11, 16, 25, 45, 65), "15"],
    [boy(75), "20"],
    [girl(75), "20"],
    [["female", [25, 45], "pregnant"], "15 1.4 18 600 1.9 2.6"],
    [["female", [25, 45], "breastfeeding"], "15 1.6 17 500 2.0 2.8"],
  ],
);

/** National Academies 2019, table J-3 (NBK545442): potassium and sodium in mg, chloride in g there. */
export const usElectrolytesAgain: readonly Second[] = byAge(
  ["potassium", "sodium", "chloride"],
  [
    [boy(1, 3), "2000 800 1500"],
    [girl(4, 8), "2300 1000 1900"],
    [boy(9, 13), "2500 1200 2300"],
    [girl(9, 13), "2300 1200 2300"],
    [boy(14, 18), "3000 1500 2300"],
    [girl(14, 18), "2300 1500 2300"],
    [boy(19, 50), "3400 1500 2300"],
    [girl(19, 50), "2600 1500 2300"],
    [boy(51, 70), "3400 1500 2000"],
    [girl(51, 70), "2600 1500 2000"],
    [boy(71, 90), "3400 1500 1800"],
    [girl(71, 90), "2600 1500 1800"],
    [["female", [16], "pregnant"], "2600 1500 2300"],
    [["female", [19, 50], "pregnant"], "2900 1500 2300"],
    [["female", [16], "breastfeeding"], "2500 1500 2300"],
    [["female", [19, 50], "breastfeeding"], "2800 1500 2300"],
  ],
);
