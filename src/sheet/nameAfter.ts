import type { FoodInput } from "../food/food.ts";
import { kitchenNameOf } from "../food/kitchenName.ts";
import type { Sheet } from "./sheet.ts";
import type { Source } from "./source.ts";

/** What goes of a recipe, by line key: by which food, or by none. */
interface Leaving {
  readonly swap?: Readonly<Record<string, string>>;
  readonly remove?: readonly string[];
}

/** A line that goes. */
interface Going {
  readonly key: string;
  readonly name: string;
  readonly instead: string | undefined;
}

/**
 * Returns the name of a recipe after foods go: as it was, unless it speaks of one of them and of none that
 * stays or comes; then it says what is no longer there, so that no vegan is served a chicken curry by name.
 */
export function nameAfter({ name, plan }: Sheet, { swap = {}, remove = [] }: Leaving): string {
  // A food that there is not is refused where the recipe is read.
  const foodOf = (id: string): Pick<FoodInput, "name" | "kitchenName"> =>
    plan.foods.has(id) ? plan.foods.get(id) : { name: "" };
  const nameOf = (id: string): string => kitchenNameOf(foodOf(id));
  const fullOf = ({ name: own, food }: Source): string => food?.input.name ?? own;
  const going = plan.lines.flatMap(({ line: { key }, source }): Going[] => {
    if (remove.includes(key)) return [{ key, name: source.name, instead: undefined }];
    return Object.hasOwn(swap, key) ? [{ key, name: source.name, instead: nameOf(swap[key] ?? "") }] : [];
  });
  const stays = plan.lines
    .filter(({ line }) => !going.some(({ key }) => key === line.key))
    .map(({ source }) => fullOf(source));
  const kept = new Set([...stays, ...going.map(({ key }) => foodOf(swap[key] ?? "").name)].flatMap(wordsOf));
  const spoken = new Set(wordsOf(name));
  return going
    .filter((each) => wordsOf(each.name).some((word) => spoken.has(word) && !kept.has(word)))
    .reduce(without, name);
}

/** A name that said already what came for another food says what comes for that; of the first one, nothing. */
function without(name: string, { name: gone, instead }: Going): string {
  const came = `, with ${gone} instead of `;
  const at = name.lastIndexOf(came);
  const [base, first] = at < 0 ? [name, gone] : [name.slice(0, at), name.slice(at + came.length)];
  if (instead === first) return base;
  return instead === undefined ? `${base}, without ${first}` : `${base}, with ${instead} instead of ${first}`;
}

/** The words that can name a food, without the end of a plural: "on" and "raw" name none. */
function wordsOf(text: string): string[] {
  const words = text.toLowerCase().match(/\p{L}{4,}/gu) ?? [];
  return words.map((word) => word.replace(/(?<=\p{L}{3})e?s$/u, ""));
}
