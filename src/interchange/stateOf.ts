import type { State } from "../food/food.ts";

/** Words of a description that tell of heat; a product's own name, in capitals, tells of nothing. */
const HEAT =
  /(?<!\b(?:not|to be|un|pre)[- ]?)\b(?:cooked|boiled|hard-boiled|baked|roasted|braised|broiled|pan-broiled|charbroiled|grilled|fried|pan-fried|stir-fried|stewed|simmered|steamed|microwaved|toasted|poached|scrambled|sauteed|sautéed|barbecued|rotisserie|brewed|heated|reheated|popped)\b/;
const UNTOUCHED = /\b(?:raw|uncooked)\b/;
const AS_SOLD =
  /\b(?:unprepared|unheated|canned|bottled|ready-to-(?:eat|serve|drink|feed)|commercially prepared|fast foods?|restaurant|frozen)\b/;
const DRY =
  /^(?:freeze-|sun-|spray-)?(?:dry|dried|dehydrated|powder|powdered|dry mix|dry form|dry powder)\b(?![- ](?:heat|roasted))/;
const PREPARED = /^prepared\b|\bprepared[- ](?:with|from)\b/;

/** Grams of water in 100 g: less where seeds and grains that a table calls raw are dry ones, and in all that is dry. */
const DRY_SEEDS = 20;
const DRIED = 40;
const SEEDS = /\b(?:cereal grains|legumes)\b/i;

/**
 * The state that a description tells of, by these rules, the first that holds; undefined where none does.
 *
 * 1. Raw or uncooked: `raw`; `dry` where the food is a grain or pulse with under 20 g of water in 100 g.
 * 2. Unprepared or unheated: `dry` where it says dry, dried or powder, else `as sold`.
 * 3. A word of heat (boiled, baked, roasted, …): `cooked`.
 * 4. Dry, dried, dehydrated, powder, with under 40 g of water in 100 g, unless it was prepared: `dry`.
 * 5. Drained: `drained`.
 * 6. Canned, bottled, frozen, ready to eat, of a restaurant: `as sold`.
 *
 * Parts of a description in capitals are names of products and not looked at.
 */
export function stateOf(description: string, group = "", water?: number): State | undefined {
  const parts = description
    .split(",")
    .map((part) => part.trim())
    .filter((part) => !/\p{Lu}{2}/u.test(part))
    .map((part) => part.toLowerCase());
  const says = (words: RegExp): boolean => parts.some((part) => words.test(part));
  if (says(UNTOUCHED)) {
    if (says(DRY) || (SEEDS.test(group) && water !== undefined && water < DRY_SEEDS)) return "dry";
    return "raw";
  }
  if (says(/\b(?:unprepared|unheated)\b/)) return says(DRY) ? "dry" : "as sold";
  if (says(HEAT)) return "cooked";
  if (says(DRY) && !says(PREPARED) && (water ?? 0) < DRIED) return "dry";
  if (says(/\bdrained\b/)) return "drained";
  return says(AS_SOLD) && !says(PREPARED) ? "as sold" : undefined;
}
