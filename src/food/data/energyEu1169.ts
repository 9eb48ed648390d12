import type { EnergySystem } from "../energySystem.ts";

/**
 * Regulation (EU) No 1169/2011, Annex XIV; read in a French copy of the annex. Kilojoules are summed
 * by their own factors, not converted from kilocalories. Carbohydrate there is without polyols, which
 * are told apart where a food gives them; so are organic acids, which carbohydrate by difference
 * holds. Annex XIV also has salatrims (25 kJ, 6 kcal) and erythritol (0), for which there is no
 * component: erythritol printed among the polyols counts as they do.
 */
export const eu1169: EnergySystem = {
  name: "EU labelling factors",
  source: "Regulation (EU) No 1169/2011, Annex XIV",
  parts: {
    protein: { component: "protein", factor: 4, kilojoules: 17 },
    fat: { component: "fat", factor: 9, kilojoules: 37 },
    carbohydrate: {
      component: "availableCarbohydrate",
      factor: 4,
      kilojoules: 17,
      apart: ["polyols", "organicAcids"],
    },
    fibre: { component: "fibre", factor: 2, kilojoules: 8 },
    polyols: { component: "polyols", factor: "2.4", kilojoules: 10 },
    organicAcids: { component: "organicAcids", factor: 3, kilojoules: 13 },
    alcohol: { component: "alcohol", factor: 7, kilojoules: 29 },
  },
};
