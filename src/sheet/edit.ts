import { collect, type Fault, fault, kindOf, throwIfAny } from "../number/error.ts";
import { equals, ZERO } from "../number/exact.ts";
import type { WrittenAmount } from "../recipe/document.ts";
import type { SheetPlan } from "./plan.ts";
import { checkedValues, impliedYield, massesOf, type Values } from "./values.ts";

/**
 * The values after some lines' amounts are written anew; all others are shared. Where what is cooked weighs
 * otherwise, a cooked mass becomes the yield factor that it implied. Throws
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
  const edited = checkedValues(plan, { ...values, amounts, grams });
  const isPotSame = plan.lines.every(
    ({ line }, i) => line.added === "serving" || equals(grams[i] ?? ZERO, values.grams[i] ?? ZERO),
  );
  return isPotSame ? edited : { ...edited, cooking: impliedYield(values.cooking, massesOf(plan, values)) };
}
