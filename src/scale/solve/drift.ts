import { type Exact, fraction } from "../../number/exact.ts";
import { hunt, type Ordering } from "./hunt.ts";
import { charge, rounded, type ShiftedRow } from "./multipliers.ts";
import { largest, type Restriction, ranked, shiftFor, smallest } from "./restriction.ts";
import { settleNearby } from "./settle.ts";
import { type AtCommon, bestCommon, costsAt, type Tables, totalOf, windows } from "./tables.ts";

/** The choice of least drift among those within an excess. */
export interface LeastDrift {
  readonly chosen: readonly number[];
  readonly nodes: number;
  /** Only where the search was cut short: no choice drifts less. */
  readonly bound?: Exact;
}

/**
 * Takes each common factor that can be best, those of lowest bound first, and hunts for choices that
 * drift less there than the best so far, until no bound is below it. `start` is a choice
 * within the excess.
 */
export function leastDrift(
  t: Tables,
  { order, twins }: Ordering,
  excess: Exact,
  start: readonly number[],
  limit: number,
): LeastDrift {
  const demands = windows(t.demands, excess);
  const ties = tieBreaks(t);
  const above = 1n + ties.reduce((sum, line) => sum + largest(line), 0n);
  let best = standingOf(t, start, ties);
  let nodes = 0;
  for (const at of attempts(t, demands, best)) {
    if (isOver(at, best)) break;
    const settled = settleNearby(at.costs, demands, best.chosen);
    if (demands.every((d) => totalOf(d.values, settled) <= d.limit))
      best = better(best, standingOf(t, settled, ties));
    if (isOver(at, best)) break;
    const costs = at.costs.map((line, i) =>
      line.map((c, k) => c * above + ((ties[i] as bigint[])[k] as bigint)),
    );
    const limits = (): bigint[] => {
      const most = (best.cost * at.common) / best.common;
      const even = most * best.common === best.cost * at.common;
      const better = most * above + (even ? best.ties - 1n : above - 1n);
      return [at.charged.limit + ((most >> at.shift) << FINE), better, ...demands.map((d) => d.limit)];
    };
    const now = limits();
    const values = [at.charged.values, costs, ...demands.map((d) => d.values)];
    const restrictions = values.map((v, r) => ({ values: v, limit: now[r] as bigint }));
    const tries = at.charged.values.map(ranked);
    const end = hunt({ order, tries, twins, restrictions, nodes: limit - nodes }, (choice) => {
      best = standingOf(t, choice, ties);
      return limits();
    });
    nodes += end.nodes;
    if (end.end === "stopped")
      return { chosen: best.chosen, nodes, bound: fraction(at.cost, at.common * t.weightOne) };
  }
  return { chosen: best.chosen, nodes };
}

interface Best extends AtCommon {
  readonly chosen: readonly number[];
  readonly ties: bigint;
}

function standingOf(t: Tables, chosen: readonly number[], ties: readonly (readonly bigint[])[]): Best {
  return { ...bestCommon(t, chosen), chosen: [...chosen], ties: totalOf(ties, chosen) };
}

function better(a: Best, b: Best): Best {
  const [left, right] = [a.cost * b.common, b.cost * a.common];
  return left < right || (left === right && a.ties <= b.ties) ? a : b;
}

/**
 * What decides between choices of equal drift, as one whole number: first their distance from the
 * exact amounts, then how far down its list each line's candidate stands, earlier lines counting more.
 */
function tieBreaks(t: Tables): bigint[][] {
  const { lines } = t.problem;
  const most = BigInt(Math.max(1, ...lines.map((l) => l.candidates.length)));
  const distances = costsAt(t, t.one);
  const above = most ** BigInt(lines.length);
  return distances.map((line, i) => {
    const place = most ** BigInt(lines.length - 1 - i);
    return line.map((distance, k) => distance * above + BigInt(k) * place);
  });
}

/** A common factor to try; `cost` is what no choice within the excess is below, there. */
interface Attempt extends AtCommon {
  readonly costs: readonly (readonly bigint[])[];
  /** The costs, shifted down by `shift` and up by {@link FINE}, with the demands' charges on top. */
  readonly charged: Restriction;
  readonly shift: bigint;
}

/** Charges are whole multiples of 2 to the −20. */
const FINE = 20n;

function attempts(t: Tables, demands: readonly Restriction[], best: AtCommon): Attempt[] {
  const small = demands.map(rounded);
  let rates: Float64Array | undefined;
  const all = commons(t).map((common) => {
    const costs = costsAt(t, common);
    const shift = shiftFor(costs);
    const cost = rounded({ values: costs, limit: 0n });
    rates = charge(cost, small, Number(((best.cost * common) / best.common) >> shift), rates);
    const charged = chargedBy(cost, small, rates);
    const least = charged.values.reduce((sum, line) => sum + smallest(line), 0n) - charged.limit;
    return { common, costs, charged, shift, cost: least > 0n ? (least << shift) >> FINE : 0n };
  });
  return all.sort((a, b) => {
    const [left, right] = [a.cost * b.common, b.cost * a.common];
    return left < right ? -1 : left > right ? 1 : a.common < b.common ? -1 : 1;
  });
}

/** Every common factor that can be some choice's best. */
function commons({ ratios, weights, one, problem }: Tables): bigint[] {
  if (problem.common) return [problem.common.n * (one / problem.common.d)];
  const all = new Set(ratios.flatMap((line, i) => (weights[i] === 0n ? [] : line)));
  all.delete(0n);
  return all.size === 0 ? [one] : [...all].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
}

/** Costs and charges together; with a limit on the cost added to its own, a restriction. */
function chargedBy(cost: ShiftedRow, demands: readonly ShiftedRow[], rates: Float64Array): Restriction {
  const by = Array.from(rates, (rate) => BigInt(Math.round(rate * 2 ** Number(FINE))));
  const values = cost.values.map((line, i) =>
    line.map((c, k) =>
      demands.reduce(
        (total, { values }, r) =>
          by[r] === 0n ? total : total + (by[r] as bigint) * (values[i]?.[k] as bigint),
        c << FINE,
      ),
    ),
  );
  return { values, limit: demands.reduce((total, { limit }, r) => total + (by[r] as bigint) * limit, 0n) };
}

function isOver(a: AtCommon, than: AtCommon): boolean {
  return a.cost * than.common > than.cost * a.common;
}
