import type { Check } from "../check.ts";
import type { AminoPattern } from "./pattern.ts";

/**
 * FAO 2013, Dietary protein quality evaluation in human nutrition, Food and Nutrition Paper 92, table
 * 5: recommended scoring patterns. The report scores digestible amino acids; for regulation it asks
 * for the infant pattern for infant formula, and that of 6 months to 3 years for all other food.
 */
const source = "FAO 2013, Food and Nutrition Paper 92, table 5";
const check: Check = "unverified";

export const fao2013Infant: AminoPattern = {
  id: "fao-2013-infant",
  name: "FAO 2013, infant",
  for: "birth to 6 months",
  source,
  check,
  mgPerGram: {
    histidine: "21",
    isoleucine: "55",
    leucine: "96",
    lysine: "69",
    "sulphur amino acids": "33",
    "aromatic amino acids": "94",
    threonine: "44",
    tryptophan: "17",
    valine: "55",
  },
};

export const fao2013Child: AminoPattern = {
  id: "fao-2013-child",
  name: "FAO 2013, child",
  for: "6 months to 3 years",
  source,
  check,
  mgPerGram: {
    histidine: "20",
    isoleucine: "32",
    leucine: "66",
    lysine: "57",
    "sulphur amino acids": "27",
    "aromatic amino acids": "52",
    threonine: "31",
    tryptophan: "8.5",
    valine: "43",
  },
};

export const fao2013Older: AminoPattern = {
  id: "fao-2013-older",
  name: "FAO 2013, older child, adolescent and adult",
  for: "above 3 years",
  source,
  check,
  mgPerGram: {
    histidine: "16",
    isoleucine: "30",
    leucine: "61",
    lysine: "48",
    "sulphur amino acids": "23",
    "aromatic amino acids": "41",
    threonine: "25",
    tryptophan: "6.6",
    valine: "40",
  },
};
