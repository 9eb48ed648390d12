import { isYieldCode } from "../food/yield.ts";
import { type Amount, withExact } from "../measure/amount.ts";
import { formatAmount } from "../measure/format.ts";
import { exactText } from "../number/digits.ts";
import { equals, exact } from "../number/exact.ts";
import type { Recipe, RecipeInput, WrittenAmount } from "../recipe/document.ts";
import { recipe } from "../recipe/recipe.ts";
import type { Sheet } from "./sheet.ts";

/** The recipe that a sheet stands for, with amounts as they are now. */
export function recipeNow(s: Sheet): Recipe {
  const { cookedMass: _, yieldFactor: __, yieldPresumed: ___, ...rest } = s.origin;
  return recipe({
    ...rest,
    portions: exactText(s.values.portions),
    lines: s.plan.lines.map(({ line }, i) => ({ ...line, amount: amountNow(s, i) })),
    ...cookingNow(s),
  });
}

function amountNow(s: Sheet, i: number): WrittenAmount {
  const { line, reader } = s.plan.lines[i] ?? {};
  const now = s.values.amounts[i];
  if (!line || !reader || !now) return "0 g";
  const written = reader.read(line.amount);
  // One tablespoon is not another: the same unit can be of another set by now.
  const { value: figure, unit, size } = written;
  const sizes = size && now.size ? equals(size, now.size) : size === now.size;
  // A cup of another set may be as large, and says so all the same.
  const set = JSON.stringify(written.measures) === JSON.stringify(now.measures);
  // Nor are 2 cups and 4 tablespoons written as 2 1/4 cups, which they come to.
  const parts = JSON.stringify(written.parts) === JSON.stringify(now.parts);
  const ends = JSON.stringify(written.range) === JSON.stringify(now.range);
  const same = unit === now.unit && equals(figure, now.value) && sizes && set && parts && ends;
  if (same) return line.amount;
  const { measures } = s.origin;
  const text = (a: Amount): string => formatAmount(a, measures === undefined ? {} : { measures });
  if (!now.range) return text(now);
  return `${text(withExact(now, now.range.least))} to ${text(withExact(now, now.range.most))}`;
}

function cookingNow(s: Sheet): Pick<RecipeInput, "cookedMass" | "yieldFactor" | "yieldPresumed"> {
  const { cooking } = s.values;
  if (cooking.by === "mass") return { cookedMass: `${exactText(cooking.mass)} g` };
  if (cooking.by === "lines") return {};
  if (cooking.presumed) return { yieldFactor: exactText(cooking.factor), yieldPresumed: true };
  const { yieldFactor } = s.origin;
  if (yieldFactor === undefined) return {};
  return { yieldFactor: isYieldCode(yieldFactor) ? yieldFactor : exactText(exact(yieldFactor)) };
}
