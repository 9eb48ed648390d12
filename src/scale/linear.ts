import { component } from "../food/components.ts";
import { type Exact, fraction, isZero, minus, ONE, over, plus, sum, times, ZERO } from "../number/exact.ts";
import { componentIndex } from "../sheet/plan.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { lineYield } from "../sheet/values.ts";
import type { Quantity } from "./demand.ts";

/**
 * What each line brings of a quantity to one portion as eaten, so that the portion is their sum
 * and every scaling is linear in them. Water counts what cooking takes up or gives off; where that is
 * more than the pot holds, its lines are silent on water, and so count as bringing none.
 */
export function lineContributions(s: Sheet, of: Quantity): Exact[] {
  const { yieldFactor } = s.masses;
  const isByLines = s.values.cooking.by === "lines";
  const c = of === "mass" ? 0 : componentIndex(of);
  const isDried = of === "water" && !isZero(s.water.beyond);
  return s.plan.lines.map(({ line, source }, i) => {
    const grams = over(s.values.grams[i] ?? ZERO, s.values.portions);
    const cooked = line.added === "cooking";
    const factor = isByLines ? lineYield(s.plan, i) : yieldFactor;
    if (of === "mass") return cooked ? times(grams, factor) : grams;
    const brought = times(grams, fraction(source.values[c] ?? 0n, source.scale * 100n));
    if (of !== "water" || !cooked) return brought;
    return isDried ? ZERO : plus(brought, times(grams, minus(factor, ONE)));
  });
}

/** A quantity of one portion, apart: what stays the same for everyone, and what a factor moves. */
export interface Split {
  readonly fixed: Exact;
  readonly moving: Exact;
}

export function splitOf(s: Sheet, of: Quantity): Split {
  const all = lineContributions(s, of);
  const isFixed = (i: number): boolean => s.plan.lines[i]?.line.scaling === "per-portion";
  return { fixed: sum(all.filter((_, i) => isFixed(i))), moving: sum(all.filter((_, i) => !isFixed(i))) };
}

/** Keys of lines that say nothing of a quantity; mass is never unknown. */
export function silentLines(s: Sheet, of: Quantity): readonly string[] {
  return of === "mass" ? [] : s.total(of).missing;
}

/** The unit that a quantity is reckoned in. */
export function unitOf(of: Quantity): string {
  return of === "mass" ? "g" : component(of).unit;
}

/** The name that a person knows a quantity by. */
export function quantityName(of: Quantity): string {
  return of === "mass" ? "mass" : component(of).name;
}
