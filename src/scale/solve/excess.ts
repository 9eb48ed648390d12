import { compare, type Fraction, fraction, negate, ZERO } from "../../number/fraction.ts";
import { hunt, type Ordering } from "./hunt.ts";
import { minimise } from "./minimise.ts";
import type { Programme, Row, Term } from "./programme.ts";
import { type Restriction, smallest } from "./restriction.ts";
import { settle } from "./settle.ts";
import { costsAt, excessOf, type Tables, totalOf, windows } from "./tables.ts";

/** The least worst excess, and a choice that has it. */
export interface LeastExcess {
  readonly end: "found" | "none" | "stopped";
  readonly chosen?: readonly number[];
  readonly excess: Fraction;
  /** No choice has less. */
  readonly bound: Fraction;
  readonly nodes: number;
}

/**
 * Finds the least worst excess over the demands. Mostly it is none, and the improver finds a choice
 * without; else the linear relaxation gives what cannot be bettered, and its prices, taken
 * as they are, a restriction that binds the demands together for the search.
 */
export function leastExcess(t: Tables, ordering: Ordering, nodes: number): LeastExcess {
  const start = settle(
    costsAt(t, t.one),
    windows(t.demands, ZERO),
    ordering.tries.map(([first = 0]) => first),
  );
  const known = holdsFirm(t, start) ? { chosen: start, excess: excessOf(t.demands, start) } : undefined;
  if (known?.excess.n === 0n) return { end: "found", ...known, bound: ZERO, nodes: 0 };
  const bound = relaxed(t);
  if (bound === undefined) return { end: "none", excess: ZERO, bound: ZERO, nodes: 0 };
  let best = known;
  const restrictions = (excess: Fraction, short: boolean): Restriction[] => [
    ...windows(t.demands, excess, short),
    together(t, bound, excess, short),
  ];
  const first = known ? restrictions(known.excess, true) : restrictions(most(t), false);
  const end = hunt({ ...ordering, restrictions: first, nodes }, (choice) => {
    const excess = excessOf(t.demands, choice);
    best = { chosen: [...choice], excess };
    if (compare(excess, bound.excess) <= 0) return "enough";
    return restrictions(excess, true).map((r) => r.limit);
  });
  const state = end.end === "stopped" ? "stopped" : best ? "found" : "none";
  const proven = state === "found" && best ? best.excess : bound.excess;
  return { end: state, excess: ZERO, ...best, bound: proven, nodes: end.nodes };
}

function holdsFirm({ demands }: Tables, chosen: readonly number[]): boolean {
  const firm = demands.filter((d) => d.gives === 0n);
  return windows(firm, ZERO).every(({ values, limit }) => totalOf(values, chosen) <= limit);
}

/** More than any choice can exceed by. */
function most({ demands }: Tables): Fraction {
  let worst: Fraction = ZERO;
  for (const { values, lower, upper, gives } of demands) {
    if (gives === 0n) continue;
    const all = values.map((line) => ({ low: smallest(line), high: -smallest(line.map((v) => -v)) }));
    const high = all.reduce((sum, { high }) => sum + high, 0n) - (upper ?? lower ?? 0n);
    const low = (lower ?? upper ?? 0n) - all.reduce((sum, { low }) => sum + low, 0n);
    for (const by of [high, low]) if (compare({ n: by, d: gives }, worst) > 0) worst = fraction(by, gives);
  }
  return worst;
}

/** The relaxation's least excess, and the weight of each window in the proof of it. */
interface Relaxed {
  readonly excess: Fraction;
  readonly weights: readonly Fraction[];
}

/** Lets every line take any blend of its candidates; nothing where even so a firm demand cannot hold. */
function relaxed({ demands, problem }: Tables): Relaxed | undefined {
  const offsets: number[] = [];
  let count = 1;
  for (const { candidates } of problem.lines) {
    offsets.push(count);
    count += candidates.length;
  }
  const one = fraction(1n);
  const rows: Row[] = problem.lines.map(({ candidates }, i) => ({
    terms: candidates.map((_, k) => ({ variable: (offsets[i] as number) + k, coefficient: one })),
    lower: one,
    upper: one,
  }));
  const gives = demands.flatMap((d) =>
    [d.upper, d.lower].filter((end) => end !== undefined).map(() => d.gives),
  );
  for (const [r, { values, limit }] of windows(demands, ZERO).entries()) {
    const terms: Term[] = [{ variable: 0, coefficient: fraction(-(gives[r] as bigint)) }];
    for (const [i, line] of values.entries()) {
      for (const [k, v] of line.entries())
        terms.push({ variable: (offsets[i] as number) + k, coefficient: fraction(v) });
    }
    rows.push({ terms, upper: fraction(limit) });
  }
  const programme: Programme = { variables: Array.from({ length: count }, () => ({ lower: ZERO })), rows };
  const least = minimise(programme, [{ variable: 0, coefficient: one }]);
  if (least.status === "infeasible") return undefined;
  const none = gives.map(() => ZERO);
  if (least.status !== "optimal") return { excess: ZERO, weights: none };
  const prices = least.prices.rows.slice(problem.lines.length);
  return { excess: least.objectives[0] ?? ZERO, weights: prices.map(negate) };
}

/** The windows added up by their weights: what holds for each holds for the sum. */
function together(
  { demands, problem }: Tables,
  { weights }: Relaxed,
  excess: Fraction,
  short: boolean,
): Restriction {
  const under = weights.reduce((so, { d }) => so * d, 1n);
  const sum = windows(demands, excess, short);
  const by = weights.map(({ n, d }) => n * (under / d));
  return {
    values: problem.lines.map(({ candidates }, i) =>
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
