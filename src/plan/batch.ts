import { type Fraction, fraction, ONE, sum, ZERO } from "../number/fraction.ts";
import { moveLines } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { ServedPortion } from "./portion.ts";

/** Adds up portions line by line: each line's factors of one base portion. */
export function batchOf(
  dishes: ReadonlyMap<string, Sheet>,
  portions: readonly ServedPortion[],
): ReadonlyMap<string, Sheet> {
  return new Map(
    [...dishes].map(([name, s]) => {
      const served = portions.flatMap(({ factors }) => {
        const own = factors.get(name);
        return own ? [own] : [];
      });
      // Nobody served is a batch of nothing, and of one portion for want of a better word.
      const count = served.length === 0 ? ONE : fraction(BigInt(served.length));
      return [name, moveLines(s, lineTotals(served, s.plan.lines.length), count)];
    }),
  );
}

/** Each line's factors, added up over everyone. Lines that move as one are added up once. */
export function lineTotals(served: readonly (readonly Fraction[])[], lines: number): readonly Fraction[] {
  const totals: { readonly line: number; readonly total: Fraction }[] = [];
  return Array.from({ length: lines }, (_, i) => {
    const same = totals.find(({ line }) => served.every((factors) => factors[i] === factors[line]));
    if (same) return same.total;
    const total = sum(served.map((factors) => factors[i] ?? ZERO));
    totals.push({ line: i, total });
    return total;
  });
}
