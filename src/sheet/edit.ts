import { collect, type Fault, throwIfAny } from "../number/error.ts";
import type { WrittenAmount } from "../recipe/document.ts";
import type { SheetPlan } from "./plan.ts";
import { checkedValues, type Values } from "./values.ts";

/** The values after some lines' amounts are written anew; all others are shared. */
export function editedValues(
  plan: SheetPlan,
  values: Values,
  edits: Readonly<Record<string, WrittenAmount>>,
): Values {
  const faults: Fault[] = [];
  const amounts = [...values.amounts];
  const grams = [...values.grams];
  for (const [key, written] of Object.entries(edits)) {
    collect(faults, [key], () => {
      const i = plan.indexOf(key);
      const reader = plan.lines[i]?.reader;
      if (!reader) return;
      const read = reader.read(written);
      amounts[i] = read;
      grams[i] = reader.toGrams(read).grams;
    });
  }
  throwIfAny(faults);
  return checkedValues(plan, { ...values, amounts, grams });
}
