import { type Language, say } from "../document/language.ts";
import type { ComponentId } from "../food/components.ts";
import { components } from "../food/components.ts";
import { kitchenNameOf } from "../food/kitchenName.ts";
import type { EatenPortion } from "../person/portion/eaten.ts";
import { inSentence, keyWords, shortName } from "../sheet/names.ts";

/** Notes on what is not known, by the foods that say nothing, one for each set of them. */
export function silentFoods(
  eaten: EatenPortion,
  ids: Iterable<ComponentId>,
  language: Language,
): readonly string[] {
  const names = new Map(
    eaten.foods.map(({ key, food }) => [key, shortName(say(language, kitchenNameOf(food)))]),
  );
  const byFoods = new Map<string, string[]>();
  for (const id of ids) {
    const { missing } = eaten.brings(id);
    if (missing.length === 0) continue;
    const foods = [
      ...new Set(missing.map((key) => inSentence(names.get(key) ?? keyWords(key), language))),
    ].join(", ");
    byFoods.set(foods, [...(byFoods.get(foods) ?? []), say(language, components[id].name)]);
  }
  return [...byFoods].map(([foods, list]) =>
    say(language, "no {components} data: {foods}", { components: list.join(", "), foods }),
  );
}
