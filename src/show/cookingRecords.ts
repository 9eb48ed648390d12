import { componentIds } from "../food/components.ts";
import { isZero, over } from "../number/exact.ts";
import type { Balance, CookingBalance } from "../sheet/cooking.ts";
import { cellRow, pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/**
 * What cooking keeps of a batch, of its mass and of every component: `raw`, `gained`, `eaten` and `lost`,
 * and the share that is `left`, where there was any.
 */
export function cookingTidy(balance: CookingBalance, asked: Asked): Tidy {
  return tidyOf(asked, [], function* (want): Generator<TidyRow> {
    const head = { sheet: balance.cooked().name, row: "total" };
    if (want.has("mass")) yield* balanceRows(head, "mass", balance.mass);
    for (const id of componentIds) if (want.has(id)) yield* balanceRows(head, id, balance.of(id));
  });
}

function* balanceRows(head: TidyRow, component: string, b: Balance): Generator<TidyRow> {
  const stages = { raw: b.raw, gained: b.gained, eaten: b.retained, lost: b.lost };
  for (const [what, tally] of Object.entries(stages)) yield cellRow({ ...head, what }, component, tally);
  const isKnown = !isZero(b.raw.value) && b.raw.bound !== "unknown" && b.retained.bound !== "unknown";
  if (isKnown)
    yield {
      ...head,
      what: "left",
      component,
      ...pointRow(over(b.retained.value, b.raw.value), ""),
      marks: "derived",
    };
}
