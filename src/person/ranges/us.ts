import type { Check } from "../check.ts";
import type { EnergyRange } from "./range.ts";

/** Institute of Medicine 2002/2005, acceptable macronutrient distribution ranges. */
const source = "Institute of Medicine (US, Canada) 2002/2005, acceptable macronutrient distribution ranges";
const adults: Check = "issuer";
const fattyAcids: Check = "issuer";
/** Read in appendix J of the report on sodium and potassium (2019), which prints these ranges again. */
const young: Check = "issuer";
const range = "AMDR";
/** Passages of both editions of the guidelines were read as others copy them; from 2 years is of the older. */
const read: Check = "copy";
const guideline = "dietary guideline";
const newest = "Dietary Guidelines for Americans 2025-2030, page 4";

// biome-ignore format: one range a line
export const usRanges: readonly EnergyRange[] = [
  { authority: "us", of: "protein", least: "10", most: "35", from: 19, kind: range, source, check: adults },
  { authority: "us", of: "fat", least: "20", most: "35", from: 19, kind: range, source, check: adults },
  { authority: "us", of: "carbohydrate", least: "45", most: "65", from: 19, kind: range, source, check: adults },
  { authority: "us", of: "linoleicAcid", least: "5", most: "10", from: 1, kind: range, source, check: fattyAcids },
  { authority: "us", of: "alphaLinolenicAcid", least: "0.6", most: "1.2", from: 1, kind: range, note: "a tenth of it may be longer omega-3 fatty acids", source, check: fattyAcids },
  { authority: "us", of: "protein", least: "5", most: "20", from: 1, below: 4, kind: range, source, check: young },
  { authority: "us", of: "protein", least: "10", most: "30", from: 4, below: 19, kind: range, source, check: young },
  { authority: "us", of: "fat", least: "30", most: "40", from: 1, below: 4, kind: range, source, check: young },
  { authority: "us", of: "fat", least: "25", most: "35", from: 4, below: 19, kind: range, source, check: young },
  { authority: "us", of: "carbohydrate", least: "45", most: "65", from: 1, below: 19, kind: range, source, check: young },
  { authority: "us", of: "saturatedFat", most: "10", from: 2, kind: guideline, source: newest, check: read },
  { authority: "us", of: "addedSugars", most: "10", from: 2, kind: guideline, note: "that of 2025 to 2030 has no share: no amount is recommended, and at most 10 g in a meal", source: "Dietary Guidelines for Americans 2020-2025, page 8", check: read },
];
