import { collect, type Fault, fault, kindOf, throwIfAny } from "../number/error.ts";
import type { WrittenAmount } from "../recipe/document.ts";
import type { SheetPlan } from "./plan.ts";
import { checkedValues, type Values } from "./values.ts";

/**
 * The values after some lines' amounts are written anew; all others are shared. Throws
 * `amount-malformed` for what is no set of amounts, `line-unknown`, and the codes of amounts.
 */
export function editedValues(
  plan: SheetPlan,
  values: Values,
  edits: Readonly<Record<string, WrittenAmount>>,
): Values {
  if (typeof edits !== "object" || edits === null || Array.isArray(edits)) {
    const hint = 'give amounts by line key: { oats: "80 g" }';
    throw fault("amount-malformed", `the amounts are ${kindOf(edits)}`, hint);
  }
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
