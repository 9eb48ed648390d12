import type { LabelRow } from "../labelRow.ts";
import type { RoundingRule } from "../labelRule.ts";

/**
 * Rounding of declared amounts per 100 g or 100 ml: European Commission, guidance on tolerances for
 * nutrient values declared on a label (December 2012), table 4. Guidance, not law: figures are also
 * printed more coarsely. Read on a laboratory's page, not in the document; sodium unverified.
 *
 * What the components are: Regulation (EU) No 1169/2011, Annex I and Annex XIII. Carbohydrate is
 * available carbohydrate, polyols counted in. Niacin is in niacin equivalents, vitamin A in retinol
 * equivalents (Annex XIII does not say which; unverified), "folic acid" is folate of all forms.
 */
const guidance = { by: "bands", binding: "guidance" } as const;

const energy: RoundingRule = { ...guidance, zeroBelow: "0.5", bands: [{ from: "0.5", nearest: "1" }] };
const grams: RoundingRule = {
  ...guidance,
  zeroBelow: "0.5",
  bands: [
    { from: "0.5", to: "10", nearest: "0.1" },
    { from: "10", nearest: "1" },
  ],
};
const fattyAcids: RoundingRule = {
  ...grams,
  zeroBelow: "0.1",
  bands: [
    { from: "0.1", to: "10", nearest: "0.1" },
    { from: "10", nearest: "1" },
  ],
};
const salt: RoundingRule = {
  ...guidance,
  zeroBelow: "0.0125",
  bands: [
    { from: "0.0125", to: "1", nearest: "0.01" },
    { from: "1", nearest: "0.1" },
  ],
};
/** In milligrams, as the component is. */
const sodium: RoundingRule = {
  ...guidance,
  zeroBelow: "5",
  bands: [
    { from: "5", to: "1000", nearest: "10" },
    { from: "1000", nearest: "100" },
  ],
};
const three: RoundingRule = { by: "significant", digits: 3 };
const two: RoundingRule = { by: "significant", digits: 2 };

/** What an EU label prints, by its key in a label document. */
export const labelEu2012: { readonly [key: string]: LabelRow } = {
  energy: { component: "energy", rule: energy },
  fat: { component: "fat", rule: grams },
  saturatedFat: { component: "saturatedFat", rule: fattyAcids },
  monounsaturatedFat: { component: "monounsaturatedFat", rule: fattyAcids },
  polyunsaturatedFat: { component: "polyunsaturatedFat", rule: fattyAcids },
  carbohydrate: { component: "availableCarbohydrate", rule: grams },
  sugars: { component: "sugars", rule: grams },
  polyols: { component: "polyols", rule: grams },
  starch: { component: "starch", rule: grams },
  fibre: { component: "fibre", rule: grams },
  protein: { component: "protein", rule: grams },
  salt: { component: "salt", rule: salt },
  sodium: { component: "sodium", rule: sodium },
  vitaminA: { component: "vitaminARe", rule: three },
  vitaminD: { component: "vitaminD", rule: two },
  vitaminE: {
    component: "vitaminE",
    rule: two,
    note: "in alpha-tocopherol equivalents, which may be more than the alpha-tocopherol",
  },
  vitaminK: { component: "vitaminK", rule: two },
  vitaminC: { component: "vitaminC", rule: two },
  thiamin: { component: "thiamin", rule: two },
  riboflavin: { component: "riboflavin", rule: two },
  niacin: { component: "niacinEquivalents", rule: two },
  vitaminB6: { component: "vitaminB6", rule: two },
  folate: { component: "folate", rule: three },
  folicAcid: {
    component: "folate",
    rule: three,
    note: "printed as folic acid, which stands for folate of all forms",
  },
  vitaminB12: { component: "vitaminB12", rule: two },
  biotin: { component: "biotin", rule: two },
  pantothenicAcid: { component: "pantothenicAcid", rule: two },
  potassium: { component: "potassium", rule: three },
  chloride: { component: "chloride", rule: three },
  calcium: { component: "calcium", rule: three },
  phosphorus: { component: "phosphorus", rule: three },
  magnesium: { component: "magnesium", rule: three },
  iron: { component: "iron", rule: two },
  zinc: { component: "zinc", rule: two },
  copper: { component: "copper", rule: two },
  manganese: { component: "manganese", rule: two },
  fluoride: { component: "fluoride", rule: two },
  selenium: { component: "selenium", rule: two },
  chromium: { component: "chromium", rule: two },
  molybdenum: { component: "molybdenum", rule: two },
  iodine: { component: "iodine", rule: three },
};
