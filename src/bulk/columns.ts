import type { Quantity } from "../scale/demand.ts";
import type { Bound, Marks } from "../sheet/tally.ts";

/** What `bound` of a column counts: how a value bounds the truth. */
export const boundCodes: readonly Bound[] = ["point", "at-least", "at-most", "between", "unknown"];

/** What became of a row. */
export type RowStatus = "reached" | "out-of-reach" | "no-target";

/** What `status` counts. A row has no target where one of its figures is no finite number. */
export const statusCodes: readonly RowStatus[] = ["reached", "out-of-reach", "no-target"];

/**
 * A component of many portions, or their mass: doubles, of which each is within 1e-12 of the exact figure, as
 * a part of it. `NaN` stands where there is no figure: of a row that was not reached, of what nothing is known
 * of, of an end that nothing tells. PortionColumns that say the same are one array, so that none may be written to.
 */
export interface PortionColumn {
  readonly component: Quantity;
  readonly unit: string;
  readonly value: Float64Array;
  readonly least: Float64Array;
  readonly most: Float64Array;
  /** How the value bounds the truth, as a place in `boundCodes`. */
  readonly bound: Uint8Array;
  /** What the figures behind it say of themselves, by line: each way in which rows have it. */
  readonly marks: readonly Marks[];
  /** Which of `marks` a row has; undefined where all have the first. */
  readonly marksOf: Uint8Array | undefined;
}

/** Portions of one sheet as columns: plain data, to be sent to a worker or read by a data frame. */
export interface PortionColumns<Q extends Quantity = Quantity> {
  readonly is: "steelyard/columns@1";
  /** Of the sheet. */
  readonly name: string;
  readonly length: number;
  /** What the held lines of each portion were multiplied by; `NaN` where it was not reached. */
  readonly factor: Float64Array;
  /** What became of each row, as a place in `statusCodes`. */
  readonly status: Uint8Array;
  /** By what was asked for, in that order. */
  readonly columns: { readonly [K in Q]: PortionColumn };
  /** How many portions were worked out exactly, for all others to be read off: few, unless rows lie close to a turn. */
  readonly solved: number;
}
