import { isZero, ZERO } from "../number/exact.ts";
import { type ComponentId, components } from "./components.ts";
import { figureAsRead, type ReadFigure } from "./figure.ts";
import type { Figure, FoodInput, State } from "./food.ts";

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
 * Foods of which alcohol is presumed absent, by the words of their group and the states that it holds
 * for: what is dry, or raw and no fruit, or seeds and their oils. What was cooked may hold wine, what is
 * sold may have risen or ripened: of these, and of a group that is not named here, nothing is presumed.
 */
// biome-ignore format: a table
const UNFERMENTED: { readonly [group: string]: readonly State[] | "any" } = {
  nuts: "any", seeds: "any", oils: "any", salt: "any",
  grains: ["raw", "dry"], cereals: ["raw", "dry"], pulses: ["raw", "dry"], legumes: ["raw", "dry"],
  vegetables: ["raw", "dry"], herbs: ["raw", "dry"], seaweed: ["raw", "dry"],
  spices: ["dry"], "dried fruit": ["dry"],
  eggs: ["raw"], fish: ["raw"], meat: ["raw"], poultry: ["raw"],
};

/** Words of a name that tell of fermentation, of alcohol, or of what carries it. */
const FERMENTED =
  /\b(ferment|yeast|leaven|sour|bread|dough|bun|roll|cake|pudding|pickle|kimchi|miso|natto|tempeh|tamari|shoyu|soy sauce|soya sauce|vinegar|kefir|koumiss|kumis|kombucha|yogh?urt|beer|ale\b|stout|lager|malt|cider|perry|mead|wine|sherry|port\b|vermouth|sake|mirin|rum\b|brandy|whisk|gin\b|vodka|tequila|liqueur|spirit|alcohol|cocktail|marinad|extract|essence|vanilla|flavour|flavor|juice|nectar|syrup|sauce)/i;

/** Seaweeds, other algae, yeast and what is fermented can hold vitamin B12, and no animal is in them. */
const ALGAE = /\b(seaweed|alga|nori|laver|spirulina|chlorella|dulse|kelp|wakame|kombu|hijiki|arame)/i;

/**
 * Zero for a silent component where it may be presumed, or nothing where it may not: amino acids of a
 * food with no protein, fatty acids of one with no fat, cholesterol and vitamin B12 of plants, coumarin of
 * a food whose name tells of no cinnamon, alcohol where nothing ferments and nothing is added. What was
 * added to a food is never presumed absent from it.
 *
 * Source of the practice: FAO/INFOODS Guidelines for Checking Food Composition Data (2012), on
 * logical zeros; unverified. That no food of USDA SR28 which holds alcohol is presumed to have none
 * was tried on all of them.
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
  if (id === "vitaminB12" && mayHoldB12(food)) return undefined;
  if (food.origin === "plant" && ANIMAL_ONLY.has(id)) return "presumed zero: a plant food";
  if (id === "coumarin" && !COUMARIN.test([food.name, food.id, ...codesOf(food)].join(" ")))
    return "presumed zero: its name tells of no cinnamon, nor of another source";
  if (id === "alcohol" && isUnfermented(food)) return "presumed zero: neither fermented nor mixed";
  return undefined;
}

function mayHoldB12({ name, group = "" }: FoodInput): boolean {
  return [name, group].some((words) => ALGAE.test(words) || FERMENTED.test(words));
}

function isUnfermented({ name, state, group = "", origin }: FoodInput): boolean {
  if (origin === undefined || origin === "mixed" || FERMENTED.test(name)) return false;
  const key = group.trim().toLowerCase();
  const states = Object.hasOwn(UNFERMENTED, key) ? UNFERMENTED[key] : undefined;
  if (states === undefined) return false;
  return states === "any" || (state !== undefined && states.includes(state));
}

/** A nought that somebody stands for: neither a gap, nor a trace, nor a limit. */
function isPlainZero(given: Figure | undefined): boolean {
  if (given === undefined) return false;
  const { kind, value } = figureAsRead(given);
  return kind !== "trace" && kind !== "below" && isZero(value);
}

function codesOf({ cautions = [] }: FoodInput): readonly string[] {
  return cautions.map(({ code }) => code);
}
