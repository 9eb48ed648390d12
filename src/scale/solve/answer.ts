import { type Fraction, fraction, negate, sum, times, ZERO } from "../../number/fraction.ts";
import { basicValues, reducedCost, restingValue, rowPrices, type WorkingBasis } from "./basis.ts";
import type {
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
import { objectiveInWholes, type WholeObjective, type WholeProgramme } from "./whole.ts";

/** Reads the answer off the last basis, back in the caller's units. */
export function optimal(
  programme: Programme,
  objectives: readonly Objective[],
  b: WorkingBasis,
  prices: Prices,
): Optimal {
  const { n, whole } = { n: b.whole.n, whole: b.whole };
  const values = allValues(b);
  const spanOf = (j: number): Span => (j < n ? programme.variables[j] : programme.rows[j - n]) as Span;
  const faces = values.map((value, j) => face(b, spanOf(j), value, j));
  const ends = values.map((value, j) => endOf(b, value, j));
  return {
    status: "optimal",
    x: faces.slice(0, n),
    objectives: objectives.map((o) => worth(objectiveInWholes(o, whole), values, b.determinant)),
    prices,
    totals: faces.slice(n),
    binding: { variables: ends.slice(0, n), rows: ends.slice(n) },
    basis: { variables: b.standing.slice(0, n), rows: b.standing.slice(n) },
    pivots: b.pivots,
  };
}

/** The value of a variable or total; one that rests on an end of its span is that end, as given. */
function face(b: WorkingBasis, { lower, upper }: Span, value: bigint, j: number): Fraction {
  if (b.standing[j] !== "basic") {
    const at = restingValue(b, j);
    if (at === 0n) return ZERO;
    if (lower !== undefined && at === b.whole.lower[j]) return lower;
    if (upper !== undefined && at === b.whole.upper[j]) return upper;
  }
  return value === 0n ? ZERO : fraction(value, b.determinant * unitOf(b.whole, j));
}

function endOf(b: WorkingBasis, value: bigint, j: number): End {
  const lower = b.whole.lower[j];
  const upper = b.whole.upper[j];
  const low = lower !== undefined && value === lower * b.determinant;
  const high = upper !== undefined && value === upper * b.determinant;
  return low ? (high ? "both" : "lower") : high ? "upper" : "neither";
}

/** What a variable, or a row, was multiplied by to be whole. */
function unitOf({ n, units, scales }: WholeProgramme, j: number): bigint {
  return (j < n ? units[j] : scales[j - n]) as bigint;
}

function worth({ costs, scale }: WholeObjective, values: readonly bigint[], determinant: bigint): Fraction {
  let total = 0n;
  for (let j = 0; j < costs.length; j += 1)
    if (costs[j] !== 0n) total += (costs[j] as bigint) * (values[j] as bigint);
  return fraction(total, determinant * scale);
}

/** The prices of an objective at a basis that makes it least; those of variables worked out when read. */
export function pricesAt(b: WorkingBasis, { costs, scale }: WholeObjective): Prices {
  const { whole, determinant } = b;
  const standing = [...b.standing];
  const perRow = rowPrices(b, costs);
  const under = determinant * scale;
  let variables: readonly Fraction[] | undefined;
  return {
    rows: whole.scales.map((by, i) =>
      perRow[i] === 0n ? ZERO : fraction((perRow[i] as bigint) * by, under),
    ),
    get variables(): readonly Fraction[] {
      variables ??= whole.units.map((unit, j) => {
        const cost = standing[j] === "basic" ? 0n : reducedCost({ whole, determinant }, perRow, costs, j);
        return cost === 0n ? ZERO : fraction(cost * unit, under);
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
  return {
    on: onVariable ? "variable" : "row",
    index: onVariable ? j : j - whole.n,
    end: cost > 0n ? "lower" : "upper",
    weight: fraction((cost < 0n ? -cost : cost) * unitOf(whole, j)),
  };
}

/** The proof for a span whose own ends cross. */
export function crossed(programme: Programme, on: "row" | "variable", index: number): Infeasible {
  const certificate = (["lower", "upper"] as const).map((end) => ({
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
  const along = new Array<bigint>(b.standing.length).fill(0n);
  along[variable] = rising ? b.determinant : -b.determinant;
  for (let p = 0; p < through.length; p += 1) {
    along[b.basic[p] as number] = rising ? -(through[p] as bigint) : (through[p] as bigint);
  }
  const show = (values: readonly bigint[]): Fraction[] =>
    b.whole.units.map((unit, j) => fraction(values[j] as bigint, b.determinant * unit));
  return { status: "unbounded", from: show(allValues(b)), along: show(along), turn, pivots: b.pivots };
}
