import { analysedRetention } from "./food/data/retentionAnalysed.ts";
import { dairyAndEggs } from "./food/starter/dairyAndEggs.ts";
import { fishAndMeat } from "./food/starter/fishAndMeat.ts";
import { fruit } from "./food/starter/fruit.ts";
import { grains } from "./food/starter/grains.ts";
import { foodsOf, starterFoodInputs } from "./food/starter/index.ts";
import { nutsSeedsAndOils } from "./food/starter/nutsSeedsAndOils.ts";
import { pantry } from "./food/starter/pantry.ts";
import { pulses } from "./food/starter/pulses.ts";
import { vegetables } from "./food/starter/vegetables.ts";
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
 * starterFoods.get("oats-rolled-dry").per100g.protein; // => { value: '13.15', error: '0.053', count: 4 }
 * ```
 */
export const starterFoods: FoodTable = /* @__PURE__ */ trustedTable(starterFoodInputs, analysedRetention);

/**
 * The starter foods by group, for programs that need a few: what is not imported is left out of a bundle. The
 * figures are those of {@link starterFoods}; `grainFoods.with(pulseFoods)` puts two together.
 *
 * @example
 * ```ts
 * pulseFoods.get("chickpeas-boiled").per100g.protein; // => { value: '8.86', error: '0.205', count: 23 }
 * grainFoods.has("chickpeas-boiled"); // => false
 * ```
 */
export const grainFoods: FoodTable = /* @__PURE__ */ trustedTable(foodsOf(grains), analysedRetention);

/** Pulses and soya, of {@link starterFoods}. */
export const pulseFoods: FoodTable = /* @__PURE__ */ trustedTable(foodsOf(pulses), analysedRetention);

/** Milk, yoghurt, cheese and eggs, of {@link starterFoods}. */
export const dairyAndEggFoods: FoodTable = /* @__PURE__ */ trustedTable(
  foodsOf(dairyAndEggs),
  analysedRetention,
);

/** Fish, seafood, poultry and meat, of {@link starterFoods}. */
export const fishAndMeatFoods: FoodTable = /* @__PURE__ */ trustedTable(
  foodsOf(fishAndMeat),
  analysedRetention,
);

/** Vegetables, mushrooms and seaweeds, of {@link starterFoods}. */
export const vegetableFoods: FoodTable = /* @__PURE__ */ trustedTable(foodsOf(vegetables), analysedRetention);

/** Fruit, fresh and dried, of {@link starterFoods}. */
export const fruitFoods: FoodTable = /* @__PURE__ */ trustedTable(foodsOf(fruit), analysedRetention);

/** Nuts, seeds, fats and oils, of {@link starterFoods}. */
export const nutSeedAndOilFoods: FoodTable = /* @__PURE__ */ trustedTable(
  foodsOf(nutsSeedsAndOils),
  analysedRetention,
);

/** Herbs, spices, sweeteners, drinks and what else stands in a cupboard, of {@link starterFoods}. */
export const pantryFoods: FoodTable = /* @__PURE__ */ trustedTable(foodsOf(pantry), analysedRetention);
