import { compare, type Fraction, fraction, negate, plus, sum, times, ZERO } from "../../number/fraction.ts";
import { basicValues, reducedCost, rowPrices, type WorkingBasis } from "./basis.ts";
import type {
  Basis,
  End,
  Holding,
  Infeasible,
  Objective,
  Optimal,
  Prices,
  Programme,
  Span,
  Unbounded,
} from "./programme.ts";
import { allValues, type Entering, shortfallCosts } from "./simplex.ts";
import type { WholeProgramme } from "./whole.ts";

/** Reads the answer off the last basis, back in the caller's units. */
export function optimal(
  programme: Programme,
  objectives: readonly Objective[],
  b: WorkingBasis,
  prices: Prices,
): Optimal {
  const { n, units, scales } = b.whole;
  const values = allValues(b);
  const x = units.map((unit, j) => fraction(values[j] as bigint, b.determinant * unit));
  const totals = scales.map((by, i) => fraction(values[n + i] as bigint, b.determinant * by));
  return {
    status: "optimal",
    x,
    objectives: objectives.map((objective) => evaluate(objective, x)),
    prices,
    totals,
    binding: {
      rows: totals.map((total, i) => endOf(total, programme.rows[i] as Span)),
      variables: x.map((value, j) => endOf(value, programme.variables[j] as Span)),
    },
    basis: standings(b),
    pivots: b.pivots,
  };
}

/** The prices of an objective at the basis that makes it least. */
export function pricesAt(b: WorkingBasis, costs: readonly bigint[], scale: bigint): Prices {
  const { units, scales } = b.whole;
  const perRow = rowPrices(b, costs);
  const under = b.determinant * scale;
  return {
    rows: scales.map((by, i) => fraction((perRow[i] as bigint) * by, under)),
    variables: units.map((unit, j) =>
      b.standing[j] === "basic" ? ZERO : fraction(reducedCost(b, perRow, costs, j) * unit, under),
    ),
  };
}

function standings(b: WorkingBasis): Basis {
  return { variables: b.standing.slice(0, b.whole.n), rows: b.standing.slice(b.whole.n) };
}

function endOf(value: Fraction, { lower, upper }: Span): End {
  const low = lower !== undefined && compare(value, lower) === 0;
  const high = upper !== undefined && compare(value, upper) === 0;
  return low ? (high ? "both" : "lower") : high ? "upper" : "neither";
}

/** The proof that nothing meets every bound, from a basis whose shortfall is least yet above zero. */
export function infeasible(programme: Programme, b: WorkingBasis): Infeasible {
  const costs = shortfallCosts(b, basicValues(b)) ?? [];
  const perRow = rowPrices(b, costs);
  const certificate: Holding[] = [];
  for (let j = 0; j < b.standing.length; j += 1) {
    const cost =
      b.standing[j] === "basic" ? -(costs[j] as bigint) * b.determinant : reducedCost(b, perRow, costs, j);
    if (cost !== 0n) certificate.push(holding(b.whole, j, cost));
  }
  return { status: "infeasible", certificate, gap: gap(programme, certificate), pivots: b.pivots };
}

/** A lower end held where the cost is above 0, an upper one where it is below. */
function holding(whole: WholeProgramme, j: number, cost: bigint): Holding {
  const isVariable = j < whole.n;
  const index = isVariable ? j : j - whole.n;
  const by = (isVariable ? whole.units[index] : whole.scales[index]) as bigint;
  return {
    on: isVariable ? "variable" : "row",
    index,
    end: cost > 0n ? "lower" : "upper",
    weight: fraction((cost < 0n ? -cost : cost) * by),
  };
}

/** The proof for a span whose own ends cross. */
export function crossed(programme: Programme, on: "row" | "variable", index: number): Infeasible {
  const certificate: Holding[] = (["lower", "upper"] as const).map((end) => ({
    on,
    index,
    end,
    weight: { n: 1n, d: 1n },
  }));
  return { status: "infeasible", certificate, gap: gap(programme, certificate), pivots: 0 };
}

function gap(programme: Programme, certificate: readonly Holding[]): Fraction {
  return sum(
    certificate.map(({ on, index, end, weight }) => {
      const span = (on === "row" ? programme.rows[index] : programme.variables[index]) as Span;
      const bound = span[end] as Fraction;
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
  const { n, units } = b.whole;
  const values = allValues(b);
  const along = new Array<bigint>(b.standing.length).fill(0n);
  along[variable] = rising ? b.determinant : -b.determinant;
  for (let p = 0; p < through.length; p += 1) {
    along[b.basic[p] as number] = rising ? -(through[p] as bigint) : (through[p] as bigint);
  }
  const face = (from: readonly bigint[]): Fraction[] =>
    units.slice(0, n).map((unit, j) => fraction(from[j] as bigint, b.determinant * unit));
  return { status: "unbounded", from: face(values), along: face(along), turn, pivots: b.pivots };
}

/** Σ coefficient × x. */
function evaluate(terms: Objective, x: readonly Fraction[]): Fraction {
  let total = ZERO;
  for (const { variable, coefficient } of terms)
    total = plus(total, times(coefficient, x[variable] as Fraction));
  return total;
}
