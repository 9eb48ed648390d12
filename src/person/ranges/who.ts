import type { Check } from "../check.ts";
import type { EnergyRange } from "./range.ts";

/**
 * WHO's guidelines for populations, against chronic disease and unhealthy gain of weight, and the acceptable ranges
 * of FAO's report on fats of 2010 (tables 2.1 and 2.2). Read in a transcription of their recommendations.
 */
const check: Check = "copy";
const sugars = "WHO 2015, Guideline: sugars intake for adults and children";
const fats = "WHO 2023, Guideline: saturated fatty acid and trans-fatty acid intake";
const total = "WHO 2023, Guideline: total fat intake";
const fao = "FAO 2010, Fats and fatty acids in human nutrition, tables 2.1 and 2.2";
const goal = "population guideline";
const range = "AMDR";

// biome-ignore format: one range a line
export const whoRanges: readonly EnergyRange[] = [
  { authority: "who", of: "freeSugars", most: "10", from: 1, kind: goal, note: "less than this; below 5 % is better still", source: sugars, check },
  { authority: "who", of: "saturatedFat", most: "10", from: 2, kind: goal, source: fats, check },
  { authority: "who", of: "transFat", most: "1", from: 2, kind: goal, source: fats, check },
  { authority: "who", of: "fat", most: "30", from: 20, kind: goal, source: total, check },
  { authority: "who", of: "fat", least: "20", most: "35", from: 18, kind: range, source: fao, check },
  { authority: "who", of: "fat", least: "25", most: "35", from: 2, below: 18, kind: range, source: fao, check },
  { authority: "who", of: "polyunsaturatedFat", least: "6", most: "11", from: 18, kind: range, source: fao, check },
  { authority: "who", of: "polyunsaturatedFat", most: "11", from: 2, below: 18, kind: range, source: fao, check },
  { authority: "who", of: "linoleicAcid", least: "2.5", most: "9", from: 18, kind: range, source: fao, check },
  { authority: "who", of: "linoleicAcid", least: "3.0", most: "4.5", from: 1, below: 2, kind: "AI", source: fao, check },
  { authority: "who", of: "omega3", least: "0.5", most: "2", from: 18, kind: range, source: fao, check },
  { authority: "who", of: "alphaLinolenicAcid", least: "0.5", from: 18, kind: range, source: fao, check },
  { authority: "who", of: "alphaLinolenicAcid", least: "0.4", most: "0.6", from: 1, below: 2, kind: "AI", source: fao, check },
];
