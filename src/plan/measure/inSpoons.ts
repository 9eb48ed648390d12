import { type Amount, amount, withExact } from "../../measure/amount.ts";
import { type Kitchen, readyKitchen } from "../../measure/kitchen.ts";
import { SteelyardError } from "../../number/error.ts";
import { type Exact, ONE, over, times } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { PlanLine } from "../../sheet/plan.ts";

/**
 * So much of a line in a spoon, a cup or the jug of the kitchen, by the food's own cup or spoon or its
 * density: in the largest that holds no more than that, or has a part that does. Nothing where the
 * kitchen has none, or the food does not say what one weighs, or it is to be taken as purchased: a cup
 * holds what is trimmed.
 */
export function inSpoons(line: PlanLine, grams: Exact, kitchen: Kitchen): Amount | undefined {
  if (line.line.weighed === "as-purchased") return undefined;
  const { drawer, jug } = readyKitchen(kitchen);
  const spoons = drawer.map(({ unit, parts }) => ({
    one: amount({ value: 1, unit }, { measures: kitchen.measures }),
    least: parts[0] ?? ONE,
  }));
  const marks = jug ? [{ one: withExact(jug.step, ONE), least: ONE }] : [];
  let smallest: Amount | undefined;
  for (const { one, least } of [...spoons, ...marks]) {
    const weighs = gramsIn(line, one);
    if (!weighs) continue;
    const aim = withExact(one, over(grams, weighs));
    if (compareRatios(times(weighs, least), grams) <= 0) return aim;
    smallest = aim;
  }
  return smallest;
}

/** Of a food that says nothing of its volume a spoon weighs who knows what. */
function gramsIn({ reader }: PlanLine, one: Amount): Exact | undefined {
  try {
    return reader.toGrams(one).grams;
  } catch (error) {
    if (error instanceof SteelyardError) return undefined;
    throw error;
  }
}
