import { type Fraction, fraction, minus, ONE, over, plus, sum, times, ZERO } from "../../number/fraction.ts";
import { type Brought, broughtBy } from "../fit/brought.ts";
import type { ReadDemand } from "../fit/demands.ts";
import type { ByLine } from "../fit/model.ts";
import type { AmountDemand, AmountsProblem } from "../solve/amounts.ts";
import type { LineOffers } from "./candidates.ts";
import type { RoundTask } from "./read.ts";

/** A demand with what each line brings to it. */
export interface Asked {
  readonly demand: ReadDemand;
  readonly brought: Brought;
}

export function askedOf(task: RoundTask): Asked[] {
  return task.demands.map((demand) => ({
    demand,
    brought: broughtBy(task.dishes, demand.subject, task.system),
  }));
}

/**
 * The choice of one measurable amount for every line, in grams of the batch. A firm demand is a
 * limit and never yields; another may be off by the tolerance. An excess counts as a share of what
 * was asked. Without demands the common factor is held at 1, so that the batch keeps its size.
 */
export function problemOf(
  task: RoundTask,
  lines: readonly LineOffers[],
  asked: readonly Asked[],
): AmountsProblem {
  const moving = lines.filter((line) => line.offers.length > 0);
  return {
    lines: moving.map(({ grams, offers }) => ({
      exact: grams,
      weight: ONE,
      candidates: offers.map((offer) => ({ quantity: offer.grams })),
    })),
    demands: asked.flatMap((each) => rowsOf(each, task.tolerance, lines)),
    ...(asked.length === 0 ? { common: ONE } : {}),
  };
}

/** One row for both ends of an exact amount, else one for each end, so that each has its own measure of excess. */
function rowsOf(
  { demand, brought }: Asked,
  tolerance: Fraction,
  lines: readonly LineOffers[],
): AmountDemand[] {
  const slack = demand.firm ? ZERO : tolerance;
  const { least, most } = demand;
  const rows: AmountDemand[] = [];
  if (least !== undefined)
    rows.push(row(brought, times(least, minus(ONE, slack)), least, "least", demand.firm, lines));
  if (most !== undefined)
    rows.push(row(brought, times(most, plus(ONE, slack)), most, "most", demand.firm, lines));
  return rows;
}

/** `value − end × per` against 0 for a ratio or a share; `value` against the end for an amount. */
function row(
  { value, per }: Brought,
  end: Fraction,
  asked: Fraction,
  side: "least" | "most",
  firm: boolean,
  lines: readonly LineOffers[],
): AmountDemand {
  const coefficient = (line: LineOffers): Fraction => {
    const own = contribution(value, line);
    return per ? minus(own, times(end, contribution(per, line))) : own;
  };
  const still = sum(lines.filter((line) => line.offers.length === 0).map(coefficient));
  const bound = per ? ZERO : end;
  const size = per ? times(asked, sum(lines.map((line) => contribution(per, line)))) : asked;
  return {
    perUnit: lines
      .filter((line) => line.offers.length > 0)
      .map((line) => over(coefficient(line), line.grams)),
    constant: still,
    ...(side === "least" ? { lower: bound } : { upper: bound }),
    firm,
    // Of a target of 0 an excess is counted in its own unit.
    scale: size.n > 0n ? size : ONE,
  };
}

/** What a line brings to one portion, as the sheet stands. */
function contribution({ lines, scale }: ByLine, { dish, line }: LineOffers): Fraction {
  return fraction(lines[dish]?.[line] ?? 0n, scale);
}

/** What a demand's subject comes to, with each line's grams multiplied by a factor; null where it has no value. */
export function subjectAt(
  { value, per }: Brought,
  lines: readonly LineOffers[],
  factorOf: (line: LineOffers) => Fraction,
): Fraction | null {
  const all = (of: ByLine): Fraction =>
    sum(lines.map((line) => times(contribution(of, line), factorOf(line))));
  if (!per) return all(value);
  const below = all(per);
  return below.n === 0n ? null : over(all(value), below);
}

/** How far a figure lies outside what was asked, as asked: 0 within. */
export function missOf({ least, most }: ReadDemand, figure: Fraction): Fraction {
  if (least !== undefined && minus(figure, least).n < 0n) return minus(figure, least);
  if (most !== undefined && minus(figure, most).n > 0n) return minus(figure, most);
  return ZERO;
}
