import { ZERO } from "../../number/fraction.ts";
import { type Amounts, type AmountsEffort, type AmountsProblem, DEFAULT_NODES } from "./amounts.ts";
import { leastDrift } from "./drift.ts";
import { leastExcess } from "./excess.ts";
import { type Ordering, ranked, smallest } from "./hunt.ts";
import { costsAt, stated, type Tables, tablesOf } from "./tables.ts";

/** See {@link AmountsProblem} for what is asked. */
export function chooseAmounts(problem: AmountsProblem, effort: AmountsEffort = {}): Amounts {
  const limit = effort.nodes ?? DEFAULT_NODES;
  const t = tablesOf(problem);
  const ordering = orderingOf(t);
  // Half is kept back, so that what is not proven to exceed least still comes out with little drift.
  const first = leastExcess(t, ordering, Math.ceil(limit / 2));
  const proven = first.end === "found";
  if (first.end === "none") return { status: "infeasible", nodes: first.nodes };
  if (first.chosen === undefined) {
    return { status: "stopped", bound: { excess: first.bound, drift: ZERO }, nodes: first.nodes };
  }
  const least = leastDrift(t, ordering, first.excess, first.chosen, limit - first.nodes);
  const nodes = first.nodes + least.nodes;
  const best = stated(t, least.chosen);
  if (proven && least.bound === undefined)
    return { status: best.excess.n === 0n ? "met" : "nearest", ...best, nodes };
  // Whoever exceeds less is among those within this excess, so the bound on the drift holds for all.
  const bound = { excess: first.bound, drift: least.bound ?? best.drift };
  return { status: "stopped", best, bound, nodes };
}

/** Lines that sway the demands most come first; candidates nearest to the exact amount are tried first. */
export function orderingOf(t: Tables): Ordering {
  const { lines } = t.problem;
  const sway = new Array<number>(lines.length).fill(0);
  for (const { values } of t.demands) {
    const spreads = values.map((line) => -smallest(line.map((v) => -v)) - smallest(line));
    const whole = spreads.reduce((a, b) => a + b, 0n);
    if (whole === 0n) continue;
    for (const [i, s] of spreads.entries()) sway[i] = (sway[i] as number) + Number((s << 40n) / whole);
  }
  const order = lines.map((_, i) => i).sort((a, b) => (sway[b] as number) - (sway[a] as number) || a - b);
  const costs = costsAt(t, t.one);
  return { order, tries: costs.map(ranked), twins: twinsOf(t.problem) };
}

/** For each line the nearest earlier one that nothing tells apart from it, else −1. */
function twinsOf({ lines, demands }: AmountsProblem): number[] {
  const seen = new Map<string, number>();
  return lines.map(({ exact, weight, candidates }, i) => {
    const figures = [
      exact,
      weight,
      ...demands.map((d) => d.perUnit[i] ?? ZERO),
      ...candidates.map((c) => c.quantity),
    ];
    const key = figures.map(({ n, d }) => `${n}/${d}`).join();
    const twin = seen.get(key) ?? -1;
    seen.set(key, i);
    return twin;
  });
}
