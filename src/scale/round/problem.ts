import {
  type Fraction,
  fraction,
  isZero,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../number/fraction.ts";
import { compareText } from "../../number/text.ts";
import type { Asked } from "../fit/brought.ts";
import type { ByLine } from "../fit/model.ts";
import type { AmountDemand, AmountsProblem, QuantitySum } from "../solve/amounts.ts";
import type { LineOffers } from "./candidates.ts";
import { type Figures, heldBefore, slackOf } from "./heldBefore.ts";
import type { RoundTask } from "./read.ts";

/** The lines that are rounded, by name, so that what comes out does not mind the recipe's order. */
export function movingIn(lines: readonly LineOffers[]): LineOffers[] {
  return lines.filter(({ offers }) => offers.length > 0).sort((a, b) => compareText(a.name, b.name));
}

/** The demands that rounding is held to: firm ones, and of the others the ends that the amounts held before. */
export function standing({ asked, tolerance }: RoundTask, lines: readonly LineOffers[]): Asked[] {
  return asked.map(({ demand, brought }) => {
    const before = figuresAt(brought, lines, () => ONE);
    return { demand: heldBefore(demand, tolerance, before), brought };
  });
}

/**
 * The choice of one measurable amount for every line, in grams of the batch. A firm demand is a
 * limit and never yields; another may be off by the tolerance. An excess counts as a share of what
 * was asked. All that is asked counts: see {@link standing}.
 */
export function problemOf(
  { asked, tolerance }: Pick<RoundTask, "asked" | "tolerance">,
  lines: readonly LineOffers[],
): AmountsProblem {
  const moving = movingIn(lines);
  return {
    lines: moving.map(({ grams, offers }) => ({
      exact: grams,
      weight: ONE,
      candidates: offers.map((offer) => ({ quantity: offer.grams })),
    })),
    demands: asked.flatMap((each) => rowsOf(each, tolerance, lines, moving)),
    ...(holdsSize(asked) ? {} : { common: ONE }),
  };
}

/**
 * Whether demands hold the size of a portion from both sides. Where they do not, nothing but the
 * amounts themselves says how large the batch should be, and ratios kept by a smaller batch would
 * be no gain.
 */
function holdsSize(asked: readonly Asked[]): boolean {
  const amounts = asked.map(({ demand }) => demand).filter(({ subject }) => subject.kind === "amount");
  return (
    amounts.some(({ least }) => least !== undefined && least.n > 0n) &&
    amounts.some(({ most }) => most !== undefined)
  );
}

/** One row for each end that is asked, so that each has its own measure of excess. */
function rowsOf(
  { demand, brought: { value, per } }: Asked,
  tolerance: Fraction,
  lines: readonly LineOffers[],
  moving: readonly LineOffers[],
): AmountDemand[] {
  const { least, most, firm } = demand;
  const slack = slackOf(demand, tolerance);
  const add = (bring: (line: LineOffers) => Fraction): QuantitySum => ({
    perUnit: moving.map((line) => over(bring(line), line.grams)),
    constant: sum(lines.filter(({ offers }) => offers.length === 0).map(bring)),
  });
  const row = (end: Fraction, asked: Fraction): Omit<AmountDemand, "lower" | "upper"> => ({
    ...add((line) => {
      const own = contribution(value, line);
      return per ? minus(own, times(end, contribution(per, line))) : own;
    }),
    firm,
    scale: scaleOf(asked),
  });
  /**
   * What an excess is a share of: what is asked. Of a share or ratio that is so much of what it is
   * taken of, which changes with the amounts; where 0 is asked, all of that. Of an amount of which 0
   * is asked it is what the sheet brings, and where that is nothing, too, one unit.
   */
  function scaleOf(asked: Fraction): NonNullable<AmountDemand["scale"]> {
    const all = (of: ByLine): Fraction => sum(lines.map((line) => contribution(of, line)));
    if (per && !isZero(all(per))) {
      const by = isZero(asked) ? ONE : asked;
      return add((line) => times(by, contribution(per, line)));
    }
    const found = per || isZero(asked) ? all(value) : asked;
    return isZero(found) ? ONE : found;
  }
  const rows: AmountDemand[] = [];
  if (least) {
    const end = times(least, minus(ONE, slack));
    rows.push({ ...row(end, least), lower: per ? ZERO : end });
  }
  if (most) {
    const end = times(most, plus(ONE, slack));
    rows.push({ ...row(end, most), upper: per ? ZERO : end });
  }
  return rows;
}

/** What a line brings to one portion, as the sheet stands. */
function contribution({ lines, scale }: ByLine, { dish, line }: LineOffers): Fraction {
  return fraction(lines[dish]?.[line] ?? 0n, scale);
}

/** What a demand's subject comes to, `value / per`, each line multiplied by a factor. */
export function figuresAt(
  { value, per }: Asked["brought"],
  lines: readonly LineOffers[],
  factorOf: (line: LineOffers) => Fraction,
): Figures {
  const all = (of: ByLine): Fraction =>
    sum(lines.map((line) => times(contribution(of, line), factorOf(line))));
  return { value: all(value), per: per ? all(per) : ONE };
}
