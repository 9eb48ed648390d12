import type { EnergySystem } from "../energySystem.ts";

/**
 * US 21 CFR 101.9(c)(1)(i): methods (B) and (C), read in quotations of the regulation; the factors of
 * single sugar alcohols, (F), are unverified. Method (A), specific Atwater factors, is the system
 * `atwater-own`; (D) and (E) need what no table of foods gives.
 */
export const us101B: EnergySystem = {
  name: "US labelling factors 4, 4 and 9",
  source: "21 CFR 101.9(c)(1)(i)(B)",
  parts: {
    protein: { component: "protein", factor: 4 },
    fat: { component: "fat", factor: 9 },
    carbohydrate: { component: "carbohydrateByDifference", factor: 4 },
  },
};

/**
 * Non-digestible carbohydrate and sugar alcohols are taken off the carbohydrate; the soluble share of
 * the first then counts at 2. Each sugar alcohol has a factor of its own, which a sum of them does not
 * tell: it counts at 0 and the energy is "at least", unless the system is given the factor at hand.
 */
export const us101C: EnergySystem = {
  name: "US labelling factors with non-digestible carbohydrate taken off",
  source: "21 CFR 101.9(c)(1)(i)(C)",
  parts: {
    protein: { component: "protein", factor: 4 },
    fat: { component: "fat", factor: 9 },
    carbohydrate: {
      component: "carbohydrateByDifference",
      factor: 4,
      less: ["fibre"],
      apart: ["polyols"],
    },
    fibre: { component: "solubleFibre", factor: 2 },
    polyols: { component: "polyols", factor: 0, atLeast: true },
  },
};

/** kcal per gram of single sugar alcohols: 21 CFR 101.9(c)(1)(i)(F), unverified. */
export const usPolyolFactors = {
  isomalt: "2.0",
  lactitol: "2.0",
  xylitol: "2.4",
  maltitol: "2.1",
  sorbitol: "2.6",
  "hydrogenated starch hydrolysates": "3.0",
  mannitol: "1.6",
  erythritol: "0",
} as const;
