import type { Check } from "../check.ts";
import type { AminoName, AminoPattern } from "./pattern.ts";

/**
 * WHO/FAO/UNU 2007, Protein and amino acid requirements in human nutrition, WHO Technical Report
 * Series 935, table 23: adults. The pattern is the requirement over the mean protein requirement of
 * 0.66 g per kg, rounded; a table that carries its figures (PMC9486610) heads them 1985.
 */
export const who2007Adult: AminoPattern = {
  id: "who-2007-adult",
  name: "WHO/FAO/UNU 2007",
  for: "adults",
  source: "WHO/FAO/UNU 2007, WHO Technical Report Series 935, table 23",
  check: "unverified",
  mgPerGram: {
    histidine: "15",
    isoleucine: "30",
    leucine: "59",
    lysine: "45",
    "sulphur amino acids": "22",
    "aromatic amino acids": "38",
    threonine: "23",
    tryptophan: "6",
    valine: "39",
  },
};

/** Adult requirements, mg of each amino acid for a kg of body mass and a day; mean of the population. */
export const who2007Requirement: {
  readonly source: string;
  readonly check: Check;
  readonly mgPerKg: { readonly [A in AminoName]: string };
  /** Mean protein requirement and safe level, g per kg of body mass and day. */
  readonly proteinPerKg: { readonly mean: string; readonly safe: string };
} = {
  source: "WHO/FAO/UNU 2007, WHO Technical Report Series 935, table 23",
  check: "unverified",
  mgPerKg: {
    histidine: "10",
    isoleucine: "20",
    leucine: "39",
    lysine: "30",
    "sulphur amino acids": "15",
    "aromatic amino acids": "25",
    threonine: "15",
    tryptophan: "4",
    valine: "26",
  },
  proteinPerKg: { mean: "0.66", safe: "0.83" },
};
