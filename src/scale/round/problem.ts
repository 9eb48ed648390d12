import {
  type Exact,
  fraction,
  isZero,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../number/exact.ts";
import { compareText } from "../../number/text.ts";
import type { AskedDemand } from "../engine/brought.ts";
import type { ByLine } from "../engine/model.ts";
import type { AmountDemand, AmountsProblem, QuantitySum } from "../solve/amounts.ts";
import type { LineOffers } from "./candidates.ts";
import { heldBefore, type SubjectFigures, slackOf } from "./heldBefore.ts";
import type { RoundTask } from "./read.ts";

/** The lines that are rounded, by name, so that what comes out does not mind the recipe's order. */
export function movingIn(lines: readonly LineOffers[]): LineOffers[] {
  return lines.filter(({ offers }) => offers.length > 0).sort((a, b) => compareText(a.name, b.name));
}

/** The demands that rounding is held to: firm ones, and of the others the ends that the amounts held before. */
export function standing({ asked, tolerance }: RoundTask, lines: readonly LineOffers[]): AskedDemand[] {
  return asked.map(({ demand, brought }) => {
    const before = figuresAt(brought, lines, () => ONE);
    return { demand: heldBefore(demand, tolerance, before), brought };
  });
}

/** One end that a choice of amounts is held to. */
export interface HeldEnd {
  readonly brought: Pick<AskedDemand["brought"], "value" | "per">;
  readonly side: "least" | "most";
  /** For one portion, with the tolerance in it: an amount, a share or a ratio. */
  readonly end: Exact;
  /** What an excess is a share of: the end without the tolerance. */
  readonly asked: Exact;
  /** A limit, which never yields. */
  readonly firm: boolean;
  /** What counts beside the lines, for one portion, and stays as it is. */
  readonly beside?: SubjectFigures;
}

/** The ends of demands: a firm one is a limit and never yields; another may be off by the tolerance. */
export function demandEnds(asked: readonly AskedDemand[], tolerance: Exact): HeldEnd[] {
  return asked.flatMap(({ demand, brought }): HeldEnd[] => {
    const { least, most, firm } = demand;
    const slack = slackOf(demand, tolerance);
    return [
      ...(least
        ? [{ brought, firm, side: "least" as const, end: times(least, minus(ONE, slack)), asked: least }]
        : []),
      ...(most
        ? [{ brought, firm, side: "most" as const, end: times(most, plus(ONE, slack)), asked: most }]
        : []),
    ];
  });
}

/** The choice of one measurable amount for every line, in grams of the batch. An excess counts as a share of what was asked. */
export function problemOf(ends: readonly HeldEnd[], lines: readonly LineOffers[]): AmountsProblem {
  const moving = movingIn(lines);
  return {
    lines: moving.map(({ grams, offers }) => ({
      exact: grams,
      weight: ONE,
      candidates: offers.map((offer) => ({ quantity: offer.grams })),
    })),
    demands: ends.map((end) => rowOf(end, lines, moving)),
    ...(holdsSize(ends) ? {} : { common: ONE }),
  };
}

/**
 * Whether ends hold the size of a portion from both sides. Where they do not, nothing but the
 * amounts themselves says how large the batch should be, and ratios kept by a smaller batch would
 * be no gain.
 */
function holdsSize(ends: readonly HeldEnd[]): boolean {
  const amounts = ends.filter(({ brought }) => brought.per === undefined);
  return (
    amounts.some(({ side, asked }) => side === "least" && !isZero(asked)) &&
    amounts.some(({ side }) => side === "most")
  );
}

/** A quotient `value / per` of at least `end` is `value − end × per` of at least 0. */
function rowOf(held: HeldEnd, lines: readonly LineOffers[], moving: readonly LineOffers[]): AmountDemand {
  const { brought, side, end, firm } = held;
  const { value, per } = brought;
  const { value: besideValue, per: besidePer } = held.beside ?? NOTHING;
  const add = (bring: (line: LineOffers) => Exact, beside: Exact): QuantitySum => ({
    perUnit: moving.map((line) => over(bring(line), line.grams)),
    constant: plus(beside, sum(lines.filter(({ offers }) => offers.length === 0).map(bring))),
  });
  const all = (of: ByLine, beside: Exact): Exact =>
    plus(beside, sum(lines.map((line) => contribution(of, line))));
  const total = per
    ? add(
        (line) => minus(contribution(value, line), times(end, contribution(per, line))),
        minus(besideValue, times(end, besidePer)),
      )
    : add((line) => contribution(value, line), besideValue);
  return { ...total, firm, scale: scaleOf(), [side === "least" ? "lower" : "upper"]: per ? ZERO : end };

  /**
   * What an excess is a share of: what is asked. Of a share or ratio that is so much of what it is
   * taken of, which changes with the amounts; where 0 is asked, all of that. Of an amount of which 0
   * is asked it is what the sheet brings, and where that is nothing, too, one unit.
   */
  function scaleOf(): NonNullable<AmountDemand["scale"]> {
    if (per && !isZero(all(per, besidePer))) {
      const by = isZero(held.asked) ? ONE : held.asked;
      return add((line) => times(by, contribution(per, line)), times(by, besidePer));
    }
    const found = per || isZero(held.asked) ? all(value, besideValue) : held.asked;
    return isZero(found) ? ONE : found;
  }
}

const NOTHING: SubjectFigures = { value: ZERO, per: ZERO };

/** What a line brings to one portion, as the sheet stands. */
function contribution({ lines, scale }: ByLine, { dish, line }: LineOffers): Exact {
  return fraction(lines[dish]?.[line] ?? 0n, scale);
}

/** What a demand's subject comes to, `value / per`, each line multiplied by a factor. */
export function figuresAt(
  { value, per }: AskedDemand["brought"],
  lines: readonly LineOffers[],
  factorOf: (line: LineOffers) => Exact,
): SubjectFigures {
  const all = (of: ByLine): Exact => sum(lines.map((line) => times(contribution(of, line), factorOf(line))));
  return { value: all(value), per: per ? all(per) : ONE };
}
