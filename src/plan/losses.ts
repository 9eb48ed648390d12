import { type Language, say } from "../document/language.ts";
import { type ComponentId, components } from "../food/components.ts";
import type { State } from "../food/food.ts";
import { isZero, ZERO } from "../number/exact.ts";
import { componentIndex } from "../sheet/plan.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** States in which a food's vitamins are those before it is cooked. */
const UNCOOKED: readonly (State | undefined)[] = ["raw", "dry"];

/** How many foods a note names. */
const NAMED = 3;

/**
 * Says of vitamins that are shown that they are as before cooking, where what was raw or dry is cooked
 * and the recipe gives no losses; nothing where such lines bring none of them.
 */
export function lossesNote(
  sheets: Iterable<Sheet>,
  shown: readonly ComponentId[],
  language: Language,
): readonly string[] {
  const vitamins = shown.filter((id) => components[id].group === "vitamin").map(componentIndex);
  const all = [...new Set([...sheets].flatMap((s) => uncooked(s, vitamins, false)))];
  if (all.length === 0) return [];
  const foods = all.slice(0, NAMED).map((name) => say(language, name));
  const more = all.length - NAMED;
  if (more > 0) foods.push(say(language, "{count} more", { count: String(more) }));
  const text = "vitamins are as before cooking, since no losses are given: {foods}";
  return [say(language, text, { foods: foods.join("; ") })];
}

/** Names of foods that are cooked, here or in what they are a part of, without a word of what that leaves. */
function uncooked(s: Sheet, vitamins: readonly number[], isCooked: boolean): readonly string[] {
  return s.plan.lines.flatMap(({ line, source, nested }, i): readonly string[] => {
    if (line.retention !== undefined || isZero(s.values.grams[i] ?? ZERO)) return [];
    const cooked = isCooked || line.added === "cooking";
    if (nested) return uncooked(nested, vitamins, cooked);
    const brings = vitamins.some((id) => (source.values[id] ?? 0n) > 0n);
    return cooked && UNCOOKED.includes(source.state) && brings ? [source.name] : [];
  });
}
