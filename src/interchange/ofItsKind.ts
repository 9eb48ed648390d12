import type { FoodInput } from "../food/food.ts";
import type { FoodTable } from "../food/table.ts";
import { fixedText } from "../number/digits.ts";
import { exact } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";

/**
 * What a millilitre of foods of the same group weighs, the lightest and the heaviest of those of which the
 * table knows it: a help for whoever has to weigh a food that has no density. Nothing where it knows none.
 */
export function ofItsKind({ id, group }: FoodInput, foods: FoodTable): string | undefined {
  if (group === undefined) return undefined;
  const known: { readonly name: string; readonly density: ReturnType<typeof exact> }[] = [];
  for (const food of foods)
    if (food.group === group && food.id !== id && food.density !== undefined)
      known.push({ name: food.name, density: exact(food.density) });
  known.sort((a, b) => compareRatios(a.density, b.density));
  const [lightest, heaviest] = [known[0], known.at(-1)];
  if (!lightest || !heaviest) return undefined;
  const told = ({ name, density }: typeof lightest): string => `${fixedText(density, 2)} g (${name})`;
  return lightest === heaviest
    ? `of its kind, a millilitre weighs ${told(lightest)}`
    : `of its kind, a millilitre weighs from ${told(lightest)} to ${told(heaviest)}`;
}
