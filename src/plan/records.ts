import { type ComponentId, component } from "../food/components.ts";
import { fault, kindOf, within } from "../number/error.ts";
import { knownIn, longRows, longTable } from "../sheet/long.ts";
import { Sheet } from "../sheet/sheet.ts";
import type { Table } from "../table/table.ts";
import type { Portion } from "./portion.ts";

/**
 * Portions as long tidy rows, one figure each, for data frames and plots: person, meal, dish, line,
 * component, amount, unit, bound, coverage, least, most. A line's mass stands among the components, as `mass` in
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
 * console.log(Object.values(protein ?? {}).join(" ")); // => cox breakfast breakfast oats protein 13.15 g exact 1 13.15 13.15
 * ```
 */
export function portionRows(
  portions: readonly Pick<Portion, "person" | "meal" | "dishes">[],
  components?: readonly ComponentId[],
): Table {
  checkPortions(portions);
  if (components !== undefined && !Array.isArray(components)) {
    const hint = 'list components: ["energy", "protein"]';
    throw fault("plan-malformed", `components are ${kindOf(components)}`, hint, ["components"]);
  }
  components?.forEach((id, i) => {
    within(["components", i], () => component(id));
  });
  const ids = components ?? knownIn(portions.flatMap(({ dishes }) => [...dishes.values()]));
  const rows = portions.flatMap(({ person, meal, dishes }) =>
    [...dishes].flatMap(([dish, s]) => longRows(s, [person, meal, dish], ids)),
  );
  return longTable(["person", "meal", "dish"], rows);
}

function checkPortions(portions: unknown): void {
  const hint = "give plan.portions, or some of them";
  if (!Array.isArray(portions))
    throw fault("plan-malformed", `expected portions, got ${kindOf(portions)}`, hint, ["portions"]);
  portions.forEach((each: unknown, i) => {
    const { person, meal, dishes } = (each ?? {}) as { readonly [field: string]: unknown };
    const named = typeof person === "string" && typeof meal === "string";
    if (!named || !(dishes instanceof Map) || ![...dishes.values()].every((s) => s instanceof Sheet))
      throw fault("plan-malformed", "this is no portion", hint, ["portions", i]);
  });
}
