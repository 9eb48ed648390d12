import type { EnergyRange } from "./range.ts";

/**
 * Averages for the population, not ranges for a person: COMA 1991 (fat, saturated fat) and SACN 2015
 * (carbohydrate, free sugars), SACN 2019 (saturated fats, which kept the figure), as per cent of
 * energy. Free sugars are wider than added sugars: those of juice and honey count too.
 */
const kind = "population average";

// biome-ignore format: one range a line
export const ukRanges: readonly EnergyRange[] = [
  { authority: "uk", of: "freeSugars", most: "5", from: 2, kind, source: "SACN 2015, Carbohydrates and Health", check: "copy" },
  { authority: "uk", of: "carbohydrate", least: "50", from: 2, kind, note: "about this share", source: "SACN 2015, Carbohydrates and Health", check: "copy" },
  { authority: "uk", of: "fat", most: "35", from: 5, kind, note: "of food energy", source: "COMA 1991, Report 41", check: "copy" },
  { authority: "uk", of: "saturatedFat", most: "10", from: 5, kind, source: "SACN 2019, Saturated Fats and Health", check: "copy" },
];
