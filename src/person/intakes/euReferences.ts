import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * EFSA Panel on Dietetic Products, Nutrition and Allergies, Dietary Reference Values, 2010 to 2019. Each
 * nutrient has an opinion of its own, named in its row. All were read in EFSA's Summary of Dietary Reference
 * Values, version 4 (September 2017): protein in table 2 (page 3), fats, carbohydrate, fibre and water in
 * table 3 (page 4), minerals in tables 5 and 7 (pages 6 and 8), vitamins in tables 9 and 11 (pages 11 and
 * 13). Sodium and chloride are later than it, and were read in their opinions' abstracts; fluoride, which it
 * prints for bodies of reference mass, per kilogram in EFSA's announcement of 8 August 2013.
 *
 * The draft opinion on phosphorus had 700 mg; the adopted one has 550. Thiamin and niacin are set per
 * megajoule. Of fibre nothing is printed for mothers: the figure of
 * adults stands.
 */
const read: Check = "issuer";

export const euReferences: IntakeTable = {
  source: "EFSA NDA Panel, Dietary Reference Values (2010 to 2019)",
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-10", "M 11-14", "M 15-17", "M 18-24", "M 25+", "F 11-14", "F 15-17", "F 18-24", "F 25+", "P 18+", "L 18+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminARe"], kind: "PRI", basis: "RE", values: "250 300 400 600 750 750 750 600 650 650 650 700 1300", source: "EFSA Journal 2015;13(3):4028", check: read },
    { of: ["thiamin"], kind: "PRI", per: "MJ", values: "0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1 0.1", note: "0.4 mg per 1,000 kcal", source: "EFSA Journal 2016;14(12):4653", check: read },
    { of: ["riboflavin"], kind: "PRI", values: "0.6 0.7 1.0 1.4 1.6 1.6 1.6 1.4 1.6 1.6 1.6 1.9 2.0", source: "EFSA Journal 2017;15(8):4919", check: read },
    { of: ["niacinEquivalents"], kind: "PRI", basis: "NE", per: "MJ", values: "1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6 1.6", note: "6.6 mg per 1,000 kcal", source: "EFSA Journal 2014;12(7):3759", check: read },
    { of: ["pantothenicAcid"], kind: "AI", values: "4 4 4 5 5 5 5 5 5 5 5 5 7", source: "EFSA Journal 2014;12(2):3581", check: read },
    { of: ["vitaminB6"], kind: "PRI", values: "0.6 0.7 1.0 1.4 1.7 1.7 1.7 1.4 1.6 1.6 1.6 1.8 1.7", source: "EFSA Journal 2016;14(6):4485", check: read },
    { of: ["biotin"], kind: "AI", values: "20 25 25 35 35 40 40 35 35 40 40 40 45", source: "EFSA Journal 2014;12(2):3580", check: read },
    { of: ["folateDfe"], kind: "PRI", basis: "DFE", values: "120 140 200 270 330 330 330 270 330 330 330 - 500", source: "EFSA Journal 2014;12(11):3893", check: read },
    { of: ["folateDfe"], kind: "AI", basis: "DFE", values: "- - - - - - - - - - - 600 -", source: "EFSA Journal 2014;12(11):3893", check: read },
    { of: ["vitaminB12"], kind: "AI", values: "1.5 1.5 2.5 3.5 4 4 4 3.5 4 4 4 4.5 5", source: "EFSA Journal 2015;13(7):4150", check: read },
    { of: ["vitaminC"], kind: "PRI", values: "20 30 45 70 100 110 110 70 90 95 95 105 155", source: "EFSA Journal 2013;11(11):3418", check: read },
    { of: ["vitaminD"], kind: "AI", values: "15 15 15 15 15 15 15 15 15 15 15 15 15", note: "on the assumption of minimal making in the skin", source: "EFSA Journal 2016;14(10):4547", check: read },
    { of: ["vitaminK"], kind: "AI", basis: "phylloquinone", values: "12 20 30 45 65 70 70 45 65 70 70 70 70", note: "1 µg per kg of body mass", source: "EFSA Journal 2017;15(5):4780", check: read },
    { of: ["choline"], kind: "AI", values: "140 170 250 340 400 400 400 340 400 400 400 480 520", source: "EFSA Journal 2016;14(8):4484", check: read },
    { of: ["calcium"], kind: "PRI", values: "450 800 800 1150 1150 1000 950 1150 1150 1000 950 = =", source: "EFSA Journal 2015;13(5):4101", check: read },
    { of: ["iodine"], kind: "AI", values: "90 90 90 120 130 150 150 120 130 150 150 200 200", source: "EFSA Journal 2014;12(5):3660", check: read },
    { of: ["iron"], kind: "PRI", values: "- - - - - 11 11 - - - - 16 16", source: "EFSA Journal 2015;13(10):4254", check: read },
    { of: ["iron"], kind: "PRI", when: "premenopausal", values: "- - - - - - - - - 16 16 - -", source: "EFSA Journal 2015;13(10):4254", check: read },
    { of: ["iron"], kind: "PRI", when: "postmenopausal", values: "- - - - - - - - - 11 11 - -", source: "EFSA Journal 2015;13(10):4254", check: read },
    { of: ["manganese"], kind: "AI", values: "0.5 1.0 1.5 2.0 3.0 3.0 3.0 2.0 3.0 3.0 3.0 3.0 3.0", source: "EFSA Journal 2013;11(11):3419", check: read },
    { of: ["molybdenum"], kind: "AI", values: "15 20 30 45 65 65 65 45 65 65 65 65 65", source: "EFSA Journal 2013;11(8):3333", check: read },
    { of: ["phosphorus"], kind: "AI", values: "250 440 440 640 640 550 550 640 640 550 550 550 550", source: "EFSA Journal 2015;13(7):4185", check: read },
    { of: ["potassium"], kind: "AI", values: "800 1100 1800 2700 3500 3500 3500 2700 3500 3500 3500 3500 4000", source: "EFSA Journal 2016;14(10):4592", check: read },
    { of: ["selenium"], kind: "AI", values: "15 20 35 55 70 70 70 55 70 70 70 70 85", source: "EFSA Journal 2014;12(10):3846", check: read },
    { of: ["sodium"], kind: "safe and adequate intake", unit: "g", values: "1.1 1.3 1.7 2.0 2.0 2.0 2.0 2.0 2.0 2.0 2.0 2.0 2.0", note: "neither a reference nor an upper level", source: "EFSA Journal 2019;17(9):5778", check: read },
    { of: ["chloride"], kind: "safe and adequate intake", unit: "g", values: "1.7 2.0 2.6 3.1 3.1 3.1 3.1 3.1 3.1 3.1 3.1 3.1 3.1", source: "EFSA Journal 2019;17(9):5779", check: read },
    { of: ["fluoride"], kind: "AI", per: "kg", values: "0.05 0.05 0.05 0.05 0.05 0.05 0.05 0.05 0.05 0.05 0.05 0.05 0.05", note: "of 2013", source: "EFSA Journal 2013;11(8):3332", check: read },
    { of: ["fibre"], kind: "AI", values: "10 14 16 19 21 25 25 19 21 25 25 = =", source: "EFSA Journal 2010;8(3):1462", check: read },
    { of: ["linoleicAcid"], kind: "AI", per: "% energy", values: "4 4 4 4 4 4 4 4 4 4 4 4 4", source: "EFSA Journal 2010;8(3):1461", check: read },
    { of: ["alphaLinolenicAcid"], kind: "AI", per: "% energy", values: "0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5 0.5", source: "EFSA Journal 2010;8(3):1461", check: read },
  ],
};

/** EFSA Journal 2012;10(2):2557: protein of adults, and what mothers add to it. */
export const euProtein: IntakeTable = {
  source: "EFSA NDA Panel 2012, Dietary Reference Values for protein, EFSA Journal 10(2):2557",
  stages: ["18+"],
  references: [
    {
      of: ["protein"],
      kind: "PRI",
      per: "kg",
      values: "0.83",
      adds: { pregnant: ["1", "9", "28"], breastfeeding: { first: "19", later: "13", fromMonth: 6 } },
      note: "breastfeeding adds more in the first six months",
      check: read,
    },
  ],
};

/** EFSA Journal 2012;10(2):2557: protein of children, g per kg of body mass, by year of age. */
export const euProteinOfChildren: IntakeTable = {
  source: "EFSA NDA Panel 2012, Dietary Reference Values for protein, EFSA Journal 10(2):2557",
  // biome-ignore format: the columns of the table
  stages: ["1-1", "2-2", "3-3", "4-4", "5-5", "6-6", "7-7", "8-8", "9-9", "10-10", "M 11-11", "M 12-12", "M 13-13", "M 14-14", "M 15-15", "M 16-16", "M 17-17", "F 11-11", "F 12-12", "F 13-13", "F 14-14", "F 15-15", "F 16-16", "F 17-17"],
  references: [
    {
      of: ["protein"],
      kind: "PRI",
      per: "kg",
      values:
        "1.14 0.97 0.90 0.86 0.85 0.89 0.91 0.92 0.92 0.91 0.91 0.90 0.90 0.89 0.88 0.87 0.86 0.90 0.89 0.88 0.87 0.85 0.84 0.83",
      check: read,
    },
  ],
};

/** Nutrients whose age bands differ from those of the others. */
export const euOtherBands: IntakeTable = {
  source: "EFSA NDA Panel, Dietary Reference Values (2010 to 2016)",
  // biome-ignore format: the columns of the table
  stages: ["1-2", "3-9", "M 10-17", "F 10-17", "M 18+", "F 18+", "P 18+", "L 18+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminE"], kind: "AI", basis: "alpha-tocopherol", values: "6 9 13 11 13 11 11 11", source: "EFSA Journal 2015;13(7):4149", check: read },
    { of: ["copper"], kind: "AI", values: "0.7 1.0 1.3 1.1 1.6 1.3 1.5 1.5", source: "EFSA Journal 2015;13(10):4253", check: read },
    { of: ["magnesium"], kind: "AI", values: "170 230 300 250 350 300 300 300", source: "EFSA Journal 2015;13(7):4186", check: read },
  ],
};

/** EFSA Journal 2015;13(10):4254: iron of children. */
export const euIronOfChildren: IntakeTable = {
  source: "EFSA NDA Panel 2015, Dietary Reference Values for iron, EFSA Journal 13(10):4254",
  stages: ["1-6", "7-11", "M 12-17", "F 12-17"],
  references: [{ of: ["iron"], kind: "PRI", values: "7 11 11 13", check: read }],
};

/**
 * EFSA Journal 2010;8(3):1461: long-chain omega-3 fatty acids. DHA alone below two years; what pregnancy and
 * breastfeeding ask of DHA comes besides the 250 mg of both. From 2 to 17 years the 250 mg are advice that
 * agrees with an adult's, by the opinion's own words: no intake was found for them.
 */
export const euLongOmega3: IntakeTable = {
  source: "EFSA NDA Panel 2010, Dietary Reference Values for fats, EFSA Journal 8(3):1461",
  stages: ["1-1", "2-17", "18+", "P 18+", "L 18+"],
  // biome-ignore format: one row a line
  references: [
    { of: ["epa", "dha"], kind: "AI", unit: "mg", values: "- 250 250 250 250", check: read },
    { of: ["dha"], kind: "AI", unit: "mg", values: "100 - - - -", check: read },
    { of: ["dha"], kind: "AI", unit: "mg", values: "- - - 100-200 100-200", note: "besides 250 mg of EPA and DHA together", check: read },
  ],
};

/** EFSA Journal 2010;8(3):1459: water of food and drink, printed in litres, at 1,000 g to the litre. */
export const euWater: IntakeTable = {
  source: "EFSA NDA Panel 2010, Dietary Reference Values for water, EFSA Journal 8(3):1459",
  stages: ["1-1", "2-3", "4-8", "M 9-13", "F 9-13", "M 14+", "F 14+", "P 18+", "L 18+"],
  references: [
    {
      of: ["water"],
      kind: "AI",
      values: "1100-1200 1300 1600 2100 1900 2500 2000 2300 2700",
      note: "all water, of food and drink",
      check: read,
    },
  ],
};

/**
 * EFSA Journal 2014;12(10):3844: zinc. Adults by the phytate that they eat in a day, in mg, since it
 * holds zinc back. A review (PMC7468694) prints 12.5 and 10.4 for 15 to 17 and +2.6 in lactation; the
 * opinion's abstract has 14.2 as the highest of children, and +2.9.
 */
export const euZinc: IntakeTable = {
  source: "EFSA NDA Panel 2014, Dietary Reference Values for zinc, EFSA Journal 12(10):3844",
  stages: ["1-3", "4-6", "7-10", "11-14", "M 15-17", "F 15-17", "M 18+", "F 18+"],
  // biome-ignore format: one row a line
  references: [
    { of: ["zinc"], kind: "PRI", values: "4.3 5.5 7.4 10.7 14.2 11.9 - -", check: read },
    { of: ["zinc"], kind: "PRI", when: { phytate: "300" }, values: "- - - - - - 9.4 7.5", adds: { pregnant: "1.6", breastfeeding: "2.9" }, check: read },
    { of: ["zinc"], kind: "PRI", when: { phytate: "600" }, values: "- - - - - - 11.7 9.3", adds: { pregnant: "1.6", breastfeeding: "2.9" }, check: read },
    { of: ["zinc"], kind: "PRI", when: { phytate: "900" }, values: "- - - - - - 14.0 11.0", adds: { pregnant: "1.6", breastfeeding: "2.9" }, check: read },
    { of: ["zinc"], kind: "PRI", when: { phytate: "1200" }, values: "- - - - - - 16.3 12.7", adds: { pregnant: "1.6", breastfeeding: "2.9" }, check: read },
  ],
};
