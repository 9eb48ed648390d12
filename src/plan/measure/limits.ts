import { type Exact, greatest, least as lesser, minus, over } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import type { LineFactors } from "../share/lineFactors.ts";
import { type MealFigures, potBrings, rowAt } from "./figures.ts";

interface Pot {
  readonly dish: string;
  readonly lines: readonly number[];
  /** What each line of one base portion is multiplied by, for the whole pot. */
  readonly totals: readonly Exact[];
}

/** Within which ends someone's firm demands leave their share of a pot, everything else as it stands. */
export function shareEnds(
  figures: MealFigures,
  demands: readonly ReadDemand[],
  factors: LineFactors,
  { dish, lines, totals }: Pot,
): { readonly least: Exact | undefined; readonly most: Exact | undefined } {
  let [low, high]: [Exact | undefined, Exact | undefined] = [undefined, undefined];
  for (const row of demands.filter(({ firm }) => firm).flatMap((demand) => figures.rows(demand))) {
    const whole = potBrings(row, dish, lines, totals);
    if (whole.n === 0n) continue;
    const rest = minus(rowAt(row, factors), potBrings(row, dish, lines, factors.get(dish) ?? []));
    const end = over(minus(row.end, rest), whole);
    // What takes away from a row turns its side round.
    if ((row.side === "most") === whole.n > 0n) high = lesser(high ?? end, end);
    else low = greatest(low ?? end, end);
  }
  return { least: low, most: high };
}

/** Whether every firm demand holds. */
export function firmHold(
  figures: MealFigures,
  demands: readonly ReadDemand[],
  factors: LineFactors,
): boolean {
  return demands
    .filter(({ firm }) => firm)
    .flatMap((demand) => figures.rows(demand))
    .every((row) => {
      const side = compareRatios(rowAt(row, factors), row.end);
      return row.side === "most" ? side <= 0 : side >= 0;
    });
}
