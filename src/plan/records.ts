import type { ComponentId } from "../food/components.ts";
import { knownIn, longRows, longTable } from "../sheet/long.ts";
import type { Table } from "../table/table.ts";
import type { Portion } from "./portion.ts";

/**
 * Portions as long tidy rows, one figure each, for data frames and plots: person, meal, dish, line,
 * component, amount, unit, bound, coverage. A line's mass stands among the components, as `mass` in
 * grams. Every component that some dish knows of, unless told which: with many people that is many
 * rows. Hand what it gives to `toRecords`, as numbers or exact text.
 *
 * @example
 * ```ts
 * const plan = portionPlan({
 *   meals: [{ id: "breakfast", dishes: sheet({ name: "Oats", portions: 1, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "60 g" }] }, starterFoods) }],
 *   people: [{ id: "cox", demands: { energy: 379 } }],
 * });
 * const [, protein] = toRecords(portionRows(plan.portions, ["protein"]), { figures: "exact" });
 * console.log(Object.values(protein ?? {}).join(" ")); // => cox breakfast breakfast oats protein 13.15 g exact 1
 * ```
 */
export function portionRows(
  portions: readonly Pick<Portion, "person" | "meal" | "dishes">[],
  components?: readonly ComponentId[],
): Table {
  const ids = components ?? knownIn(portions.flatMap(({ dishes }) => [...dishes.values()]));
  const rows = portions.flatMap(({ person, meal, dishes }) =>
    [...dishes].flatMap(([dish, s]) => longRows(s, [person, meal, dish], ids)),
  );
  return longTable(["person", "meal", "dish"], rows);
}
