import type { ComponentId } from "../../src/food/components.ts";

/**
 * Reference intakes typed a second time, to hold against the tables of `src/person/intakes`.
 *
 * How this was made: by the same hand as the first, one after the other, but from other copies than
 * the first was typed from, and laid out as those copies are (by age rather than by nutrient where they
 * are so). The United States' figures come from a textbook's appendix, a course page, a medical manual
 * and the National Academies' own page; the United Kingdom's from a paper's table, a list of daily amounts and
 * a course. The European adults come from notes taken when the abstract or announcement of each opinion
 * was read, while the first European table was typed without the document at hand (unverified); zinc, choline and
 * calcium come from copies of their own. So a slip of the hand shows here; a figure that both copies
 * have wrong does not.
 *
 * Figures for which no second copy was found are not here: UK chloride and most safe intakes; EU fibre
 * and most children. The United States' potassium, sodium and chloride of 2019 were typed again, apart
 * from the first time and by person rather than by nutrient, from the same page of the issuer.
 */

export interface Second {
  readonly of: ComponentId;
  readonly sex: "female" | "male";
  readonly age: number;
  readonly state?: "pregnant" | "breastfeeding";
  /** In the component's own unit. */
  readonly value: string;
}

type Sex = "female" | "male";
type Column = readonly [sex: Sex, ages: readonly number[], state?: "pregnant" | "breastfeeding"];

/** One row of a copy: who it speaks of, and its figures in the order of the copy's columns. */
function byAge(columns: readonly ComponentId[], rows: readonly (readonly [Column, string])[]): Second[] {
  return rows.flatMap(([[sex, ages, state], figures]) =>
    ages.flatMap((age) =>
      figures.split(" ").flatMap((value, i): Second[] => {
        const of = columns[i];
        return of && value !== "." ? [{ of, sex, age, value, ...(state && { state }) }] : [];
      }),
    ),
  );
}

const girl = (...ages: number[]): Column => ["female", ages];
const boy = (...ages: number[]): Column => ["male", ages];

/**
 * Powers, Howley & Quindry, Exercise Physiology (11th edition, 2021), appendix: DRI elements. Its
 * calcium, potassium, sodium and chloride are those of 1997 and 2005, since replaced, and left out.
 * Breastfeeding: National Academies 2001 (books.nap.edu 10026, page 772), which has only the first five
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

/** University of Nevada, Reno Extension, leaflet 4702: calcium. It gives 1,200 mg to men of 51 to 70 too, as in 1997. */
export const usCalciumAgain: readonly Second[] = byAge(
  ["calcium"],
  [
    [boy(25, 40), "1000"],
    [girl(25, 40), "1000"],
    [girl(55, 75), "1200"],
  ],
);

/** National Academies 2001 (nap.edu 10026, chapter 32). Its vitamin D is of 1997, and left out. */
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

/**
 * University of Michigan, exercise physiology course: DRI of 1998 for the B vitamins and choline. The
 * copy drops the biotin of 4 to 8 years; breastfeeding is not in what could be read of it.
 */
export const usBVitaminsAgain: readonly Second[] = byAge(
  // biome-ignore format: the columns of the copy
  ["riboflavin", "niacinEquivalents", "vitaminB6", "folateDfe", "vitaminB12", "pantothenicAcid", "biotin", "choline"],
  [
    [boy(2), "0.5 6 0.5 150 0.9 2 8 200"],
    [girl(6), "0.6 8 0.6 200 1.2 3 . 250"],
    [boy(11), "0.9 12 1.0 300 1.8 4 20 375"],
    [boy(16), "1.3 16 1.3 400 2.4 5 25 550"],
    [boy(25, 45), "1.3 16 1.3 400 2.4 5 30 550"],
    [boy(55, 75), "1.3 16 1.7 400 2.4 5 30 550"],
    [girl(11), "0.9 12 1.0 300 1.8 4 20 375"],
    [girl(16), "1.0 14 1.2 400 2.4 5 25 400"],
    [girl(25, 45), "1.1 14 1.3 400 2.4 5 30 425"],
    [girl(55, 75), "1.1 14 1.5 400 2.4 5 30 425"],
    [["female", [17, 28], "pregnant"], "1.4 18 1.9 600 2.6 6 30 450"],
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

/** A textbook's inside cover (docslib.org 2477480): macronutrients of men and boys. */
export const usMacronutrientsAgain: readonly Second[] = byAge(
  ["water", "availableCarbohydrate", "fibre", "linoleicAcid", "alphaLinolenicAcid"],
  [
    [boy(2), "1300 130 19 7 0.7"],
    [boy(6), "1700 130 25 10 0.9"],
    [boy(11), "2400 130 31 12 1.2"],
    [boy(16), "3300 130 38 16 1.6"],
    [boy(25, 45), "3700 130 38 17 1.6"],
    [boy(60), "3700 130 30 14 1.6"],
  ],
);

/**
 * UK women of 19 to 50: BJOG 2010;117:821-829 (PMC2874518), table 2, citing COMA 1991, with what
 * pregnancy adds. Its vitamin D of 10 µg was then that of pregnancy alone; SACN 2016 made it everyone's.
 */
export const ukWomenAgain: readonly Second[] = byAge(
  // biome-ignore format: the columns of the copy
  ["thiamin", "riboflavin", "niacinEquivalents", "vitaminB6", "vitaminB12", "folate", "vitaminC", "vitaminARe", "vitaminE", "calcium", "phosphorus", "magnesium", "iron", "zinc", "copper", "selenium", "iodine"],
  [
    [girl(19, 35, 50), "0.8 1.1 13 1.2 1.5 200 40 600 3 700 550 270 14.8 7 1.2 60 140"],
    // +0.1, +0.3, -, -, -, +100, +10, +100; no increment of the minerals. In the last trimester.
    [["female", [30], "pregnant"], "0.9 1.4 13 1.2 1.5 300 50 700 . 700 550 270 14.8 7 1.2 60 140"],
  ],
);

/**
 * UK men: a list of daily amounts (unverified) (vitamins A, B2, B6, B12, C, D, calcium, magnesium,
 * phosphorus, zinc), the NHS (thiamin), a course's notes (iron). The list's thiamin of 1.3 mg and
 * selenium of 7.5 mg are slips. Potassium: a nutrition site for doctors.
 */
export const ukMenAgain: readonly Second[] = byAge(
  // biome-ignore format: the columns of the copies
  ["vitaminARe", "riboflavin", "vitaminB6", "vitaminB12", "vitaminC", "vitaminD", "calcium", "magnesium", "phosphorus", "zinc", "thiamin", "iron", "potassium"],
  [[boy(19, 35, 50), "700 1.3 1.4 1.5 40 10 700 300 550 9.5 1.0 8.7 3500"]],
);

/** UK calcium at every age: an online course on bones (futurelearn.com, step 25181). */
export const ukCalciumAgain: readonly Second[] = byAge(
  ["calcium"],
  [
    [boy(1, 3), "350"],
    [girl(4, 6), "450"],
    [boy(7, 10), "550"],
    [boy(11, 18), "1000"],
    [girl(11, 18), "800"],
    [boy(19, 50, 51, 80), "700"],
    [girl(19, 50, 51, 80), "700"],
    [["female", [30], "breastfeeding"], "1250"],
  ],
);

/**
 * EFSA adults, from notes of each opinion's abstract or announcement (efsa.europa.eu: 4028, 4919, 4485,
 * 3893, 4150, 4547, 4149, 4780, 4253, 4254, 4186, 4185, 4592, 5778, 5779) or of a report of it.
 */
export const euAdultsAgain: readonly Second[] = byAge(
  // biome-ignore format: one opinion after the other
  ["vitaminARe", "riboflavin", "vitaminB6", "folateDfe", "vitaminB12", "vitaminD", "vitaminE", "vitaminK", "copper", "iron", "magnesium", "phosphorus", "potassium", "sodium", "chloride", "vitaminC", "pantothenicAcid", "biotin", "iodine", "manganese", "molybdenum"],
  [
    [boy(30, 60), "750 1.6 1.7 330 4 15 13 70 1.6 11 350 550 3500 2000 3100 110 5 40 150 3 65"],
    [girl(30, 45), "650 1.6 1.6 330 4 15 11 70 1.3 16 300 550 3500 2000 3100 95 5 40 150 3 65"],
    [girl(60), "650 1.6 1.6 330 4 15 11 70 1.3 11 300 550 3500 2000 3100 95 5 40 150 3 65"],
  ],
);

/** EFSA choline: BMJ Nutrition, Prevention & Health, table of US and EFSA figures. */
export const euCholineAgain: readonly Second[] = byAge(
  ["choline"],
  [
    [girl(18, 40), "400"],
    [boy(18, 40), "400"],
    [["female", [30], "pregnant"], "480"],
    [["female", [30], "breastfeeding"], "520"],
  ],
);

/** EFSA calcium at every age: unverified. */
export const euCalciumAgain: readonly Second[] = byAge(
  ["calcium"],
  [
    [boy(1, 3), "450"],
    [girl(4, 10), "800"],
    [boy(11, 17), "1150"],
    [girl(18, 24), "1000"],
    [boy(25, 70), "950"],
    [["female", [20], "pregnant"], "1000"],
    [["female", [30], "breastfeeding"], "950"],
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

/** UK children: an encyclopaedia's chapter on the nutrition of infants and children (doctorabel.us), table 7. */
export const ukChildrenAgain: readonly Second[] = byAge(
  ["calcium", "phosphorus", "magnesium"],
  [
    [boy(1, 3), "350 270 85"],
    [girl(4, 6), "450 350 120"],
    [boy(7, 8), "550 450 200"],
    [girl(9, 10), "550 450 200"],
    [boy(11, 14), "1000 775 280"],
    [girl(11, 14), "800 625 280"],
    [boy(15, 18), "1000 775 300"],
    [girl(15, 18), "800 625 300"],
  ],
);

/** The same, table 8: iron of children in the UK, micromoles a day, rounded to ten there. */
export const ukIronAgain: readonly (readonly ["female" | "male", number, string])[] = [
  ["male", 2, "120"],
  ["female", 5, "110"],
  ["male", 8, "160"],
  ["female", 10, "160"],
  ["male", 12, "200"],
  ["female", 12, "260"],
  ["male", 17, "200"],
  ["female", 17, "260"],
];

/** Sodium from 11 years: Medical Research Council, Why 6g? (1.6 g). Selenium: a dietitian's table of 16 countries. */
export const ukSodiumAndSeleniumAgain: readonly Second[] = byAge(
  ["sodium", "selenium"],
  [
    [boy(11, 15), "1600"],
    [girl(12, 18), "1600"],
    [boy(19, 50), "1600 75"],
    [girl(19, 50), "1600 60"],
  ],
);

/** Selenium of the same table. */
export const euSeleniumAgain: readonly Second[] = byAge(
  ["selenium"],
  [
    [boy(20, 40, 70), "70"],
    [girl(20, 40, 70), "70"],
  ],
);

/** EFSA zinc of adults by phytate: Immunity & Ageing 2025, table 3. Men, women. */
export const euZincAgain: readonly (readonly [300 | 600 | 900 | 1200, string, string])[] = [
  [300, "9.4", "7.5"],
  [600, "11.7", "9.3"],
  [900, "14", "11"],
  [1200, "16.3", "12.7"],
];
