import type { Exact } from "../../number/exact.ts";

/**
 * What a linear programme is asked and what it answers. Everything is exact: a figure here is a
 * fraction, never a binary float. Variables and rows go by their index, and every tie is broken by
 * the lower index, so a caller who orders by key gets the same answer whatever order it was handed.
 */

/** Ends of an interval; an absent end is open. Equal ends pin the value. */
export interface SolverInterval {
  readonly lower?: Exact;
  readonly upper?: Exact;
}

/** One `coefficient × variable`. A variable named twice in a row or an objective counts twice. */
export interface ProgrammeTerm {
  readonly variable: number;
  readonly coefficient: Exact;
}

/** `lower ≤ Σ coefficient × variable ≤ upper`. A row without terms says `lower ≤ 0 ≤ upper`. */
export interface ProgrammeRow extends SolverInterval {
  readonly terms: readonly ProgrammeTerm[];
}

/** A linear programme without its objective: variables with their bounds, and rows over them. */
export interface Programme {
  readonly variables: readonly SolverInterval[];
  readonly rows: readonly ProgrammeRow[];
}

/** A linear function to be made least. A constant belongs to the caller. */
export type Objective = readonly ProgrammeTerm[];

/** Where a variable (or a row's total) stands in a basis. `free` is off the basis at zero, unbounded. */
export type Standing = "basic" | "lower" | "upper" | "free";

export interface ProgrammeBasis {
  readonly variables: readonly Standing[];
  readonly rows: readonly Standing[];
}

/** How far a solve may go, and where it may start. */
export interface Effort {
  /** Exact pivots allowed before the answer is `stopped`; default {@link DEFAULT_PIVOTS}. */
  readonly pivots?: number | undefined;
}

export const DEFAULT_PIVOTS = 20_000;

/** Which end of its span a value stands on; `both` where the span is a single point. */
export type End = "lower" | "upper" | "both" | "neither";

/**
 * An exact proof that the (first) objective is least: the prices are dual feasible and give the
 * same, so `objective = Σ row price × binding row end + Σ variable price × binding bound`.
 */
export interface Prices {
  /**
   * Shadow price of each row: what the objective gains when the end that binds is raised by one.
   * At or above 0 where the lower end binds, at or below 0 where the upper end does, else 0. Where
   * more rows meet in the answer than it has freedom, other prices may be as right.
   */
  readonly rows: readonly Exact[];
  /** The same for each variable's bounds. */
  readonly variables: readonly Exact[];
}

export interface Optimal {
  readonly status: "optimal";
  readonly x: readonly Exact[];
  /** The least of each objective, in turn; the first is what {@link Prices} speak of. */
  readonly objectives: readonly Exact[];
  readonly prices: Prices;
  /** Each row's total `Σ coefficient × variable` at `x`. */
  readonly totals: readonly Exact[];
  /** Which ends bind at `x`. */
  readonly binding: { readonly rows: readonly End[]; readonly variables: readonly End[] };
  readonly basis: ProgrammeBasis;
  readonly pivots: number;
}

/** One inequality of the programme, taken `weight` times (above 0). */
export interface Holding {
  readonly on: "row" | "variable";
  readonly index: number;
  readonly end: "lower" | "upper";
  readonly weight: Exact;
}

/**
 * Nothing meets every row and bound. Proof (Farkas): written as `… ≤ upper` and `−… ≤ −lower`, the
 * holdings' weighted sum is `0 ≤ −gap` with `gap` above 0.
 */
export interface Infeasible {
  readonly status: "infeasible";
  readonly certificate: readonly Holding[];
  readonly gap: Exact;
  readonly pivots: number;
}

/** The objective of this turn falls without end: every `from + t × along`, t at or above 0, meets all rows and bounds. */
export interface Unbounded {
  readonly status: "unbounded";
  readonly from: readonly Exact[];
  readonly along: readonly Exact[];
  readonly turn: number;
  readonly pivots: number;
}

/** The effort allowed was spent before an answer was proven. */
export interface Stopped {
  readonly status: "stopped";
  readonly pivots: number;
}

export type Solution = Optimal | Infeasible | Unbounded | Stopped;
