import type { AminoPattern } from "./pattern.ts";

/**
 * FAO/WHO 1991, Protein quality evaluation, Food and Nutrition Paper 51: the pattern of children of 2
 * to 5 years of FAO/WHO/UNU 1985, still that of food labels in the United States (21 CFR 101.9(c)(7)).
 */
export const fao1991Preschool: AminoPattern = {
  id: "fao-1991-preschool",
  name: "FAO/WHO 1991, preschool child",
  for: "2 to 5 years; used for all ages in its day",
  source: "FAO/WHO 1991, Food and Nutrition Paper 51",
  check: "unverified",
  mgPerGram: {
    histidine: "19",
    isoleucine: "28",
    leucine: "66",
    lysine: "58",
    "sulphur amino acids": "25",
    "aromatic amino acids": "63",
    threonine: "34",
    tryptophan: "11",
    valine: "35",
  },
};
