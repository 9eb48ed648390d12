import {
  absolute,
  type Exact,
  fraction,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../../src/number/exact.ts";
import { compareRatios } from "../../../src/number/ratio.ts";
import type { AmountsProblem } from "../../../src/scale/solve/amounts.ts";

/** The definition of a best choice taken at its word, one candidate after another; small problems only. */
export interface ByHand {
  readonly chosen: readonly number[];
  readonly excess: Exact;
  readonly drift: Exact;
  readonly common: Exact;
}

const quantity = (p: AmountsProblem, chosen: readonly number[], i: number): Exact =>
  p.lines[i]?.candidates[chosen[i] ?? -1]?.quantity ?? ZERO;

/** `Σ weight × |quantity / (exact × common) − 1|`, as the contract writes it. */
export function driftAt(p: AmountsProblem, chosen: readonly number[], common: Exact): Exact {
  return sum(
    p.lines.map(({ exact, weight }, i) =>
      exact.n === 0n
        ? ZERO
        : times(weight, absolute(minus(over(quantity(p, chosen, i), times(exact, common)), ONE))),
    ),
  );
}

/** The least drift over every line's own ratio as the common factor; among equals the nearest to 1. */
export function driftOf(p: AmountsProblem, chosen: readonly number[]): { drift: Exact; common: Exact } {
  if (p.common) return { drift: driftAt(p, chosen, p.common), common: p.common };
  const ratios = p.lines.map(({ exact, weight }, i) =>
    exact.n === 0n || weight.n === 0n ? ZERO : over(quantity(p, chosen, i), exact),
  );
  let best = { drift: driftAt(p, chosen, ONE), common: ONE };
  for (const common of ratios) {
    if (common.n === 0n) continue;
    const drift = driftAt(p, chosen, common);
    const side =
      compareRatios(drift, best.drift) ||
      compareRatios(absolute(minus(common, ONE)), absolute(minus(best.common, ONE)));
    if (side < 0) best = { drift, common };
  }
  return best;
}

/** The worst excess, or nothing where a firm demand does not hold. */
export function excessOf(p: AmountsProblem, chosen: readonly number[]): Exact | undefined {
  let worst: Exact = ZERO;
  for (const d of p.demands) {
    const total = plus(d.constant, sum(d.perUnit.map((per, i) => times(per, quantity(p, chosen, i)))));
    for (const by of [d.upper && minus(total, d.upper), d.lower && minus(d.lower, total)]) {
      if (!by || by.n <= 0n) continue;
      if (d.firm) return undefined;
      const { scale = ONE } = d;
      const size =
        "perUnit" in scale
          ? plus(scale.constant, sum(scale.perUnit.map((per, i) => times(per, quantity(p, chosen, i)))))
          : scale;
      const share = over(by, size);
      if (compareRatios(share, worst) > 0) worst = share;
    }
  }
  return worst;
}

export function bestByHand(p: AmountsProblem): ByHand | undefined {
  let best: (ByHand & { distance: Exact }) | undefined;
  for (const chosen of everyChoice(p)) {
    const excess = excessOf(p, chosen);
    if (!excess) continue;
    const { drift, common } = driftOf(p, chosen);
    const distance = driftAt(p, chosen, ONE);
    // Choices come in the order of their candidates, so an equal one later loses.
    const side = !best
      ? -1
      : compareRatios(excess, best.excess) ||
        compareRatios(drift, best.drift) ||
        compareRatios(distance, best.distance);
    if (side < 0) best = { chosen, excess, drift, common, distance };
  }
  return best;
}

function* everyChoice(p: AmountsProblem): Generator<number[]> {
  const counts = p.lines.map((l) => l.candidates.length);
  const all = counts.reduce((a, b) => a * b, 1);
  for (let n = 0; n < all; n += 1) {
    let left = n;
    const chosen: number[] = [];
    for (const count of [...counts].reverse()) {
      chosen.unshift(left % count);
      left = Math.floor(left / count);
    }
    yield chosen;
  }
}

/** A fraction for tests. */
export const f = (n: number, d = 1): Exact => fraction(BigInt(n), BigInt(d));
