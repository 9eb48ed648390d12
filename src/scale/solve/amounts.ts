import type { Exact } from "../../number/exact.ts";
import type { SolverInterval } from "./programme.ts";

/**
 * Choosing one measurable amount for every line at once.
 *
 * What is asked, in this order: firm demands hold; the worst excess of the others is least (none,
 * where they can all be met); the ratio drift is least; the amounts are nearest to the exact ones;
 * earlier lines keep their earlier candidate.
 *
 * The ratio drift of a choice is `Σ weight × |quantity / (exact × common) − 1|`, with the common
 * factor that makes it least: what matters in a dish is that its lines keep together, not that
 * each keeps still. The product of a choice and the common factor is not linear; but for a given
 * choice the drift is convex and piecewise linear in `1 / common`, so its least stands where some
 * line's own `quantity / exact` is the common factor. There are as many of those as candidates, and
 * with each one held every candidate has a cost of its own and all is linear.
 */
export interface AmountsProblem {
  readonly lines: readonly AmountLine[];
  readonly demands: readonly AmountDemand[];
  /** Holds the common factor here (1: measures drift from the exact amounts) instead of choosing it. */
  readonly common?: Exact;
}

export interface AmountLine {
  /** What the line should be, above 0; at 0 it has no ratio and so no drift. */
  readonly exact: Exact;
  /** How much its drift counts, 0 or more. */
  readonly weight: Exact;
  /** What can be measured, in order of preference among equals; at least one. */
  readonly candidates: readonly Candidate[];
}

export interface Candidate {
  /** In the line's own unit, 0 or more. */
  readonly quantity: Exact;
}

/** `constant + Σ perUnit × quantity`. */
export interface QuantitySum {
  /** By line, per unit of its quantity. */
  readonly perUnit: readonly Exact[];
  readonly constant: Exact;
}

/** `lower ≤ constant + Σ perUnit × quantity ≤ upper`, tolerance already in the ends. */
export interface AmountDemand extends SolverInterval, QuantitySum {
  /** A firm demand never yields. */
  readonly firm: boolean;
  /**
   * What counts as an excess of 1, above 0 whatever is chosen: the target, for an excess in parts of
   * it. A quotient `a / b ≥ t`, written `a − t × b ≥ 0`, is off by parts of `t × b`, which is a sum of
   * its own. Default 1.
   */
  readonly scale?: Exact | QuantitySum;
}

export interface AmountsEffort {
  /** Choices looked at, whole or in part, before the answer is `stopped`; default {@link DEFAULT_NODES}. */
  readonly nodes?: number | undefined;
}

export const DEFAULT_NODES = 2_000_000;

export interface Choice {
  /** The index of each line's candidate. */
  readonly chosen: readonly number[];
  /** The common factor by which the drift is least; of several, the one nearest to 1. */
  readonly common: Exact;
  readonly drift: Exact;
  /** The worst excess of a demand that is not firm, in parts of its scale; 0 where all are met. */
  readonly excess: Exact;
  /** `constant + Σ perUnit × quantity` of each demand. */
  readonly totals: readonly Exact[];
}

export type Amounts =
  /** Proven best; `met` where no demand is exceeded, else `nearest`. */
  | ({ readonly status: "met" | "nearest"; readonly nodes: number } & Choice)
  /** Proven: no choice holds every firm demand. */
  | { readonly status: "infeasible"; readonly nodes: number }
  /** Best found within the effort allowed, if any; the bounds are what no choice of least excess betters. */
  | {
      readonly status: "stopped";
      readonly best?: Choice;
      readonly bound: { readonly excess: Exact; readonly drift: Exact };
      readonly nodes: number;
    };
