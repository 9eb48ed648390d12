import type { Allergen } from "../../food/allergens.ts";
import { readFigure } from "../../food/composition.ts";
import type { FoodInput } from "../../food/food.ts";
import { exact } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { holdsAllergen } from "./allergens.ts";
import type { Kind } from "./kinds.ts";

/** By what a food was told to be of a kind: `silent` is by its words alone, where a figure would have said. */
export type ToldBy = "said" | "figure" | "words" | "silent";

/** Allergens that no plant brings. */
const OF_ANIMALS: readonly Allergen[] = ["fish", "milk", "egg"];

/** Whether a food is of a kind, and by what; nothing where it is not told. */
export function tellKind(food: FoodInput, kind: Kind): ToldBy | undefined {
  if (kind.lacks && food.allergens?.includes(kind.lacks)) return undefined;
  if (kind.not?.some((other) => tellKind(food, other))) return undefined;
  if (carries(food, kind.codes ?? []) || saysSo(food, kind)) return "said";
  const figure = kind.above && readFigure(food, kind.above.of);
  if (kind.above && figure && compareRatios(figure.value, exact(kind.above.in100g)) > 0) return "figure";
  if (!mayBe(food, kind)) return undefined;
  const said = wordsOf(food);
  if (kind.but?.test(said)) return undefined;
  if (kind.words?.test(said) || (food.group && kind.group?.test(food.group.toLowerCase()))) return "words";
  return figure?.kind === "missing" && kind.silentWords?.test(said) ? "silent" : undefined;
}

/** Whether a food carries a caution with one of the codes. */
export function carries({ cautions = [] }: FoodInput, codes: readonly string[]): boolean {
  return cautions.some(({ code }) => codes.includes(code));
}

function saysSo(food: FoodInput, { says }: Kind): boolean {
  if (says === undefined) return false;
  return says === "nothing" ? food.allergens === undefined : holdsAllergen(food, says);
}

function mayBe(food: FoodInput, { holds, states }: Kind): boolean {
  if (states && food.state && !states.includes(food.state)) return false;
  if (!holds) return true;
  if (food.allergens) return holdsAllergen(food, holds);
  return !(food.origin === "plant" && OF_ANIMALS.includes(holds));
}

/** Name and id in small letters, accents left off. */
function wordsOf({ id, name }: FoodInput): string {
  return `${name} ${id.replaceAll("_", " ")}`.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}
