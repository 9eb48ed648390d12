import type { Amount } from "../../measure/amount.ts";
import { type Exact, minus, ONE, over, ZERO } from "../../number/exact.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Bound } from "../../sheet/tally.ts";
import type { Demand } from "../demand.ts";
import { missOf } from "../fit/answer.ts";
import { boundAt } from "../fit/bound.ts";
import { demandText, subjectUnit } from "../fit/words.ts";
import type { KeptReason, LineOffers } from "./candidates.ts";
import type { ChosenOffers, FoundRounding, RoundingChoice } from "./choose.ts";
import { holdsWithin, type SubjectFigures, slackOf } from "./heldBefore.ts";
import { figuresAt } from "./problem.ts";

/** What became of one line of the batch. */
export interface RoundedLine {
  /** The line's key; `sheet/key` where several sheets are rounded. */
  readonly line: string;
  readonly before: Amount;
  readonly after: Amount;
  /** What rounding each line for itself would have made of it. */
  readonly lineByLine: Amount;
  /** How far it moved, as a share of what it was: 0.02 is 2 % more. */
  readonly moved: Exact;
  /** How far its ratio to the others drifted: what it is over what it was times the common factor, less 1. */
  readonly drift: Exact;
  /** Why it was left as it stood, where it was. */
  readonly kept: KeptReason | undefined;
  /** Whether the kitchen can measure `after`. */
  readonly measurable: boolean;
}

/** What became of one demand, for one portion as eaten. */
export interface RoundedDemand {
  readonly demand: Demand;
  /** The demand in words: `protein at least 30 g`. */
  readonly asked: string;
  /** What a portion brought before: an amount in `unit`, a share (0 to 1) or a ratio; null where there is nothing to take it of. */
  readonly before: Exact | null;
  readonly brings: Exact | null;
  /** What rounding each line for itself would have brought. */
  readonly lineByLine: Exact | null;
  readonly unit: string;
  /** How the figures bound the truth, by what is known of each line. */
  readonly bound: Bound;
  /** How far a portion falls short of what was asked (below 0) or goes over (above 0). */
  readonly miss: Exact;
  /** Whether it holds within the tolerance; a firm one has none. */
  readonly holds: boolean;
  /** Whether it held so before. What did not is not pursued at the cost of what did, and stays missed. */
  readonly heldBefore: boolean;
}

/** How far a choice of amounts is from what it should be. */
export interface Drift {
  /** Σ |amount ÷ (amount before × common) − 1| over the lines that were rounded. */
  readonly ratios: Exact;
  /** The common factor, by which that sum is least; 1 where demands do not hold the portion's size. */
  readonly common: Exact;
  /** The worst that a target that held before is off beyond its tolerance, as a share of it; 0 where all such hold. */
  readonly excess: Exact;
  /** Whether every firm demand holds. */
  readonly limitsHold: boolean;
}

export function driftOf({ drift, common, excess, limitsHold }: RoundingChoice): Drift {
  return {
    ratios: drift,
    common,
    excess,
    limitsHold,
  };
}

export function roundedLines({ lines, lineByLine }: FoundRounding, best: RoundingChoice): RoundedLine[] {
  return lines.map((line) => {
    const factor = factorOf(best.offers, line);
    const moved = minus(factor, ONE);
    const drift = line.kept === undefined ? minus(over(factor, best.common), ONE) : ZERO;
    return {
      line: line.name,
      before: line.exact,
      after: best.offers.get(line)?.amount ?? line.exact,
      lineByLine: lineByLine.offers.get(line)?.amount ?? line.exact,
      moved,
      drift,
      kept: line.kept,
      measurable: line.measurable,
    };
  });
}

/** What a line is multiplied by; one without an offer stays. */
export function factorOf(offers: ChosenOffers, line: LineOffers): Exact {
  const offer = offers.get(line);
  return offer ? over(offer.grams, line.grams) : ONE;
}

/** Every demand, in an order of their own. */
export function roundedDemands(
  found: FoundRounding,
  { offers }: RoundingChoice,
  sheets: readonly Sheet[],
): RoundedDemand[] {
  const { task, lines, lineByLine } = found;
  return task.asked.map((asked) => {
    const { demand, brought } = asked;
    const at = (choice: ChosenOffers): SubjectFigures =>
      figuresAt(brought, lines, (line) => factorOf(choice, line));
    const after = at(offers);
    const then = figuresAt(brought, lines, () => ONE);
    const before = quotientOf(then);
    const slack = slackOf(demand, task.tolerance);
    const brings = quotientOf(after);
    const exactLineByLine = quotientOf(at(lineByLine.offers));
    const miss = brings ? missOf(demand, brings) : ZERO;
    return {
      demand: demand.demand,
      asked: demandText(demand),
      before,
      brings,
      lineByLine: exactLineByLine,
      unit: subjectUnit(demand.subject),
      bound: boundAt(sheets, demand.subject, brought),
      miss,
      holds: holdsWithin(demand, slack, after),
      heldBefore: holdsWithin(demand, slack, then),
    };
  });
}

function quotientOf({ value, per }: SubjectFigures): Exact | null {
  return per.n === 0n ? null : over(value, per);
}

/** Whether every demand holds, targets within the tolerance. */
export function allHold({ task, lines }: FoundRounding, { offers }: RoundingChoice): boolean {
  return task.asked.every(({ demand, brought }) => {
    const at = figuresAt(brought, lines, (line) => factorOf(offers, line));
    return holdsWithin(demand, slackOf(demand, task.tolerance), at);
  });
}
