import type { ComponentId } from "../../food/components.ts";
import type { FoodInput } from "../../food/food.ts";
import { kitchenNameOf } from "../../food/kitchenName.ts";
import { absolute, type Exact, sum } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { ReadSubstitutes } from "./read.ts";
import { replaceFood } from "./replaceFood.ts";
import { type Substitute, type SubstituteChange, shareMoved } from "./substitute.ts";

/** What a cured, salted or fermented food brings unasked. */
const WATCHED: readonly ComponentId[] = ["sodium"];

/** Tells of a food in the line's place, of so many grams for the batch, what it changes. */
export function substituteOf(
  s: Sheet,
  i: number,
  food: FoodInput,
  grams: Exact,
  { ids, untold }: ReadSubstitutes,
): Substitute {
  const made = replaceFood(s, i, food.id, grams);
  const key = s.plan.lines[i]?.line.key ?? "";
  const isSilent = (id: ComponentId): boolean => made.cell(key, id).bound === "unknown";
  const changes = ids
    .filter((id) => !isSilent(id))
    .map((component): SubstituteChange => {
      const pair = { before: s.portion(component), after: made.portion(component) };
      return { component, ...pair, share: shareMoved(pair) };
    });
  const { id, state } = food;
  const name = kitchenNameOf(food);
  return {
    food: id,
    name,
    state,
    grams,
    sheet: s.rebuilt(made),
    distance: sum(changes.map(({ share }) => absolute(share))),
    changes,
    also: WATCHED.filter((id) => !ids.includes(id) && !isSilent(id)).map((component) => ({
      component,
      before: s.portion(component),
      after: made.portion(component),
    })),
    silent: [...ids, ...untold].filter(isSilent),
    tells: untold.filter((id) => !isSilent(id)),
    cautions: food.cautions ?? [],
  };
}

/** Orders substitutes: those that say all come first, then the closest. */
export function closestFirst(a: Substitute, b: Substitute): number {
  return (
    a.silent.length - b.silent.length || compareRatios(a.distance, b.distance) || (a.food < b.food ? -1 : 1)
  );
}
