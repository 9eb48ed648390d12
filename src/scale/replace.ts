import { retentionShares } from "../food/retention.ts";
import { amount } from "../measure/amount.ts";
import { type Fraction, toText } from "../number/fraction.ts";
import type { Line } from "../recipe/document.ts";
import { amountReader } from "../recipe/resolve.ts";
import type { PlanLine } from "../sheet/plan.ts";
import { Sheet } from "../sheet/sheet.ts";
import { foodSource } from "../sheet/source.ts";

/** A sheet in which one line is another food of its table, of so many grams for the batch; cooked as the line is. */
export function replaceFood(s: Sheet, i: number, food: string, grams: Fraction): Sheet {
  const { plan, values } = s;
  const written = amount(inGrams(grams));
  const lines = plan.lines.map((old, k) => (k === i ? lineOf(s, old, food, grams) : old));
  const at = <T>(list: readonly T[], value: T): T[] => list.map((old, k) => (k === i ? value : old));
  return new Sheet(plan.withLines(lines), {
    ...values,
    amounts: at(values.amounts, written),
    grams: at(values.grams, grams),
  });
}

/** The same sheet with one line that a factor moves and all others as they are, whatever the recipe says. */
export function onlyMoving(s: Sheet, i: number): Sheet {
  const lines = s.plan.lines.map(({ line, ...rest }, k): PlanLine => {
    const { part: _, ...own } = line;
    const moved: Line = { ...own, scaling: k === i ? "held" : "per-portion" };
    return { ...rest, line: moved, least: undefined, most: undefined };
  });
  return new Sheet(s.plan.withLines(lines), s.values);
}

function lineOf({ plan }: Sheet, old: PlanLine, id: string, grams: Fraction): PlanLine {
  const { recipe: _, weighed: __, least, most, ...line } = old.line;
  const food = plan.foods.food(id);
  const shares = line.retention === undefined ? NONE : retentionShares(line.retention, plan.foods.retention);
  return {
    ...old,
    line: {
      ...line,
      food: id,
      amount: inGrams(grams),
      // In grams, since another food has other measures.
      ...(least !== undefined && old.least && { least: inGrams(old.least) }),
      ...(most !== undefined && old.most && { most: inGrams(old.most) }),
    },
    source: foodSource(food, shares),
    nested: undefined,
    reader: amountReader(food.input, plan.recipe.measures),
  };
}

function inGrams(grams: Fraction): string {
  return `${toText(grams)} g`;
}

const NONE: ReturnType<typeof retentionShares> = /* @__PURE__ */ new Map();
