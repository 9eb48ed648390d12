import type { LineInput, Recipe, RecipeInput } from "./document.ts";

/** A recipe document as it is read: nested ones are recipes by then. */
export interface ReadRecipe extends Omit<RecipeInput, "lines"> {
  readonly lines: readonly LineAsRead[];
}

/** A line of one. */
export interface LineAsRead extends Omit<LineInput, "recipe"> {
  readonly recipe?: string | Recipe;
}
