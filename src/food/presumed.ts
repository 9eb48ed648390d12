import { isZero, ZERO } from "../number/fraction.ts";
import { type ComponentId, components } from "./components.ts";
import { type ReadFigure, read } from "./figure.ts";
import type { Figure, FoodInput } from "./food.ts";

/** Components that plants do not make; a plant food that says nothing of them is presumed to have none. */
const ANIMAL_ONLY: ReadonlySet<ComponentId> = /* @__PURE__ */ new Set(["cholesterol", "vitaminB12"]);

/**
 * What a food that brings coumarin is called, in the languages that it may be written in here: cassia and
 * what is seasoned with it, tonka beans, sweet woodruff. Other foods bring none worth a figure (EFSA 2008,
 * EFSA Journal 793: cinnamon is the main source in food).
 */
const COUMARIN =
  /cinnamon|cassia|zimt|cannelle|canela|cannella|kanel|kaneel|cynamon|skořic|tarçın|fahéj|scorțișoar|кориц|κανέλ|シナモン|肉桂|桂皮|tonk|woodruff|waldmeister|aspérule|melilot|sweet clover|spice|chai|masala|speculo|lebkuchen|gingerbread|pain d.épices|mulled|pumpkin pie|apple pie|coumarin/i;

/**
 * Zero for a silent component where it may be presumed, or nothing where it may not: amino acids of a
 * food with no protein, fatty acids of one with no fat, cholesterol and vitamin B12 of plants, coumarin of
 * a food whose name tells of no cinnamon. What was added to a food is never presumed absent from it.
 *
 * Source of the practice: FAO/INFOODS Guidelines for Checking Food Composition Data (2012), on
 * logical zeros; unverified.
 */
export function presumed(food: FoodInput, id: ComponentId): ReadFigure | undefined {
  const reason = reasonFor(food, id);
  return reason === undefined || food.fortifiedWith?.includes(id)
    ? undefined
    : { kind: "presumed", value: ZERO, low: ZERO, high: ZERO, note: reason };
}

function reasonFor(food: FoodInput, id: ComponentId): string | undefined {
  const group = components[id].group;
  if (group === "aminoAcid" && isPlainZero(food.per100g.protein))
    return "presumed zero: the food has no protein";
  if ((group === "fattyAcid" || id === "cholesterol") && isPlainZero(food.per100g.fat))
    return "presumed zero: the food has no fat";
  if (food.origin === "plant" && ANIMAL_ONLY.has(id)) return "presumed zero: a plant food";
  if (id === "coumarin" && !COUMARIN.test([food.name, food.id, ...codesOf(food)].join(" ")))
    return "presumed zero: its name tells of no cinnamon, nor of another source";
  return undefined;
}

/** A nought that somebody stands for: neither a gap, nor a trace, nor a limit. */
function isPlainZero(given: Figure | undefined): boolean {
  if (given === undefined) return false;
  const { kind, value } = read(given);
  return kind !== "trace" && kind !== "below" && isZero(value);
}

function codesOf({ cautions = [] }: FoodInput): readonly string[] {
  return cautions.map(({ code }) => code);
}
