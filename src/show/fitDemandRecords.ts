import type { Exact } from "../number/exact.ts";
import type { Demand } from "../scale/demand.ts";
import type { Bound } from "../sheet/tally.ts";
import type { TidyRow } from "./tidy.ts";

/** Columns of the records of demands beside those of every result. */
export const demandColumns: readonly string[] = ["of", "asked"];

/** One of a demand's figures: what it is, and how it bounds the truth. */
export interface DemandFigure {
  readonly what: string;
  /** Nothing where there is nothing to take it of. */
  readonly value: Exact | null | undefined;
  readonly unit: string;
  readonly bound: Bound;
}

/**
 * A demand as tidy rows, one figure each: an amount of the component, a share of energy (0 to 1) or a ratio of
 * two components, as `of` says; `asked` is how much, in words.
 */
export function* demandRows(
  head: TidyRow,
  { demand, asked }: { readonly demand: Demand; readonly asked: string },
  figures: readonly DemandFigure[],
): Generator<TidyRow> {
  const { of, energyShareOf } = demand;
  const kind = of !== undefined ? "amount" : energyShareOf !== undefined ? "share of energy" : "ratio";
  const component = subjectOf(demand);
  const own = { ...head.own, of: kind, asked };
  for (const { what, value, unit, bound } of figures) {
    const row = { ...head, what, component, unit, own };
    if (!value || bound === "unknown") yield { ...row, bound: "unknown" };
    else yield { ...row, amount: value, bound, ...endsOf(value, bound) };
  }
}

/** What a bound alone says of the ends. */
function endsOf(value: Exact, bound: Bound): Pick<TidyRow, "least" | "most"> {
  if (bound === "between") return {};
  return {
    ...(bound !== "at-most" && { least: value }),
    ...(bound !== "at-least" && { most: value }),
  };
}

/** What the rows of demands may be of, beside components. */
export function demandNames(demands: readonly Demand[]): string[] {
  return demands.map(subjectOf);
}

function subjectOf({ of, energyShareOf, ratioOf }: Demand): string {
  return of ?? energyShareOf ?? ratioOf?.join("/") ?? "";
}
