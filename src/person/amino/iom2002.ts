import type { AminoPattern } from "./pattern.ts";

/**
 * Institute of Medicine 2002/2005, Dietary Reference Intakes for Energy, Carbohydrate, Fiber, Fat,
 * Fatty Acids, Cholesterol, Protein, and Amino Acids, table 10-26: scoring pattern from one year.
 */
export const iom2002: AminoPattern = {
  id: "iom-2002",
  name: "Institute of Medicine 2002",
  for: "everyone from one year",
  source: "Institute of Medicine (US) 2002/2005, DRI for macronutrients, table 10-26",
  check: "unverified",
  mgPerGram: {
    histidine: "18",
    isoleucine: "25",
    leucine: "55",
    lysine: "51",
    "sulphur amino acids": "25",
    "aromatic amino acids": "47",
    threonine: "27",
    tryptophan: "7",
    valine: "32",
  },
};
