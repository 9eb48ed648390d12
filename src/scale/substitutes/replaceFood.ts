import { retentionShares } from "../../food/retention.ts";
import { amount } from "../../measure/amount.ts";
import { exactText } from "../../number/digits.ts";
import { type Exact, isZero, ONE, over, times, ZERO } from "../../number/exact.ts";
import { amountReader } from "../../recipe/resolve.ts";
import type { PlanLine } from "../../sheet/plan.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { foodSource } from "../../sheet/source.ts";
import { impliedYield } from "../../sheet/values.ts";

/** A sheet in which one line is another food of its table, of so many grams for the batch; cooked as the line is. */
export function replaceFood(s: Sheet, i: number, food: string, grams: Exact): Sheet {
  const { plan, values } = s;
  const written = amount(inGrams(grams));
  const was = values.grams[i] ?? ZERO;
  const by = isZero(was) ? ONE : over(grams, was);
  const lines = plan.lines.map((old, k) => (k === i ? lineOf(s, old, food, { grams, by }) : old));
  const at = <T>(list: readonly T[], value: T): T[] => list.map((old, k) => (k === i ? value : old));
  return new Sheet(plan.withLines(lines), {
    ...values,
    ...(plan.lines[i]?.line.added === "cooking" && { cooking: impliedYield(values.cooking, s.masses) }),
    amounts: at(values.amounts, written),
    grams: at(values.grams, grams),
  });
}

interface Replacing {
  readonly grams: Exact;
  /** Grams of it for each gram of what it replaces. */
  readonly by: Exact;
}

function lineOf({ plan }: Sheet, old: PlanLine, id: string, { grams, by }: Replacing): PlanLine {
  const { recipe: _, weighed: __, least, most, ...line } = old.line;
  const food = plan.foods.food(id);
  // It is cooked as the other was, which is presumed to take as much of it.
  const cooked = line.retention === undefined ? {} : { retention: line.retention, retentionPresumed: true };
  // In grams, since another food has other measures; as far from the amount as they were.
  const bounds = { least: old.least && times(old.least, by), most: old.most && times(old.most, by) };
  return {
    ...old,
    ...bounds,
    line: {
      ...line,
      ...cooked,
      food: id,
      amount: inGrams(grams),
      ...(least !== undefined && bounds.least && { least: inGrams(bounds.least) }),
      ...(most !== undefined && bounds.most && { most: inGrams(bounds.most) }),
    },
    source: foodSource(food, retentionShares({ ...line, ...cooked }, plan.foods.retention)),
    nested: undefined,
    reader: amountReader(food.input, plan.recipe.measures),
  };
}

function inGrams(grams: Exact): string {
  return `${exactText(grams)} g`;
}
