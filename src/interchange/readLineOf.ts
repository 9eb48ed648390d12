import type { FoodInput } from "../food/food.ts";
import type { FoodTable } from "../food/table.ts";
import type { ReadLine } from "./readLine.ts";
import { readyFor, readyLine } from "./readyLine.ts";
import type { RecipeOptionsAsRead } from "./recipeOf.ts";
import { readAmounts } from "./text/amounts.ts";
import { isPreparation, preparationsIn } from "./text/phrases.ts";
import { plainLine } from "./text/plainLine.ts";
import { leadingAmount } from "./text/written.ts";

/** Reads a line; one that calls a food just as the table does is of that food. */
export function readLineOf(text: string, foods: FoodTable, how: RecipeOptionsAsRead): ReadLine {
  return asNamed(text, foods, how) ?? readyLine(leadingAmount(text), foods, how.measures, how.means);
}

function asNamed(text: string, foods: FoodTable, { measures }: RecipeOptionsAsRead): ReadLine | undefined {
  const found = readAmounts(plainLine(text));
  if (!found) return undefined;
  const [, name = "", prep] = /^(.*?)(?: \(([^()]*)\))?$/.exec(found.rest) ?? [];
  const names = namesOf(foods);
  const whole = names.get(found.rest.toLowerCase());
  const isPlain = prep === undefined || isPreparation(prep);
  const food = whole ?? (isPlain ? names.get(name.toLowerCase()) : undefined);
  if (!food) return undefined;
  const written = {
    text,
    kind: "ingredient" as const,
    amounts: found.amounts,
    food: food.name.toLowerCase(),
    state: [],
    preparation: whole || prep === undefined ? [] : preparationsIn(prep),
    optional: false,
    alternatives: [],
    note: "",
  };
  return readyFor(written, food, [{ id: food.id, name: food.name, score: 1 }], measures, foods);
}

const made: WeakMap<FoodTable, ReadonlyMap<string, FoodInput>> = /* @__PURE__ */ new WeakMap();

/** A table's foods by their whole names, where no other food is called so. */
function namesOf(foods: FoodTable): ReadonlyMap<string, FoodInput> {
  const known = made.get(foods);
  if (known) return known;
  const names = new Map<string, FoodInput>();
  const twice = new Set<string>();
  for (const food of foods) {
    const name = food.name.toLowerCase();
    if (names.has(name)) twice.add(name);
    // A name of one plain word means what a kitchen means by it.
    if (/[^\p{L}]/u.test(name)) names.set(name, food);
  }
  for (const name of twice) names.delete(name);
  made.set(foods, names);
  return names;
}
