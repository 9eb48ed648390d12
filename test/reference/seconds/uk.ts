import { boy, byAge, byBand, girl, type Second, type SecondAddition } from "./second.ts";

/**
 * British Nutrition Foundation, Nutrition Requirements (May 2021), after COMA 1991 and SACN 2016: vitamins, page
 * 6. The first table was typed from memory, before this was found.
 */
export const ukVitaminsAgain: readonly Second[] = byBand(
  // biome-ignore format: the columns of the copy
  ["thiamin", "riboflavin", "niacinEquivalents", "vitaminB6", "vitaminB12", "folate", "vitaminC", "vitaminARe", "vitaminD"],
  [
    ["1-3", "0.5 0.6 8 0.7 0.5 70 30 400 10"],
    ["4-6", "0.7 0.8 11 0.9 0.8 100 30 400 10"],
    ["7-10", "0.7 1.0 12 1.0 1.0 150 30 500 10"],
    ["M 11-14", "0.9 1.2 15 1.2 1.2 200 35 600 10"],
    ["M 15-18", "1.1 1.3 18 1.5 1.5 200 40 700 10"],
    ["M 19-50", "1.0 1.3 17 1.4 1.5 200 40 700 10"],
    ["M 51+", "0.9 1.3 16 1.4 1.5 200 40 700 10"],
    ["F 11-14", "0.7 1.1 12 1.0 1.2 200 35 600 10"],
    ["F 15-18", "0.8 1.1 14 1.2 1.5 200 40 600 10"],
    ["F 19-50", "0.8 1.1 13 1.2 1.5 200 40 600 10"],
    ["F 51+", "0.8 1.1 12 1.2 1.5 200 40 600 10"],
  ],
);

/** The same, minerals, page 7. */
export const ukMineralsAgain: readonly Second[] = byBand(
  // biome-ignore format: the columns of the copy
  ["calcium", "phosphorus", "magnesium", "sodium", "potassium", "chloride", "iron", "zinc", "copper", "selenium", "iodine"],
  [
    ["1-3", "350 270 85 500 800 800 6.9 5.0 0.4 15 70"],
    ["4-6", "450 350 120 700 1100 1100 6.1 6.5 0.6 20 100"],
    ["7-10", "550 450 200 1200 2000 1800 8.7 7.0 0.7 30 110"],
    ["M 11-14", "1000 775 280 1600 3100 2500 11.3 9.0 0.8 45 130"],
    ["M 15-18", "1000 775 300 1600 3500 2500 11.3 9.5 1.0 70 140"],
    ["M 19-50", "700 550 300 1600 3500 2500 8.7 9.5 1.2 75 140"],
    ["M 51+", "700 550 300 1600 3500 2500 8.7 9.5 1.2 75 140"],
    ["F 11-14", "800 625 280 1600 3100 2500 14.8 9.0 0.8 45 130"],
    ["F 15-18", "800 625 300 1600 3500 2500 14.8 7.0 1.0 60 140"],
    ["F 19-50", "700 550 270 1600 3500 2500 14.8 7.0 1.2 60 140"],
    ["F 51+", "700 550 270 1600 3500 2500 8.7 7.0 1.2 60 140"],
  ],
);

/** The same, protein, page 5. */
export const ukProteinAgain: readonly Second[] = [
  ...byBand(
    ["protein"],
    [
      ["1-3", "14.5"],
      ["4-6", "19.7"],
      ["7-10", "28.3"],
    ],
  ),
  ...byBand(["protein"], [["19+", "0.75"]], "kg"),
];

/** The same, what mothers add: pages 5, 6 and 7; nothing where a component is not here. */
export const ukAdditionsAgain: readonly SecondAddition[] = [16, 30].flatMap((age): SecondAddition[] => [
  { of: "thiamin", age, pregnant: "0.1", breastfeeding: "0.2" },
  { of: "riboflavin", age, pregnant: "0.3", breastfeeding: "0.5" },
  { of: "niacinEquivalents", age, breastfeeding: "2" },
  { of: "vitaminB6", age },
  { of: "vitaminB12", age, breastfeeding: "0.5" },
  { of: "folate", age, pregnant: "100", breastfeeding: "60" },
  { of: "vitaminC", age, pregnant: "10", breastfeeding: "30" },
  { of: "vitaminARe", age, pregnant: "100", breastfeeding: "350" },
  { of: "calcium", age, breastfeeding: "550" },
  { of: "phosphorus", age, breastfeeding: "440" },
  { of: "magnesium", age, breastfeeding: "50" },
  { of: "sodium", age },
  { of: "potassium", age },
  { of: "chloride", age },
  { of: "iron", age },
  { of: "zinc", age, breastfeeding: "6", later: [4, "2.5"] },
  { of: "copper", age, breastfeeding: "0.3" },
  { of: "selenium", age, breastfeeding: "15" },
  { of: "iodine", age },
  { of: "protein", age, pregnant: "6", breastfeeding: "11", later: [6, "8"] },
]);

/** SACN 2015, Carbohydrates and Health, by age: 2 to 5 years, 5 to 11, 11 to 16, 16 to 18, adults; those below 17 unverified. */
export const ukFibreAgain: readonly Second[] = byBand(
  ["fibre"],
  [
    ["2-4", "15"],
    ["5-10", "20"],
    ["11-15", "25"],
    ["16-18", "30"],
    ["19+", "30"],
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

/** UK children: an encyclopaedia's chapter on the nutrition of infants and children, table 7. */
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
