import { type Exact, fraction, negate, ONE, sum, times, ZERO } from "../../number/exact.ts";
import { basicValues, reducedCost, rowPrices, type WorkingBasis } from "./basis.ts";
import type { Holding, Infeasible, Prices, Programme, SolverInterval, Unbounded } from "./programme.ts";
import { allValues, type Entering, shortfallCosts } from "./simplex.ts";
import type { WholeObjective, WholeProgramme } from "./whole.ts";

/** The prices of an objective at a basis that makes it least; worked out when read. */
export function pricesAt(
  b: WorkingBasis,
  { costs, scale }: WholeObjective,
  perRow: readonly bigint[],
): Prices {
  const { whole, determinant } = b;
  const standing = [...b.standing];
  const under = determinant * scale;
  let variables: readonly Exact[] | undefined;
  let rows: readonly Exact[] | undefined;
  return {
    get rows(): readonly Exact[] {
      rows ??= whole.scales.map((by, i) =>
        perRow[i] === 0n ? ZERO : fraction((perRow[i] as bigint) * by, under),
      );
      return rows;
    },
    get variables(): readonly Exact[] {
      variables ??= standing.slice(0, whole.n).map((place, j) => {
        const cost = place === "basic" ? 0n : reducedCost({ whole, determinant }, perRow, costs, j);
        return cost === 0n ? ZERO : fraction(cost, under);
      });
      return variables;
    },
  };
}

/** The proof that nothing meets every bound, from a basis whose shortfall is least yet above zero. */
export function infeasible(programme: Programme, b: WorkingBasis): Infeasible {
  const costs = shortfallCosts(b, basicValues(b)) ?? [];
  const perRow = rowPrices(b, costs);
  const certificate: Holding[] = [];
  for (let j = 0; j < b.standing.length; j += 1) {
    // What falls short is held at the end it misses, what rests at the end it rests on.
    const isBasic = b.standing[j] === "basic";
    const cost = isBasic ? -(costs[j] as bigint) * b.determinant : reducedCost(b, perRow, costs, j);
    if (cost !== 0n) certificate.push(holding(b.whole, j, cost));
  }
  return { status: "infeasible", certificate, gap: gap(programme, certificate), pivots: b.pivots };
}

function holding(whole: WholeProgramme, j: number, cost: bigint): Holding {
  const onVariable = j < whole.n;
  const index = onVariable ? j : j - whole.n;
  return {
    on: onVariable ? "variable" : "row",
    index,
    end: cost > 0n ? "lower" : "upper",
    weight: fraction((cost < 0n ? -cost : cost) * (onVariable ? 1n : (whole.scales[index] as bigint))),
  };
}

/** The proof for a span whose own ends cross. */
export function crossed(programme: Programme, on: "row" | "variable", index: number): Infeasible {
  const certificate = (["lower", "upper"] as const).map((end) => ({
    on,
    index,
    end,
    weight: ONE,
  }));
  return { status: "infeasible", certificate, gap: gap(programme, certificate), pivots: 0 };
}

function gap(programme: Programme, certificate: readonly Holding[]): Exact {
  return sum(
    certificate.map(({ on, index, end, weight }) => {
      const span = (on === "row" ? programme.rows[index] : programme.variables[index]) as SolverInterval;
      const bound = span[end] as Exact;
      return times(weight, end === "lower" ? bound : negate(bound));
    }),
  );
}

/** The way along which the objective falls without end. */
export function unbounded(
  b: WorkingBasis,
  { variable, rising }: Entering,
  through: readonly bigint[],
  turn: number,
): Unbounded {
  const along = new Array<bigint>(b.standing.length).fill(0n);
  along[variable] = rising ? b.determinant : -b.determinant;
  for (let p = 0; p < through.length; p += 1) {
    along[b.basic[p] as number] = rising ? -(through[p] as bigint) : (through[p] as bigint);
  }
  const show = (values: readonly bigint[]): Exact[] =>
    values.slice(0, b.whole.n).map((value) => fraction(value, b.determinant * b.whole.unit));
  return { status: "unbounded", from: show(allValues(b)), along: show(along), turn, pivots: b.pivots };
}
