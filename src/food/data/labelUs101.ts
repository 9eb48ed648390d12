import type { LabelRow } from "../labelRow.ts";
import type { RoundingRule } from "../labelRule.ts";

/**
 * Rounding of declared amounts per serving: US 21 CFR 101.9(c). Read in the FDA Food Labeling Guide,
 * appendix H (October 2009), and in quotations of the regulation: the steps of per cents (c)(8)(iii), and
 * that amounts of vitamins and minerals go to the digits of their Reference Daily Intake or finer.
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
export const usPercent: RoundingRule = { by: "printed", step: "1" };

const whole: RoundingRule = { by: "printed", step: "1" };
const tenths: RoundingRule = { by: "printed", step: "0.1" };

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
  vitaminA: { component: "vitaminARae", rule: whole, micro: true },
  vitaminC: { component: "vitaminC", rule: whole, micro: true },
  vitaminD: { component: "vitaminD", rule: whole, micro: true },
  vitaminE: { component: "vitaminE", rule: whole, micro: true },
  vitaminK: { component: "vitaminK", rule: whole, micro: true },
  thiamin: { component: "thiamin", rule: tenths, micro: true },
  riboflavin: { component: "riboflavin", rule: tenths, micro: true },
  niacin: { component: "niacinEquivalents", rule: whole, micro: true },
  vitaminB6: { component: "vitaminB6", rule: tenths, micro: true },
  folate: { component: "folateDfe", rule: whole, micro: true },
  vitaminB12: { component: "vitaminB12", rule: tenths, micro: true },
  biotin: { component: "biotin", rule: whole, micro: true },
  pantothenicAcid: { component: "pantothenicAcid", rule: whole, micro: true },
  calcium: { component: "calcium", rule: whole, micro: true },
  iron: { component: "iron", rule: whole, micro: true },
  phosphorus: { component: "phosphorus", rule: whole, micro: true },
  iodine: { component: "iodine", rule: whole, micro: true },
  magnesium: { component: "magnesium", rule: whole, micro: true },
  zinc: { component: "zinc", rule: whole, micro: true },
  selenium: { component: "selenium", rule: whole, micro: true },
  copper: { component: "copper", rule: tenths, micro: true },
  manganese: { component: "manganese", rule: tenths, micro: true },
  chromium: { component: "chromium", rule: whole, micro: true },
  molybdenum: { component: "molybdenum", rule: whole, micro: true },
  chloride: { component: "chloride", rule: whole, micro: true },
  potassium: { component: "potassium", rule: whole, micro: true },
  choline: { component: "choline", rule: whole, micro: true },
};
