import { pulseFoods } from "steelyard/foods";

/** One group of the starter foods without the others. */
export default (): string => {
  const { protein } = pulseFoods.get("chickpeas-boiled").per100g;
  return typeof protein === "object" && "value" in protein ? String(protein.value) : "";
};
