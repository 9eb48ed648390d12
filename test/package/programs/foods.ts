import { starterFoods } from "steelyard/foods";

/** The starter foods without the rest. */
export default (): string => {
  const { protein } = starterFoods.get("oats-rolled-dry").per100g;
  return typeof protein === "object" && "value" in protein ? String(protein.value) : "";
};
