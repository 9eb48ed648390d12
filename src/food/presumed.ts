import { exact, isZero } from "../number/fraction.ts";
import { type ComponentId, components } from "./components.ts";
import type { Figure, FoodInput } from "./food.ts";

/** Components that plants do not make; a plant food that says nothing of them is presumed to have none. */
const ANIMAL_ONLY: ReadonlySet<ComponentId> = /* @__PURE__ */ new Set(["cholesterol", "vitaminB12"]);

/**
 * The reason a silent component may be presumed zero, or nothing where it may not: amino acids of
 * a food with no protein, fatty acids of one with no fat, cholesterol and vitamin B12 of plants.
 *
 * Source of the practice: FAO/INFOODS Guidelines for Checking Food Composition Data (2012), on
 * logical zeros; from memory.
 */
export function presumedZero(food: FoodInput, id: ComponentId): string | undefined {
  const group = components[id].group;
  if (group === "aminoAcid" && isPlainZero(food.per100g.protein))
    return "presumed zero: the food has no protein";
  if ((group === "fattyAcid" || id === "cholesterol") && isPlainZero(food.per100g.fat)) {
    return "presumed zero: the food has no fat";
  }
  if (food.origin === "plant" && ANIMAL_ONLY.has(id)) return "presumed zero: a plant food";
  return undefined;
}

function isPlainZero(figure: Figure | undefined): boolean {
  if (figure === undefined || figure === "trace") return false;
  if (typeof figure === "object" && !("toFixed" in figure))
    return "value" in figure && isZero(exact(figure.value));
  return isZero(exact(figure));
}
