import { exactText } from "../number/digits.ts";
import { exact, isNumeric } from "../number/exact.ts";
import { freezeAll } from "../number/freeze.ts";
import { keysOf } from "./across.ts";
import { type Line, RECIPE_FORMAT, type Recipe } from "./document.ts";
import type { LineAsRead, ReadRecipe } from "./readRecipe.ts";

/** Recipes that were made here: frozen, so they need no second reading. */
const made: WeakSet<object> = /* @__PURE__ */ new WeakSet();

/** Whether something is a recipe that was read before. */
export function isRead(given: unknown): given is Recipe {
  return typeof given === "object" && given !== null && made.has(given);
}

/** The recipe of a document without faults: keys and defaults filled in, frozen. */
export function recipeOf(written: ReadRecipe): Recipe {
  const { format: _, lines, portions, ...rest } = written;
  const keys = keysOf(lines);
  const recipe: Recipe = freezeAll({
    format: RECIPE_FORMAT,
    ...plain(rest),
    portions: exactText(exact(portions)),
    lines: lines.map((line, i) => lineOf(line, keys[i] ?? "")),
  });
  made.add(recipe);
  return recipe;
}

function lineOf({ recipe, scaling = "held", added = "cooking", ...rest }: LineAsRead, key: string): Line {
  // Assigned, not spread: an engine gives each spread of such data a hidden class of its own, slow to read.
  return Object.assign(plain(rest), { key, scaling, added }, recipe === undefined ? {} : { recipe });
}

/** Numbers and Decimals become exact text, so that JSON holds what was meant; an app's own data stay. */
function plain<T>(data: T): T {
  if (typeof data === "number" || isNumeric(data)) return exactText(exact(data)) as T;
  if (Array.isArray(data)) return data.map(plain) as T;
  if (typeof data !== "object" || data === null) return data;
  return Object.fromEntries(
    Object.entries(data)
      .filter(([, value]) => value !== undefined)
      .map(([key, value]) => [key, key === "meta" ? value : plain(value)]),
  ) as T;
}
