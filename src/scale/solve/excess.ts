import { type Exact, fraction, negate, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { type HuntEnd, hunt, type Ordering } from "./hunt.ts";
import { minimise } from "./minimise.ts";
import type { Programme, ProgrammeRow, ProgrammeTerm } from "./programme.ts";
import { largest, type Restriction, smallest } from "./restriction.ts";
import { settleNearby } from "./settle.ts";
import { costsAt, excessOf, type Tables, totalOf, varies, type Window, windows } from "./tables.ts";

/** The least worst excess, and a choice that has it. */
export interface LeastExcess {
  readonly end: "found" | "none" | "stopped";
  readonly chosen?: readonly number[];
  readonly excess: Exact;
  /** No choice has less. */
  readonly bound: Exact;
  readonly nodes: number;
}

/**
 * Finds the least worst excess over the demands. Mostly it is none, and the improver finds a choice
 * without; else the linear relaxation gives what cannot be bettered, and its prices, taken
 * as they are, a restriction that binds the demands together for the search.
 */
export function leastExcess(t: Tables, ordering: Ordering, nodes: number): LeastExcess {
  const start = settleNearby(
    costsAt(t, t.one),
    windows(t.demands, ZERO),
    ordering.tries.map(([first = 0]) => first),
  );
  const known = holdsFirm(t, start) ? { chosen: start, excess: excessOf(t.demands, start) } : undefined;
  if (known?.excess.n === 0n) return { end: "found", ...known, bound: ZERO, nodes: 0 };
  const bound = relaxed(t);
  if (bound === undefined) return { end: "none", excess: ZERO, bound: ZERO, nodes: 0 };
  let best = known;
  const restrictions = (excess: Exact, short: boolean): Restriction[] => [
    ...windows(t.demands, excess, short),
    together(t, bound, excess, short),
  ];
  // Where what counts as an excess depends on the choice, so do the restrictions: the hunt begins anew.
  const again = varies(t);
  const search = (first: readonly Restriction[], left: number): HuntEnd =>
    hunt({ ...ordering, restrictions: first, nodes: left }, (choice) => {
      const excess = excessOf(t.demands, choice);
      best = { chosen: [...choice], excess };
      if (again || compareRatios(excess, bound.excess) <= 0) return "enough";
      return restrictions(excess, true).map((r) => r.limit);
    });
  let end = search(known ? restrictions(known.excess, true) : restrictions(most(t), false), nodes);
  let used = end.nodes;
  while (end.end === "enough" && best && compareRatios(best.excess, bound.excess) > 0) {
    end = search(restrictions(best.excess, true), nodes - used);
    used += end.nodes;
  }
  const state = end.end === "stopped" ? "stopped" : best ? "found" : "none";
  const proven = state === "found" && best ? best.excess : bound.excess;
  return { end: state, excess: ZERO, ...best, bound: proven, nodes: used };
}

function holdsFirm({ demands }: Tables, chosen: readonly number[]): boolean {
  const firm = demands.filter((d) => !d.gives);
  return windows(firm, ZERO).every(({ values, limit }) => totalOf(values, chosen) <= limit);
}

/** More than any choice can exceed by. */
function most({ demands }: Tables): Exact {
  let worst: Exact = ZERO;
  for (const { values, lower, upper, gives } of demands) {
    if (!gives) continue;
    const all = values.map((line) => ({ low: smallest(line), high: largest(line) }));
    const high = all.reduce((sum, { high }) => sum + high, 0n) - (upper ?? lower ?? 0n);
    const low = (lower ?? upper ?? 0n) - all.reduce((sum, { low }) => sum + low, 0n);
    for (const by of [high, low]) if (by * worst.d > worst.n * gives.least) worst = fraction(by, gives.least);
  }
  return worst;
}

/** The relaxation's least excess, and the weight of each window in the proof of it. */
interface Relaxed {
  readonly excess: Exact;
  readonly weights: readonly Exact[];
}

/**
 * Lets every line take any blend of its candidates, and an excess of 1 widen an end by all that it can;
 * nothing where even so a firm demand cannot hold.
 */
function relaxed({ demands, problem }: Tables): Relaxed | undefined {
  const offsets: number[] = [];
  let count = 1;
  for (const { candidates } of problem.lines) {
    offsets.push(count);
    count += candidates.length;
  }
  const one = fraction(1n);
  const rows: ProgrammeRow[] = problem.lines.map(({ candidates }, i) => ({
    terms: candidates.map((_, k) => ({ variable: (offsets[i] as number) + k, coefficient: one })),
    lower: one,
    upper: one,
  }));
  const ends = windows(demands, ZERO);
  for (const { values, limit, gives } of ends) {
    const terms: ProgrammeTerm[] = [{ variable: 0, coefficient: fraction(-(gives?.most ?? 0n)) }];
    for (const [i, line] of values.entries()) {
      for (const [k, v] of line.entries())
        terms.push({ variable: (offsets[i] as number) + k, coefficient: fraction(v) });
    }
    rows.push({ terms, upper: fraction(limit) });
  }
  const programme: Programme = { variables: Array.from({ length: count }, () => ({ lower: ZERO })), rows };
  const least = minimise(programme, [{ variable: 0, coefficient: one }]);
  if (least.status === "infeasible") return undefined;
  const none = ends.map(() => ZERO);
  if (least.status !== "optimal") return { excess: ZERO, weights: none };
  const prices = least.prices.rows.slice(problem.lines.length);
  return { excess: least.objectives[0] ?? ZERO, weights: prices.map(negate) };
}

/** The windows added up by their weights: what holds for each holds for the sum. */
function together(t: Tables, { weights }: Relaxed, excess: Exact, short: boolean): Restriction {
  const sum = windows(t.demands, excess, short);
  // What was enlarged counts for as much less.
  const large = varies(t) ? excess.d : 1n;
  const under = weights.reduce((so, { d }) => so * d, 1n);
  const by = weights.map(({ n, d }, r) => n * (under / d) * (large / (sum[r] as Window).by));
  return {
    values: t.problem.lines.map(({ candidates }, i) =>
      candidates.map((_, k) =>
        sum.reduce(
          (total, { values }, r) =>
            total + (by[r] as bigint) * ((values[i] as readonly bigint[])[k] as bigint),
          0n,
        ),
      ),
    ),
    limit: sum.reduce((total, { limit }, r) => total + (by[r] as bigint) * limit, 0n),
  };
}
