import type { EnergySystem } from "../energySystem.ts";
import type { Formula } from "./formulas.ts";

/**
 * General Atwater factors: FAO Food and Nutrition Paper 77, Food energy: methods of analysis and
 * conversion factors (2003), section 3.5; also INFOODS tagname ENERC, keyword STDT, where they were
 * read.
 */
export const atwaterGeneral: EnergySystem = {
  name: "general Atwater factors",
  source:
    "FAO Food and Nutrition Paper 77, Food energy: methods of analysis and conversion factors (2003), section 3.5",
  parts: {
    protein: { component: "protein", factor: 4 },
    fat: { component: "fat", factor: 9 },
    carbohydrate: { component: "carbohydrateByDifference", factor: 4 },
    alcohol: { component: "alcohol", factor: 7 },
  },
};

/** The same as one sum, for a food that gives no energy of its own. */
export const generalEnergyFormula: Formula = {
  gives: "energy",
  terms: { protein: "4", fat: "9", carbohydrateByDifference: "4", alcohol: "7" },
  formula: "4 × protein + 9 × fat + 4 × carbohydrate by difference + 7 × alcohol",
  source: "FAO Food and Nutrition Paper 77 (2003), section 3.5",
};
