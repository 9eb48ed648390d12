import { markKinds } from "../food/figure.ts";
import type { Ratio } from "../number/ratio.ts";
import type { Tally } from "../sheet/tally.ts";
import type { TidyRow } from "./tidy.ts";

/** The columns of a record that a figure fills. */
export type FigureRow = Required<Pick<TidyRow, "unit" | "bound" | "marks" | "silent">> &
  Pick<TidyRow, "amount" | "least" | "most" | "coverage">;

/** How much a tally says and how far to trust it, for a record: what is not known has no amount. */
export function tallyRow(tally: Tally): FigureRow {
  const { unit, ratio, bound } = tally;
  const marks = marksIn(tally);
  const silent = tally.missing.join(", ");
  const { coverage } = tally;
  if (tally.isPoint)
    return { amount: ratio, unit, bound, least: ratio, most: ratio, coverage, marks, silent };
  const { low, high } = tally.ends;
  const amount = bound === "unknown" ? undefined : ratio;
  return { amount, unit, bound, least: low, most: high, coverage, marks, silent };
}

/** A figure that is simply known, for a record. */
export function pointRow(amount: Ratio, unit: string): FigureRow {
  return {
    amount,
    unit,
    bound: "point",
    least: amount,
    most: amount,
    coverage: WHOLE,
    marks: "",
    silent: "",
  };
}

const WHOLE: Ratio = { n: 1n, d: 1n };

/** As {@link tallyRow}, with what many rows share: one object, since a sheet has thousands. */
export function cellRow(head: TidyRow, component: string, tally: Tally, source?: string): TidyRow {
  const { unit, ratio, bound } = tally;
  const amount = bound === "unknown" ? undefined : ratio;
  const isPoint = tally.isPoint;
  const least = isPoint ? ratio : tally.ends.low;
  const most = isPoint ? ratio : tally.ends.high;
  const silent = tally.missing.join(", ");
  const { coverage } = tally;
  return {
    head,
    component,
    amount,
    unit,
    bound,
    least,
    most,
    coverage,
    marks: marksIn(tally),
    silent,
    source,
  };
}

function marksIn(tally: Tally): string {
  if (tally.isPlain) return "";
  let marks = "";
  for (const kind of markKinds) if (tally[kind].length > 0) marks += marks === "" ? kind : ` ${kind}`;
  return marks;
}
