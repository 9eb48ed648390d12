import { type Fraction, fraction, ONE, sum, ZERO } from "../number/fraction.ts";
import { moveLines } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Eater } from "./groups.ts";

/** What everyone is served, added up line by line; `base` is one portion as written. */
export function batchOf(base: Sheet, eaters: readonly Eater[]): Sheet {
  // Nobody served is a batch of nothing, and of one portion for want of a better word.
  const count = eaters.length === 0 ? ONE : fraction(BigInt(eaters.length));
  return moveLines(base, lineTotals(eaters, base.plan.lines.length), count);
}

/** Each line's factors, added up over everyone. Lines that move as one are added up once. */
export function lineTotals(eaters: readonly Eater[], lines: number): readonly Fraction[] {
  const totals: { readonly line: number; readonly total: Fraction }[] = [];
  return Array.from({ length: lines }, (_, i) => {
    const same = totals.find(({ line }) => eaters.every(({ factors }) => factors[i] === factors[line]));
    if (same) return same.total;
    const total = sum(eaters.map(({ factors }) => factors[i] ?? ZERO));
    totals.push({ line: i, total });
    return total;
  });
}
