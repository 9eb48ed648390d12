import type { FoodInput } from "./food.ts";

/**
 * Gives what a kitchen calls a food: its short name, where that is made of words of its name, else the name. So a
 * copy of a food under another name is not called by the old one.
 */
export function kitchenNameOf({ kitchenName, name }: Pick<FoodInput, "kitchenName" | "name">): string {
  if (kitchenName === undefined) return name;
  const words = wordsIn(name);
  return wordsIn(kitchenName).every((word) => words.includes(word)) ? kitchenName : name;
}

function wordsIn(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];
}
