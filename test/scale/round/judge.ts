import {
  type Exact,
  exact,
  fraction,
  minus,
  ONE,
  over,
  plus,
  times,
  ZERO,
} from "../../../src/number/exact.ts";
import { compareRatios } from "../../../src/number/ratio.ts";
import type { Demand } from "../../../src/scale/demand.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";
import { broughtBy } from "./dishes.ts";

/**
 * What a rounding is held to, by the rule as it is told and nothing of the code that rounds: limits
 * hold; of the others what held before, within the tolerance, is off by as little as can be beyond it,
 * as a share of what is asked.
 */
export interface End {
  readonly demand: Demand;
  readonly asked: Exact;
  /** −1: at least so much; 1: at most. */
  readonly side: -1 | 1;
  readonly firm: boolean;
}

export function endsOf(demands: readonly Demand[]): End[] {
  return demands.flatMap((demand) =>
    ([-1, 1] as const).flatMap((side) => {
      const asked = demand.exactly ?? (side < 0 ? demand.least : demand.most);
      return asked === undefined ? [] : [{ demand, asked: exact(asked), side, firm: demand.firm === true }];
    }),
  );
}

/** How far beyond its tolerance an end is missed, as a share of it; 0 where it holds. */
export function excessAt({ asked, side, firm }: End, brings: Exact, tolerance: string): Exact {
  const sign = fraction(BigInt(side));
  const limit = times(asked, plus(ONE, times(firm ? ZERO : exact(tolerance), sign)));
  const by = times(minus(brings, limit), sign);
  return by.n <= 0n ? ZERO : over(by, asked.n === 0n ? ONE : asked);
}

/** The ends that count: limits, and what held before. */
export function standing(before: Sheet, demands: readonly Demand[], tolerance: string): End[] {
  return endsOf(demands).filter((end) => {
    if (end.firm) return true;
    const brought = broughtBy(before, end.demand);
    return brought !== null && excessAt(end, brought, tolerance).n === 0n;
  });
}

/** The worst excess of what held before, and whether every limit holds. */
export function judged(
  s: Sheet,
  ends: readonly End[],
  tolerance: string,
): { readonly excess: Exact; readonly firm: boolean } {
  let [excess, firm] = [ZERO, true];
  for (const end of ends) {
    const brings = broughtBy(s, end.demand);
    if (brings === null) continue;
    const by = excessAt(end, brings, tolerance);
    if (end.firm) firm &&= by.n === 0n;
    else if (compareRatios(by, excess) > 0) excess = by;
  }
  return { excess, firm };
}

/** Whether amounts are held from below and from above: only then may the whole be of another size. */
export function isSizeHeld(ends: readonly End[]): boolean {
  const amounts = ends.filter(({ demand }) => demand.of !== undefined);
  return amounts.some(({ side, asked }) => side < 0 && asked.n > 0n) && amounts.some(({ side }) => side > 0);
}
