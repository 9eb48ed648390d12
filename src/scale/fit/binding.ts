import { type Exact, fraction, greatest, minus, negate, ONE, plus, times, ZERO } from "../../number/exact.ts";
import { compareRatios, magnitude } from "../../number/ratio.ts";
import { ToldResult } from "../../number/told.ts";
import type { Demand } from "../demand.ts";
import type { LimitEnd } from "../engine/constraints.ts";
import { type Constraint, isExact, withEnds } from "../engine/constraints.ts";
import { pointValue } from "../engine/linear.ts";
import { pointAsWritten, proportionsAt } from "../engine/model.ts";
import { type LeastDeparture, meet, totalDeparture } from "../engine/task.ts";
import { moverText, proportionText, standingText } from "./conflict.ts";
import { differenceText, factorText, gramsText, listText, subjectUnit } from "./words.ts";

/** A demand, or a line's own bound, that the answer stands right at. */
export class FitBinding extends ToldResult {
  readonly kind: "demand" | "line";
  readonly demand: Demand | undefined;
  /** The line whose `least` or `most` it is. */
  readonly line: string | undefined;
  /** Which end would have to give to gain anything; where it costs nothing, the end that is met. */
  readonly end: LimitEnd;
  /** The demand's own unit, grams for a line; empty for a share or ratio. */
  readonly unit: string;
  readonly #try: () => Tried;
  #tried: Tried | undefined;

  /** @internal */
  constructor(
    found: LeastDeparture,
    constraint: Constraint,
    end: LimitEnd,
    price: Exact,
    pivots: number | undefined,
  ) {
    super();
    const { on } = constraint;
    this.kind = on.kind === "demand" ? "demand" : "line";
    this.demand = on.kind === "demand" ? on.demand.demand : undefined;
    this.line = on.kind === "line" ? on.name : undefined;
    this.end = end;
    this.price = price;
    this.unit = on.kind === "demand" ? subjectUnit(on.demand.subject) : "g";
    this.#try = () => tryEasing(found, constraint, end, price, pivots);
  }

  readonly price: Exact;

  /** A round step of easing, tried by solving again when asked for; nothing where it buys nothing. */
  get easing(): FitEasing | undefined {
    return this.#result.easing;
  }

  /** `sodium at most 600 mg: easing it by 50 mg would bring …` */
  get text(): string {
    return this.#result.text;
  }

  get #result(): Tried {
    this.#tried ??= this.#try();
    return this.#tried;
  }
}

/** What giving way by a round step buys, with the fit solved again. */
export interface FitEasing {
  readonly by: Exact;
  /** Total departure with and without it. */
  readonly from: Exact;
  readonly to: Exact;
}

interface Tried {
  readonly easing: FitEasing | undefined;
  readonly text: string;
}

/** What binds, demands first. */
export function bindingOf(found: LeastDeparture, pivots: number | undefined): FitBinding[] {
  const { layout, solution } = found;
  return layout.rows.flatMap((row, i) => {
    if (solution.binding.rows[i] === "neither") return [];
    const constraint = row.of === "constraint" ? layout.constraints[row.place] : undefined;
    if (!constraint || constraint.on.kind === "sheet" || constraint.on.kind === "share") return [];
    const price = solution.prices.rows[i] ?? ZERO;
    // What lessens the objective when raised lets the upper end give, and the other way about.
    const side = price.n > 0n ? "least" : price.n < 0n ? "most" : row.end === "most" ? "most" : "least";
    const size = price.n < 0n ? negate(price) : price;
    const perUnit = times(times(size, row.times), pointValue(constraint.per, found.point));
    return [new FitBinding(found, constraint, side, perUnit, pivots)];
  });
}

function tryEasing(
  found: LeastDeparture,
  constraint: Constraint,
  side: LimitEnd,
  price: Exact,
  pivots: number | undefined,
): Tried {
  const { on } = constraint;
  const what = standingText({ on: "constraint", constraint, side });
  const step = price.n === 0n ? undefined : stepFor(found, constraint, side);
  const eased = step && meet(easedProblem(found, constraint, side, step), pivots);
  if (!step || !eased || !("point" in eased)) {
    const met = isExact(constraint) ? "met to the figure" : "met with nothing to spare";
    return { easing: undefined, text: `${what}: ${met}; easing it alone would gain nothing` };
  }
  const [from, to] = [totalDeparture(found), totalDeparture(eased)];
  const by = on.kind === "demand" ? differenceText(on.demand.subject, step) : gramsText(step);
  const way = isExact(constraint)
    ? `letting it be ${by} ${side === "least" ? "lower" : "higher"}`
    : `easing it by ${by}`;
  return {
    easing: {
      by: step,
      from,
      to,
    },
    text: `${what}: ${way} would bring ${changesText(found, eased)}`,
  };
}

const TENTH: Exact = /* @__PURE__ */ fraction(1n, 10n);
const ROUND: readonly bigint[] = [5n, 2n, 1n];

/** A round figure of about a tenth of the bound, and no more than there is. */
function stepFor(found: LeastDeparture, constraint: Constraint, side: LimitEnd): Exact {
  const bound = (side === "least" ? constraint.least : constraint.most) ?? ZERO;
  const written = pointValue(constraint.value, pointAsWritten(found.problem.model));
  const tenth = times(bound.n === 0n ? written : bound, TENTH);
  if (tenth.n <= 0n) return ONE;
  const power = magnitude(tenth);
  const ten = power >= 0 ? fraction(10n ** BigInt(power)) : fraction(1n, 10n ** BigInt(-power));
  const digit = ROUND.find((d) => compareRatios(times(fraction(d), ten), tenth) <= 0) ?? 1n;
  return times(fraction(digit), ten);
}

function easedProblem(
  found: LeastDeparture,
  constraint: Constraint,
  side: LimitEnd,
  step: Exact,
): LeastDeparture["problem"] {
  const { model, constraints } = found.problem;
  const { least, most } = constraint;
  const ends =
    side === "least"
      ? { least: least && greatest(ZERO, minus(least, step)), most }
      : { least, most: most && plus(most, step) };
  return {
    model,
    constraints: constraints.map((each) => (each === constraint ? withEnds(each, ends) : each)),
  };
}

/** Which ratios come nearer to what was written, the largest gain first, three at most. */
function changesText(found: LeastDeparture, eased: LeastDeparture): string {
  const { model } = found.problem;
  const [before, after] = [proportionsAt(model, found.point), proportionsAt(model, eased.point)];
  const gains = model.movers.flatMap((mover, j) => {
    const [was, is] = [before[j] ?? ONE, after[j] ?? ONE];
    const gain = minus(away(was), away(is));
    return gain.n > 0n ? [{ mover, was, is, gain }] : [];
  });
  gains.sort((a, b) => compareRatios(b.gain, a.gain) || (a.mover.name < b.mover.name ? -1 : 1));
  const changes = gains
    .slice(0, 3)
    .map(
      ({ mover, was, is }) =>
        `${moverText(mover)} ${is.n === is.d ? "back to" : "to"} ${proportionText(mover, is)} (now ${factorText(was)} times)`,
    );
  return changes.length > 0 ? listText(changes) : "all nearer to the recipe's proportions";
}

/** How far a ratio departs, a fall counted twice. */
function away(ratio: Exact): Exact {
  const departure = minus(ratio, ONE);
  return departure.n < 0n ? times(fraction(-2n), departure) : departure;
}
