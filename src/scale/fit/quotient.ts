import {
  compare,
  type Fraction,
  fraction,
  minus,
  negate,
  over,
  sum,
  times,
  ZERO,
} from "../../number/fraction.ts";
import type { Objective, Optimal } from "../solve/programme.ts";
import { isOnePortion, type Linear, less, ONE_PORTION, type Point, valueAt } from "./linear.ts";
import {
  departures,
  type Layout,
  type Miss,
  objectiveOf,
  objectiveTimes,
  pointOf,
  solve,
  stopped,
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
): Fraction | undefined {
  let quotient: Fraction | undefined;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const aim = less(value, quotient ?? ZERO, per);
    const objective = objectiveOf(layout.model, aim).map((term) =>
      toward === "least" ? term : { ...term, coefficient: negate(term.coefficient) },
    );
    const solution = solve(layout, [objective], pivots);
    if (solution?.status !== "optimal") return undefined;
    const point = pointOf(layout, solution);
    const below = valueAt(per, point);
    if (below.n <= 0n) return undefined;
    const next = over(valueAt(value, point), below);
    if (quotient && compare(next, quotient) === 0) return quotient;
    quotient = next;
  }
  throw stopped(TURNS);
}

/** The answer that misses least, and of those the one that departs least. */
export interface Nearest {
  readonly point: Point;
  readonly solution: Optimal;
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
export function nearest(layout: Layout, pivots: number | undefined): Nearest | undefined {
  const settled: Objective[] = [];
  for (const rank of ranksOf(layout)) {
    const objective = leastMissed(layout, rank, settled, pivots);
    if (!objective) return undefined;
    settled.push(objective);
  }
  const solution = solve(layout, [...settled, ...departures(layout.model)], pivots);
  return solution?.status === "optimal" ? { point: pointOf(layout, solution), solution } : undefined;
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
 * The objective whose least is where a rank's total over `per` is: `total − quotient × per`, at the
 * least quotient there is.
 *
 * Method: Dinkelbach's again. Misses are never below 0, so the quotient starts at
 * 0 and is the answer if nothing need be missed.
 */
function leastMissed(
  layout: Layout,
  { misses, per }: Rank,
  settled: readonly Objective[],
  pivots: number | undefined,
): Objective | undefined {
  const total = misses.map(({ variable, weight }) => ({ variable, coefficient: weight }));
  const at = (objective: Objective): { missed: Fraction; below: Fraction } | undefined => {
    const solution = solve(layout, [...settled, objective], pivots);
    if (solution?.status !== "optimal") return undefined;
    return { missed: totalOf(misses, solution), below: valueAt(per, pointOf(layout, solution)) };
  };
  let quotient: Fraction = ZERO;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const aim = [...total, ...objectiveTimes(layout.model, per, negate(quotient))];
    let found = at(aim);
    if (!found || minus(found.missed, times(quotient, found.below)).n === 0n) return found && aim;
    // Nothing to divide by: begin from where there is most, if there is any.
    if (found.below.n === 0n) found = at(objectiveTimes(layout.model, per, MINUS));
    if (!found || found.below.n === 0n) return aim;
    quotient = over(found.missed, found.below);
  }
  throw stopped(TURNS);
}

const MINUS: Fraction = /* @__PURE__ */ fraction(-1n);

function totalOf(misses: readonly Miss[], { x }: Optimal): Fraction {
  return sum(misses.map(({ variable, weight }) => times(x[variable] ?? ZERO, weight)));
}
