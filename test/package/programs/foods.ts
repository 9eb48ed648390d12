import { starterFoods } from "steelyard/foods";

/** The starter foods without the rest. */
export default (): string => String(starterFoods.get("oats-rolled-dry").per100g.protein);
