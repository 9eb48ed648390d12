import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * FAO and WHO, recommended nutrient intakes (RNI) and safe intakes of vitamin A. Calcium, magnesium, selenium and
 * zinc are those of the second edition (WHO and FAO 2004, annex 1, page 338), read whole in a copy of the page. Iron
 * and iodine as FAO prints the report of 2002 (appendix 1, table 1), read there to women of 65; older people and
 * mothers stand below that and are unverified. Vitamins of young children as FAO prints them again in The Pacific
 * Islands food composition tables (2004, appendix III A). Mothers' ages are not printed.
 *
 * Iron stands at 12 % bioavailability, as of a mixed diet with meat: at 15 % it is four fifths of that, at 10 %
 * six fifths, at 5 % twelve fifths. Zinc is that of moderate bioavailability: at high it is about six tenths, at
 * low twice as much.
 *
 * Missing here: vitamins of everyone else, FAO/WHO/UNU on energy and protein, upper levels, the second edition's
 * iron and iodine, fats of the young. `missing` in authority.ts says so to a reader.
 */
const check: Check = "copy";
const FAO = "FAO and WHO 2002, Human Vitamin and Mineral Requirements, appendix 1";
const PACIFIC =
  "FAO and WHO 2002, as FAO prints it in The Pacific Islands food composition tables (2004), appendix III A";
const FATS = "FAO 2010, Fats and fatty acids in human nutrition, table 2.1";
const SECOND =
  "WHO and FAO 2004, Vitamin and Mineral Requirements in Human Nutrition, second edition, annex 1";

export const whoVitamins: IntakeTable = {
  source: PACIFIC,
  stages: ["1-3", "4-6"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminARe"], kind: "safe intake", basis: "RE", values: "400 450", check },
    { of: ["thiamin"], kind: "RNI", values: "0.5 0.6", check },
    { of: ["riboflavin"], kind: "RNI", values: "0.5 0.6", check },
    { of: ["niacinEquivalents"], kind: "RNI", basis: "NE", values: "6 8", check },
    { of: ["vitaminB12"], kind: "RNI", values: "0.9 1.2", check },
  ],
};

/** Annex 1 of the second edition: minerals. Breastfeeding is parted at three and six months. */
export const whoMinerals: IntakeTable = {
  source: SECOND,
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-9", "M 10-18", "F 10-18", "M 19-65", "M 66+", "F 19-50", "F 51-65", "F 66+", "P1 10+", "P2 10+", "P3 10+", "L6 10+", "L3 10+", "L 10+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["calcium"], kind: "RNI", values: "500 600 700 1300 1300 1000 1300 1000 1300 1300 = = 1200 1000 1000 1000", note: "for adolescents above all while they grow fast", check },
    { of: ["magnesium"], kind: "RNI", values: "60 76 100 230 220 260 224 220 220 190 220 220 220 270 270 270", check },
    { of: ["selenium"], kind: "RNI", values: "17 22 21 32 26 34 33 26 26 25 = 28 30 42 35 35", check },
    { of: ["zinc"], kind: "RNI", values: "4.1 4.8 5.6 8.6 7.2 7.0 7.0 4.9 4.9 4.9 5.5 7.0 10.0 7.2 8.8 9.5", note: "at moderate bioavailability: about six tenths of it at high, twice as much at low", check },
  ],
};

/** Appendix 1: iron, at 12 % bioavailability. Pregnancy has no figure: supplements are advised. */
export const whoIron: IntakeTable = {
  source: FAO,
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-9", "M 10-14", "M 15-18", "F 10-14", "F 15-18", "M 19-65", "M 66+", "F 19-65", "F 66+", "P 10+", "L 10+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["iron"], kind: "RNI", values: "5 5 7 12 16 28 26 11 11 - - - 12", note: "at 12 % bioavailability; 12 mg for girls under 15 who do not menstruate", check: "issuer", seen: ["1-3", "4-6", "7-9", "M 10-14", "M 15-18", "F 10-14", "F 15-18", "M 19-65"] },
    { of: ["iron"], kind: "RNI", when: "premenopausal", values: "- - - - - - - - - 24 - - -", note: "at 12 % bioavailability", check: "issuer" },
    { of: ["iron"], kind: "RNI", when: "postmenopausal", values: "- - - - - - - - - 9 9 - -", note: "at 12 % bioavailability", check: "issuer", seen: ["F 19-65"] },
  ],
};

/** Appendix 1: iodine, as the first edition has it. */
export const whoIodine: IntakeTable = {
  source: FAO,
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-9", "M 10-11", "M 12-18", "F 10-11", "F 12-18", "M 19-65", "M 66+", "F 19-65", "F 66+", "P 10+", "L 10+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["iodine"], kind: "RNI", values: "75 110 100 135 110 140 100 130 130 110 110 200 200", note: "the second edition, of 2004, was not read", check: "issuer", seen: ["1-3", "4-6", "7-9", "M 10-11", "M 12-18", "F 10-11", "F 12-18", "M 19-65", "F 19-65"] },
  ],
};

/**
 * What WHO advises populations, against chronic disease, read in its news of each guideline as others print it. For
 * children its sodium and potassium are to be lowered by their need of energy; no figures are given. FAO's intake of
 * EPA and DHA was read in two pieces, 250 mg in one copy and 2 g in another.
 */
export const whoGoals: IntakeTable = {
  source: "WHO, guidelines of 2012 and 2023",
  stages: ["2-5", "6-9", "10-17", "18+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["potassium"], kind: "population goal", values: "- - - 3510", note: "at least this", source: "WHO 2012, Guideline: potassium intake for adults and children", check },
    { of: ["fibre"], kind: "population goal", values: "15 21 25 25", note: "at least this, of the fibre that food itself holds", source: "WHO 2023, Carbohydrate intake for adults and children", check },
    { of: ["epa", "dha"], kind: "AMDR", unit: "mg", values: "- - - 250-2000", note: "2 g is of people with heart disease", source: FATS, check },
  ],
  // biome-ignore format: one nutrient a line
  uppers: [
    { of: ["sodium"], kind: "population goal", unit: "g", covers: "all sources", values: "- - - 2", note: "less than this: 5 g of salt", source: "WHO 2012, Guideline: sodium intake for adults and children", check },
  ],
};
