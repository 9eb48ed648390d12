import { analysedRetention } from "./food/data/retentionAnalysed.ts";
import { starterFoodInputs } from "./food/starter/index.ts";
import { type FoodTable, trustedTable } from "./food/table.ts";

export { analysedRetention } from "./food/data/retentionAnalysed.ts";
export { usdaRetention } from "./food/data/retentionUsdaR6.ts";

/**
 * Over two hundred everyday foods, each with its state, the fullest panel its source gives, US
 * household measures, refuse, density where its own measures imply one, allergens and cautions.
 *
 * Source: USDA National Nutrient Database for Standard Reference, Release 28 (public domain); iodine,
 * which it does not carry, from the sources named on each figure. What a food does not list is
 * unknown, not zero. Figures are read when a food is first used.
 *
 * Recipe lines may name the codes of {@link analysedRetention}, which are
 * words, and of {@link usdaRetention}, which are figures.
 *
 * @example
 * ```ts
 * starterFoods.get("oats-rolled-dry").per100g.protein; // => 13.15
 * ```
 */
export const starterFoods: FoodTable = /* @__PURE__ */ trustedTable(starterFoodInputs, analysedRetention);
