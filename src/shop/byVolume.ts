import type { FoodInput } from "../food/food.ts";
import { type Exact, exact, fraction, ONE, over, times } from "../number/exact.ts";
import { ceiling, compareRatios } from "../number/ratio.ts";
import { ownMeasures } from "../recipe/ownMeasures.ts";

/** Words for what a shop sells by volume, in a food's first words. Common practice, no source. */
const POURED: RegExp =
  /\b(milk|drink|juice|oil|vinegar|wine|beer|cider|stock|broth|cream|buttermilk|kefir)\b/i;
/** What is called so and is sold by weight all the same. */
const NOT_POURED: RegExp = /\b(powder|dried|dry|canned|tinned|solid|cheese|clotted|block)\b/i;

/** Millilitres of a gram of what is sold by volume; undefined of all else, and where nothing says it. */
export function volumeOfGram(food: FoodInput): Exact | undefined {
  const [head = ""] = food.name.split(",");
  if (!POURED.test(head) || NOT_POURED.test(food.name) || food.state === "dry") return undefined;
  if (food.density !== undefined) return over(ONE, exact(food.density));
  const filled = ownMeasures(food).measures.find(({ ml, form }) => ml !== undefined && form === "");
  return filled?.ml && over(filled.ml, filled.grams);
}

/** Rounded up to what bottles and cartons are told in: 5 ml below 100 ml, 10 ml below 1 l, 100 ml from there on. */
export function pouredOut(millilitres: Exact): Exact {
  const below = (ml: bigint): boolean => compareRatios(millilitres, fraction(ml)) < 0;
  const step = fraction(below(100n) ? 5n : below(1000n) ? 10n : 100n);
  return times(fraction(ceiling(over(millilitres, step))), step);
}
