import type { LabelRow } from "../labelRow.ts";
import type { RoundingRule } from "../labelRule.ts";

/**
 * Rounding of declared amounts per serving: US 21 CFR 101.9(c). Read in the FDA Food Labeling Guide,
 * appendix H (October 2009), and in quotations of the regulation: the steps of per cents (c)(8)(iii).
 * Added sugars (c)(6)(iii) as other sugars: unverified. The regulation says nothing of halves.
 */
const law = { by: "bands", binding: "law" } as const;

const calories: RoundingRule = {
  ...law,
  zeroBelow: "5",
  bands: [
    { from: "5", to: "50", nearest: "5" },
    { from: "50", nearest: "10" },
  ],
};
const fats: RoundingRule = {
  ...law,
  zeroBelow: "0.5",
  bands: [
    { from: "0.5", to: "5", nearest: "0.5" },
    { from: "5", nearest: "1" },
  ],
};
const cholesterol: RoundingRule = { ...law, zeroBelow: "2", bands: [{ from: "5", nearest: "5" }] };
const sodium: RoundingRule = {
  ...law,
  zeroBelow: "5",
  bands: [
    { from: "5", to: "140", nearest: "5" },
    { from: "140", nearest: "10" },
  ],
};
/** What lies from 0.5 to 1 may be printed as "less than 1 g" or as 1. */
const grams: RoundingRule = { ...law, zeroBelow: "0.5", bands: [{ from: "0.5", nearest: "1" }] };

/** Per cents of vitamins and minerals; what is under 2 may be printed as 0, or as 2 from 1 on. */
export const usMicroPercent: RoundingRule = {
  ...law,
  zeroBelow: "2",
  bands: [
    { from: "1", to: "10", nearest: "2" },
    { from: "10", to: "50", nearest: "5" },
    { from: "50", nearest: "10" },
  ],
};
/** Per cents of everything else. */
export const usPercent: RoundingRule = { by: "printed", steps: ["1"] };

/**
 * Amounts of a vitamin or mineral, by the size of its Reference Daily Intake. 21 CFR 101.9(c)(8)(iii), read
 * in quotations: to the digits in which (c)(8)(iv) gives the intake, noughts after the point dropped, and
 * finer where those are too few. FDA, guidance for industry on the declaration of quantitative amounts of
 * vitamins and minerals (draft of January 2017, docket FDA-2016-D-4414), read in quotations: tenths of a
 * mg or µg for an intake below 25, whole ones below 250. To tens from there on: unverified. The sample
 * label of 101.9(d)(12) prints 260 mg of calcium and 235 mg of potassium, so fives are looked for too.
 */
export function usMicro(dailyValue: string): RoundingRule {
  if (Number(dailyValue) >= 250) return { by: "printed", steps: ["10", "5", "1"] };
  return { by: "printed", steps: [dailyValue.includes(".") ? "0.1" : "1"] };
}

/** What a US label prints, by its key in a label document. */
export const labelUs101: { readonly [key: string]: LabelRow } = {
  energy: { component: "energy", rule: calories },
  fat: { component: "fat", rule: fats },
  saturatedFat: { component: "saturatedFat", rule: fats },
  transFat: { component: "transFat", rule: fats },
  monounsaturatedFat: { component: "monounsaturatedFat", rule: fats },
  polyunsaturatedFat: { component: "polyunsaturatedFat", rule: fats },
  cholesterol: { component: "cholesterol", rule: cholesterol },
  sodium: { component: "sodium", rule: sodium },
  carbohydrate: { component: "carbohydrateByDifference", rule: grams },
  fibre: { component: "fibre", rule: grams },
  solubleFibre: { component: "solubleFibre", rule: grams },
  sugars: { component: "sugars", rule: grams },
  addedSugars: { component: "addedSugars", rule: grams },
  polyols: { component: "polyols", rule: grams },
  protein: { component: "protein", rule: grams },
  vitaminA: { component: "vitaminARae", rule: "micro" },
  vitaminC: { component: "vitaminC", rule: "micro" },
  vitaminD: { component: "vitaminD", rule: "micro" },
  vitaminE: { component: "vitaminE", rule: "micro" },
  vitaminK: { component: "vitaminK", rule: "micro" },
  thiamin: { component: "thiamin", rule: "micro" },
  riboflavin: { component: "riboflavin", rule: "micro" },
  niacin: { component: "niacinEquivalents", rule: "micro" },
  vitaminB6: { component: "vitaminB6", rule: "micro" },
  folate: { component: "folateDfe", rule: "micro" },
  vitaminB12: { component: "vitaminB12", rule: "micro" },
  biotin: { component: "biotin", rule: "micro" },
  pantothenicAcid: { component: "pantothenicAcid", rule: "micro" },
  calcium: { component: "calcium", rule: "micro" },
  iron: { component: "iron", rule: "micro" },
  phosphorus: { component: "phosphorus", rule: "micro" },
  iodine: { component: "iodine", rule: "micro" },
  magnesium: { component: "magnesium", rule: "micro" },
  zinc: { component: "zinc", rule: "micro" },
  selenium: { component: "selenium", rule: "micro" },
  copper: { component: "copper", rule: "micro" },
  manganese: { component: "manganese", rule: "micro" },
  chromium: { component: "chromium", rule: "micro" },
  molybdenum: { component: "molybdenum", rule: "micro" },
  chloride: { component: "chloride", rule: "micro" },
  potassium: { component: "potassium", rule: "micro" },
  choline: { component: "choline", rule: "micro" },
};
