import { boy, byAge, byBand, girl, type Second, type SecondAddition } from "./second.ts";

/**
 * EFSA, Summary of Dietary Reference Values, version 4 (September 2017): vitamins of males (table 9, page 11) and
 * females (table 11, page 13). The first table was typed from memory, before this document was at hand.
 */
export const euVitaminsAgain: readonly Second[] = byBand(
  // biome-ignore format: the columns of the document
  ["biotin", "choline", "vitaminB12", "folateDfe", "pantothenicAcid", "riboflavin", "vitaminARe", "vitaminB6", "vitaminC", "vitaminD", "vitaminK"],
  [
    ["1-3", "20 140 1.5 120 4 0.6 250 0.6 20 15 12"],
    ["4-6", "25 170 1.5 140 4 0.7 300 0.7 30 15 20"],
    ["7-10", "25 250 2.5 200 4 1.0 400 1.0 45 15 30"],
    ["M 11-14", "35 340 3.5 270 5 1.4 600 1.4 70 15 45"],
    ["M 15-17", "35 400 4.0 330 5 1.6 750 1.7 100 15 65"],
    ["M 18+", "40 400 4.0 330 5 1.6 750 1.7 110 15 70"],
    ["F 11-14", "35 340 3.5 270 5 1.4 600 1.4 70 15 45"],
    ["F 15-17", "35 400 4.0 330 5 1.6 650 1.6 90 15 65"],
    ["F 18+", "40 400 4.0 330 5 1.6 650 1.6 95 15 70"],
    ["P 18+", "40 480 4.5 600 5 1.9 700 1.8 105 15 70"],
    ["L 18+", "45 520 5.0 500 7 2.0 1300 1.7 155 15 70"],
  ],
);

/** The same tables: thiamin and niacin, mg and mg NE per MJ at every age. */
export const euPerMegajouleAgain: readonly Second[] = byBand(
  ["thiamin", "niacinEquivalents"],
  ["1-3", "4-6", "7-10", "11-14", "15-17", "18-24", "25+", "P 18+", "L 18+"].map((band) => [band, "0.1 1.6"]),
  "MJ",
);

/** The same tables, whose first column of ages holds α-tocopherol alone. */
export const euVitaminEAgain: readonly Second[] = byBand(
  ["vitaminE"],
  [
    ["1-2", "6"],
    ["3-9", "9"],
    ["M 10-17", "13"],
    ["M 18+", "13"],
    ["F 10-17", "11"],
    ["F 18+", "11"],
    ["P 18+", "11"],
    ["L 18+", "11"],
  ],
);

/** The same document, minerals of males (table 5, page 6) and females (table 7, page 8). */
export const euMineralsAgain: readonly Second[] = [
  ...byBand(
    ["iodine", "manganese", "molybdenum", "phosphorus", "potassium", "selenium"],
    [
      ["1-3", "90 0.5 15 250 800 15"],
      ["4-6", "90 1.0 20 440 1100 20"],
      ["7-10", "90 1.5 30 440 1800 35"],
      ["11-14", "120 2.0 45 640 2700 55"],
      ["15-17", "130 3.0 65 640 3500 70"],
      ["18+", "150 3.0 65 550 3500 70"],
      ["P 18+", "200 3.0 65 550 3500 70"],
      ["L 18+", "200 3.0 65 550 4000 85"],
    ],
  ),
  ...byBand(
    ["calcium"],
    [
      ["1-3", "450"],
      ["4-10", "800"],
      ["11-17", "1150"],
      ["18-24", "1000"],
      ["25+", "950"],
      ["P 18-24", "1000"],
      ["P 25+", "950"],
      ["L 18-24", "1000"],
      ["L 25+", "950"],
    ],
  ),
  ...byBand(
    ["iron"],
    [
      ["1-6", "7"],
      ["7-11", "11"],
      ["M 12-17", "11"],
      ["F 12-17", "13"],
      ["M 18+", "11"],
      ["F 18-50", "16"],
      ["F 51+", "11"],
      ["P 18+", "16"],
      ["L 18+", "16"],
    ],
  ),
  ...byBand(
    ["copper", "magnesium"],
    [
      ["1-2", "0.7 170"],
      ["3-9", "1.0 230"],
      ["M 10-17", "1.3 300"],
      ["F 10-17", "1.1 250"],
      ["M 18+", "1.6 350"],
      ["F 18+", "1.3 300"],
      ["P 18+", "1.5 300"],
      ["L 18+", "1.5 300"],
    ],
  ),
  ...byBand(
    ["zinc"],
    [
      ["1-3", "4.3"],
      ["4-6", "5.5"],
      ["7-10", "7.4"],
      ["11-14", "10.7"],
      ["M 15-17", "14.2"],
      ["F 15-17", "11.9"],
    ],
  ),
];

/** The same document, table 3 (page 4): fibre, g, and water, printed in litres. */
export const euFibreAndWaterAgain: readonly Second[] = [
  ...byBand(
    ["fibre"],
    [
      ["1-3", "10"],
      ["4-6", "14"],
      ["7-10", "16"],
      ["11-14", "19"],
      ["15-17", "21"],
      ["18+", "25"],
    ],
  ),
  ...byBand(
    ["water"],
    [
      ["1-1", "1100"],
      ["2-3", "1300"],
      ["4-8", "1600"],
      ["M 9-13", "2100"],
      ["F 9-13", "1900"],
      ["M 14-17", "2500"],
      ["F 14-17", "2000"],
      ["M 18+", "2500"],
      ["F 18+", "2000"],
      ["P 18+", "2300"],
      ["L 18+", "2700"],
    ],
  ),
];

/** The same table: fatty acids, per cent of energy at every age, and long-chain ones in g (250 and 100 mg there). */
export const euFattyAcidsAgain: readonly Second[] = [
  ...byBand(
    ["linoleicAcid", "alphaLinolenicAcid"],
    ["1-3", "4-6", "7-10", "11-14", "15-17", "18-24", "25+", "P 18+", "L 18+"].map((band) => [band, "4 0.5"]),
    "% energy",
  ),
  ...byBand(
    ["epa"],
    ["2-3", "4-17", "18+", "P 18+", "L 18+"].map((band) => [band, "0.25"]),
  ),
  ...byBand(["dha"], [["1-1", "0.1"]]),
  ...byBand(
    ["dha"],
    [
      ["P 18+", "0.1"],
      ["L 18+", "0.1"],
    ],
  ),
];

/** The same document, table 2 (page 3): protein, g per kg. */
export const euProteinAgain: readonly Second[] = byBand(
  ["protein"],
  // biome-ignore format: a page's columns
  [
    ["1-1", "1.14"], ["2-2", "0.97"], ["3-3", "0.90"], ["4-4", "0.86"], ["5-5", "0.85"], ["6-6", "0.89"], ["7-7", "0.91"], ["8-8", "0.92"], ["9-9", "0.92"], ["10-10", "0.91"],
    ["M 11-11", "0.91"], ["M 12-12", "0.90"], ["M 13-13", "0.90"], ["M 14-14", "0.89"], ["M 15-15", "0.88"], ["M 16-16", "0.87"], ["M 17-17", "0.86"],
    ["F 11-11", "0.90"], ["F 12-12", "0.89"], ["F 13-13", "0.88"], ["F 14-14", "0.87"], ["F 15-15", "0.85"], ["F 16-16", "0.84"], ["F 17-17", "0.83"],
    ["18-59", "0.83"], ["60+", "0.83"],
  ],
  "kg",
);

/** The same document: what mothers add to protein (table 2) and zinc (table 7), in the last three months and at first. */
export const euAdditionsAgain: readonly SecondAddition[] = [
  { of: "protein", age: 30, pregnant: "28", breastfeeding: "19", later: [6, "13"] },
  { of: "zinc", age: 30, pregnant: "1.6", breastfeeding: "2.9" },
];

/** EFSA Journal 2019;17(9):5778 and 5779, abstracts: sodium and chloride, printed in g. */
export const euSaltAgain: readonly Second[] = byBand(
  ["sodium", "chloride"],
  [
    ["1-3", "1100 1700"],
    ["4-6", "1300 2000"],
    ["7-10", "1700 2600"],
    ["11-17", "2000 3100"],
    ["18+", "2000 3100"],
    ["P 18+", "2000 3100"],
    ["L 18+", "2000 3100"],
  ],
);

/** EFSA's announcement of 8 August 2013: fluoride, mg per kg, children, adults and mothers alike. */
export const euFluorideAgain: readonly Second[] = byBand(
  ["fluoride"],
  ["1-3", "4-6", "7-10", "11-14", "15-17", "18-24", "25+", "P 18+", "L 18+"].map((band) => [band, "0.05"]),
  "kg",
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

/** EFSA zinc of adults by phytate: Immunity & Ageing 2025, table 3. Men, women. */
export const euZincAgain: readonly (readonly [300 | 600 | 900 | 1200, string, string])[] = [
  [300, "9.4", "7.5"],
  [600, "11.7", "9.3"],
  [900, "14", "11"],
  [1200, "16.3", "12.7"],
];
