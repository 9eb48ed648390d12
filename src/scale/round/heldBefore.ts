import { type Exact, isZero, minus, ONE, plus, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { ReadDemand } from "../engine/readDemand.ts";

/** What a demand's subject comes to, `value / per`; `per` is 1 for an amount. */
export interface SubjectFigures {
  readonly value: Exact;
  readonly per: Exact;
}

/** How far a demand may be off, as a share of what it asks: a firm one not at all. */
export function slackOf({ firm }: ReadDemand, tolerance: Exact): Exact {
  return firm ? ZERO : tolerance;
}

/** Tells whether a demand holds within a slack, as a share of what it asks. */
export function holdsWithin({ least, most }: ReadDemand, slack: Exact, at: SubjectFigures): boolean {
  return reaches(least, slack, at) && staysBelow(most, slack, at);
}

/**
 * Leaves of a demand the ends that held before, within the tolerance: what was out of reach before any
 * rounding is not pursued by rounding, at the cost of what held. A firm demand is left as it is.
 */
export function heldBefore(demand: ReadDemand, tolerance: Exact, before: SubjectFigures): ReadDemand {
  if (demand.firm) return demand;
  const { least, most } = demand;
  const isNothing = isZero(before.per);
  return {
    ...demand,
    least: !isNothing && reaches(least, tolerance, before) ? least : undefined,
    most: !isNothing && staysBelow(most, tolerance, before) ? most : undefined,
  };
}

function reaches(least: Exact | undefined, slack: Exact, { value, per }: SubjectFigures): boolean {
  return !least || compareRatios(value, times(times(least, minus(ONE, slack)), per)) >= 0;
}

function staysBelow(most: Exact | undefined, slack: Exact, { value, per }: SubjectFigures): boolean {
  return !most || compareRatios(value, times(times(most, plus(ONE, slack)), per)) <= 0;
}
