import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Expert Group on Vitamins and Minerals, Food Standards Agency (UK) 2003, Safe Upper Levels for
 * Vitamins and Minerals. A safe upper level (SUL) rests on adequate evidence; a guidance level is a
 * rougher figure. Adults; mostly of supplements alone, taken daily over a life. Its guidance level of
 * vitamin D, 25 µg from supplements, has been superseded and stands in no row. The report itself was not
 * found: vitamins were read in a university's textbook (Human Nutrition, Hawaii, appendix A) or in notes of
 * the NHS's advice; retinol, calcium and phosphorus in the advice of the NHS itself, potassium and zinc in that
 * of Food Standards Scotland, biotin in a list of the Food Standards Agency's advice, magnesium in that of
 * the Health and Food Supplements Information Service.
 */
const copy: Check = "copy";
const unread: Check = "unverified";

export const ukUpper: IntakeTable = {
  source: "Expert Group on Vitamins and Minerals (UK) 2003, Safe Upper Levels for Vitamins and Minerals",
  stages: ["18+"],
  // biome-ignore format: one nutrient a line
  uppers: [
    { of: ["retinol"], kind: "guidance level", basis: "retinol", covers: "preformed, all sources", values: "1500", note: "more, over years, may weaken bone; in pregnancy no supplements with vitamin A, and no liver", check: "issuer" },
    { of: ["betaCarotene"], kind: "SUL", unit: "mg", covers: "supplements", values: "7", note: "none for people who smoke", check: copy },
    { of: ["vitaminE"], kind: "SUL", basis: "alpha-tocopherol equivalents", covers: "supplements", values: "540", check: copy },
    { of: ["vitaminK"], kind: "guidance level", unit: "mg", covers: "supplements", values: "1", check: copy },
    { of: ["thiamin"], kind: "guidance level", covers: "supplements", values: "100", check: copy },
    { of: ["riboflavin"], kind: "guidance level", covers: "supplements", values: "40", check: copy },
    { of: ["niacin"], kind: "guidance level", basis: "nicotinic acid", covers: "supplements", values: "17", check: copy },
    { of: ["niacin"], kind: "guidance level", basis: "nicotinamide", covers: "supplements", values: "500", check: copy },
    { of: ["pantothenicAcid"], kind: "guidance level", covers: "supplements", values: "200", check: copy },
    { of: ["vitaminB6"], kind: "SUL", covers: "supplements", values: "10", check: copy },
    { of: ["biotin"], kind: "guidance level", unit: "mg", covers: "supplements", values: "0.9", check: copy },
    { of: ["folicAcid"], kind: "guidance level", unit: "mg", basis: "folic acid", covers: "added folic acid", values: "1", check: copy },
    { of: ["vitaminB12"], kind: "guidance level", unit: "mg", covers: "supplements", values: "2", check: copy },
    { of: ["vitaminC"], kind: "guidance level", covers: "supplements", values: "1000", check: copy },
    { of: ["calcium"], kind: "guidance level", covers: "supplements", values: "1500", check: "issuer" },
    { of: ["phosphorus"], kind: "guidance level", covers: "supplements", values: "250", check: "issuer" },
    { of: ["magnesium"], kind: "guidance level", covers: "supplements", values: "400", check: copy },
    { of: ["potassium"], kind: "guidance level", covers: "supplements", values: "3700", check: "issuer" },
    { of: ["iron"], kind: "guidance level", covers: "supplements", values: "17", check: unread },
    { of: ["zinc"], kind: "SUL", covers: "supplements", values: "25", check: "issuer" },
    { of: ["copper"], kind: "SUL", covers: "all sources", values: "10", check: unread },
    { of: ["selenium"], kind: "SUL", covers: "all sources", values: "450", check: unread },
    { of: ["iodine"], kind: "guidance level", unit: "mg", covers: "all sources", values: "0.94", note: "0.5 mg of it from supplements", check: unread },
    { of: ["chromium"], kind: "guidance level", unit: "mg", covers: "all sources", values: "10", note: "trivalent chromium", check: unread },
  ],
};

/**
 * The EVM's guidance level of manganese, lower for older people, who may be more sensitive to it. From
 * what age was read in a copy alone; the parts of supplements, 4 and 0.5 mg, at Food Standards Scotland.
 */
export const ukManganese: IntakeTable = {
  source: "Expert Group on Vitamins and Minerals (UK) 2003, Safe Upper Levels for Vitamins and Minerals",
  stages: ["18-49", "50+"],
  uppers: [
    {
      of: ["manganese"],
      kind: "guidance level",
      covers: "all sources",
      values: "12.2 8.7",
      note: "4 mg of it from supplements, and 0.5 mg for older people; the age of 50 is of a copy",
      check: unread,
    },
  ],
};

/**
 * SACN 2016, Vitamin D and Health, which goes by the levels that EFSA set in 2012 and the Committee on
 * Toxicity accepted; the NHS advises not to take more. They count all that is eaten and taken. EFSA's abstract
 * was read, SACN's page was not.
 */
export const ukVitaminD: IntakeTable = {
  source: "SACN (UK) 2016, Vitamin D and Health, by EFSA Journal 2012;10(7):2813",
  stages: ["1-10", "11+"],
  uppers: [
    {
      of: ["vitaminD"],
      kind: "UL",
      covers: "all sources",
      values: "50 100",
      note: "the NHS advises not to take more than this in supplements",
      check: copy,
    },
  ],
};

/** Caffeine of mothers: the UK has no level for anyone else. */
export const ukCaffeine: IntakeTable = {
  source: "Committee on Toxicity and Food Standards Agency (UK) 2008, caffeine in pregnancy",
  stages: ["P 10+", "L 10+"],
  // biome-ignore format: one row a line
  uppers: [
    { of: ["caffeine"], kind: "guidance level", covers: "all sources", values: "200 -", note: "in pregnancy, for the child's weight at birth", check: "copy" },
    { of: ["caffeine"], kind: "guidance level", covers: "all sources", values: "- 300", note: "less than this; EFSA has 200 mg", source: "NHS (England), Your diet and breastfeeding, about 2022", check: "issuer" },
  ],
};
