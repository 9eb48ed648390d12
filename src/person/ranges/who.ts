import type { Check } from "../check.ts";
import type { EnergyRange } from "./range.ts";

/**
 * WHO's guidelines for populations, against chronic disease and unhealthy gain of weight, read in its news of each as
 * others print it, and the acceptable ranges of adults of FAO's report on fats of 2010, in a journal's table
 * (Nutrients 2019;11:2008, table 3) and in an expert body's list. Those of children were not read.
 */
const check: Check = "copy";
const sugars = "WHO 2015, Guideline: sugars intake for adults and children";
const fats = "WHO 2023, Guideline: saturated fatty acid and trans-fatty acid intake";
const total = "WHO 2023, Guideline: total fat intake";
const fao = "FAO 2010, Fats and fatty acids in human nutrition, table 2.1";
const goal = "population guideline";
const range = "AMDR";

// biome-ignore format: one range a line
export const whoRanges: readonly EnergyRange[] = [
  { authority: "who", of: "freeSugars", most: "10", from: 1, kind: goal, note: "less than this; below 5 % is better still", source: sugars, check },
  { authority: "who", of: "saturatedFat", most: "10", from: 2, kind: goal, source: fats, check },
  { authority: "who", of: "transFat", most: "1", from: 2, kind: goal, source: fats, check },
  { authority: "who", of: "fat", most: "30", from: 20, kind: goal, source: total, check },
  { authority: "who", of: "fat", least: "20", most: "35", from: 18, kind: range, source: fao, check },
  { authority: "who", of: "polyunsaturatedFat", least: "6", most: "11", from: 18, kind: range, source: fao, check },
  { authority: "who", of: "linoleicAcid", least: "2.5", most: "9", from: 18, kind: range, source: fao, check },
  { authority: "who", of: "omega3", least: "0.5", most: "2", from: 18, kind: range, source: fao, check },
];
