import type { EnergyRange } from "./range.ts";

/** EFSA 2010, reference intake ranges: fats, EFSA Journal 8(3):1461; carbohydrates, 8(3):1462. */
const kind = "reference intake range";

// biome-ignore format: one range a line
export const euRanges: readonly EnergyRange[] = [
  { authority: "eu", of: "fat", least: "20", most: "35", from: 4, kind, source: "EFSA 2010, EFSA Journal 8(3):1461", check: "issuer" },
  { authority: "eu", of: "fat", least: "35", most: "40", from: 1, below: 4, kind, source: "EFSA 2010, EFSA Journal 8(3):1461", check: "issuer" },
  { authority: "eu", of: "carbohydrate", least: "45", most: "60", from: 1, kind, source: "EFSA 2010, EFSA Journal 8(3):1462", check: "issuer" },
];
