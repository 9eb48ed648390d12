import type { Check } from "../check.ts";
import type { EnergyRange } from "./range.ts";

/** D-A-CH reference values, the DGE's table as of about 2024: guiding values, and limits of fatty acids. */
const source =
  "DGE, ÖGE and SGE, D-A-CH reference values for nutrient intake, the DGE's table as of about 2024";
const kind = "guiding value";
const check: Check = "copy";

// biome-ignore format: one range a line
export const dachRanges: readonly EnergyRange[] = [
  { authority: "dach", of: "fat", most: "30", from: 15, kind, source, check },
  { authority: "dach", of: "fat", least: "30", most: "35", from: 4, below: 15, kind, source, check },
  { authority: "dach", of: "fat", least: "30", most: "40", from: 1, below: 4, kind, source, check },
  { authority: "dach", of: "saturatedFat", most: "10", from: 1, kind, source, check },
  { authority: "dach", of: "monounsaturatedFat", least: "10", from: 1, kind, note: "more than this", source, check },
  { authority: "dach", of: "polyunsaturatedFat", least: "7", most: "10", from: 1, kind, source, check },
  { authority: "dach", of: "carbohydrate", least: "50", from: 1, kind, note: "more than this", source, check },
];
