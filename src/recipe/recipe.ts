import { read, readFar } from "../document/read.ts";
import { type Fault, fault, type Path, quote } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import type { Recipe } from "./document.ts";
import { isRead, recipeOf } from "./make.ts";
import type { ReadRecipe } from "./readRecipe.ts";
import { documentSchema, recipeSchema } from "./schema.ts";

/**
 * Reads a recipe document: JSON in, JSON out. Keys and defaults are filled in, everything is
 * frozen, and a document read twice is the same document.
 *
 * Of amounts it refuses what is wrong whatever the food is: a malformed figure, one below 0, a
 * least above its most. What a unit comes to is `sheet`'s to say, because "1 can" and "2 medium" mean what
 * the food says.
 *
 * Throws one error with every fault that can be told, a fault in one field hiding none in another:
 * `recipe-malformed`, `recipe-format-newer`, `line-duplicate`, `method-unknown-line`,
 * `component-unknown`, `measures-…`, and the `amount-…` and `number-…` codes.
 *
 * @example
 * ```ts
 * const porridge = recipe({
 *   name: "Porridge",
 *   portions: 2,
 *   lines: [
 *     { food: "oats-rolled-dry", amount: "100 g" },
 *     { food: "salt", amount: "1 g", scaling: "per-portion" },
 *   ],
 * });
 * console.log(porridge.lines.map((line) => line.key)); // => [ 'oats-rolled-dry', 'salt' ]
 * ```
 */
export function recipe(input: unknown): Recipe {
  return read(recipeSchema(), input, "recipe-malformed");
}

/**
 * @internal Reads a recipe, or as much of one at fault as is sound, so that `sheet` tells all faults at
 * once: lines without the fields that were refused.
 */
export function recipeAsFar(input: unknown, faults: Fault[]): Recipe | Partial<ReadRecipe> {
  if (isRead(input)) return input;
  const before = faults.length;
  const read = readFar(faults, documentSchema(), input, "recipe-malformed") ?? {};
  return faults.length > before ? read : recipeOf(read as ReadRecipe);
}

/** @internal Says that a recipe id is not known. */
export function unknownRecipe(id: string, known: Iterable<string>, path: Path): Error {
  return fault(
    "recipe-unknown",
    `no recipe is called ${quote(id)}`,
    didYouMean(id, known, "hand it in with { recipes: { … } }"),
    path,
  );
}
