/** All that the package exports, whatever door it stands behind. */
export * from "steelyard";
export * from "steelyard/bulk";
export * from "steelyard/card";
export * from "steelyard/foods";
export * from "steelyard/interchange";
export * from "steelyard/notebook";
export * from "steelyard/person";
export * from "steelyard/phrases";
export * from "steelyard/plan";
export * from "steelyard/schema";
export * from "steelyard/show";
