import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Department of Health 1991, Dietary Reference Values for Food Energy and Nutrients for the United
 * Kingdom (COMA, Report on Health and Social Subjects 41): Reference Nutrient Intakes and safe
 * intakes; vitamin D and fibre as SACN has replaced them (2016, 2015).
 *
 * Read in the British Nutrition Foundation's Nutrition Requirements (May 2021), which prints the report's
 * tables: salt and protein on page 5, vitamins on page 6, minerals on page 7. The four figures of protein from
 * 11 to 18 years and most safe intakes, which it leaves out, were not read elsewhere either. SACN's omega-3 of 2004 stands in a
 * review's table of recommendations (Marine Drugs 2012;10:2535, table 1).
 *
 * Additions for breastfeeding fall after four months; that of protein after six. The column "50+ years" begins
 * above 50. Where the report gives no increment for pregnancy or breastfeeding, the figure of the same age
 * holds. Niacin stands as COMA prints it, 17 and 13 mg; the government's table of 2016 prints 16.5 and 13.2
 * (6.6 mg per 1,000 kcal at 2,500 and 2,000 kcal).
 */
const read: Check = "copy";

export const ukReferences: IntakeTable = {
  source: "Department of Health (UK) 1991, COMA Report 41, Reference Nutrient Intakes",
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-6", "7-10", "M 11-14", "M 15-18", "M 19-50", "M 51+", "F 11-14", "F 15-18", "F 19-50", "F 51+"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminARe"], kind: "RNI", basis: "RE", values: "400 400 500 600 700 700 700 600 600 600 600", adds: { pregnant: "100", breastfeeding: "350" }, check: read },
    { of: ["thiamin"], kind: "RNI", values: "0.5 0.7 0.7 0.9 1.1 1.0 0.9 0.7 0.8 0.8 0.8", adds: { pregnant: ["0", "0", "0.1"], breastfeeding: "0.2" }, note: "set as 0.4 mg per 1,000 kcal", check: read },
    { of: ["riboflavin"], kind: "RNI", values: "0.6 0.8 1.0 1.2 1.3 1.3 1.3 1.1 1.1 1.1 1.1", adds: { pregnant: "0.3", breastfeeding: "0.5" }, check: read },
    { of: ["niacinEquivalents"], kind: "RNI", basis: "NE", values: "8 11 12 15 18 17 16 12 14 13 12", adds: { breastfeeding: "2" }, note: "set as 6.6 mg per 1,000 kcal", check: read },
    { of: ["vitaminB6"], kind: "RNI", values: "0.7 0.9 1.0 1.2 1.5 1.4 1.4 1.0 1.2 1.2 1.2", note: "set as 15 µg per g of protein", check: read },
    { of: ["vitaminB12"], kind: "RNI", values: "0.5 0.8 1.0 1.2 1.5 1.5 1.5 1.2 1.5 1.5 1.5", adds: { breastfeeding: "0.5" }, check: read },
    { of: ["folate"], kind: "RNI", basis: "folate", values: "70 100 150 200 200 200 200 200 200 200 200", adds: { pregnant: "100", breastfeeding: "60" }, note: "plain micrograms of folate, not dietary folate equivalents; women who may become pregnant are advised 400 µg of folic acid besides", check: read },
    { of: ["vitaminC"], kind: "RNI", values: "30 30 30 35 40 40 40 35 40 40 40", adds: { pregnant: ["0", "0", "10"], breastfeeding: "30" }, check: read },
    { of: ["vitaminD"], kind: "RNI", values: "- 10 10 10 10 10 10 10 10 10 10", source: "SACN 2016, Vitamin D and Health, paragraph 9.63", check: read },
    { of: ["vitaminD"], kind: "safe intake", values: "10 - - - - - - - - - -", source: "SACN 2016, Vitamin D and Health", check: read },
    { of: ["calcium"], kind: "RNI", values: "350 450 550 1000 1000 700 700 800 800 700 700", adds: { breastfeeding: "550" }, check: read },
    { of: ["phosphorus"], kind: "RNI", values: "270 350 450 775 775 550 550 625 625 550 550", adds: { breastfeeding: "440" }, check: read },
    { of: ["magnesium"], kind: "RNI", values: "85 120 200 280 300 300 300 280 300 270 270", adds: { breastfeeding: "50" }, check: read },
    { of: ["sodium"], kind: "RNI", values: "500 700 1200 1600 1600 1600 1600 1600 1600 1600 1600", check: read },
    { of: ["potassium"], kind: "RNI", values: "800 1100 2000 3100 3500 3500 3500 3100 3500 3500 3500", check: read },
    { of: ["chloride"], kind: "RNI", values: "800 1100 1800 2500 2500 2500 2500 2500 2500 2500 2500", check: read },
    { of: ["iron"], kind: "RNI", values: "6.9 6.1 8.7 11.3 11.3 8.7 8.7 14.8 14.8 14.8 8.7", note: "women with high menstrual losses may need more", check: read },
    { of: ["zinc"], kind: "RNI", values: "5.0 6.5 7.0 9.0 9.5 9.5 9.5 9.0 7.0 7.0 7.0", adds: { breastfeeding: { first: "6.0", later: "2.5", fromMonth: 4 } }, note: "breastfeeding adds more in the first four months", check: read },
    { of: ["copper"], kind: "RNI", values: "0.4 0.6 0.7 0.8 1.0 1.2 1.2 0.8 1.0 1.2 1.2", adds: { breastfeeding: "0.3" }, check: read },
    { of: ["selenium"], kind: "RNI", values: "15 20 30 45 70 75 75 45 60 60 60", adds: { breastfeeding: "15" }, check: read },
    { of: ["iodine"], kind: "RNI", values: "70 100 110 130 140 140 140 130 140 140 140", check: read },
    { of: ["protein"], kind: "RNI", per: "kg", values: "- - - - - 0.75 0.75 - - 0.75 0.75", adds: { pregnant: "6", breastfeeding: { first: "11", later: "8", fromMonth: 6 } }, note: "0.75 g per kg of body mass, and breastfeeding adds more in the first six months; 55.5 g for men and 45 g for women of the report's reference mass", check: read },
    { of: ["protein"], kind: "RNI", values: "14.5 19.7 28.3 42.1 55.2 - - 41.2 45.4 - -", adds: { pregnant: "6", breastfeeding: { first: "11", later: "8", fromMonth: 6 } }, note: "breastfeeding adds more in the first six months", check: read, seen: ["1-3", "4-6", "7-10", "adds pregnant", "adds breastfeeding"] },
    { of: ["vitaminE"], kind: "safe intake", basis: "alpha-tocopherol equivalents", values: "- - - - - 4 4 - - 3 3", note: "above this; set in alpha-tocopherol equivalents, of which alpha-tocopherol is the main part", check: "copy", seen: ["F 19-50"] },
    { of: ["vitaminK"], kind: "safe intake", per: "kg", basis: "phylloquinone", values: "- - - - - 1 1 - - 1 1", check: "unverified" },
    { of: ["pantothenicAcid"], kind: "safe intake", values: "- - - - - 3-7 3-7 - - 3-7 3-7", check: "unverified" },
    { of: ["biotin"], kind: "safe intake", values: "- - - - - 10-200 10-200 - - 10-200 10-200", check: "unverified" },
    { of: ["manganese"], kind: "safe intake", values: "- - - - - 1.4 1.4 - - 1.4 1.4", note: "above this", check: "copy" },
    { of: ["molybdenum"], kind: "safe intake", values: "- - - - - 50-400 50-400 - - 50-400 50-400", check: "unverified" },
    { of: ["chromium"], kind: "safe intake", values: "- - - - - 25 25 - - 25 25", note: "above this", check: "unverified" },
    { of: ["epa", "dpa", "dha"], kind: "population goal", values: "- - - - - 0.45 0.45 - - 0.45 0.45", note: "at least this, of long-chain omega-3 fatty acids", source: "SACN and Committee on Toxicity (UK) 2004, Advice on fish consumption", check: "copy" },
    { of: ["linoleicAcid"], kind: "population goal", per: "% energy", values: "- - - - - 1 1 - - 1 1", note: "at least this", check: "unverified" },
    { of: ["alphaLinolenicAcid"], kind: "population goal", per: "% energy", values: "- - - - - 0.2 0.2 - - 0.2 0.2", note: "at least this", check: "unverified" },
  ],
};

/**
 * SACN 2015, Carbohydrates and Health: dietary fibre by the AOAC methods, population averages, as the copy of
 * 2021 prints them (page 4). It has 30 g from 17 years; notes on the report from 16.
 */
export const ukFibre: IntakeTable = {
  source: "SACN (UK) 2015, Carbohydrates and Health",
  stages: ["2-4", "5-10", "11-15", "16-18", "19+"],
  references: [
    {
      of: ["fibre"],
      kind: "population goal",
      values: "15 20 25 30 30",
      note: "fibre by AOAC methods; it replaced 18 g of non-starch polysaccharide, another measure",
      check: read,
    },
  ],
};

/** SACN 2003, Salt and Health: intakes not to be exceeded by the population. */
export const ukSalt: IntakeTable = {
  source: "SACN (UK) 2003, Salt and Health",
  stages: ["1-3", "4-6", "7-10", "11+"],
  uppers: [
    {
      of: ["salt"],
      kind: "population goal",
      covers: "all sources",
      values: "2 3 5 6",
      note: "a goal for the population, not a level of harm",
      check: read,
    },
  ],
};
