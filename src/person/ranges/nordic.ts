import type { Check } from "../check.ts";
import type { EnergyRange } from "./range.ts";

/**
 * Nordic Nutrition Recommendations 2023, boxes 2 to 8: recommended ranges of intake. Fat, carbohydrate and sugars
 * are of adults, with fat and protein of the second year; those of 2 to 17 years were not read. Carbohydrate
 * counts the energy of fibre.
 */
const source = "Nordic Nutrition Recommendations 2023, boxes 2 to 8";
const kind = "recommended range";
const check: Check = "copy";

// biome-ignore format: one range a line
export const nordicRanges: readonly EnergyRange[] = [
  { authority: "nordic", of: "protein", least: "10", most: "20", from: 2, kind, source, check },
  { authority: "nordic", of: "protein", least: "10", most: "15", from: 1, below: 2, kind, source, check },
  { authority: "nordic", of: "fat", least: "25", most: "40", from: 18, kind, source, check },
  { authority: "nordic", of: "fat", least: "30", most: "40", from: 1, below: 2, kind, source, check },
  { authority: "nordic", of: "carbohydrate", least: "45", most: "60", from: 18, kind, source, check },
  { authority: "nordic", of: "carbohydrate", least: "45", most: "60", from: 1, below: 2, kind, source, check },
  { authority: "nordic", of: "saturatedFat", most: "10", from: 1, kind, note: "less than this", source, check },
  { authority: "nordic", of: "monounsaturatedFat", least: "10", most: "20", from: 18, kind, note: "of the cis form", source, check },
  { authority: "nordic", of: "polyunsaturatedFat", least: "5", most: "10", from: 18, kind, note: "of the cis form", source, check },
  { authority: "nordic", of: "omega3", least: "1", from: 2, kind, source, check },
  { authority: "nordic", of: "alphaLinolenicAcid", least: "0.5", from: 2, kind, source, check },
  { authority: "nordic", of: "freeSugars", most: "10", from: 18, kind, note: "less than this, of added and free sugars", source, check },
];
