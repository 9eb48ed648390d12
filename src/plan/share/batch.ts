import { type Amount, withExact } from "../../measure/amount.ts";
import {
  type Exact,
  equals,
  fraction,
  isZero,
  minus,
  ONE,
  over,
  sum,
  times,
  ZERO,
} from "../../number/exact.ts";
import { moveLines } from "../../scale/move.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Eater, EaterGroup } from "./groups.ts";
import type { LineAmounts } from "./lineFactors.ts";
import { withLineAmounts } from "./lines.ts";

/**
 * What everyone is served and what stays in pots, added up line by line; `base` is one portion as written. Where a kitchen
 * measured, one pot's amounts stand as they go into it, and additions as they add up in one unit.
 */
export function batchOf(base: Sheet, eaters: readonly Eater[], groups: readonly EaterGroup[] = []): Sheet {
  // Nobody served is a batch of nothing, and of one portion for want of a better word.
  const count = eaters.length === 0 ? ONE : fraction(BigInt(eaters.length));
  const lines = base.plan.lines.length;
  const hasLeft = groups.some(({ measured }) => measured && !isZero(measured.left));
  const all = hasLeft ? groups.map((group) => potTotals(group, lines)) : [lineTotals(eaters, lines)];
  const totals =
    all.length === 1 ? all[0] : base.plan.lines.map((_, i) => sum(all.map((own) => own[i] ?? ZERO)));
  const batch = moveLines(base, totals ?? [], count);
  return groups.some(({ measured }) => measured)
    ? withLineAmounts(batch, measuredIn(base, eaters, groups))
    : batch;
}

function measuredIn({ plan }: Sheet, eaters: readonly Eater[], groups: readonly EaterGroup[]): LineAmounts {
  const [only, ...others] = groups;
  const pot = others.length === 0 ? only : undefined;
  return plan.lines.map((_, line) =>
    pot?.pot.includes(line) ? pot.measured?.amounts[line] : inOneUnit(eaters, line),
  );
}

/** Nothing where someone's was not measured, or in another unit. */
function inOneUnit(eaters: readonly Eater[], line: number): Amount | undefined {
  const own = eaters
    .filter(({ factors }) => !isZero(factors[line] ?? ZERO))
    .map(({ amounts }) => amounts?.[line]);
  const [first] = own;
  if (!first || !own.every((each) => each !== undefined && isSameUnit(each, first))) return undefined;
  return withExact(first, sum(own.map((each) => each?.value ?? ZERO)));
}

function isSameUnit(a: Amount, b: Amount): boolean {
  const sizes = a.size && b.size ? equals(a.size, b.size) : a.size === b.size;
  return sizes && a.unit === b.unit && a.kind === b.kind;
}

/** What goes into a pot, by line: what everyone takes of it, and what stays in it. */
export function potTotals({ eaters, pot, measured }: EaterGroup, lines: number): readonly Exact[] {
  const taken = lineTotals(eaters, lines);
  if (!measured || isZero(measured.left)) return taken;
  const by = over(ONE, minus(ONE, measured.left));
  return taken.map((total, line) => (pot.includes(line) ? times(total, by) : total));
}

/** Each line's factors, added up over everyone. Lines that move as one are added up once. */
export function lineTotals(eaters: readonly Eater[], lines: number): readonly Exact[] {
  const totals: { readonly line: number; readonly total: Exact }[] = [];
  return Array.from({ length: lines }, (_, i) => {
    const same = totals.find(({ line }) => eaters.every(({ factors }) => factors[i] === factors[line]));
    if (same) return same.total;
    const total = sum(eaters.map(({ factors }) => factors[i] ?? ZERO));
    totals.push({ line: i, total });
    return total;
  });
}
