import { isItem, plainLine } from "./plainLine.ts";
import { portionsInTitle, saysPortions } from "./portionsOf.ts";
import { leadingAmount } from "./written.ts";

export const METHOD: RegExp =
  /^(?:method|instructions?|directions?|preparation|steps|how to make it|to make)\s*:?$/i;
export const INGREDIENTS: RegExp = /^(?:ingredients?|you will need|what you need)\s*:?$/i;

/**
 * The title of a pasted text: its first line, where that stands above the rest (marked as a heading, a blank
 * line, an item or "Serves 4" below it, or "for two" at its end) and is no item, no amount and no heading of a part.
 */
export function titleOf(whole: string, [first, second]: readonly string[]): string | undefined {
  if (first === undefined || second === undefined || isItem(first)) return undefined;
  const plain = plainLine(first);
  const isOther = METHOD.test(plain) || INGREDIENTS.test(plain) || saysPortions(plain);
  if (isOther || /^(?:for|to)\b|[:：]$/i.test(plain) || plain.length > 200) return undefined;
  const isApart =
    /^\s*#/.test(first) ||
    /^\s*\S.*(?:\r\n|[\n\r\u2028\u2029])[^\S\n\r]*[\n\r\u2028\u2029]/.test(whole) ||
    isItem(second) ||
    saysPortions(plainLine(second)) ||
    INGREDIENTS.test(plainLine(second)) ||
    portionsInTitle(plain) !== undefined;
  return isApart && leadingAmount(first).kind !== "ingredient" ? plain : undefined;
}
