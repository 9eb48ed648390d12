import type { LineInput, Recipe, RecipeInput } from "./document.ts";

/** A recipe document as it is read: nested ones are recipes by then. */
export interface ReadRecipe extends Omit<RecipeInput, "lines"> {
  readonly lines: readonly ReadLine[];
}

/** A line of one. */
export interface ReadLine extends Omit<LineInput, "recipe"> {
  readonly recipe?: string | Recipe;
}
