import type { Check } from "../check.ts";
import type { EnergyRange } from "./range.ts";

/** NHMRC 2006, table 2 on chronic disease (page 252): acceptable macronutrient distribution ranges of adults. */
const source = "NHMRC (Australia, New Zealand) 2006, Nutrient Reference Values, chronic disease, table 2";
const kind = "AMDR";
const check: Check = "copy";

// biome-ignore format: one range a line
export const anzRanges: readonly EnergyRange[] = [
  { authority: "anz", of: "protein", least: "15", most: "25", from: 19, kind, source, check },
  { authority: "anz", of: "fat", least: "20", most: "35", from: 19, kind, source, check },
  { authority: "anz", of: "saturatedFat", most: "10", from: 19, kind, note: "with trans fats", source, check },
  { authority: "anz", of: "carbohydrate", least: "45", most: "65", from: 19, kind, source, check },
];
