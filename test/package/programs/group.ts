import { pulseFoods } from "steelyard/foods";

/** One group of the starter foods without the others. */
export default (): string => String(pulseFoods.get("chickpeas-boiled").per100g.protein);
