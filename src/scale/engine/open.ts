import { type Exact, fraction, ZERO } from "../../number/exact.ts";
import type { Constraint, LimitEnd } from "./constraints.ts";
import type { Model, Mover } from "./model.ts";

/** One of those that cannot stand together: a demand or a line's bound, or the end of a range. */
export type InTheWay =
  | { readonly on: "constraint"; readonly constraint: Constraint; readonly side: LimitEnd }
  | RangeEnd;

/** An end of a mover's range, or of the common factor's. */
export type RangeEnd =
  | {
      readonly on: "range";
      readonly mover: Mover;
      /** Its place among the movers. */
      readonly place: number;
      readonly side: LimitEnd;
      readonly bound: Exact;
    }
  | { readonly on: "common"; readonly side: LimitEnd; readonly bound: Exact };

/** Whether two are the same end of the same thing. */
export function isSame(a: InTheWay, b: InTheWay): boolean {
  if (a.side !== b.side) return false;
  if (a.on === "constraint") return b.on === "constraint" && a.constraint.on === b.constraint.on;
  if (a.on === "common") return b.on === "common";
  return b.on === "range" && a.place === b.place;
}

/** Beyond any portion, either way. */
const FAR = 1_000_000n;

/** The model with one end of a range opened as far as there is anything beyond it. */
export function openEnd(model: Model, end: RangeEnd): Model {
  if (end.on === "common") {
    const far = end.side === "most" ? { most: fraction(FAR) } : { least: fraction(1n, FAR) };
    return { ...model, common: { ...model.common, ...far } };
  }
  const open = end.side === "most" ? { most: undefined } : { least: ZERO };
  const movers = model.movers.map((each, j) =>
    j === end.place ? { ...each, range: { ...each.range, ...open } } : each,
  );
  return { ...model, movers };
}
