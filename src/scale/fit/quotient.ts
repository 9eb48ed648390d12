import { compare, type Fraction, negate, over, sum, times, ZERO } from "../../number/fraction.ts";
import type { Objective, Optimal } from "../solve/programme.ts";
import { type Linear, less, type Point, valueAt } from "./linear.ts";
import { departures, type Layout, objectiveOf, pointOf, solve, stopped } from "./programme.ts";

/** Turns allowed; each turn's answer is a corner better than the last, and a handful are enough. */
const TURNS = 60;

/**
 * The least (or greatest) that `value / per` can be, or nothing where the rest cannot hold or where
 * there is no end to it.
 *
 * Method: Dinkelbach 1967, "On nonlinear fractional programming" (from memory): make
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
    const objective = objectiveOf(aim).map((term) =>
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

/**
 * The point where the soft rows' misses, each counted by its weight, total least; then as a fit
 * chooses among equal answers. Misses of the portion are misses over the common factor divided by
 * `u`, so their total is a quotient too, and is made least the same way. Nothing where even the
 * firm rows cannot hold.
 */
export function nearest(layout: Layout, pivots: number | undefined): Nearest | undefined {
  const u = 2 * layout.model.movers.length;
  const ties = departures(layout.model);
  let quotient = ZERO;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const missed: Objective = [
      ...layout.misses.map(({ variable, weight }) => ({ variable, coefficient: weight })),
      { variable: u, coefficient: negate(quotient) },
      { variable: u + 1, coefficient: quotient },
    ];
    const solution = solve(layout, [missed, ...ties], pivots);
    if (solution?.status !== "optimal") return undefined;
    const point = pointOf(layout, solution);
    const next = over(missTotal(layout, solution), point.u);
    if (compare(next, quotient) === 0) return { point, solution };
    quotient = next;
  }
  throw stopped(TURNS);
}

function missTotal({ misses }: Layout, { x }: Optimal): Fraction {
  return sum(misses.map(({ variable, weight }) => times(x[variable] ?? ZERO, weight)));
}
