import type { FoodInput } from "../food/food.ts";
import { type Exact, fraction, over } from "../number/exact.ts";
import { ceiling, compareRatios } from "../number/ratio.ts";
import { type OwnMeasure, ownMeasures } from "../recipe/ownMeasures.ts";
import type { ShoppingLine } from "./line.ts";

/** Words for what is sold whole, besides a food's own name. */
const WHOLE: readonly string[] = [
  "whole",
  "each",
  "piece",
  "fruit",
  "egg",
  "head",
  "bulb",
  "ear",
  "fillet",
  "bunch",
  "loaf",
  "block",
  "can",
  "tin",
];
const SIZES: readonly string[] = ["extra small", "small", "medium", "large", "extra large", "jumbo"];
/** What a size may be said of: `medium head`, but no `medium stalk`, which no shop sells by itself. */
const SIZED: readonly string[] = ["", ...WHOLE];
/** Words that say that a food comes in a tin or jar: nobody counts what is in it. */
const TINNED: RegExp = /\b(canned|tinned|bottled|in (brine|juice|oil|syrup|water))\b/i;
const TINS: readonly string[] = ["can", "tin", "jar"];
/** A heap of more nobody counts at a shop, but for eggs. Common practice, no source. */
const MOST: Exact = /* @__PURE__ */ fraction(24n);

/** Lighter ones nobody counts: raisins, grapes, nuts. Common practice, no source. */
const LIGHTEST: Exact = /* @__PURE__ */ fraction(15n);

/**
 * How many pieces are as much as is bought by weight, rounded up: by the piece that recipes measure the
 * food in, else by its medium one, else by the first that the food names. Nothing where it names none.
 */
export function piecesOf(food: FoodInput, grams: Exact, used: ReadonlySet<string>): ShoppingLine["pieces"] {
  const isTinned = TINNED.test(food.name);
  const all = ownMeasures(food).measures.filter((measure) =>
    isTinned ? TINS.some((tin) => measure.unit.toLowerCase().startsWith(tin)) : isPiece(measure, food),
  );
  const found =
    all.find(({ name }) => used.has(name)) ?? all.find(({ unit }) => /^medium\b/.test(unit)) ?? all[0];
  if (!found || compareRatios(found.grams, LIGHTEST) < 0) return undefined;
  const count = fraction(ceiling(over(grams, found.grams)));
  const isCounted = isTinned || /\begg/i.test(food.name) || compareRatios(count, MOST) <= 0;
  return isCounted ? { name: found.name, count } : undefined;
}

function isPiece({ ml, unit }: OwnMeasure, { name }: FoodInput): boolean {
  if (ml !== undefined) return false;
  const word = unit.toLowerCase();
  const size = SIZES.filter((each) => word === each || word.startsWith(`${each} `)).at(-1);
  if (size !== undefined) return SIZED.includes(word.slice(size.length).trim());
  return WHOLE.includes(word) || names(name).includes(word);
}

/** The first words of a food's name, as one of it is called: `Plums, raw` is a plum. */
function names(food: string): readonly string[] {
  const [head = ""] = food.toLowerCase().split(",");
  return [head, head.replace(/ies$/, "y"), head.replace(/oes$/, "o"), head.replace(/s$/, "")];
}
