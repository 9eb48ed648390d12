import { type Exact, fraction, minus, negate, over, sum, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Descent } from "../solve/minimise.ts";
import type { Objective, Optimal } from "../solve/programme.ts";
import { isOnePortion, type Linear, less, ONE_PORTION, type Point, pointValue } from "./linear.ts";
import {
  descend,
  type Layout,
  type Miss,
  objectiveOf,
  objectivesOf,
  objectiveTimes,
  pointOf,
  stopped,
  walkOn,
} from "./programme.ts";

/** Turns allowed; each turn's answer is a corner better than the last, and a handful are enough. */
const TURNS = 60;

/**
 * The least (or greatest) that `value / per` can be, or nothing where the rest cannot hold or where
 * there is no end to it.
 *
 * Method: Dinkelbach 1967, "On nonlinear fractional programming" (unverified): make
 * `value − quotient × per` least for the quotient at hand, take the answer's quotient, and go on
 * until nothing is gained. In fractions the last turn gains exactly nothing.
 */
export function extreme(
  layout: Layout,
  value: Linear,
  per: Linear,
  toward: "least" | "greatest",
  pivots: number | undefined,
): Exact | undefined {
  const aimAt = (quotient: Exact): Objective =>
    objectiveOf(layout.model, less(value, quotient, per)).map((term) =>
      toward === "least" ? term : { ...term, coefficient: negate(term.coefficient) },
    );
  let aim = aimAt(ZERO);
  const walk = descend(layout, aim, pivots);
  let quotient: Exact | undefined;
  for (let turn = 0; walk && turn < TURNS; turn += 1) {
    if (!walkOn(walk, aim)) return undefined;
    const point = pointOf(layout, walk.answer([]));
    const below = pointValue(per, point);
    if (below.n <= 0n) return undefined;
    const next = over(pointValue(value, point), below);
    if (quotient && compareRatios(next, quotient) === 0) return quotient;
    quotient = next;
    aim = aimAt(next);
  }
  if (walk) throw stopped(TURNS);
  return undefined;
}

/** The answer that misses least, and of those the one that departs least. */
export interface Nearest {
  readonly point: Point;
}

/** Misses that are made least as one: their weighted total over `per`. */
interface Rank {
  readonly misses: readonly Miss[];
  readonly per: Linear;
}

/**
 * The point that misses least, and of those the one that a fit would choose; nothing where even the
 * firm rows cannot hold. Misses of amounts come first, then those of amounts asked to be 0, of shares
 * of energy, and of ratios, those to the same amount together: each total is made least among the
 * answers that are best by the totals before it.
 *
 * All misses in one total would be a sum of quotients of different denominators, whose least is no
 * fraction in general and hard to prove. Taken as amounts, over one portion, misses of shares and
 * ratios would be the smaller the smaller the dish. In turn, every total is over one denominator,
 * exact, and what is said of proportions does not depend on the size of the portion or of the recipe.
 * Amounts are first since, but for doses and bounds in grams, size and proportions do not conflict.
 */
export function nearestPoint(layout: Layout, pivots: number | undefined): Nearest | undefined {
  const ranks = ranksOf(layout);
  const walk = descend(layout, totalOf(ranks[0]?.misses ?? []), pivots);
  if (!walk) return undefined;
  for (const rank of ranks) {
    leastMissed(layout, rank, walk);
    walk.hold();
  }
  for (const objective of objectivesOf(layout)) {
    if (walk.isSettled) break;
    if (!walkOn(walk, objective)) return undefined;
    walk.hold();
  }
  return { point: pointOf(layout, walk.answer([])) };
}

function ranksOf({ constraints, misses }: Layout): Rank[] {
  const amounts: Miss[] = [];
  const nothings: Miss[] = [];
  const quotients = new Map<string, Rank & { readonly misses: Miss[] }>();
  for (const miss of misses) {
    const per = constraints[miss.constraint]?.per ?? ONE_PORTION;
    if (isOnePortion(per)) {
      (miss.ofNothing ? nothings : amounts).push(miss);
      continue;
    }
    const key = [per.still, per.movers, per.each, per.dose, per.scale].join(";");
    const rank = quotients.get(key) ?? { misses: [], per };
    rank.misses.push(miss);
    quotients.set(key, rank);
  }
  const byPortion = [amounts, nothings].map((own): Rank => ({ misses: own, per: ONE_PORTION }));
  return [...byPortion, ...quotients.values()].filter((rank) => rank.misses.length > 0);
}

/**
 * Walks to where a rank's total over `per` is least: where `total − quotient × per` is, at the least
 * quotient there is.
 *
 * Method: Dinkelbach's again. Misses are never below 0, so the quotient starts at 0 and is the answer if
 * nothing need be missed.
 */
function leastMissed(layout: Layout, { misses, per }: Rank, walk: Descent): void {
  const total = totalOf(misses);
  const stand = (): { missed: Exact; below: Exact } => {
    const found = walk.answer([]);
    return { missed: missedAt(misses, found), below: pointValue(per, pointOf(layout, found)) };
  };
  let quotient: Exact = ZERO;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const aim = [...total, ...objectiveTimes(layout.model, per, negate(quotient))];
    if (!walkOn(walk, aim)) throw stopped(turn);
    let found = stand();
    if (minus(found.missed, times(quotient, found.below)).n === 0n) return;
    // Nothing to divide by: begin from where there is most, if there is any.
    if (found.below.n === 0n) {
      const isLed = walkOn(walk, objectiveTimes(layout.model, per, MINUS));
      found = stand();
      if (!isLed || found.below.n === 0n) {
        walkOn(walk, aim);
        return;
      }
    }
    quotient = over(found.missed, found.below);
  }
  throw stopped(TURNS);
}

const MINUS: Exact = /* @__PURE__ */ fraction(-1n);

function totalOf(misses: readonly Miss[]): Objective {
  return misses.map(({ variable, weight }) => ({ variable, coefficient: weight }));
}

function missedAt(misses: readonly Miss[], { x }: Optimal): Exact {
  return sum(misses.map(({ variable, weight }) => times(x[variable] ?? ZERO, weight)));
}
