import type { Allergen } from "../food/allergens.ts";
import type { FoodInput } from "../food/food.ts";
import { checkSheet } from "../sheet/given.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { FoodsLeftOut } from "./substitutes/leftOut.ts";
import { tryFood } from "./substitutes/match.ts";
import { openingOf } from "./substitutes/opening.ts";
import type { SubstitutesOptions } from "./substitutes/options.ts";
import { readSubstitutes } from "./substitutes/read.ts";
import { Substitutes } from "./substitutes/result.ts";
import { closestFirst, substituteOf } from "./substitutes/substituteOf.ts";

/**
 * Finds foods that may stand in for one line of a recipe, the closest first: for each, the amount that
 * brings as much of one thing as the line did, protein or energy mostly (`match`), and what that changes. Close is
 * the sum of the shares by which the components asked for move in a portion as eaten, an excess counting
 * as a lack does; all other lines stay, and what stands in is cooked as the line was. What the line itself
 * says nothing of is not held to be none: it is listed as `untold`, and each substitute says what it
 * `tells` of that. The line's own `least` and `most` move with the amount.
 *
 * A food is only offered in an amount that a cook would serve of it, for one portion: a third to three
 * times the mass of what it stands in for; no more than twice its energy, or 50 kcal; with no more than 1 g of sodium, half a day's, unless the line brought
 * more; and of what seasons, sweetens, binds or is strewn (salt 3 g, spices 5, leavening and seaweed 10,
 * herbs and vinegar 30, oils 45, sweeteners and cocoa 50, seeds 60, nuts 80, dried fruit 100), or has no
 * measures but spoons (four of the largest), no more than that, or twice what the line had of its like.
 * These figures are common practice, no source; the day's 2 g of sodium are the WHO's (guideline of 2012).
 * What would take more or less is listed as `outside`.
 *
 * Foods that hold what is to be avoided are left out, and so are those of which no allergens are
 * known: unknown is never free from. Both are listed. Where nothing is left, `why` says so, and `opens` what
 * would do. The library computes and does not judge whether the dish works, or is safe for the person who
 * eats it: read the label, and ask whoever advises them.
 *
 * Throws one error with every fault: `line-unknown`, `substitutes-malformed` (a nested recipe or
 * nothing to replace, options that are none), `component-unknown`, `food-unknown`, and `sheet-malformed`
 * for what is no sheet.
 *
 * @example
 * ```ts
 * const bowl = sheet(
 *   {
 *     name: "Beans and rice",
 *     portions: 1,
 *     lines: [
 *       { food: "rice-brown-long-boiled", amount: "200 g" },
 *       { key: "beans", food: "kidney-beans-red-boiled", amount: "150 g" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const { match, found } = substitutes(bowl, "beans", { avoid: ["soya", "peanut"] });
 * console.log(match, found[0].name, found[0].grams.toFixed(0)); // => protein Black beans, boiled 147
 * ```
 */
export function substitutes(s: Sheet, lineKey: string, how: SubstitutesOptions = {}): Substitutes {
  checkSheet(s);
  const i = s.plan.indexOf(lineKey);
  const read = readSubstitutes(s, i, how);
  const { candidates, avoid, match, untold, most } = read;
  const left: FoodsLeftOut = { avoided: [], unknown: [], without: [], outside: [] };
  const free = candidates.filter((food) => isFree(food, avoid, left));
  const found = free
    .flatMap((food) => {
      const tried = tryFood(s, i, food, match);
      if (tried.is === "matched") return [substituteOf(s, i, food, tried.grams, read)];
      if (tried.is === "without") left.without.push(food.id);
      else left.outside.push({ food: food.id, grams: tried.grams, ...tried.range });
      return [];
    })
    .sort(closestFirst);
  const of = { sheet: s, key: lineKey, name: s.plan.lines[i]?.source.name ?? lineKey };
  const opening = found.length === 0 ? openingOf({ s, i, read, free, left }) : undefined;
  return new Substitutes(of, found.slice(0, most), { ...left, untold, match, opening });
}

/** Whether a food is known to hold nothing of what is to be avoided; one that does, or does not say, is listed. */
function isFree(food: FoodInput, avoid: readonly Allergen[], left: FoodsLeftOut): boolean {
  if (avoid.length === 0) return true;
  const holds = food.allergens?.filter((a) => avoid.includes(a));
  if (!holds) left.unknown.push(food.id);
  else if (holds.length > 0) left.avoided.push({ food: food.id, holds });
  return holds?.length === 0;
}
