import { exactText } from "../../number/digits.ts";
import { exact } from "../../number/exact.ts";
import type { EnergySystem } from "../energySystem.ts";
import type { EnergyFactors } from "../food.ts";
import type { Formula } from "./formulas.ts";

/**
 * Specific Atwater factors: each food has its own for protein, fat and carbohydrate by difference, and
 * alcohol has one for all. Source: Merrill & Watt, Energy Value of Foods, USDA Agriculture Handbook 74
 * (revised 1973). The factor of alcohol is unverified; the others come with the foods.
 */
export const atwaterOwn: EnergySystem = {
  name: "each food's own Atwater factors",
  source: "Merrill & Watt (1973), Energy Value of Foods, USDA Agriculture Handbook 74",
  factors: "food",
  parts: {
    protein: { component: "protein", factor: 4 },
    fat: { component: "fat", factor: 9 },
    carbohydrate: { component: "carbohydrateByDifference", factor: 4 },
    alcohol: { component: "alcohol", factor: "6.93" },
  },
};

/** A food's own factors as one sum. */
export function ownEnergyFormula(factors: EnergyFactors): Formula {
  const protein = exactText(exact(factors.protein));
  const fat = exactText(exact(factors.fat));
  const carbohydrate = exactText(exact(factors.carbohydrate));
  return {
    gives: "energy",
    terms: { protein, fat, carbohydrateByDifference: carbohydrate, alcohol: "6.93" },
    formula: `${protein} × protein + ${fat} × fat + ${carbohydrate} × carbohydrate by difference + 6.93 × alcohol`,
    source: atwaterOwn.source,
  };
}
