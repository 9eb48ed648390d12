import { type Exact, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { AmountDemand, AmountsProblem, Choice } from "../solve/amounts.ts";
import { chooseAmounts } from "../solve/choose.ts";
import { choiceTables, statedChoice } from "../solve/tables.ts";
import { type LineOffers, lineOffers, nearestOffer, type Offer } from "./candidates.ts";
import { demandEnds, movingIn, problemOf, standing } from "./problem.ts";
import type { RoundTask } from "./read.ts";

/** One offer for each line that is rounded. */
export type ChosenOffers = ReadonlyMap<LineOffers, Offer>;

/** A choice with what each line became, and whether every limit holds. */
export interface RoundingChoice extends Choice {
  readonly offers: ChosenOffers;
  readonly limitsHold: boolean;
}

/** What was found for a task, beside what rounding each line for itself would do. */
export interface FoundRounding {
  readonly task: RoundTask;
  readonly lines: readonly LineOffers[];
  readonly problem: AmountsProblem;
  readonly lineByLine: RoundingChoice;
  /** The best found; nothing where none keeps the limits. */
  readonly best: RoundingChoice | undefined;
  readonly status: "met" | "nearest" | "stopped" | "out-of-reach";
  /** Where the search stopped: what nothing betters. */
  readonly bound: { readonly excess: Exact; readonly drift: Exact } | undefined;
  readonly nodes: number;
}

export function findRounding(task: RoundTask): FoundRounding {
  const lines = lineOffers(task);
  const moving = movingIn(lines);
  const problem = problemOf(demandEnds(standing(task, lines), task.tolerance), lines);
  const lineByLine = roundingOf(statedChoice(choiceTables(problem), nearestEach(moving)), problem, moving);
  const found = chooseAmounts(problem, { nodes: task.nodes });
  const shared = { task, lines, problem, lineByLine, nodes: found.nodes };
  if (found.status === "infeasible")
    return { ...shared, status: "out-of-reach", best: undefined, bound: undefined };
  if (found.status !== "stopped") {
    return { ...shared, status: found.status, best: roundingOf(found, problem, moving), bound: undefined };
  }
  // A search that is cut short may not have come upon what any cook would do.
  const own = found.best && roundingOf(found.best, problem, moving);
  const cooks = lineByLine.limitsHold ? lineByLine : undefined;
  const best = own && cooks ? (isBetter(cooks, own) ? cooks : own) : (own ?? cooks);
  return { ...shared, status: "stopped", best, bound: found.bound };
}

/** Each line rounded for itself. */
function nearestEach(moving: readonly LineOffers[]): number[] {
  return moving.map((line) => line.offers.indexOf(nearestOffer(line) as Offer));
}

function roundingOf(
  choice: Choice,
  { demands }: AmountsProblem,
  moving: readonly LineOffers[],
): RoundingChoice {
  const offers = new Map(
    moving.flatMap((line, i) => {
      const offer = line.offers[choice.chosen[i] ?? 0];
      return offer ? [[line, offer] as const] : [];
    }),
  );
  const limitsHold = demands.every((demand, i) => !demand.firm || holds(demand, choice.totals[i] ?? ZERO));
  return { ...choice, offers, limitsHold };
}

function holds({ lower, upper }: AmountDemand, total: Exact): boolean {
  return !(lower && compareRatios(total, lower) < 0) && !(upper && compareRatios(total, upper) > 0);
}

function isBetter(a: Choice, b: Choice): boolean {
  return (compareRatios(a.excess, b.excess) || compareRatios(a.drift, b.drift)) < 0;
}

/** The choice that breaks the limits least, for what is out of reach; a limit's excess counts as a share of it. */
export function leastBroken({ problem, lines, task }: FoundRounding): RoundingChoice | undefined {
  const limits = problem.demands.filter(({ firm }) => firm).map((demand) => ({ ...demand, firm: false }));
  const eased = { ...problem, demands: limits };
  const found = chooseAmounts(eased, { nodes: task.nodes });
  if (found.status === "infeasible") return undefined;
  const choice = found.status === "stopped" ? found.best : found;
  return choice && roundingOf(choice, eased, movingIn(lines));
}
